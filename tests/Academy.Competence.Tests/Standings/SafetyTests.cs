using Academy.Competence.Evidence;
using Academy.Competence.Standings;
using Academy.Competence.Statistics;
using static Academy.Competence.Tests.Cast.PathWords;
using static Academy.Competence.Tests.Cast.TestSalon;

namespace Academy.Competence.Tests.Standings;

public class SafetyTests
{
    // a critical groom so many days ago, and rated grooms since: far enough back?
    [Theory]
    [InlineData(30, 19, false)] // still among the last 20
    [InlineData(30, 20, true)] // 20 further rated grooms, however few the days
    [InlineData(179, 10, false)] // 10 and not yet 180 days
    [InlineData(180, 10, true)] // 10 and 180 days: 20 would take most of a year on a rare coat
    [InlineData(180, 9, false)] // 180 days and only 9
    [InlineData(400, 0, false)] // time alone heals nothing
    public void A_critical_incident_is_far_enough_back_after_twenty_grooms_or_ten_and_180_days(int daysAgo, int since, bool far)
    {
        var safety = SafetyOf([Critical(Ago(daysAgo)), .. FullRow(Today, since)]);

        Assert.Equal(new SafetyFound(Ago(daysAgo), since, far, OpenReviews: 0), safety);
        Assert.Equal(far ? [] : [new CriticalTooNear(Ago(daysAgo), since)], safety.Gaps);
    }

    [Fact]
    public void Unsuitable_grooms_count_among_the_twenty_too_for_they_are_not_critical() =>
        Assert.Empty(SafetyOf([Critical(Ago(30)), .. Enumerable.Repeat(Unsuitable(Ago(1)), 20)]).Gaps);

    [Fact]
    public void A_second_critical_incident_begins_the_count_anew() =>
        Assert.Equal(
            [new CriticalTooNear(Ago(5), RatedSince: 3)],
            SafetyOf([Critical(Ago(30)), .. FullRow(Ago(6), 19), Critical(Ago(5)), .. FullRow(Today, 3)]).Gaps
        );

    [Fact]
    public void Every_open_review_is_counted_and_none_of_them_passes() =>
        Assert.Equal(
            [new ReviewOpen(2)],
            SafetyOf([.. FullRow(Ago(2)), Reported(Ago(1)), Reported(Today)]).Gaps.Where(gap => gap is ReviewOpen)
        );

    [Fact]
    public void Whoever_is_alone_is_stood_down_by_the_report_of_a_critical_incident()
    {
        var standing = StandingNow([.. Alone(Ago(10)), Critical(Ago(1)), Reported(Today)]);

        Assert.Equal((StandingKind.StoodDown, Today), (standing.Kind, standing.Since));
        Assert.Equal([new StoodDownSince(Today, IsTechnique: false)], standing.Why);
        Assert.Equal([new RowNotFull(0, 15), new CriticalTooNear(Ago(1), RatedSince: 0), new ReviewOpen(1)], standing.Gaps);
    }

    [Fact]
    public void Between_the_critical_groom_and_its_report_the_clearance_does_not_hold_either() =>
        Assert.Equal(StandingKind.Lapsed, StandingNow([.. Alone(Ago(10)), Critical(Today)]).Kind);

    [Fact]
    public void A_critical_incident_takes_every_mark_of_a_learning_person_and_holds_her_up()
    {
        var standing = StandingNow([.. FullRow(Ago(1), grooms: 14), Critical(Today), Reported(Today)]);

        Assert.Equal(StandingKind.Learning, standing.Kind);
        Assert.Equal([new RowNotFull(0, 15), new CriticalTooNear(Today, RatedSince: 0), new ReviewOpen(1)], standing.Gaps);
        Assert.Null(standing.Tally.StandDown);
    }

    [Fact]
    public void A_stand_down_that_is_lifted_leaves_the_clearance_as_it_was()
    {
        var standing = StandingNow([.. Alone(Ago(10)), StoodDown(Ago(5)), Lifted(Ago(1))]);

        Assert.Equal((StandingKind.Alone, Ago(10)), (standing.Kind, standing.Since));
    }

    [Fact]
    public void Where_technique_contributed_only_the_whole_row_and_a_new_decision_end_the_stand_down()
    {
        Step[] stopped = [.. Alone(Ago(60)), Critical(Ago(50)), ReviewedAsTechnique(Ago(49))];
        var (after19, after20) = (
            StandingNow([.. stopped, .. FullRow(Ago(1), 19)]),
            StandingNow([.. stopped, .. FullRow(Ago(1), 20)])
        );

        Assert.Equal(StandingKind.StoodDown, after19.Kind);
        Assert.Equal([new CriticalTooNear(Ago(50), RatedSince: 19)], after19.Gaps);
        Assert.Equal(StandingKind.Ready, after20.Kind);
        Assert.Equal([new NotDecided(), new StoodDownSince(Ago(49), IsTechnique: true)], after20.Why);
        Assert.Equal(StandingKind.Alone, StandingNow([.. stopped, .. FullRow(Ago(1), 20), Cleared(Today)]).Kind);
    }

    [Fact]
    public void Two_stops_are_one_stand_down_from_the_first_day_and_technique_is_not_forgotten()
    {
        var standing = StandingNow([.. Alone(Ago(30)), StoodDown(Ago(20)), ReviewedAsTechnique(Ago(10))]);

        Assert.Equal([new StoodDownSince(Ago(20), IsTechnique: true)], standing.Why);
    }

    [Fact]
    public void An_exception_made_knowingly_looks_past_a_critical_incident() =>
        Assert.Equal(
            StandingKind.Alone,
            StandingNow([
                .. FullRow(Ago(30)),
                Critical(Ago(20)),
                ReviewedAsTechnique(Ago(19)),
                ClearedAgainstTheRules(Ago(1)),
            ]).Kind
        );

    [Fact]
    public void An_exception_made_before_an_incident_was_known_does_not_look_past_it()
    {
        Step[] path = [.. FullRow(Ago(30)), Critical(Ago(20)), ClearedAgainstTheRules(Ago(10)), ReviewedAsTechnique(Ago(5))];

        Assert.Contains(new CriticalTooNear(Ago(5), RatedSince: 0), StandingNow(path).Gaps);
    }

    private static SafetyFound SafetyOf(IEnumerable<Step> path) => StandingNow(path).Findings.OfType<SafetyFound>().Single();
}
