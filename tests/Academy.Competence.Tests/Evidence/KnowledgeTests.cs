using Academy.Competence.Evidence;
using Academy.Competence.Quizzes;
using static Academy.Competence.Evidence.ModuleState;
using static Academy.Competence.Tests.Cast.TestSalon;

namespace Academy.Competence.Tests.Evidence;

public class KnowledgeTests
{
    private static readonly ModuleName HeatStroke = new("heat-stroke");
    private static readonly ModuleName Blades = new("blades-and-scissors");

    // edition 3; the last safety-critical change came with edition 2
    private static readonly ModuleAsked Asked = new(
        HeatStroke,
        3,
        SafetyCriticalSince: 2,
        RefresherDays: null,
        RenewedEachSpring: false
    );
    private static readonly ModuleAsked WithRefreshers = Asked with { RefresherDays = 180 };
    private static readonly ModuleAsked EachSpring = Asked with { RenewedEachSpring = true };

    [Fact]
    public void A_module_never_passed_is_lacking_whatever_was_tried()
    {
        Assert.Equal(new ModuleFound(HeatStroke, ModuleState.NotPassed, null, null), Found(Asked));
        Assert.Equal(new ModuleFound(HeatStroke, ModuleState.NotPassed, null, null), Found(Asked, Failed("2026-06-01")));
    }

    // passed in edition      state
    [Theory]
    [InlineData(1, EditionTooOld)] // older than the last safety-critical one
    [InlineData(2, Current)]
    [InlineData(3, Current)]
    public void A_pass_counts_in_an_edition_no_older_than_the_last_safety_critical_one(int edition, ModuleState state) =>
        Assert.Equal(
            new ModuleFound(HeatStroke, state, Day("2026-01-10"), DueOn: null, AsksToCatchUp: state == EditionTooOld),
            Found(Asked, Passed("2026-01-10", edition))
        );

    // today is 15 June; the safety change of edition 2 is caught up with by that day
    [Theory]
    [InlineData("2026-06-14", EditionTooOld)]
    [InlineData("2026-06-15", Current)] // the day itself still counts
    [InlineData("2026-06-30", Current)]
    public void An_older_pass_counts_until_the_day_to_catch_up_by(string by, ModuleState state)
    {
        var asked = Asked with { Changes = [new(2, Day(by))] };

        Assert.Equal(
            new ModuleFound(HeatStroke, state, Day("2026-06-01"), Day(by), AsksToCatchUp: true),
            Found(asked, Passed("2026-06-01", edition: 1))
        );
    }

    [Fact]
    public void Of_two_safety_changes_the_earlier_day_holds_for_whoever_passed_before_both()
    {
        var asked = Asked with
        {
            Edition = 3,
            SafetyCriticalSince = 3,
            Changes = [new(2, Day("2026-06-20")), new(3, Day("2026-07-01"))],
        };

        Assert.Equal(Day("2026-06-20"), Found(asked, Passed("2026-06-01", edition: 1)).DueOn);
        Assert.Equal(Day("2026-07-01"), Found(asked, Passed("2026-06-01", edition: 2)).DueOn);
        Assert.Null(Found(asked, Passed("2026-06-01", edition: 3)).DueOn);
    }

    [Fact]
    public void A_safety_change_without_a_day_ends_older_passes_at_once() =>
        Assert.Equal(
            EditionTooOld,
            Found(Asked with { Changes = [new(2, CatchUpBy: null)] }, Passed("2026-06-01", edition: 1)).State
        );

    // a pass that has run out by itself is passed whole again: four questions do not make up for a year
    [Theory]
    [InlineData("2026-06-01", true)]
    [InlineData("2026-05-19", true)] // its first refresher is overdue from tomorrow on
    [InlineData("2026-05-18", false)] // overdue today, 28 days on
    [InlineData("2026-05-01", false)]
    [InlineData("2024-06-01", false)]
    public void Only_a_pass_that_lacks_nothing_else_is_caught_up_with(string passedOn, bool isCaughtUpWith)
    {
        var asked = WithRefreshers with { Changes = [new(2, Day("2026-06-01"))] };
        var found = Found(asked, Passed(passedOn, edition: 1));

        Assert.Equal((EditionTooOld, isCaughtUpWith), (found.State, found.AsksToCatchUp));
        Assert.Equal(isCaughtUpWith ? QuizKind.CatchUp : QuizKind.Whole, Studying.NextQuiz(found, asked, Today, House));
    }

    [Fact]
    public void Seeing_an_edition_without_a_safety_change_keeps_the_days_of_the_changes_before()
    {
        var second = Asked with { Edition = 2, SafetyCriticalSince = 2 };
        var first = Asked with { Edition = 1, SafetyCriticalSince = 1 };
        var seen = first.Then(second, Day("2026-06-20")).Then(Asked, catchUpBy: null);

        Assert.Equal(Asked with { Changes = [new(2, Day("2026-06-20"))] }, seen);
    }

    [Fact]
    public void A_quiz_of_an_old_edition_handed_in_late_takes_nothing_away() =>
        Assert.Equal(
            new ModuleFound(HeatStroke, Current, Day("2026-01-10"), DueOn: null),
            Found(Asked, Passed("2026-01-10", edition: 3), Passed("2026-01-11", edition: 1))
        );

    [Fact]
    public void A_refresher_passes_no_newer_edition_for_it_asks_only_eight_questions() =>
        Assert.Equal(EditionTooOld, Found(Asked, Passed("2026-01-10", edition: 1), Refreshed("2026-02-01")).State);

    [Fact]
    public void A_refresher_alone_is_no_pass() =>
        Assert.Equal(ModuleState.NotPassed, Found(Asked, Refreshed("2026-02-01")).State);

    [Fact]
    public void A_module_that_is_not_in_the_library_can_have_been_passed_by_nobody() =>
        Assert.Equal(
            [new ModuleFound(HeatStroke, NotInLibrary, null, null)],
            Knowledge.Of([HeatStroke], library: [], [Passed("2026-01-10")], Today, London, House)
        );

    // first pass on 1 May: the refresher is due 28 days later
    [Theory]
    [InlineData("2026-05-28", Current)]
    [InlineData("2026-05-29", RefresherOverdue)] // day 28
    public void A_refresher_is_overdue_from_the_day_it_is_due(string asked, ModuleState state) =>
        Assert.Equal(
            new ModuleFound(HeatStroke, state, Day("2026-05-01"), DueOn: Day("2026-05-28")),
            FoundOn(asked, WithRefreshers, Passed("2026-05-01"))
        );

    [Fact]
    public void A_passed_refresher_keeps_the_pass_alive() =>
        Assert.Equal(
            new ModuleFound(HeatStroke, Current, Day("2026-05-01"), DueOn: Day("2026-05-28").AddDays(56)),
            FoundOn("2026-06-15", WithRefreshers, Passed("2026-05-01"), Refreshed("2026-05-29"))
        );

    [Fact]
    public void Two_failed_refreshers_in_a_row_pause_what_rests_on_the_module_until_the_next_pass()
    {
        QuizTaken[] failedTwice = [Passed("2026-05-01"), RefresherFailedOn("2026-05-20"), RefresherFailedOn("2026-05-20")];

        Assert.Equal(Current, FoundOn("2026-05-21", WithRefreshers, failedTwice[..2]).State);
        Assert.Equal(RefresherFailed, FoundOn("2026-05-21", WithRefreshers, failedTwice).State);
        Assert.Equal(Current, FoundOn("2026-05-22", WithRefreshers, [.. failedTwice, Refreshed("2026-05-22")]).State);
    }

    [Fact]
    public void One_failed_refresher_pauses_nothing_and_leaves_one_more_try_before_it_does()
    {
        QuizTaken[] failed = [Passed("2026-05-01"), RefresherFailedOn("2026-05-20")];

        Assert.False(FoundOn("2026-05-19", WithRefreshers, failed[..1]).IsLastTry);
        Assert.True(FoundOn("2026-05-21", WithRefreshers, failed).IsLastTry);
        Assert.False(FoundOn("2026-05-21", WithRefreshers, [.. failed, Refreshed("2026-05-21")]).IsLastTry);
        // Paused already, or overdue: there is nothing left to warn of.
        Assert.False(FoundOn("2026-05-21", WithRefreshers, [.. failed, RefresherFailedOn("2026-05-21")]).IsLastTry);
        Assert.False(FoundOn("2026-05-29", WithRefreshers, failed).IsLastTry);
    }

    [Fact]
    public void A_failed_whole_quiz_before_the_first_pass_is_no_failed_refresher() =>
        Assert.False(
            FoundOn(
                "2026-05-02",
                WithRefreshers,
                Taken("2026-04-30", passed: false, refresher: false),
                Passed("2026-05-01")
            ).IsLastTry
        );

    [Fact]
    public void Where_a_module_asks_for_no_refreshers_a_pass_does_not_run_out() =>
        Assert.Equal(Current, FoundOn("2036-01-01", Asked, Passed("2026-01-10")).State);

    [Fact]
    public void No_pass_counts_for_more_than_a_year_without_another_however_long_the_gaps_of_the_module()
    {
        var onceInAWhile = Asked with { RefresherDays = 400 };
        QuizTaken[] kept =
        [
            Passed("2024-01-01"),
            Refreshed("2024-01-29"),
            Refreshed("2024-03-25"),
            Refreshed("2024-07-15"),
            Refreshed("2025-02-24"),
        ];

        Assert.Equal(Day("2026-02-23"), FoundOn("2026-02-23", onceInAWhile, kept).DueOn);
        Assert.Equal(Current, FoundOn("2026-02-23", onceInAWhile, kept).State); // day 364
        Assert.Equal(RefresherOverdue, FoundOn("2026-02-24", onceInAWhile, kept).State);
    }

    // passed on      last day on which that counts: renewing begins in March and is due by the first of May
    [Theory]
    [InlineData("2026-02-28", "2026-04-30")] // too early for this year's season
    [InlineData("2026-03-01", "2027-04-30")] // renewed for this year
    [InlineData("2026-04-30", "2027-04-30")]
    [InlineData("2026-05-01", "2027-04-30")]
    [InlineData("2026-12-31", "2027-04-30")]
    [InlineData("2027-01-01", "2027-04-30")]
    public void A_module_of_the_season_is_renewed_each_spring(string passed, string last)
    {
        Assert.Equal(new ModuleFound(HeatStroke, Current, Day(passed), Day(last)), FoundOn(last, EachSpring, Passed(passed)));
        Assert.Equal(
            NotRenewed,
            Knowledge.Of([HeatStroke], [EachSpring], [Passed(passed)], Day(last).AddDays(1), London, House)[0].State
        );
    }

    // passed on      from month, by month, last day
    [Theory]
    [InlineData("2026-09-30", 10, 11, "2026-10-31")] // a southern spring
    [InlineData("2026-10-01", 10, 11, "2027-10-31")]
    [InlineData("2026-11-30", 12, 1, "2026-12-31")] // renewing over the new year
    [InlineData("2026-12-01", 12, 1, "2027-12-31")]
    [InlineData("2027-01-15", 12, 1, "2027-12-31")]
    public void Renewing_follows_the_salons_own_season(string passed, int from, int by, string last)
    {
        var house = House with { RenewFromMonth = from, RenewByMonth = by };

        Assert.Equal(Day(last), Knowledge.Of([HeatStroke], [EachSpring], [Passed(passed)], Day(passed), London, house)[0].DueOn);
    }

    [Fact]
    public void A_refresher_renews_nothing_for_the_season() =>
        Assert.Equal(NotRenewed, FoundOn("2026-05-01", EachSpring, Passed("2026-01-10"), Refreshed("2026-04-01")).State);

    [Fact]
    public void The_earlier_of_refresher_and_renewal_is_the_last_day() =>
        Assert.Equal(
            Day("2026-04-10").AddDays(27),
            FoundOn("2026-04-20", EachSpring with { RefresherDays = 90 }, Passed("2026-04-10")).DueOn
        );

    [Fact]
    public void A_quiz_counts_on_the_salons_local_day() =>
        Assert.Equal(
            Day("2026-06-14"),
            Found(Asked, new QuizTaken(HeatStroke, 3, At("2026-06-13 23:30Z"), HasPassed: true, IsRefresher: false)).PassedOn
        );

    [Fact]
    public void Modules_are_found_in_the_order_in_which_a_skill_asks_for_them() =>
        Assert.Equal(
            [new ModuleFound(Blades, NotInLibrary, null, null), new ModuleFound(HeatStroke, Current, Day("2026-01-10"), null)],
            Knowledge.Of([Blades, HeatStroke], [Asked], [Passed("2026-01-10")], Today, London, House)
        );

    private static QuizTaken Passed(string day, int edition = 3) =>
        Taken(day, passed: true, refresher: false) with
        {
            Edition = edition,
        };

    private static QuizTaken Failed(string day) => Taken(day, passed: false, refresher: false);

    private static QuizTaken Refreshed(string day) => Taken(day, passed: true, refresher: true);

    private static QuizTaken RefresherFailedOn(string day) => Taken(day, passed: false, refresher: true);

    private static QuizTaken Taken(string day, bool passed, bool refresher) =>
        new(HeatStroke, 3, At($"{day} 10:00Z"), passed, refresher);

    private static ModuleFound Found(ModuleAsked asked, params QuizTaken[] taken) =>
        Assert.Single(Knowledge.Of([HeatStroke], [asked], taken, Today, London, House));

    private static ModuleFound FoundOn(string day, ModuleAsked asked, params QuizTaken[] taken) =>
        Assert.Single(Knowledge.Of([HeatStroke], [asked], taken, Day(day), London, House));
}
