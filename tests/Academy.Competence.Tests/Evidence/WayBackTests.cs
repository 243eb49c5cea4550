using Academy.Competence.Evidence;
using Academy.Competence.Skills;
using Academy.Competence.Standings;
using Academy.Competence.Statistics;
using Academy.Competence.Thresholds;
using static Academy.Competence.Tests.Cast.PathWords;
using static Academy.Competence.Tests.Cast.TestSalon;

namespace Academy.Competence.Tests.Evidence;

/// <summary>The row of double coats has 15 marks: the short way back begins at 12, the long one at 7, the whole one at none.</summary>
public class WayBackTests
{
    // days since the last groom       way back         marks
    [Theory]
    [InlineData(117, WayBack.None, 15)] // the third last groom was 119 days ago: still recent
    [InlineData(118, WayBack.Short, 12)] // 120 days: lapsed
    [InlineData(180, WayBack.Short, 12)]
    [InlineData(181, WayBack.Long, 7)]
    [InlineData(365, WayBack.Long, 7)]
    [InlineData(366, WayBack.Whole, 0)]
    public void The_longer_the_break_the_longer_the_way_back(int days, WayBack depth, int marks)
    {
        var tally = Fold(Alone(clearedOn: Ago(days))).LapsedBy(Today, Standard);

        Assert.Equal((depth, marks), (tally.Back, tally.Row));
    }

    // H-3, H-8 or none, never below none
    [Theory]
    [InlineData("smooth", 12, 7)] // 15 marks
    [InlineData("double", 12, 7)] // 15 marks
    [InlineData("wire", 14, 9)] // 17 marks
    [InlineData("hand-stripping", 5, 0)] // 8 marks
    public void A_way_back_begins_three_or_eight_marks_short(string skill, int afterShort, int afterLong)
    {
        var threshold = ThresholdOf(new SkillCode(skill));

        Assert.Equal(afterShort, Tally.StartOf(WayBack.Short, threshold));
        Assert.Equal(afterLong, Tally.StartOf(WayBack.Long, threshold));
        Assert.Equal(0, Tally.StartOf(WayBack.Whole, threshold));
        Assert.Equal(threshold.Row!.MarksToFill, Tally.StartOf(WayBack.None, threshold));
    }

    [Fact]
    public void A_way_back_never_begins_below_no_marks_and_has_none_where_no_row_is_asked()
    {
        var tiny = Standard with { Row = new RowProfile(.05, marksTaken: 6, marksToFill: 2) };

        Assert.Equal((0, 0), (Tally.StartOf(WayBack.Short, tiny), Tally.StartOf(WayBack.Long, tiny)));
        Assert.Equal(0, Tally.StartOf(WayBack.Short, ThresholdOf(SkillBook.HotDay)));
    }

    [Fact]
    public void Nobody_without_a_clearance_is_on_a_way_back() =>
        Assert.Equal(Fold(FullRow(Ago(400))), Fold(FullRow(Ago(400))).LapsedBy(Today, Standard));

    [Fact]
    public void Two_suitable_grooms_are_not_yet_the_short_way_back()
    {
        var standing = StandingNow([.. Alone(Ago(150)), .. FullRow(Today, grooms: 2)]);

        Assert.Equal(StandingKind.Lapsed, standing.Kind);
        Assert.Equal([new OnTheWayBack(WayBack.Short, Have: 14, Need: 15)], standing.Why);
        Assert.Equal([new RowNotFull(14, 15), new TooFewRecentGrooms(2, 3, WithinDays: 120, LastOn: Today)], standing.Gaps);
    }

    [Fact]
    public void The_short_way_back_ends_by_itself_when_the_row_is_full()
    {
        var standing = StandingNow([.. Alone(Ago(150)), .. FullRow(Today, grooms: 3)]);

        Assert.Equal((StandingKind.Alone, Ago(150)), (standing.Kind, standing.Since));
        Assert.Equal((WayBack.None, 0, 0), (standing.Tally.Back, standing.Tally.Alarm, standing.Tally.RatedOnRow));
    }

    [Fact]
    public void An_unsuitable_groom_on_the_way_back_takes_its_marks() =>
        Assert.Equal(8, Fold([.. Alone(Ago(150)), Unsuitable(Today)]).Row);

    [Fact]
    public void The_short_way_back_asks_for_the_breeds_too()
    {
        var oneBreed = Enumerable.Range(0, 20).Select(n => Inspected(Ago(180 - n), Verdict.Suitable));
        var standing = StandingNow([.. Alone(Ago(181)), .. oneBreed, Suitable(Ago(2)), Suitable(Ago(1)), Suitable(Today)]);

        Assert.Equal(StandingKind.Lapsed, standing.Kind);
        Assert.Equal([new OnTheWayBack(WayBack.Short, Have: 15, Need: 15)], standing.Why);
        Assert.Equal([new TooFewBreeds(1, 3), new TooFewSeniors(1, 2)], standing.Gaps);
    }

    [Fact]
    public void The_short_way_back_ends_only_once_recency_holds_again()
    {
        var five = Standard with { RecentGrooms = 5 };
        Step[] threeBack = [.. Alone(Ago(150)), .. FullRow(Ago(2), grooms: 3)];

        Assert.Equal((WayBack.Short, 15), BackAndRow(Tally.Of(threeBack, five)));
        Assert.Equal((WayBack.Short, 15), BackAndRow(Tally.Of([.. threeBack, Watched(Ago(1))], five)));
        Assert.Equal((WayBack.None, 15), BackAndRow(Tally.Of([.. threeBack, Watched(Ago(1)), Watched(Today)], five)));
    }

    [Fact]
    public void Where_no_row_is_asked_recency_alone_brings_back_from_a_short_break()
    {
        var recencyOnly = ThresholdOf(SkillBook.CoolingClip) with { RecentGrooms = 1, RecentDays = 90 };
        Step[] lapsed = [Cleared(Ago(150)), Watched(Ago(150))];

        Assert.Equal(StandingKind.Lapsed, CaseOf(recencyOnly, lapsed).On(Today).Kind);
        Assert.Equal(StandingKind.Alone, CaseOf(recencyOnly, [.. lapsed, Watched(Today)]).On(Today).Kind);
    }

    [Fact]
    public void The_long_way_back_ends_with_the_owners_signature()
    {
        Step[] walked = [.. Alone(Ago(250)), .. FullRow(Ago(1), grooms: 8)];
        var before = StandingNow(walked);

        Assert.Equal(StandingKind.Ready, before.Kind);
        Assert.Equal([new NotDecided()], before.Why);
        Assert.Equal(StandingKind.Alone, StandingNow([.. walked, Cleared(Today)]).Kind);
    }

    [Fact]
    public void The_whole_way_back_asks_for_the_whole_row()
    {
        Assert.Equal(StandingKind.Lapsed, StandingNow([.. Alone(Ago(500)), .. FullRow(Today, grooms: 14)]).Kind);
        Assert.Equal(StandingKind.Ready, StandingNow([.. Alone(Ago(500)), .. FullRow(Today, grooms: 15)]).Kind);
    }

    [Fact]
    public void A_second_break_on_the_way_back_deepens_it_and_gives_no_marks()
    {
        // 140 days after the last groom a short way back begins, one mark is added, then nothing for 260 days
        var tally = Fold([.. Alone(Ago(400)), Suitable(Ago(260))]).LapsedBy(Today, Standard);

        Assert.Equal((WayBack.Long, 7), BackAndRow(tally));
    }

    [Fact]
    public void A_second_break_takes_no_more_than_it_must()
    {
        // from none, two marks; 200 days later the way back is still the whole one, with its two marks
        var tally = Fold([.. Alone(Ago(700)), .. FullRow(Ago(200), grooms: 2)]).LapsedBy(Today, Standard);

        Assert.Equal((WayBack.Whole, 2), BackAndRow(tally));
    }

    [Fact]
    public void After_a_check_the_way_back_is_the_long_one_at_once()
    {
        var tally = Fold([.. Alone(Ago(3)), Unsuitable(Ago(2)), Unsuitable(Ago(1)), Unsuitable(Today)]);

        Assert.Equal((WayBack.Long, 7), BackAndRow(tally));
        Assert.Equal(Today, tally.CheckAgainOn);
    }

    [Fact]
    public void Whoever_stays_away_for_more_than_a_year_after_a_check_walks_the_whole_row()
    {
        Step[] toBeChecked = [.. Alone(Ago(400)), Unsuitable(Ago(399)), Unsuitable(Ago(398)), Unsuitable(Ago(397))];
        var standing = StandingNow(toBeChecked);

        Assert.Equal(StandingKind.CheckAgain, standing.Kind);
        Assert.Equal((WayBack.Whole, 0), BackAndRow(standing.Tally));
    }

    [Fact]
    public void After_an_incident_of_technique_the_whole_row_is_walked_from_the_groom_on_which_it_happened()
    {
        var tally = Fold([
            .. Alone(Ago(30)),
            Critical(Ago(20)),
            Suitable(Ago(19)),
            ReviewedAsTechnique(Ago(18)),
            Suitable(Ago(17)),
        ]);

        Assert.Equal((WayBack.Whole, 2), BackAndRow(tally));
    }

    [Fact]
    public void Skills_go_stale_while_somebody_is_stood_down()
    {
        Step[] stopped = [.. Alone(Ago(500)), StoodDown(Ago(450))];
        var standing = StandingNow([.. stopped, Watched(Ago(10)), Watched(Ago(9)), Watched(Ago(8)), Lifted(Ago(5))]);

        Assert.Equal(StandingKind.Lapsed, standing.Kind);
        Assert.Equal([new OnTheWayBack(WayBack.Whole, Have: 0, Need: 15)], standing.Why);
    }

    [Fact]
    public void Drift_is_not_asked_on_the_way_back()
    {
        var tally = Fold([.. Alone(Ago(150)), Unsuitable(Ago(2)), Unsuitable(Ago(1)), Unsuitable(Today)]);

        Assert.Equal((0, null, WayBack.Short), (tally.Alarm, tally.CheckAgainOn, tally.Back));
        Assert.Equal(0, tally.Row);
    }

    [Fact]
    public void A_new_clearance_ends_every_way_back()
    {
        var tally = Fold([.. Alone(Ago(500)), .. FullRow(Today), Cleared(Today)]);

        Assert.Equal((WayBack.None, 15), BackAndRow(tally));
        Assert.True(tally.IsUsed);
    }

    private static (WayBack Back, int Row) BackAndRow(Tally tally) => (tally.Back, tally.Row);
}
