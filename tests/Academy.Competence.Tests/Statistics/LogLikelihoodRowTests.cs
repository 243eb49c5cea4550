using Academy.Competence.Statistics;
using CsCheck;

namespace Academy.Competence.Tests.Statistics;

public class LogLikelihoodRowTests
{
    // data/competence/lc_cusum_general.csv: exact enumeration by another program
    [Fact]
    public void The_general_form_agrees_with_the_check_values() =>
        Assert.All(
            CheckValues.Read("competence/lc_cusum_general.csv", rows: 39),
            row =>
            {
                var general = new LogLikelihoodRow(row.Number("p0"), row.Number("p1"), row.Number("h"));

                Assert.Equal(row.Number("w_success"), general.WhenSuitable, 1e-10);
                Assert.Equal(row.Number("w_failure"), general.WhenUnsuitable, 1e-10);
                foreach (var grooms in (int[])[30, 50, 100])
                    Assert.Equal(row.Number($"by_{grooms}"), general.ChanceFullBy(grooms, row.Number("true_p")), 1e-8);
            }
        );

    [Fact]
    public void With_a_profiles_two_rates_it_is_that_profiles_row() =>
        Gen.Select(Profiles.Any, Gen.Double[0, 1], Gen.Int[0, 40])
            .Sample(
                (profile, rate, grooms) =>
                    Assert.Equal(
                        RowChain.ChanceFullBy(profile, grooms, rate),
                        LogLikelihoodRow.Of(profile).ChanceFullBy(grooms, rate),
                        1e-9
                    )
            );

    [Theory]
    [InlineData(0, .3, 3)]
    [InlineData(.3, .3, 3)]
    [InlineData(.3, .1, 3)]
    [InlineData(.1, 1, 3)]
    [InlineData(.1, .3, 0)]
    [InlineData(.1, .3, double.PositiveInfinity)]
    [InlineData(double.NaN, .3, 3)]
    public void Rates_in_the_wrong_order_and_limits_that_mean_nothing_are_refused(double p0, double p1, double limit) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => new LogLikelihoodRow(p0, p1, limit));

    [Fact]
    public void Nothing_that_is_not_a_verdict_moves_the_evidence() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => LogLikelihoodRow.Of(RowProfile.Basic).Step(1, (Verdict)7));
}
