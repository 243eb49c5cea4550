using Academy.Competence.Decisions;
using Academy.Competence.Evidence;
using Academy.Competence.Salons;
using Academy.Competence.Skills;
using Academy.Competence.Standings;
using Academy.Competence.Statistics;
using Academy.Competence.Thresholds;
using static Academy.Competence.Tests.Cast.PathWords;
using static Academy.Competence.Tests.Cast.TestSalon;

namespace Academy.Competence.Tests.Standings;

public class StandingTests
{
    private static readonly ModuleName Blades = new("blades-and-scissors");
    private static readonly ModuleFound Current = new(Blades, ModuleState.Current, Ago(100), DueOn: null);
    private static readonly ModuleFound NotPassed = new(Blades, ModuleState.NotPassed, PassedOn: null, DueOn: null);

    [Fact]
    public void Whoever_has_done_nothing_is_learning_and_is_told_all_that_lacks()
    {
        var standing = (Case() with { Modules = [NotPassed] }).On(Today);

        Assert.Equal(StandingKind.Learning, standing.Kind);
        Assert.Equal(
            [
                new ModuleLacking(Blades, ModuleState.NotPassed, PassedOn: null),
                new RowNotFull(0, 15),
                new TooFewBreeds(0, 3),
                new TooFewSeniors(0, 2),
                new TooFewRecentGrooms(0, 3, WithinDays: 120, LastOn: null),
            ],
            standing.Gaps
        );
    }

    [Fact]
    public void Whoever_meets_every_rule_is_ready_and_waits_for_the_owner()
    {
        var standing = (Case(FullRow(Today)) with { Modules = [Current] }).On(Today);

        Assert.Equal(StandingKind.Ready, standing.Kind);
        Assert.Equal([new NotDecided()], standing.Why);
        Assert.Empty(standing.Gaps);
    }

    [Fact]
    public void Every_rule_is_listed_with_what_it_asks_and_what_was_found()
    {
        var standing = (Case(Alone(Ago(1))) with { Modules = [Current] }).On(Today);

        Assert.Equal(
            [
                new KnowledgeFound([Current], DueUntil: null, FailuresPause: true),
                new PointsFound(Have: 15, Need: 15, RatedOnRow: 0, IsTalkDue: false),
                new BreadthFound(Breeds: 3, BreedsAsked: 3, Seniors: 2, SeniorsAsked: 2),
                new SafetyFound(LastCriticalOn: null, RatedSince: 15, IsFarEnough: true, OpenReviews: 0),
                new RecencyFound(Have: 10, Need: 3, WithinDays: 120, LastOn: Ago(1), Until: Ago(3).AddDays(119)),
                new DriftFound(Alarm: 0, WatchFrom: 8, CheckAgainFrom: 12, CheckAgainOn: null, WatchedYet: 0),
            ],
            standing.Findings
        );
    }

    [Fact]
    public void Nothing_becomes_alone_by_itself_only_the_owners_decision_makes_it()
    {
        Assert.Equal(StandingKind.Ready, StandingNow(FullRow(Ago(1), grooms: 60)).Kind);
        Assert.Equal((StandingKind.Alone, Today), KindAndDay(StandingNow([.. FullRow(Ago(1)), Cleared(Today)])));
    }

    [Fact]
    public void Points_and_breadth_are_asked_at_the_decision_and_not_every_day_after()
    {
        var oneSlip = Enumerable
            .Range(0, 20)
            .Select(n => Inspected(Ago(20 - n), n == 19 ? Verdict.Unsuitable : Verdict.Suitable));
        var standing = StandingNow([.. Alone(Ago(30)), .. oneSlip]);

        Assert.Equal(StandingKind.Alone, standing.Kind);
        Assert.Equal([new RowNotFull(11, 15), new TooFewBreeds(1, 3), new TooFewSeniors(1, 2)], standing.Gaps);
    }

    // The number of seniors asked is the smaller of 2 and the number of other people entitled to judge the skill.
    [Theory]
    [InlineData(0, 0)]
    [InlineData(1, 1)]
    [InlineData(2, 2)]
    [InlineData(5, 2)]
    public void Seniors_are_asked_only_as_far_as_there_are_any(int others, int asked) =>
        Assert.Equal(
            asked,
            (Case() with { OthersEntitled = others }).On(Today).Findings.OfType<BreadthFound>().Single().SeniorsAsked
        );

    [Fact]
    public void A_clearance_lapses_when_its_recency_fails()
    {
        Assert.Equal(StandingKind.Alone, Case(Alone(Ago(117))).On(Today).Kind);
        Assert.Equal(StandingKind.Lapsed, Case(Alone(Ago(118))).On(Today).Kind);
    }

    [Fact]
    public void A_clearance_lapses_while_a_module_is_overdue_and_comes_back_with_it()
    {
        var overdue = new ModuleFound(Blades, ModuleState.RefresherOverdue, Ago(100), Ago(1));
        var asked = Case(Alone(Ago(1)));
        var lapsed = (asked with { Modules = [overdue] }).On(Today);

        Assert.Equal((StandingKind.Lapsed, (DateOnly?)null), (lapsed.Kind, lapsed.Since));
        Assert.Equal([new ModuleLacking(Blades, ModuleState.RefresherOverdue, Ago(100))], lapsed.Gaps);
        Assert.Equal(StandingKind.Alone, (asked with { Modules = [Current] }).On(Today).Kind);
    }

    [Fact]
    public void A_clearance_until_a_date_holds_on_that_day_and_no_longer_on_the_next()
    {
        var asked = Case(Alone(Ago(10), new Limits(Until: Today)));
        var dayAfter = asked.On(Today.AddDays(1));

        Assert.Equal(StandingKind.Alone, asked.On(Today).Kind);
        Assert.Equal(StandingKind.Ready, dayAfter.Kind); // the row is still full: the owner may sign again at once
        Assert.Equal([new NotDecided(), new ClearanceRanOut(Today)], dayAfter.Why);
    }

    [Fact]
    public void A_clearance_that_ran_out_is_lapsed_where_the_rules_are_no_longer_met()
    {
        var standing = StandingNow([.. Alone(Ago(10), new Limits(Until: Ago(1))), Inspected(Ago(5), Verdict.Unsuitable)]);

        Assert.Equal((StandingKind.Lapsed, Today), (standing.Kind, standing.Since));
        Assert.Equal([new ClearanceRanOut(Ago(1))], standing.Why);
        Assert.Equal([new RowNotFull(11, 15)], standing.Gaps);
    }

    // a new decision so many days before today, the last day
    [Theory]
    [InlineData(1)]
    [InlineData(0)] // on the last day itself she is alone still: other limits are no new beginning
    public void A_later_date_may_be_set_up_to_the_last_day(int daysBefore)
    {
        var later = new Limits(Until: Today.AddDays(30));
        var standing = StandingNow([
            .. Alone(Ago(10), new Limits(Until: Today)),
            Inspected(Ago(2), Verdict.Unsuitable),
            Cleared(Ago(daysBefore), later),
        ]);

        Assert.Equal(
            (StandingKind.Alone, Ago(10), later, 4),
            (standing.Kind, standing.Since, standing.Limits, standing.Tally.Alarm)
        );
    }

    [Fact]
    public void Declared_experience_makes_alone_from_its_day_and_lapses_like_any_other()
    {
        Assert.Equal((StandingKind.Alone, Ago(10)), KindAndDay(StandingNow(Declared(Ago(10)))));
        Assert.Equal(StandingKind.Alone, StandingNow(Declared(Ago(119))).Kind);
        Assert.Equal(StandingKind.Lapsed, StandingNow(Declared(Ago(120))).Kind);
    }

    [Fact]
    public void The_first_declaration_is_no_exception_but_one_over_a_path_is()
    {
        Assert.False(StandingNow(Declared(Ago(10))).IsException);
        Assert.True(StandingNow(Suitable(Ago(11)), Declared(Ago(10))).IsException);
        Assert.True(StandingNow(Declared(Ago(200)), Declared(Ago(10))).IsException);
    }

    [Fact]
    public void Work_elsewhere_counts_for_recency_and_clears_nobody()
    {
        var standing = StandingNow(Elsewhere(Ago(10)), Elsewhere(Ago(10)), Elsewhere(Ago(10)));

        Assert.Equal(StandingKind.Learning, standing.Kind);
        Assert.Equal([new RowNotFull(0, 15), new TooFewBreeds(0, 3), new TooFewSeniors(0, 2)], standing.Gaps);
    }

    // day of the declaration, counted back from today
    [Theory]
    [InlineData(0, true)]
    [InlineData(30, true)] // within 30 days
    [InlineData(31, false)] // lapsed until the module is passed
    public void Modules_of_a_declaration_are_due_within_thirty_days(int daysAgo, bool holds)
    {
        var standing = (Case(Declared(Ago(daysAgo))) with { Modules = [NotPassed] }).On(Today);
        var knowledge = standing.Findings.OfType<KnowledgeFound>().Single();

        Assert.Equal(holds ? StandingKind.Alone : StandingKind.Lapsed, standing.Kind);
        Assert.Equal(holds ? Ago(daysAgo).AddDays(30) : null, knowledge.DueUntil);
        Assert.Equal([new ModuleLacking(Blades, ModuleState.NotPassed, PassedOn: null)], knowledge.Lacking);
    }

    // days since the skill asks for the module; the clearance by the rules is 60 days old
    [Theory]
    [InlineData(0, true)]
    [InlineData(30, true)] // within 30 days
    [InlineData(31, false)] // lapsed until the module is passed
    [InlineData(60, false)] // asked for on the day of the clearance: it was given without it being passed
    public void A_module_asked_for_since_the_clearance_is_due_within_thirty_days(int daysAgo, bool holds)
    {
        var known = Case(Alone(Ago(60)));
        var asked = known with { Skill = known.Skill with { Added = [new(Blades, Ago(daysAgo))] }, Modules = [NotPassed] };
        var standing = asked.On(Today);

        Assert.Equal(holds ? StandingKind.Alone : StandingKind.Lapsed, standing.Kind);
        Assert.Equal(holds ? Ago(daysAgo).AddDays(30) : null, standing.Findings.OfType<KnowledgeFound>().Single().DueUntil);
    }

    [Fact]
    public void Time_for_a_new_module_gives_none_for_an_old_one()
    {
        var known = Case(Alone(Ago(60)));
        var asked = known with
        {
            Skill = known.Skill with { Added = [new(Blades, Today)] },
            Modules = [NotPassed, NotPassed with { Module = new("heat-stroke") }],
        };

        Assert.Equal(StandingKind.Lapsed, asked.On(Today).Kind);
    }

    [Fact]
    public void A_new_module_that_was_twice_not_passed_pauses_at_once()
    {
        var known = Case(Alone(Ago(60)));
        var asked = known with
        {
            Skill = known.Skill with { Added = [new(Blades, Today)] },
            Modules = [NotPassed with { State = ModuleState.RefresherFailed }],
        };

        Assert.Equal(StandingKind.Lapsed, asked.On(Today).Kind);
    }

    [Fact]
    public void Whoever_is_not_alone_yet_gets_no_time_for_a_new_module()
    {
        var known = Case(FullRow(Today));
        var asked = known with { Skill = known.Skill with { Added = [new(Blades, Today)] }, Modules = [NotPassed] };

        Assert.Equal(StandingKind.Learning, asked.On(Today).Kind);
    }

    [Fact]
    public void A_refresher_twice_not_passed_pauses_in_spite_of_the_time_that_a_declaration_gives()
    {
        var failed = new ModuleFound(Blades, ModuleState.RefresherFailed, Ago(40), Today.AddDays(7));

        var declared = (Case(Declared(Ago(5))) with { Modules = [failed, NotPassed] }).On(Today);
        var exception = (Case([.. FullRow(Ago(6)), ClearedAgainstTheRules(Ago(5))]) with { Modules = [failed] }).On(Today);

        Assert.Equal(StandingKind.Lapsed, declared.Kind);
        Assert.Equal([new ModuleLacking(Blades, ModuleState.RefresherFailed, Ago(40))], declared.Gaps.OfType<ModuleLacking>());
        // The owner signed against the rules, and knew.
        Assert.Equal(StandingKind.Alone, exception.Kind);
    }

    [Fact]
    public void A_clearance_by_the_rules_gives_no_time_for_a_module()
    {
        var standing = (Case(Alone(Today)) with { Modules = [NotPassed] }).On(Today);

        Assert.Equal(StandingKind.Lapsed, standing.Kind);
    }

    [Fact]
    public void A_clearance_against_the_rules_is_alone_and_an_exception_and_its_modules_are_due_in_thirty_days()
    {
        var asked = Case([.. FullRow(Ago(1), grooms: 2), ClearedAgainstTheRules(Today)]) with { Modules = [NotPassed] };
        var standing = asked.On(Today);

        Assert.Equal((StandingKind.Alone, true), (standing.Kind, standing.IsException));
        Assert.Equal([new RowNotFull(2, 15), new TooFewBreeds(2, 3), new TooFewSeniors(0, 2)], standing.Gaps);
        Assert.Equal(StandingKind.Alone, asked.On(Today.AddDays(30)).Kind);
        Assert.Equal(StandingKind.Lapsed, asked.On(Today.AddDays(31)).Kind);
    }

    [Fact]
    public void An_exception_stands_for_the_grooms_that_recency_asks_on_its_day()
    {
        Assert.Equal(StandingKind.Alone, StandingNow(ClearedAgainstTheRules(Ago(119))).Kind);
        Assert.Equal(StandingKind.Lapsed, StandingNow(ClearedAgainstTheRules(Ago(120))).Kind);
    }

    [Fact]
    public void Whoever_is_under_18_is_alone_only_with_a_senior_in_the_building()
    {
        var asked = Case(Alone(Today)) with { Person = Uli };

        Assert.Equal(new Limits(OnlyWithSeniorIn: true), asked.On(Today).Limits);
        Assert.Equal(Limits.None, Standing.Of(asked, Today, House with { Under18OnlyWithSeniorIn = false }).Limits);
        Assert.Equal(Limits.None, (asked with { Person = Pim }).On(Today).Limits);
    }

    [Fact]
    public void The_limit_for_under_18s_comes_on_top_of_the_owners()
    {
        var asked = Case(Alone(Today, new Limits(UpToKg: 10))) with { Person = Uli };

        Assert.Equal(new Limits(UpToKg: 10, OnlyWithSeniorIn: true), asked.On(Today).Limits);
    }

    [Fact]
    public void A_skill_that_is_turned_off_is_nobodys_whatever_the_evidence()
    {
        var cabinet = ThresholdOf(SkillBook.CabinetDrying);
        Step[] path = [.. FullRow(Ago(1)), Cleared(Today)];
        var standing = CaseOf(cabinet, path).On(Today);

        Assert.Equal(StandingKind.Learning, standing.Kind);
        Assert.Equal([new SkillTurnedOff()], standing.Why);
        Assert.Equal(StandingKind.Alone, CaseOf(cabinet with { IsOn = true }, path).On(Today).Kind);
    }

    [Fact]
    public void For_the_cooling_clip_the_module_is_asked_and_nothing_else()
    {
        var coolingClip = ThresholdOf(SkillBook.CoolingClip);
        var learning = (CaseOf(coolingClip) with { Modules = [NotPassed] }).On(Today);
        var ready = (CaseOf(coolingClip) with { Modules = [Current] }).On(Today);

        Assert.Equal(StandingKind.Learning, learning.Kind);
        Assert.Equal([new ModuleLacking(Blades, ModuleState.NotPassed, PassedOn: null)], learning.Gaps);
        Assert.Equal(StandingKind.Ready, ready.Kind);
        Assert.Equal(StandingKind.Alone, (CaseOf(coolingClip, Cleared(Ago(700))) with { Modules = [Current] }).On(Today).Kind);
    }

    [Fact]
    public void A_rare_skill_comes_on_top_of_a_coat()
    {
        var asked = CaseOf(ThresholdOf(SkillBook.HandStripping), FullRow(Today, grooms: 8)) with { IsAloneInACoat = false };
        var standing = asked.On(Today);

        Assert.Equal(StandingKind.Learning, standing.Kind);
        Assert.Equal([new NoCoatAlone()], standing.Gaps);
        Assert.Equal(StandingKind.Ready, (asked with { IsAloneInACoat = true }).On(Today).Kind);
    }

    [Fact]
    public void After_fifty_rated_grooms_without_a_full_row_it_is_time_to_talk_not_to_fail()
    {
        var upAndDown = Enumerable
            .Range(0, 50)
            .Select(n => n % 5 == 4 ? Unsuitable(Ago(50 - n)) : Suitable(Ago(50 - n)))
            .ToArray();
        var (after49, after50) = (StandingNow(upAndDown[..49]), StandingNow(upAndDown));

        Assert.Contains(new PointsFound(Have: 4, Need: 15, RatedOnRow: 49, IsTalkDue: false), after49.Findings);
        Assert.Contains(new PointsFound(Have: 0, Need: 15, RatedOnRow: 50, IsTalkDue: true), after50.Findings);
        Assert.Equal(StandingKind.Learning, after50.Kind);
    }

    [Fact]
    public void No_talk_is_due_with_a_full_row_nor_with_somebody_who_is_alone()
    {
        var inspected = Enumerable
            .Range(0, 60)
            .Select(n => Inspected(Ago(60 - n), n % 7 == 6 ? Verdict.Unsuitable : Verdict.Suitable));

        Assert.False(TalkIsDue(StandingNow(FullRow(Today, grooms: 60))));
        Assert.False(TalkIsDue(StandingNow([.. Alone(Ago(61)), .. inspected, Unsuitable(Today)])));
    }

    [Fact]
    public void A_standing_names_the_version_of_the_threshold_under_which_it_was_read() =>
        Assert.Equal(7, CaseOf(Standard with { Version = 7 }).On(Today).ThresholdVersion);

    [Fact]
    public void The_same_knownon_the_same_day_is_the_same_standing()
    {
        var asked = Case([.. Alone(Ago(150)), Suitable(Today)]) with { Modules = [Current] };

        Assert.Equal(asked.On(Today), asked.On(Today));
        Assert.Equal(asked.On(Today).GetHashCode(), asked.On(Today).GetHashCode());
        Assert.NotEqual(asked.On(Today), asked.On(Today.AddDays(200)));
    }

    [Fact]
    public void Only_a_senior_or_the_owner_who_is_alone_may_judge()
    {
        Assert.True(Standing.MayJudge(Rosa, StandingKind.Alone));
        Assert.True(Standing.MayJudge(Olga, StandingKind.Alone));
        Assert.False(Standing.MayJudge(Pim, StandingKind.Alone));
        Assert.All(
            Enum.GetValues<StandingKind>().Where(kind => kind != StandingKind.Alone),
            kind => Assert.False(Standing.MayJudge(Rosa, kind))
        );
    }

    private static (StandingKind Kind, DateOnly? Since) KindAndDay(Standing standing) => (standing.Kind, standing.Since);

    private static bool TalkIsDue(Standing standing) => standing.Findings.OfType<PointsFound>().Single().IsTalkDue;
}
