using Academy.Competence.Statistics;
using CsCheck;

namespace Academy.Competence.Tests.Statistics;

public class ProportionTests
{
    private static readonly Gen<(int X, int N)> s_counts = from n in Gen.Int[1, 400] from x in Gen.Int[0, n] select (x, n);

    // data/competence/wilson.csv: scipy, statsmodels and R agree; published examples are named in its last column
    [Fact]
    public void Wilsons_range_agrees_with_the_check_values() =>
        Assert.All(
            CheckValues.Read("competence/wilson.csv", rows: 176),
            row =>
            {
                var (x, n, confidence) = (row.Whole("x"), row.Whole("n"), row.Number("conf"));

                AssertRange(row, Proportion.Wilson(x, n, confidence));
                Assert.Equal(row.Number("lower_one_sided"), Proportion.WilsonAtLeast(x, n, confidence), 1e-9);
                Assert.Equal(row.Number("upper_one_sided"), Proportion.WilsonAtMost(x, n, confidence), 1e-9);
            }
        );

    // data/competence/clopper_pearson.csv: scipy, statsmodels and R agree; published examples are named in its last column
    [Fact]
    public void Clopper_and_Pearsons_range_agrees_with_the_check_values() =>
        Assert.All(
            CheckValues.Read("competence/clopper_pearson.csv", rows: 229),
            row =>
            {
                var (x, n, confidence) = (row.Whole("x"), row.Whole("n"), row.Number("conf"));

                AssertRange(row, Proportion.ClopperPearson(x, n, confidence));
                Assert.Equal(row.Number("lower_one_sided"), Proportion.ClopperPearsonAtLeast(x, n, confidence), 1e-9);
                Assert.Equal(row.Number("upper_one_sided"), Proportion.ClopperPearsonAtMost(x, n, confidence), 1e-9);
            }
        );

    // data/competence/beta_quantiles.csv: scipy (Boost), checked with R and 40 digits of mpmath
    [Fact]
    public void The_beta_quantile_agrees_with_the_check_values() =>
        Assert.All(
            CheckValues.Read("competence/beta_quantiles.csv", rows: 312),
            row =>
                Assert.Equal(
                    row.Number("quantile"),
                    Proportion.BetaQuantile(row.Number("a"), row.Number("b"), row.Number("p")),
                    1e-9
                )
        );

    // Hall, Carter and O'Neill 2020, Scientific Reports 10:9128: 56 of 395 heat events were fatal, 14.18 % (11.08-17.96)
    [Fact]
    public void Wilsons_range_reproduces_a_published_one()
    {
        var (lower, upper) = Proportion.Wilson(56, 395);

        Assert.Equal(.1108, lower, .00005);
        Assert.Equal(.1796, upper, .00005);
    }

    // The rule of three: nothing in n grooms proves only a rate below about 3/n (errickson.net)
    [Theory]
    [InlineData(30, .10)]
    [InlineData(100, .03)]
    public void No_incident_in_n_grooms_proves_only_the_rule_of_three(int n, double about) =>
        Assert.Equal(about, Proportion.ClopperPearsonAtMost(0, n), .006);

    [Fact]
    public void Nothing_and_everything_have_open_ends_that_are_exact()
    {
        Assert.Equal(0, Proportion.Wilson(0, 7).Lower);
        Assert.Equal(1, Proportion.Wilson(7, 7).Upper);
        Assert.Equal(0, Proportion.ClopperPearson(0, 7).Lower);
        Assert.Equal(1, Proportion.ClopperPearson(7, 7).Upper);
    }

    // Computed from a flat prior by another program, in whole hundredths: the words beside a row of 20
    [Theory]
    [InlineData(0, .002, .13)]
    [InlineData(1, .02, .21)]
    [InlineData(2, .04, .27)]
    [InlineData(3, .07, .33)]
    [InlineData(4, .10, .38)]
    public void The_last_twenty_say_what_such_groomers_typically_need(int unsuitable, double lower, double upper)
    {
        var typical = Proportion.Typical(unsuitable, rated: 20);

        Assert.Equal(lower, typical.Lower, .005);
        Assert.Equal(upper, typical.Upper, .005);
    }

    [Fact]
    public void Nothing_rated_says_nearly_nothing()
    {
        var typical = Proportion.Typical(unsuitable: 0, rated: 0);

        Assert.Equal(.05, typical.Lower, 1e-12);
        Assert.Equal(.95, typical.Upper, 1e-12);
    }

    [Theory]
    [InlineData(0, 0)]
    [InlineData(-1, 5)]
    [InlineData(6, 5)]
    public void Counts_that_are_no_share_are_refused(int x, int n)
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => Proportion.Wilson(x, n));
        Assert.Throws<ArgumentOutOfRangeException>(() => Proportion.ClopperPearson(x, n));
    }

    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(double.NaN)]
    public void A_confidence_of_nothing_or_of_certainty_is_refused(double confidence)
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => Proportion.Wilson(1, 5, confidence));
        Assert.Throws<ArgumentOutOfRangeException>(() => Proportion.ClopperPearson(1, 5, confidence));
        Assert.Throws<ArgumentOutOfRangeException>(() => Proportion.Typical(1, 5, confidence));
        Assert.Throws<ArgumentOutOfRangeException>(() => Proportion.BetaQuantile(1, 5, confidence));
    }

    [Fact]
    public void A_beta_needs_both_its_shapes()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => Proportion.BetaQuantile(0, 5, .5));
        Assert.Throws<ArgumentOutOfRangeException>(() => Proportion.BetaQuantile(5, double.NaN, .5));
    }

    [Fact]
    public void A_range_holds_the_share_that_was_seen() =>
        Gen.Select(s_counts, Gen.Double[.01, .999])
            .Sample(
                (counts, confidence) =>
                {
                    var seen = (double)counts.X / counts.N;
                    AssertHolds(Proportion.Wilson(counts.X, counts.N, confidence), seen);
                    AssertHolds(Proportion.ClopperPearson(counts.X, counts.N, confidence), seen);
                }
            );

    [Fact]
    public void More_confidence_asks_for_a_wider_range() =>
        Gen.Select(s_counts, Gen.Double[.01, .999], Gen.Double[.01, .999])
            .Sample(
                (counts, one, other) =>
                {
                    var narrow = Proportion.Wilson(counts.X, counts.N, Math.Min(one, other));
                    var wide = Proportion.Wilson(counts.X, counts.N, Math.Max(one, other));
                    Assert.True(wide.Lower <= narrow.Lower + 1e-12 && wide.Upper >= narrow.Upper - 1e-12);
                }
            );

    [Fact]
    public void What_holds_for_suitable_holds_mirrored_for_unsuitable() =>
        s_counts.Sample(counts =>
        {
            var (one, other) = (Proportion.Wilson(counts.X, counts.N), Proportion.Wilson(counts.N - counts.X, counts.N));
            Assert.Equal(one.Lower, 1 - other.Upper, 1e-12);
        });

    private static void AssertRange(CheckRow row, RateRange range)
    {
        Assert.Equal(row.Number("lower"), range.Lower, 1e-9);
        Assert.Equal(row.Number("upper"), range.Upper, 1e-9);
    }

    private static void AssertHolds(RateRange range, double share) =>
        Assert.InRange(share, range.Lower - 1e-12, range.Upper + 1e-12);
}
