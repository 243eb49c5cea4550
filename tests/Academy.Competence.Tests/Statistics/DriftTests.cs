using Academy.Competence.Statistics;
using CsCheck;
using static Academy.Competence.Statistics.Verdict;

namespace Academy.Competence.Tests.Statistics;

public class DriftTests
{
    // data/competence/cusum.csv: what it calls green, amber and red the salon calls steady, watch and check again
    [Fact]
    public void Every_path_of_the_check_values_raises_the_same_alarm()
    {
        var paths = CheckValues.Read("competence/cusum.csv", rows: 49).GroupBy(row => row.Text("sequence"));

        Assert.All(paths, WalkAlong);
    }

    [Fact]
    public void Two_unsuitable_in_a_row_ask_for_a_senior_and_a_third_for_rated_grooms() =>
        Assert.All(
            [RowProfile.Basic, RowProfile.Standard, RowProfile.Strict, RowProfile.Short, RowProfile.Strictest],
            profile =>
            {
                Assert.Equal(DriftSign.Steady, SignAfter(profile, Unsuitable));
                Assert.Equal(DriftSign.Watch, SignAfter(profile, Unsuitable, Unsuitable));
                Assert.Equal(DriftSign.CheckAgain, SignAfter(profile, Unsuitable, Unsuitable, Unsuitable));
            }
        );

    [Fact]
    public void A_suitable_groom_takes_one_off_an_alarm_however_high_it_is() =>
        Assert.Equal(39, Drift.Step(40, Suitable, RowProfile.Standard));

    [Fact]
    public void A_critical_incident_leaves_the_alarm_as_it_is_for_it_stops_by_itself() =>
        Assert.Equal(7, Drift.Step(7, Critical, RowProfile.Standard));

    [Fact]
    public void Nothing_that_is_not_a_verdict_moves_the_alarm() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Drift.Step(3, (Verdict)7, RowProfile.Standard));

    [Fact]
    public void An_alarm_never_falls_below_none() =>
        Gen.Select(Profiles.Any, Gen.Enum<Verdict>().List[0, 60])
            .Sample((profile, verdicts) => verdicts.Aggregate(0, (alarm, verdict) => Drift.Step(alarm, verdict, profile)) >= 0);

    private static DriftSign SignAfter(RowProfile profile, params Verdict[] verdicts) =>
        Drift.SignOf(verdicts.Aggregate(0, (alarm, verdict) => Drift.Step(alarm, verdict, profile)), profile);

    private static void WalkAlong(IEnumerable<CheckRow> path)
    {
        var alarm = 0;
        foreach (var row in path)
        {
            alarm = Drift.Step(alarm, Profiles.VerdictOf(row.Text("outcome")), RowProfile.Standard);

            Assert.Equal(row.Whole("alarm_points"), alarm);
            Assert.Equal(SignNamed(row.Text("state")), Drift.SignOf(alarm, RowProfile.Standard));
        }
    }

    private static DriftSign SignNamed(string state) =>
        state switch
        {
            "AMBER" => DriftSign.Watch,
            "RED" => DriftSign.CheckAgain,
            _ => DriftSign.Steady,
        };
}
