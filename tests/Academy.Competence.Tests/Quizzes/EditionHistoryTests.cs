using Academy.Competence.Facts;
using Academy.Competence.Quizzes;
using static Academy.Competence.Tests.Cast.TestSalon;

namespace Academy.Competence.Tests.Quizzes;

public class EditionHistoryTests
{
    private static readonly ModuleName Blades = new("blades");
    private static readonly DateTimeOffset Spring = new(2026, 3, 1, 9, 0, 0, TimeSpan.Zero);
    private static readonly ModuleEditionSeen First = Seen(1, since: 1, "library-1");
    private static readonly ModuleEditionSeen Own = Seen(2, since: 2, "own-2");
    private static readonly ModulePublished Published = new(
        Blades,
        2,
        "own-2",
        Olga.Id,
        Rosa.Id,
        IsSafetyCritical: true,
        new("Why.")
    );

    [Fact]
    public void An_edition_of_ones_own_follows_the_librarys_with_who_wrote_it()
    {
        var history = Of(First, Seen(7, since: 7, "other") with { Module = new("other") }, Published, Own);

        Assert.Equal(
            [
                new EditionInForce(First, Published: null, Spring, IsSafetyChange: false, "library-1"),
                new EditionInForce(Own, Published, Spring.AddDays(3), IsSafetyChange: true, "library-1"),
            ],
            history.Editions
        );
        Assert.Equal(Own, history.InForce!.Seen);
        Assert.Equal(First, history.Find("library-1")!.Seen);
        Assert.Null(history.Find("other"));
    }

    [Fact]
    public void The_library_has_changed_since_where_its_edition_is_not_the_one_known_then()
    {
        var history = Of(First, Published, Own);

        Assert.False(history.HasLibraryChanged("library-1"));
        Assert.True(history.HasLibraryChanged("library-2"));
        Assert.False(history.HasLibraryChanged(hash: null));
        // whoever took the newer one is not behind it
        Assert.False(Of(First, Published with { LibraryHash = "library-2" }, Own).HasLibraryChanged("library-2"));
    }

    [Fact]
    public void The_next_edition_of_ones_own_rests_on_what_was_known_before_where_nothing_else_is_said() =>
        Assert.Equal(
            "library-2",
            Of(
                First,
                Published with
                {
                    LibraryHash = "library-2",
                },
                Own,
                Published with
                {
                    Edition = 3,
                    ContentHash = "own-3",
                },
                Seen(3, since: 2, "own-3")
            ).InForce!.LibraryHash
        );

    [Fact]
    public void A_salon_that_studies_the_librarys_edition_is_never_behind_it()
    {
        Assert.False(Of(First).HasLibraryChanged("library-2"));
        Assert.Null(Of().InForce);
        Assert.False(Of().HasLibraryChanged("library-1"));
    }

    private static EditionHistory Of(params IEnumerable<Fact> facts) =>
        EditionHistory.Of(facts.Select((fact, day) => new Recorded(fact, By: null, Spring.AddDays(day), day + 1)), Blades);

    private static ModuleEditionSeen Seen(int edition, int since, string hash) =>
        new(Blades, edition, since, RefresherDays: 90, RenewedEachSpring: false, hash);
}
