using System.Text.Json;
using Academy.Competence.Forecasts;
using Academy.Competence.Statistics;

namespace Academy.Competence.Tests.Forecasts;

public class ForecastTests
{
    private static readonly RowProfile Standard = RowProfile.Standard;

    // data/competence/forecast.json, computed exactly, and by a simulation of 100,000 paths that must agree within .006
    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(2)]
    public void When_a_row_is_full_agrees_with_the_check_values(int place)
    {
        var check = CheckFigures.Read("competence/forecast.json").GetProperty("cases")[place];
        var forecast = Of(check);
        var (weeks, chances) = (check.Numbers("weeks"), check.Numbers("P_ready_within"));
        Assert.Equal(8, weeks.Length);
        for (var one = 0; one < weeks.Length; one++)
            Assert.Equal(chances[one], forecast.ChanceWithin(weeks[one]), 1e-6);
        if (check.TryGetProperty("mc", out var simulated))
            Assert.All(weeks.Zip(simulated.Numbers()), one => Assert.Equal(one.Second, forecast.ChanceWithin(one.First), .006));
        AssertWeeks(check.GetProperty("weeks_q50"), forecast.WeeksUntil(.5));
        AssertWeeks(check.GetProperty("weeks_q80"), forecast.WeeksUntil(.8));
        AssertGrooms(check.GetProperty("grooms_q50"), forecast.GroomsUntil(.5));
        AssertGrooms(check.GetProperty("grooms_q80"), forecast.GroomsUntil(.8));
        if (check.TryGetProperty("P_never_within_400_grooms", out var never))
            Assert.Equal(never.GetDouble(), forecast.ChanceNotOnCourse, 1e-6);
    }

    // data/competence/negbinom.csv, scipy and R
    [Fact]
    public void How_many_grooms_come_and_when_agrees_with_the_check_values() =>
        Assert.All(
            CheckValues.Read("competence/negbinom.csv", rows: 15),
            row =>
            {
                var rate = new GroomRate(row.Number("a"), row.Number("b")).After(row.Whole("k"), row.Number("t"));

                Assert.Equal(row.Number("mean_count"), rate.MeanIn(row.Number("T")), 1e-8);
                Assert.Equal(row.Number("var_count"), rate.VarianceIn(row.Number("T")), 1e-8);
                Assert.Equal(row.Number("P_count_ge_m"), rate.ChanceOf(row.Whole("m"), row.Number("T")), 1e-8);
                Assert.Equal(row.Number("weeks_q50"), rate.WeeksUntil(row.Whole("m"), .5), 1e-7);
                Assert.Equal(row.Number("weeks_q80"), rate.WeeksUntil(row.Whole("m"), .8), 1e-7);
                Assert.Equal(row.Number("weeks_q90"), rate.WeeksUntil(row.Whole("m"), .9), 1e-7);
            }
        );

    [Fact]
    public void No_grooms_at_all_are_certain_and_none_come_in_no_time()
    {
        var rate = new GroomRate(2, 1);

        Assert.Equal(1, rate.ChanceOf(0, 4));
        Assert.Equal(0, rate.ChanceOf(1, 0));
    }

    [Fact]
    public void More_marks_bring_the_day_nearer()
    {
        var rate = new GroomRate(14, 5);
        var weeks = Enumerable
            .Range(0, 15)
            .Select(marks => Forecast.AsNow(Standard, marks, 1, 20, rate).WeeksUntil(.5)!.Value)
            .ToArray();

        Assert.Equal(weeks.OrderDescending(), weeks);
        Assert.Equal(15, weeks.Distinct().Count());
    }

    private static Forecast Of(JsonElement check)
    {
        var rate = new GroomRate(check.Number("rate_shape"), check.Number("rate_rate"));
        var marks = (int)check.Number("start_points");
        return check.TryGetProperty("alpha", out var start)
            ? Forecast.Learning(
                Standard,
                marks,
                new LearningCurve(start.GetDouble(), check.Number("gamma"), 0, 0, 0),
                (int)check.Number("grooms_done"),
                rate
            )
            : Forecast.AsNow(Standard, marks, (check.Number("beta_a"), check.Number("beta_b")), rate);
    }

    private static void AssertWeeks(JsonElement expected, double? found)
    {
        if (expected.ValueKind == JsonValueKind.Null)
            Assert.Null(found);
        else
            Assert.Equal(expected.GetDouble(), found!.Value, 1e-4);
    }

    private static void AssertGrooms(JsonElement expected, int? found) =>
        Assert.Equal(expected.ValueKind == JsonValueKind.Null ? null : expected.GetInt32(), found);
}
