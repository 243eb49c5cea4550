using Academy.Competence.Evidence;
using Academy.Competence.Facts;
using Academy.Competence.People;
using Academy.Competence.Quizzes;
using Academy.Competence.Salons;
using static Academy.Competence.Tests.Cast.TestSalon;

namespace Academy.Competence.Tests.Quizzes;

public class PublishingTests
{
    private static readonly Person Writer = Rosa with { WritesModules = true };
    private static readonly Module First = TestModule.Drying();
    private static readonly Module Second = First with { Edition = 2, SafetyCriticalSince = 1, Hash = new('2', 64) };
    private static readonly Module Safer = Second with { SafetyCriticalSince = 2 };
    private static readonly ModuleAsked Seen = new(First.Name, 1, 1, 90, RenewedEachSpring: false);
    private static readonly SalonBook Alone = new() { People = [Olga, Dora, Pim], Library = [Seen] };
    private static readonly SalonBook Two = Alone with { People = [Olga, Writer, Dora, Pim] };
    private static readonly Words Change = new("Hold it two hands away.");

    [Fact]
    public void A_first_edition_needs_neither_words_on_what_changed_nor_a_day() =>
        Assert.Equal(
            [
                new ModulePublished(First.Name, 1, First.Hash, Olga.Id, ReviewedBy: null, IsSafetyCritical: true, Words.None),
                new ModuleEditionSeen(First.Name, 1, 1, 90, RenewedEachSpring: false, First.Hash, CatchUpBy: null),
            ],
            Facts(Offer(First, Olga) with { Change = Words.None }, Alone with { Library = [] })
        );

    [Fact]
    public void A_safety_change_that_a_second_person_read_is_published_with_its_day() =>
        Assert.Equal(
            [
                new ModulePublished(First.Name, 2, Safer.Hash, Writer.Id, Olga.Id, IsSafetyCritical: true, Change),
                new ModuleEditionSeen(First.Name, 2, 2, 90, RenewedEachSpring: false, Safer.Hash, Today.AddDays(14)),
            ],
            Facts(Offer(Safer, Writer) with { ReviewedBy = Olga, CatchUpBy = Today.AddDays(14) }, Two)
        );

    [Fact]
    public void A_change_of_words_alone_asks_nobody_to_catch_up() =>
        Assert.Equal(
            [null],
            Facts(Offer(Second, Olga) with { CatchUpBy = Today.AddDays(14) }, Alone)
                .OfType<ModuleEditionSeen>()
                .Select(seen => seen.CatchUpBy)
        );

    [Fact]
    public void Where_somebody_else_could_read_it_somebody_else_does()
    {
        Assert.Equal([new SecondReaderNeeded([Writer.Id])], Against(Offer(Second, Olga), Two));
        Assert.Equal([new SecondReaderNeeded([Olga.Id])], Against(Offer(Second, Writer), Two));
    }

    [Fact]
    public void Asking_for_it_to_be_read_needs_all_that_publishing_needs_but_the_reader()
    {
        Assert.Empty(Publishing.AgainstAsking(Offer(Second, Writer), Two, Today));
        Assert.Equal(
            [new ModuleToPutRight(2), new WordsNeeded(WordsFor.Change)],
            Publishing.AgainstAsking(Offer(Second, Writer) with { Findings = 2, Change = Words.None }, Two, Today)
        );
    }

    [Fact]
    public void Whoever_wrote_it_is_no_second_reader() =>
        Assert.Equal([new ReviewsOwnModule()], Against(Offer(Second, Olga) with { ReviewedBy = Olga }, Two));

    [Theory]
    [InlineData(0, false)] // today is too late to hear of it
    [InlineData(1, true)]
    [InlineData(60, true)]
    [InlineData(61, false)]
    public void A_safety_change_is_caught_up_with_within_sixty_days(int days, bool isGranted)
    {
        var offered = Offer(Safer, Olga) with { CatchUpBy = Today.AddDays(days) };

        Assert.Equal(
            isGranted ? (Reason[])[] : [new CatchUpDayNeeded(Today.AddDays(1), Today.AddDays(60))],
            Against(offered, Alone)
        );
    }

    [Fact]
    public void All_reasons_against_come_at_once()
    {
        var offered = Offer(Safer with { Edition = 4, SafetyCriticalSince = 4 }, Dora) with { Change = Words.None, Findings = 3 };

        Assert.Equal(
            [
                new MayNotWriteModules(),
                new SecondReaderNeeded([Olga.Id]),
                new NotTheNextEdition(4, 2),
                new ModuleToPutRight(3),
                new WordsNeeded(WordsFor.Change),
                new CatchUpDayNeeded(Today.AddDays(1), Today.AddDays(60)),
            ],
            Against(offered, Alone)
        );
    }

    [Fact]
    public void A_published_edition_is_the_salon_s_own_and_the_one_that_is_asked()
    {
        var facts = Facts(Offer(Safer, Olga) with { CatchUpBy = Today.AddDays(7) }, Alone);
        var book = facts.Aggregate(Alone, (so, fact) => so.After(fact, default));

        Assert.Equal([new OwnModule(First.Name, 2, Safer.Hash)], book.OwnModules);
        Assert.Equal([Seen with { Edition = 2, SafetyCriticalSince = 2, Changes = [new(2, Today.AddDays(7))] }], book.Library);
        Assert.Equal(3, Publishing.NextEdition(book, First.Name));
    }

    [Fact]
    public void A_senior_writes_only_where_the_owner_lets_her_and_a_junior_never()
    {
        Assert.True(Olga.MayWriteModules);
        Assert.True(Writer.MayWriteModules);
        Assert.False(Rosa.MayWriteModules);
        Assert.False((Pim with { WritesModules = true }).MayWriteModules);
    }

    private static EditionOffered Offer(Module module, Person by) =>
        new(module, Findings: 0, by, ReviewedBy: null, Change, CatchUpBy: null);

    private static Listed<Fact> Facts(EditionOffered offered, SalonBook book) =>
        Assert.IsType<Granted>(Publishing.Publish(offered, book, Today)).Facts;

    private static Listed<Reason> Against(EditionOffered offered, SalonBook book) =>
        Publishing.Publish(offered, book, Today) is Refused refused ? refused.Reasons : [];
}
