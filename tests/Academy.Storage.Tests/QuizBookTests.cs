using Academy.Competence;
using Academy.Competence.Facts;
using Academy.Competence.Quizzes;
using Academy.Storage.Ledgers;
using Microsoft.EntityFrameworkCore.Infrastructure;
using Microsoft.EntityFrameworkCore.Migrations;

namespace Academy.Storage.Tests;

public sealed class QuizBookTests
{
    private static readonly DateTimeOffset Noon = TestSalon.Opening.AddHours(3);
    private static readonly SalonId Elsewhere = new(TestSalon.Id(900));

    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    [Fact]
    public async Task A_quiz_under_way_keeps_what_was_drawn_and_each_answer_as_given()
    {
        using var salon = await TestSalon.OpenAsync();
        var sitting = Sitting(salon) with { ReadOutBy = TestSalon.Rosa };

        await InBook(salon, book => book.BeginAsync(TestSalon.Salon, sitting));
        await InBook(salon, book => book.AnswerAsync(TestSalon.Salon, sitting.Id, new("wet-1", [2])));
        await InBook(salon, book => book.AnswerAsync(TestSalon.Salon, sitting.Id, new("wet-2", [0, 3])));
        await InBook(salon, book => book.AnswerAsync(TestSalon.Salon, sitting.Id, new("wet-1", [1])));

        var found = await FindAsync(salon, sitting.Id);
        Assert.Equal(sitting, found!.Sitting);
        Assert.Equal([new("wet-2", [0, 3]), new("wet-1", [1])], found.Answers);
    }

    [Fact]
    public async Task An_answer_can_be_taken_back()
    {
        using var salon = await TestSalon.OpenAsync();
        var sitting = Sitting(salon);
        await InBook(salon, book => book.BeginAsync(TestSalon.Salon, sitting));
        await InBook(salon, book => book.AnswerAsync(TestSalon.Salon, sitting.Id, new("wet-1", [2])));

        Assert.True(await InBook(salon, book => book.AnswerAsync(TestSalon.Salon, sitting.Id, new("wet-1", []))));

        Assert.Empty((await FindAsync(salon, sitting.Id))!.Answers);
    }

    [Fact]
    public async Task An_amount_is_kept_as_it_was_typed()
    {
        using var salon = await TestSalon.OpenAsync();
        var sitting = Sitting(salon);
        Listed<Answer> given = [new("wet-1", [2]), new("wet-3", new Typed("3,2 \"mm\" = 1/8″"))];
        await InBook(salon, book => book.BeginAsync(TestSalon.Salon, sitting));

        foreach (var answer in given)
            await InBook(salon, book => book.AnswerAsync(TestSalon.Salon, sitting.Id, answer));

        Assert.Equal(given, (await FindAsync(salon, sitting.Id))!.Answers);
    }

    [Fact]
    public async Task An_amount_that_is_wiped_out_is_taken_back()
    {
        using var salon = await TestSalon.OpenAsync();
        var sitting = Sitting(salon);
        await InBook(salon, book => book.BeginAsync(TestSalon.Salon, sitting));
        await InBook(salon, book => book.AnswerAsync(TestSalon.Salon, sitting.Id, new("wet-3", new Typed("3 mm"))));

        await InBook(salon, book => book.AnswerAsync(TestSalon.Salon, sitting.Id, new("wet-3", new Typed(" "))));

        Assert.Empty((await FindAsync(salon, sitting.Id))!.Answers);
    }

    [Fact]
    public async Task Nobody_has_two_quizzes_of_one_edition_under_way()
    {
        using var salon = await TestSalon.OpenAsync();
        var first = Sitting(salon);
        var second = Sitting(salon) with { Seed = 8 };

        Assert.Equal(first.Id, await InBook(salon, book => book.BeginAsync(TestSalon.Salon, first)));
        Assert.Equal(first.Id, await InBook(salon, book => book.BeginAsync(TestSalon.Salon, second)));

        Assert.Equal([first], await UnderWayAsync(salon, TestSalon.Pim));
    }

    [Fact]
    public async Task A_senior_who_goes_on_with_it_stands_in_it_from_then_on()
    {
        using var salon = await TestSalon.OpenAsync();
        var alone = Sitting(salon);
        var readOut = Sitting(salon) with { ReadOutBy = TestSalon.Rosa };

        await InBook(salon, book => book.BeginAsync(TestSalon.Salon, alone));
        await InBook(salon, book => book.BeginAsync(TestSalon.Salon, readOut));
        await InBook(salon, book => book.BeginAsync(TestSalon.Salon, Sitting(salon)));

        Sitting[] now = [alone with { ReadOutBy = TestSalon.Rosa }];
        Assert.Equal(now, await UnderWayAsync(salon, TestSalon.Pim));
        Assert.Equal(now, await UnderWayAsync(salon, TestSalon.Rosa));
    }

    [Theory]
    [InlineData("another edition", false)]
    [InlineData("the edition", true)] // a refresher where the whole quiz was under way
    public async Task A_quiz_of_another_edition_or_kind_takes_its_place(string edition, bool isRefresher)
    {
        using var salon = await TestSalon.OpenAsync();
        await InBook(salon, book => book.BeginAsync(TestSalon.Salon, Sitting(salon)));
        var next = Sitting(salon) with { ContentHash = edition, IsRefresher = isRefresher };

        Assert.Equal(next.Id, await InBook(salon, book => book.BeginAsync(TestSalon.Salon, next)));

        Assert.Equal([next], await UnderWayAsync(salon, TestSalon.Pim));
    }

    [Fact]
    public async Task What_was_handed_in_reads_back_as_the_fact_and_is_under_way_no_longer()
    {
        using var salon = await TestSalon.OpenAsync();
        var sitting = Sitting(salon);
        await InBook(salon, book => book.BeginAsync(TestSalon.Salon, sitting));
        var other = await HandInAsync(salon, Sitting(salon));
        var fact = await HandInAsync(salon, sitting);

        Assert.Null(await FindAsync(salon, sitting.Id));
        Assert.False(await InBook(salon, book => book.AnswerAsync(TestSalon.Salon, sitting.Id, new("wet-1", [0]))));
        Assert.Equal(fact, await InBook(salon, book => book.HandedInAsync(TestSalon.Salon, sitting.Id, Stop)));
        Assert.Equal(other, await InBook(salon, book => book.HandedInAsync(TestSalon.Salon, other.Attempt, Stop)));
        Assert.Equal(sitting.Id, await InBook(salon, book => book.BeginAsync(TestSalon.Salon, sitting)));
        Assert.Empty(await UnderWayAsync(salon, TestSalon.Pim));
    }

    [Fact]
    public async Task Of_each_person_the_first_whole_quiz_measures_a_module_and_no_refresher()
    {
        using var salon = await TestSalon.OpenAsync();
        var first = await HandInAsync(salon, Sitting(salon), minutes: 9);
        var second = await HandInAsync(salon, Sitting(salon), minutes: 20);
        var refresher = await HandInAsync(salon, Sitting(salon) with { IsRefresher = true }, minutes: 30);
        var rosas = await HandInAsync(salon, Sitting(salon) with { Person = TestSalon.Rosa }, minutes: 5, picks: 1);
        var name = Module.Name;

        Assert.Equal([rosas, first], await InBook(salon, book => book.FirstTriesAsync(TestSalon.Salon, name, Stop)));
        Assert.Equal(
            [KeyValuePair.Create(name, new FirstTries(People: 2, Passed: 1))],
            await InBook(salon, book => book.FirstTriesAsync(TestSalon.Salon, Stop))
        );
        Assert.Equal(
            [first, second, refresher],
            await InBook(salon, book => book.AttemptsAsync(TestSalon.Salon, TestSalon.Pim, name, Stop))
        );
        Assert.Empty(await InBook(salon, book => book.AttemptsAsync(TestSalon.Salon, TestSalon.Pim, new("dry-dogs"), Stop)));
        Assert.Empty(await InBook(salon, book => book.FirstTriesAsync(Elsewhere, name, Stop)));
        Assert.Empty(await InBook(salon, book => book.FirstTriesAsync(Elsewhere, Stop)));
    }

    [Fact]
    public async Task Attempts_from_before_they_knew_their_entry_learn_it_when_the_tables_are_brought_up_to_date()
    {
        using var salon = await TestSalon.OpenAsync();
        var first = await HandInAsync(salon, Sitting(salon), minutes: 9);
        // Recorded in the same moment: only the entry's own words tell them apart.
        var other = await HandInAsync(salon, Sitting(salon), minutes: 9);

        await salon.InDbAsync(async db =>
        {
            await db.GetService<IMigrator>().MigrateAsync("Judgings", Stop);
            await db.GetService<IMigrator>().MigrateAsync(cancellationToken: Stop);
            return 0;
        });

        foreach (var fact in (AttemptHandedIn[])[first, other])
            Assert.Equal(fact, await InBook(salon, book => book.HandedInAsync(TestSalon.Salon, fact.Attempt, Stop)));
    }

    [Fact]
    public async Task A_quiz_that_is_forgotten_is_gone()
    {
        using var salon = await TestSalon.OpenAsync();
        var sitting = Sitting(salon);
        await InBook(salon, book => book.BeginAsync(TestSalon.Salon, sitting));

        await InBook(salon, book => EndAsync(book, sitting.Id));

        Assert.Null(await FindAsync(salon, sitting.Id));
    }

    [Fact]
    public async Task Another_salon_finds_none_of_it()
    {
        using var salon = await TestSalon.OpenAsync();
        var sitting = Sitting(salon);
        var handedIn = await HandInAsync(salon, Sitting(salon));
        await InBook(salon, book => book.BeginAsync(TestSalon.Salon, sitting));

        Assert.Null(await InBook(salon, book => book.FindAsync(Elsewhere, sitting.Id, Stop)));
        Assert.Null(await InBook(salon, book => book.HandedInAsync(Elsewhere, handedIn.Attempt, Stop)));
        Assert.False(await InBook(salon, book => book.AnswerAsync(Elsewhere, sitting.Id, new("wet-1", [0]))));
        Assert.Empty(await InBook(salon, book => book.UnderWayAsync(Elsewhere, TestSalon.Pim, Stop)));
    }

    private static Sitting Sitting(TestSalon salon) =>
        new(
            new(salon.NewId()),
            TestSalon.Pim,
            new("wet-dogs"),
            "the edition",
            IsRefresher: false,
            Seed: 7,
            Noon,
            ReadOutBy: null
        );

    private static async Task<AttemptHandedIn> HandInAsync(TestSalon salon, Sitting sitting, int minutes = 9, int picks = 0)
    {
        var handingIn = sitting.HandIn(Module, [new("wet-1", [picks])], Noon.AddMinutes(minutes));
        await salon.KeepAsync(handingIn, sitting.Person, Noon.AddMinutes(minutes));
        return Assert.IsType<AttemptHandedIn>(Assert.Single(Assert.IsType<Granted>(handingIn).Facts));
    }

    private static Module Module { get; } =
        new()
        {
            Name = new("wet-dogs"),
            Title = "Wet dogs",
            Summary = "Dry them.",
            Minutes = 3,
            Edition = 1,
            SafetyCriticalSince = 1,
            Hash = "the edition",
            Opens = [],
            Aims = [],
            Sources = [],
            ReviewedOn = new(2026, 1, 1),
            ReviewDueOn = new(2027, 1, 1),
            RefresherDays = 90,
            Questions =
            [
                new("wet-1", "Wet?", "dry", IsMustKnow: true, new Choice([new("Dry it", true), new("Leave it", false)]), "So."),
            ],
        };

    private static async Task<int> EndAsync(QuizBook book, AttemptId attempt)
    {
        await book.EndAsync(TestSalon.Salon, attempt);
        return 1;
    }

    private static Task<UnderWay?> FindAsync(TestSalon salon, AttemptId attempt) =>
        InBook(salon, book => book.FindAsync(TestSalon.Salon, attempt, Stop));

    private static async Task<IEnumerable<Sitting>> UnderWayAsync(TestSalon salon, PersonId person) =>
        (await InBook(salon, book => book.UnderWayAsync(TestSalon.Salon, person, Stop))).Select(one => one.Sitting);

    private static Task<T> InBook<T>(TestSalon salon, Func<QuizBook, Task<T>> work) =>
        salon.InDbAsync(db => work(new QuizBook(db)));
}
