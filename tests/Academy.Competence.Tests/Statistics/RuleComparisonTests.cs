using Academy.Competence.Statistics;
using MathNet.Numerics.Distributions;

namespace Academy.Competence.Tests.Statistics;

/// <summary>Why a row, and not one of the simpler rules: what each lets through, exactly.</summary>
/// <remarks>data/competence/rule_comparison.csv, exact by another program. The simpler rules live here, not in the product.</remarks>
public class RuleComparisonTests
{
    private static readonly string[] s_constant = ["p=0.05", "p=0.10", "p=0.15", "p=0.20", "p=0.25", "p=1/3", "p=0.40", "p=0.50"];

    private delegate bool Rule(int grooms, int unsuitable);

    [Fact]
    public void A_count_alone_certifies_everybody() => AssertAgrees("A count only", (grooms, _) => grooms >= 20);

    [Fact]
    public void A_percentage_of_everything_punishes_a_beginner_for_having_been_one() =>
        AssertAgrees("B 20+", (grooms, unsuitable) => grooms >= 20 && 10 * unsuitable <= grooms);

    [Fact]
    public void A_95_percent_bound_looked_at_after_every_groom_is_wrong_18_times_in_100() =>
        AssertAgrees("C Wilson", (grooms, bad) => grooms >= 10 && Proportion.WilsonAtMost(bad, grooms) <= 1.0 / 3);

    [Fact]
    public void A_posterior_of_95_percent_looked_at_after_every_groom_is_wrong_16_times_in_100() =>
        AssertAgrees("D Beta", (grooms, bad) => grooms >= 10 && BelowAThird(grooms, bad) >= .95);

    [Fact]
    public void A_posterior_of_99_percent_makes_a_learner_wait() =>
        AssertAgrees("E Beta", (grooms, bad) => grooms >= 10 && BelowAThird(grooms, bad) >= .99);

    [Theory]
    [InlineData("F LC-CUSUM", 15)]
    [InlineData("G LC-CUSUM", 16)]
    public void A_row_keeps_its_promise_and_forgets_the_first_weeks(string rule, int marksToFill)
    {
        var row = new RowProfile(p0: .10, marksTaken: 4, marksToFill);

        AssertAgrees(Row(rule), rateAt => RowChain.FillingAt(row, rateAt));
    }

    private static double BelowAThird(int grooms, int bad) => Beta.CDF(1 + bad, 1 + grooms - bad, 1.0 / 3);

    private static void AssertAgrees(string name, Rule rule) => AssertAgrees(Row(name), rateAt => ReadyAt(rule, rateAt));

    private static void AssertAgrees(CheckRow row, Func<Func<int, double>, IEnumerable<double>> readyAt)
    {
        foreach (var column in s_constant)
            Assert.Equal(row.Number(column), readyAt(_ => RateOf(column)).Take(50).Sum(), 1e-4);

        var learner = readyAt(groom => .08 + (.52 * Math.Exp(-(groom - 1) / 10.0))).Take(300).ToArray();
        Assert.Equal(row.Number("learner_by50"), learner.Take(50).Sum(), 1e-4);
        Assert.Equal(row.Number("learner_by100"), learner.Take(100).Sum(), 1e-4);
        Assert.Equal(row.Whole("learner_median"), Median(learner));
    }

    private static CheckRow Row(string rule) =>
        CheckValues
            .Read("competence/rule_comparison.csv", rows: 7)
            .Single(row => row.Text("rule").StartsWith(rule, StringComparison.Ordinal));

    private static double RateOf(string column) =>
        column == "p=1/3" ? 1.0 / 3 : double.Parse(column[2..], System.Globalization.CultureInfo.InvariantCulture);

    private static int Median(double[] chances)
    {
        var sum = 0.0;
        return 1 + Array.FindIndex(chances, chance => (sum += chance) >= .5);
    }

    // The chance that the rule says ready for the first time at groom 1, 2, 3 ...: it runs over how many were unsuitable.
    private static IEnumerable<double> ReadyAt(Rule rule, Func<int, double> rateAt)
    {
        double[] waiting = [1];
        for (var groom = 1; ; groom++)
        {
            var (next, ready, rate) = (new double[groom + 1], 0.0, rateAt(groom));
            for (var unsuitable = 0; unsuitable <= groom; unsuitable++)
            {
                var suitableNow = unsuitable < groom ? waiting[unsuitable] * (1 - rate) : 0;
                var unsuitableNow = unsuitable > 0 ? waiting[unsuitable - 1] * rate : 0;
                if (rule(groom, unsuitable))
                    ready += suitableNow + unsuitableNow;
                else
                    next[unsuitable] = suitableNow + unsuitableNow;
            }
            waiting = next;
            yield return ready;
        }
    }
}
