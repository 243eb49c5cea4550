using Academy.Competence.Statistics;
using CsCheck;

namespace Academy.Competence.Tests.Statistics;

public class DriftChainTests
{
    // data/competence/cusum_oc.csv: exact chain by another program; R's surveillance package agrees for m = 4
    [Fact]
    public void How_soon_the_alarm_is_raised_agrees_with_the_check_values() =>
        Assert.All(
            CheckValues.Read("competence/cusum_oc.csv", rows: 72),
            row =>
            {
                var chain = new DriftChain(row.Whole("m"), row.Whole("H"));
                var rate = row.Text("p") == "0.3333333333" ? 1.0 / 3 : row.Number("p");

                Assert.Equal(1, chain.MeanGrooms(rate) / row.Number("ARL"), 1e-7);
                foreach (var grooms in (int[])[10, 20, 30, 50, 100])
                    Assert.Equal(row.Number($"by_{grooms}"), chain.ChanceBy(grooms, rate), 1e-8);
                Assert.Equal(row.Has("median") ? row.Whole("median") : null, chain.GroomsUntil(.5, rate));
            }
        );

    // The same source, for each row: someone at 1 in 20 meets watch and check again so seldom.
    [Theory]
    [InlineData(.15, 3, 374, 5143)]
    [InlineData(.10, 4, 340, 3701)]
    [InlineData(.05, 6, 274, 1905)]
    [InlineData(.05, 8, 222, 1076)]
    public void A_good_groomer_is_seldom_stopped_by_chance(double p0, int marksTaken, int toWatch, int toCheckAgain)
    {
        var profile = new RowProfile(p0, marksTaken, marksToFill: 15);

        Assert.Equal(toWatch, DriftChain.ToWatch(profile).MeanGrooms(.05), .5);
        Assert.Equal(toCheckAgain, DriftChain.ToCheckAgain(profile).MeanGrooms(.05), .5);
    }

    [Fact]
    public void A_limit_that_does_not_grow_with_the_marks_taken_would_stop_good_groomers() =>
        Assert.Equal(.31, new DriftChain(marksTaken: 8, limit: 12).ChanceBy(40, .05), .005);

    [Fact]
    public void Someone_who_never_needs_fixing_never_raises_an_alarm()
    {
        Assert.Equal(double.PositiveInfinity, DriftChain.ToWatch(RowProfile.Standard).MeanGrooms(0));
        Assert.Equal(0, DriftChain.ToWatch(RowProfile.Standard).ChanceBy(1000, 0));
    }

    [Fact]
    public void Someone_who_always_needs_fixing_raises_it_at_the_second_and_the_third_groom()
    {
        Assert.Equal(2, DriftChain.ToWatch(RowProfile.Strict).MeanGrooms(1));
        Assert.Equal(3, DriftChain.ToCheckAgain(RowProfile.Strict).MeanGrooms(1));
        Assert.Equal(3, DriftChain.ToCheckAgain(RowProfile.Strict).GroomsUntil(.5, 1));
    }

    [Fact]
    public void Numbers_that_mean_nothing_are_refused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => new DriftChain(marksTaken: 0, limit: 8).ChanceBy(1, .1));
        Assert.Throws<ArgumentOutOfRangeException>(() => new DriftChain(marksTaken: 4, limit: 0));
        Assert.Throws<ArgumentOutOfRangeException>(() => DriftChain.ToWatch(RowProfile.Basic).ChanceBy(-1, .1));
        Assert.Throws<ArgumentOutOfRangeException>(() => DriftChain.ToWatch(RowProfile.Basic).MeanGrooms(1.1));
    }

    [Fact]
    public void More_grooms_and_a_worse_groomer_make_an_alarm_no_less_likely() =>
        Gen.Select(Profiles.Any, Gen.Double[0, 1], Gen.Double[0, 1], Gen.Int[0, 80])
            .Sample(
                (profile, one, other, grooms) =>
                {
                    var chain = DriftChain.ToCheckAgain(profile);
                    var chance = chain.ChanceBy(grooms, Math.Min(one, other));

                    Assert.True(chain.ChanceBy(grooms + 1, Math.Min(one, other)) >= chance - 1e-12);
                    Assert.True(chain.ChanceBy(grooms, Math.Max(one, other)) >= chance - 1e-12);
                }
            );
}
