using Academy.Competence.Evidence;
using Academy.Competence.Skills;
using Academy.Competence.Standings;
using Academy.Competence.Statistics;
using static Academy.Competence.Tests.Cast.PathWords;
using static Academy.Competence.Tests.Cast.TestSalon;

namespace Academy.Competence.Tests.Evidence;

/// <summary>On double coats one unsuitable groom raises the alarm by 4: watch from 8, check again from 12.</summary>
public class DriftOnThePathTests
{
    // outcomes after the clearance, one a day      alarm, grooms still watched
    [Theory]
    [InlineData("S", 0, 0)]
    [InlineData("F", 4, 0)] // one slip asks for nothing
    [InlineData("FF", 8, 3)] // at 2m a senior stands beside for the next three
    [InlineData("FFS", 7, 2)]
    [InlineData("FFSS", 6, 1)]
    [InlineData("FFSSS", 5, 0)] // watched three times, done
    [InlineData("FSSSSF", 4, 0)] // far apart: no watch
    [InlineData("FFSF", 11, 3)] // again: three more
    [InlineData("FFSFSS", 9, 1)]
    [InlineData("FFSFSSS", 8, 1)] // the third was watched and the alarm is still at 2m: a senior stays
    [InlineData("FFSFSSSS", 7, 0)]
    public void Two_unsuitable_grooms_close_together_bring_a_senior_beside(string outcomes, int alarm, int watched)
    {
        var tally = Fold([.. Alone(Ago(20)), .. Outcomes(outcomes)]);

        Assert.Equal((alarm, watched, (DateOnly?)null), (tally.Alarm, tally.WatchedYet, tally.CheckAgainOn));
    }

    [Fact]
    public void On_a_strict_row_watch_begins_at_twelve_and_check_again_at_eighteen()
    {
        var wire = ThresholdOf(SkillBook.Wire);
        Step[] cleared = [.. FullRow(Ago(20), grooms: 17), Cleared(Ago(20))];

        Assert.Equal(0, Tally.Of([.. cleared, .. Outcomes("F")], wire).WatchedYet);
        Assert.Equal(3, Tally.Of([.. cleared, .. Outcomes("FF")], wire).WatchedYet);
        var checkAgain = Tally.Of([.. cleared, .. Outcomes("FFF")], wire);
        Assert.Equal((Ago(17), 9), (checkAgain.CheckAgainOn, checkAgain.Row));
    }

    [Fact]
    public void Watch_is_a_limit_of_whoever_stays_alone()
    {
        var standing = StandingNow([.. Alone(Ago(20)), .. Outcomes("FF")]);

        Assert.Equal((StandingKind.Alone, true), (standing.Kind, standing.IsWatched));
        Assert.Equal([new RowNotFull(7, 15)], standing.Gaps); // points are not asked of whoever is alone
        Assert.Contains(
            new DriftFound(Alarm: 8, WatchFrom: 8, CheckAgainFrom: 12, CheckAgainOn: null, WatchedYet: 3),
            standing.Findings
        );
    }

    [Fact]
    public void A_third_unsuitable_groom_stops_the_clearance_until_it_is_checked()
    {
        var standing = StandingNow([.. Alone(Ago(20)), .. Outcomes("FFF")]);

        Assert.Equal((StandingKind.CheckAgain, Ago(17), false), (standing.Kind, standing.Since, standing.IsWatched));
        Assert.Equal([new RowNotFull(7, 15), new DriftedTooFar(Alarm: 12, From: 12, On: Ago(17))], standing.Gaps);
    }

    [Fact]
    public void After_a_check_eight_more_marks_wait_for_the_owner_and_her_signature_clears_the_alarm()
    {
        Step[] walked = [.. Alone(Ago(30)), .. Outcomes("FFF", Ago(29)), .. FullRow(Ago(1), grooms: 8)];
        var ready = StandingNow(walked);
        var cleared = StandingNow([.. walked, Cleared(Today)]);

        Assert.Equal(StandingKind.Ready, ready.Kind);
        Assert.Equal([new NotDecided()], ready.Why);
        Assert.Equal((StandingKind.Alone, 0, null), (cleared.Kind, cleared.Tally.Alarm, cleared.Tally.CheckAgainOn));
    }

    [Fact]
    public void An_upheld_complaint_raises_the_alarm_like_an_inspection() =>
        Assert.Equal(4, Fold([.. Alone(Ago(20)), Inspected(Ago(1), Verdict.Unsuitable) with { Senior = null }]).Alarm);

    [Fact]
    public void A_learners_unsuitable_grooms_raise_no_alarm() => Assert.Equal(0, Fold(Outcomes("FFF")).Alarm);

    [Fact]
    public void Whoever_is_stood_down_raises_no_alarm() =>
        Assert.Equal(0, Fold([.. Alone(Ago(20)), StoodDown(Ago(19)), .. Outcomes("FFF", Ago(18))]).Alarm);

    [Fact]
    public void Other_limits_for_whoever_is_alone_leave_her_alarm_where_it_is()
    {
        var limits = new Competence.Decisions.Limits(NotOnHotDays: true);
        var standing = StandingNow([.. Alone(Ago(20)), .. Outcomes("FF"), Cleared(Ago(1), limits)]);

        Assert.Equal((8, 3, limits), (standing.Tally.Alarm, standing.Tally.WatchedYet, standing.Limits));
        Assert.Equal((StandingKind.Alone, Ago(20)), (standing.Kind, standing.Since));
    }

    private static IEnumerable<Step> Outcomes(string outcomes) => Outcomes(outcomes, Ago(19));

    private static IEnumerable<Step> Outcomes(string outcomes, DateOnly first) =>
        outcomes.Select((outcome, n) => Inspected(first.AddDays(n), outcome == 'S' ? Verdict.Suitable : Verdict.Unsuitable));
}
