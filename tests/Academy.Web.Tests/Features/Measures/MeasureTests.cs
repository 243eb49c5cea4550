using System.Globalization;
using System.Net;
using Academy.Competence;
using Academy.Competence.Facts;
using Academy.Competence.People;
using Academy.Competence.Quizzes;
using Academy.Competence.Quizzes.Measuring;
using Academy.Modules;
using Academy.Web.Tests.Hosting;
using AngleSharp.Dom;
using Microsoft.Extensions.DependencyInjection;

namespace Academy.Web.Tests.Features.Measures;

/// <summary>
/// What the answers say about a quiz. The figures themselves are checked against published sets in
/// Academy.Competence.Tests/Quizzes/Measuring; here, that the page shows those and keeps back what few answers cannot say.
/// </summary>
public sealed class MeasureTests
{
    private const string Blades = "blades-and-scissors";
    private const string Page = $"/measures/{Blades}";

    [Fact]
    public async Task Before_anybody_took_it_every_question_is_listed_and_the_numbers_are_explained_with_an_invented_quiz()
    {
        using var modules = new TestModules().WithOptionsOnly(Blades);
        await using var portal = new PortalHost().With("Modules:Folder", modules.Root);
        var cast = await portal.OpenSalonAsync();
        using var ines = await portal.AsAsync(cast, cast.Owner);
        var module = ModuleOf(portal);

        var list = await ines.GetAsync("/measures");
        Assert.Equal("Nobody has taken a quiz yet", list.Heading);
        var page = await ines.GetAsync(Page);
        Assert.Equal("Nobody has taken this quiz yet", page.Heading);
        Assert.Equal(module.Questions.Count, page.Page.QuerySelectorAll("table.measures tbody tr").Length);
        Assert.Empty(page.Page.QuerySelectorAll("main svg.range"));
        var explained = await ines.GetAsync($"{Page}/explained");
        Assert.Contains("the example is invented: five people, four questions.", explained.Words, StringComparison.Ordinal);
        Assert.Equal(
            ["share", "fit", "ends", "alpha", "without", "error", "choices"],
            explained.Page.QuerySelectorAll("main h2").Select(part => part.Id)
        );
    }

    [Theory]
    [InlineData(9, 0, false)] // counts and nothing else
    [InlineData(10, 10, false)] // shares with their range
    [InlineData(30, 30, true)] // how questions hang together
    public async Task Few_answers_have_counts_more_have_a_share_and_thirty_have_a_fit(int people, int ranges, bool fits)
    {
        using var modules = new TestModules().WithOptionsOnly(Blades);
        await using var portal = new PortalHost().With("Modules:Folder", modules.Root);
        var cast = await portal.OpenSalonAsync();
        var sheets = await TakenByAsync(portal, cast, people);
        var measure = QuizMeasure.Of(ModuleOf(portal).Questions.Select(Asked), sheets);
        using var ines = await portal.AsAsync(cast, cast.Owner);

        var page = await ines.GetAsync(Page);

        Assert.Equal($"{people} first tries at this quiz", page.Heading);
        var expected = measure.Questions.Count(question => question.Asked >= QuizMeasure.CountsOnlyBelow);
        Assert.Equal(expected, page.Page.QuerySelectorAll("table.measures svg.range").Length);
        Assert.Equal(ranges > 0, expected > 0);
        Assert.Equal(
            measure.Questions.Select(question => question.Fit is { } fit ? Two(fit) : "–"),
            page.Page.QuerySelectorAll("td[data-l='Fits the rest']").Select(cell => cell.TextContent)
        );
        Assert.Equal(fits, measure.Reliability is not null);
        if (measure.Reliability is { } found)
            Assert.Equal(Two(found.Alpha), page.Page.QuerySelector(".figures dd b")!.TextContent);
        else
            Assert.Equal("from 30 people on", page.Page.QuerySelector(".figures dd b")!.TextContent);
    }

    [Fact]
    public async Task A_wrong_answer_that_draws_the_best_is_said_in_plain_words_on_both_pages()
    {
        using var modules = new TestModules().WithOptionsOnly(Blades);
        await using var portal = new PortalHost().With("Modules:Folder", modules.Root);
        var cast = await portal.OpenSalonAsync();
        // Whoever knows most gets the first question wrong: as if its key were.
        var sheets = await TakenByAsync(portal, cast, 45, turned: true);
        var module = ModuleOf(portal);
        var measure = QuizMeasure.Of(module.Questions.Select(Asked), sheets);
        Assert.Contains(QuestionDoubt.CheckTheKey, measure.Questions[0].Doubts);
        using var ines = await portal.AsAsync(cast, cast.Owner);

        var page = await ines.GetAsync(Page);
        Assert.Contains("Those who know the rest get this one wrong more often.", page.Words, StringComparison.Ordinal);
        var question = await ines.GetAsync($"{Page}/questions/{module.Questions[0].Id}");

        Assert.Equal(module.Questions[0].Text, question.Heading);
        Assert.Contains("those who know most: check the key", question.Words, StringComparison.Ordinal);
        var rows = question.Page.QuerySelectorAll("table.measures tbody tr");
        Assert.Equal(
            measure.Questions[0].Choices.Select(choice => Invariant($"{choice.Chosen} of {measure.Questions[0].Asked}")),
            rows.Select(row => row.QuerySelector("td[data-l=Chosen]")!.TextContent.Trim())
        );
        Assert.Equal(
            measure.Questions[0].Choices.Select(choice => choice.Pull is { } pull ? Two(pull) : "–"),
            rows.Select(row => row.QuerySelector("td[data-l=Pull]")!.TextContent.Trim())
        );
    }

    [Fact]
    public async Task The_explanation_reckons_with_the_salon_s_own_answers_and_comes_to_the_figures_of_the_page()
    {
        using var modules = new TestModules().WithOptionsOnly(Blades);
        await using var portal = new PortalHost().With("Modules:Folder", modules.Root);
        var cast = await portal.OpenSalonAsync();
        var sheets = await TakenByAsync(portal, cast, 30);
        using var ines = await portal.AsAsync(cast, cast.Owner);

        var page = await ines.GetAsync($"{Page}/explained");

        Assert.Contains("as 30 people here took it first", page.Words, StringComparison.Ordinal);
        var alpha = page.Page.QuerySelector("section[aria-labelledby=alpha] .steps li:last-child")!.TextContent;
        Assert.EndsWith($"= {Two(Reliability.Of(sheets)!.Alpha)}.", alpha, StringComparison.Ordinal);
        var error = page.Page.QuerySelector("section[aria-labelledby=error] .steps li:last-child")!.TextContent;
        Assert.EndsWith($"= {Two(Reliability.Of(sheets)!.StandardError)} questions.", error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_pages_ask_the_database_as_often_for_one_person_as_for_thirty()
    {
        using var modules = new TestModules().WithOptionsOnly(Blades);
        await using var portal = new PortalHost().With("Modules:Folder", modules.Root);
        var cast = await portal.OpenSalonAsync();
        using var ines = await portal.AsAsync(cast, cast.Owner);
        await TakenByAsync(portal, cast, 1);
        await ines.GetAsync(Page);

        var one = await portal.Sql.OfAsync(() => ines.GetAsync(Page));
        await TakenByAsync(portal, cast, 29);
        await ines.GetAsync(Page);
        var thirty = await portal.Sql.OfAsync(() => ines.GetAsync(Page));

        Assert.Equal(one, thirty);
        Assert.InRange(thirty, 1, 7);
    }

    [Fact]
    public async Task Only_the_owner_looks_and_what_is_not_there_is_not_found()
    {
        using var modules = new TestModules().WithOptionsOnly(Blades);
        await using var portal = new PortalHost().With("Modules:Folder", modules.Root);
        var cast = await portal.OpenSalonAsync();
        using var rosa = await portal.AsAsync(cast, cast.Senior);
        using var ines = await portal.AsAsync(cast, cast.Owner);

        foreach (var page in (string[])["/measures", Page, $"{Page}/explained", $"{Page}/questions/towel-03"])
            Assert.Equal(HttpStatusCode.Forbidden, (await rosa.GetAsync(page)).Status);
        foreach (var page in (string[])["/measures/nothing", "/measures/nothing/explained", $"{Page}/questions/nothing"])
            Assert.Equal(HttpStatusCode.NotFound, (await ines.GetAsync(page)).Status);
    }

    /// <summary>So many people take the quiz: the nth knows about n of them all, in an order that is always the same.</summary>
    private static async Task<IReadOnlyList<AnswerSheet>> TakenByAsync(
        PortalHost portal,
        Cast cast,
        int people,
        bool turned = false
    )
    {
        var module = ModuleOf(portal);
        List<AnswerSheet> sheets = [];
        for (var number = 1; number <= people; number++)
        {
            var person = new Person(new PersonId(portal.New()), Invariant($"Helper {number}"), Role.Junior, portal.Today);
            await portal.KeepAsync(cast.Salon, Staffing.Describe(person, before: null, cast.Owner, owners: 1), cast.Owner);
            var sitting = new Sitting(
                new AttemptId(portal.New()),
                person.Id,
                module.Name,
                module.Hash,
                IsRefresher: false,
                Seed: number,
                portal.Now,
                ReadOutBy: null,
                // The first question is asked of everybody, the others by turns.
                [.. module.Questions.Where((_, place) => place == 0 || (place + number) % 4 != 0).Select(one => one.Id).Take(20)]
            );
            var able = number / (double)people;
            var answers = sitting
                .Draw(module)
                .Select(
                    (question, place) =>
                        new Competence.Quizzes.Answer(question.Id, GivenOf(question, IsRight(number, place, able, turned)))
                )
                .ToList();
            var handedIn = sitting.HandIn(module, answers, portal.Now);
            await portal.KeepAsync(cast.Salon, handedIn, person);
            sheets.Add(Quizzing.Sheet(module, Assert.IsType<AttemptHandedIn>(Assert.Single(((Granted)handedIn).Facts))));
        }
        return sheets;
    }

    private static bool IsRight(int number, int place, double able, bool turned) =>
        place == 0 && turned ? able < .6 : (((number * 7) + (place * 11)) % 23 / 23.0) < .3 + (.6 * able);

    private static Given GivenOf(Question question, bool isRight) =>
        isRight ? question.Kind.Right
        : question.Kind is Choice choice ? new Picked([choice.Options.Index().First(option => !option.Item.IsRight).Index])
        : new Picked([]);

    private static MeasuredQuestion Asked(Question question) => new(question.Id, question.IsMustKnow, question.Kind.Choices);

    private static Module ModuleOf(PortalHost portal) => portal.Services.GetRequiredService<ModuleLibrary>().Find(Blades)!.Module;

    private static string Two(double number) => number.ToString("0.00", CultureInfo.InvariantCulture);

    private static string Invariant(FormattableString words) => words.ToString(CultureInfo.InvariantCulture);
}
