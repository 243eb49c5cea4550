using Academy.Competence.Decisions;
using Academy.Competence.Evidence;
using Academy.Competence.Skills;
using Academy.Competence.Statistics;
using Academy.Competence.Tests.Statistics;
using Academy.Competence.Thresholds;
using static Academy.Competence.Tests.Cast.PathWords;
using static Academy.Competence.Tests.Cast.TestSalon;

namespace Academy.Competence.Tests.Evidence;

public class TallyTests
{
    // data/competence/lc_cusum.csv: computed once more by another program
    [Fact]
    public void A_path_walks_the_row_of_the_check_values_mark_by_mark()
    {
        var paths = CheckValues
            .Read("competence/lc_cusum.csv", rows: 494)
            .GroupBy(row => (Profile: row.Text("profile"), Sequence: row.Text("sequence")));

        Assert.All(
            paths,
            path =>
            {
                var threshold = Standard with { Row = Profiles.Named(path.Key.Profile) };
                var tally = Tally.Empty;
                foreach (var row in path)
                {
                    tally = tally.Add(Rated(Today, Profiles.VerdictOf(row.Text("outcome"))), threshold);
                    Assert.Equal(row.Whole("points"), tally.Row);
                    Assert.Equal(row.Whole("n"), tally.Rated);
                }
            }
        );
    }

    // data/competence/cusum.csv: computed; green, amber and red there are steady, watch and check again here, and what it calls
    // STOP is the stand-down that the report of a critical incident brings, not the alarm.
    [Fact]
    public void A_path_after_a_clearance_raises_the_alarm_of_the_check_values()
    {
        var paths = CheckValues.Read("competence/cusum.csv", rows: 49).GroupBy(row => row.Text("sequence"));

        Assert.All(
            paths,
            path =>
            {
                var tally = Fold(Alone(clearedOn: Today));
                foreach (var row in path)
                {
                    tally = tally.Add(Inspected(Today, Profiles.VerdictOf(row.Text("outcome"))), Standard);
                    Assert.Equal(row.Whole("alarm_points"), tally.Alarm);
                    Assert.Equal(row.Text("state") == "RED", tally.CheckAgainOn is not null);
                    if (row.Text("state") == "AMBER")
                        Assert.Equal(3, tally.WatchedYet);
                }
            }
        );
    }

    [Fact]
    public void Nobody_starts_with_anything() => Assert.Equal(Tally.Empty, Fold());

    [Fact]
    public void A_suitable_watched_groom_is_remembered_whole()
    {
        var step = Suitable(Today);

        Assert.Equal(
            Tally.Empty with
            {
                Row = 1,
                Rated = 1,
                Suitable = 1,
                RatedOnRow = 1,
                RatedSinceCritical = 1,
                Last = [new RatedGroom(step.Id, Today, "Border Terrier", Rosa.Id, Verdict.Suitable)],
                RecentDays = [Today],
            },
            Fold(step)
        );
    }

    [Fact]
    public void A_groom_that_nobody_rated_is_exposure_and_recency_never_evidence()
    {
        Assert.Equal(Tally.Empty with { RecentDays = [Today] }, Fold(GroomedAlone(Today)));
        Assert.Equal(Tally.Empty with { RecentDays = [Today] }, Fold(Watched(Today)));
        Assert.Equal(Tally.Empty with { RecentDays = [Today] }, Fold(Elsewhere(Today)));
    }

    [Fact]
    public void Only_the_last_twenty_rated_grooms_and_the_ten_newest_days_are_remembered()
    {
        var tally = Fold(FullRow(Today, grooms: 50));

        Assert.Equal((50, 20, 10), (tally.Rated, tally.Last.Count, tally.RecentDays.Count));
        Assert.Equal((Ago(19), Ago(9)), (tally.Last[0].Day, tally.RecentDays[0]));
    }

    [Fact]
    public void A_breed_counts_once_however_it_is_written_and_not_at_all_where_nobody_wrote_it() =>
        Assert.Equal(
            2,
            Fold(
                Rated(Today, Verdict.Suitable, "Whippet"),
                Rated(Today, Verdict.Suitable, "whippet "),
                Rated(Today, Verdict.Suitable, ""),
                Rated(Today, Verdict.Suitable, "Pug")
            ).BreedsSuitable
        );

    [Fact]
    public void A_breed_counts_only_where_the_groom_was_suitable() =>
        Assert.Equal(1, Fold(Rated(Today, Verdict.Suitable, "Whippet"), Rated(Today, Verdict.Unsuitable, "Pug")).BreedsSuitable);

    [Fact]
    public void A_senior_counts_from_her_third_rating_suitable_or_not()
    {
        Assert.Equal(0, Fold(Suitable(Today), Unsuitable(Today)).SeniorsWithEnough);
        Assert.Equal(1, Fold(Suitable(Today), Unsuitable(Today), Suitable(Today)).SeniorsWithEnough);
    }

    [Fact]
    public void A_groom_that_no_senior_rated_adds_no_senior() =>
        Assert.Equal(0, Fold(Enumerable.Repeat(Unsuitable(Today) with { Senior = null }, 5)).SeniorsWithEnough);

    [Fact]
    public void A_rated_groom_without_a_verdict_is_our_mistake() =>
        Assert.Throws<InvalidOperationException>(() => Fold(Suitable(Today) with { Verdict = null }));

    [Fact]
    public void Facts_of_one_moment_are_ordered_by_their_id()
    {
        var first = Suitable(Today) with { Id = Number(1) };
        var second = Unsuitable(Today) with { Id = Number(2) };
        var yesterday = Critical(Ago(1)) with { Id = Number(3) };

        Assert.Equal([yesterday, first, second], Tally.InOrder([second, yesterday, first]));
    }

    // third last groom on   asked on       recent enough (3 in 120 days)
    [Theory]
    [InlineData("2026-03-01", "2026-06-28", true)] // day 119: still inside
    [InlineData("2026-03-01", "2026-06-29", false)] // day 120: outside, the window is half-open
    [InlineData("2024-02-29", "2024-06-27", true)] // from a leap day, day 119
    [InlineData("2024-02-29", "2024-06-28", false)] // from a leap day, day 120
    [InlineData("2024-02-28", "2024-06-26", true)] // across a leap day, day 119
    [InlineData("2024-02-28", "2024-06-27", false)] // across a leap day, day 120
    [InlineData("2025-12-31", "2026-04-29", true)] // across the new year
    [InlineData("2026-06-28", "2026-06-28", true)] // the day itself
    [InlineData("2026-06-29", "2026-06-28", false)] // a later day does not count yet
    public void Recency_counts_the_salons_local_days(string groomed, string asked, bool recent)
    {
        var tally = Fold(Watched(Day(groomed)), Watched(Day(groomed)), GroomedAlone(Day(groomed)));

        Assert.Equal(recent, tally.IsRecentOn(Day(asked), Standard));
    }

    [Fact]
    public void Recency_holds_until_the_third_last_groom_leaves_the_window()
    {
        var tally = Fold(Watched(Ago(119)), Watched(Ago(60)), Suitable(Ago(10)));

        Assert.Equal((3, Today), (tally.RecentOn(Today, Standard), tally.RecentUntil(Today, Standard)));
        Assert.Equal((2, null), (tally.RecentOn(Today.AddDays(1), Standard), tally.RecentUntil(Today.AddDays(1), Standard)));
    }

    [Fact]
    public void Recency_that_is_not_asked_never_ends()
    {
        var modulesOnly = ThresholdOf(SkillBook.HotDay);

        Assert.True(Tally.Empty.IsRecentOn(Today, modulesOnly));
        Assert.Null(Tally.Empty.RecentUntil(Today, modulesOnly));
    }

    [Fact]
    public void A_groom_found_unsuitable_does_not_count_for_recency() =>
        Assert.Equal([Ago(2)], Fold(Suitable(Ago(2)), Unsuitable(Ago(1)), Critical(Today)).RecentDays);

    [Fact]
    public void Declared_experience_stands_for_the_grooms_that_recency_asks_all_on_its_day()
    {
        var tally = Fold(Declared(Ago(119)));

        Assert.Equal([Ago(119), Ago(119), Ago(119)], tally.RecentDays);
        Assert.Equal(Today, tally.RecentUntil(Today, Standard));
        Assert.Equal((0, 0), (tally.Row, tally.Rated));
    }

    [Fact]
    public void Inspections_are_counted_among_the_grooms_done_alone()
    {
        var tally = Fold([
            .. Alone(Ago(5)),
            GroomedAlone(Ago(4)),
            Inspected(Ago(3), Verdict.Suitable),
            GroomedAlone(Ago(2)),
            Suitable(Ago(1)),
        ]);

        Assert.Equal((3, 1), (tally.SoloSinceClearance, tally.InspectedSinceClearance));
    }

    [Fact]
    public void Grooms_done_alone_before_any_clearance_are_not_counted_as_such() =>
        Assert.Equal(0, Fold(GroomedAlone(Today), Inspected(Today, Verdict.Suitable)).SoloSinceClearance);

    [Fact]
    public void A_clearance_is_in_force_until_it_is_stopped_runs_out_or_recency_fails()
    {
        Assert.False(Fold(FullRow(Ago(1))).HoldsOn(Today, Standard));
        Assert.True(Fold(Alone(Ago(1))).HoldsOn(Today, Standard));
        Assert.False(Fold([.. Alone(Ago(2)), StoodDown(Ago(1))]).HoldsOn(Today, Standard));
        Assert.True(Fold(Alone(Ago(2), new Limits(Until: Today))).HoldsOn(Today, Standard));
        Assert.False(Fold(Alone(Ago(2), new Limits(Until: Ago(1)))).HoldsOn(Today, Standard));
        Assert.False(Fold(Alone(Ago(121))).HoldsOn(Today, Standard));
    }
}
