using Academy.Competence.Statistics;

namespace Academy.Competence.Tests.Statistics;

public class RowPromiseTests
{
    // Computed with the exact chain by another program, and printed to the digits given here.
    public static TheoryData<RowProfile, double, double, double, double> Printed { get; } =
        new()
        {
            // profile, not fine let through, fine let through, mean grooms when fine, when twice as good
            { RowProfile.Basic, .036, .885, 31.9, 20.5 },
            { RowProfile.Standard, .0496, .958, 26.0, 19.1 },
            { RowProfile.Strict, .039, .982, 23.7, 19.8 },
            { RowProfile.Strictest, .048, .867, 36.0, 28.2 },
        };

    [Theory]
    [MemberData(nameof(Printed))]
    public void A_profile_promises_both_its_error_rates(
        RowProfile profile,
        double notFine,
        double fine,
        double mean,
        double meanBetter
    )
    {
        var promise = RowPromise.Of(profile);

        Assert.Equal(notFine, promise.NotFineThrough, .0005);
        Assert.Equal(fine, promise.FineThrough, .0005);
        Assert.Equal(mean, promise.MeanGroomsWhenFine, .06);
        Assert.Equal(meanBetter, promise.MeanGroomsWhenTwiceAsGood, .06);
    }

    [Fact]
    public void The_standard_row_lets_1_in_3_through_1_time_in_20_and_1_in_5_about_half_of_the_time()
    {
        var promise = RowPromise.Of(RowProfile.Standard);

        Assert.Equal(.0509, promise.OneInThreeThrough, .00005);
        Assert.Equal(.4839, promise.OneInFiveThrough, .00005);
    }

    // Same source: the short row within 20 rated grooms.
    [Theory]
    [InlineData(.05, .970, 10.1)]
    [InlineData(.10, .867, 13.1)]
    [InlineData(.20, .546, 24.5)]
    [InlineData(1.0 / 3, .193, 73.1)]
    public void The_short_row_is_as_kind_as_it_says(double rate, double through, double mean)
    {
        Assert.Equal(through, RowChain.ChanceFullBy(RowProfile.Short, 20, rate), .0005);
        Assert.Equal(mean, RowChain.MeanGrooms(RowProfile.Short, rate), .05);
    }

    [Fact]
    public void Five_suitable_in_a_row_let_1_in_3_through_two_times_in_three()
    {
        var fiveInARow = new RowProfile(p0: .05, marksTaken: 5, marksToFill: 5);

        Assert.Equal(.65, RowChain.ChanceFullBy(fiveInARow, 20, 1.0 / 3), .005);
    }

    // Same source: a senior who waves through a share of what needed fixing makes 1 in 3 look better than it is.
    [Theory]
    [InlineData(0, .051)]
    [InlineData(.1, .100)]
    [InlineData(.2, .183)]
    [InlineData(.3, .312)]
    [InlineData(.4, .484)]
    public void A_kind_senior_lets_1_in_3_through_more_often(double wavedThrough, double through) =>
        Assert.Equal(through, RowChain.ChanceFullBy(RowProfile.Standard, 50, (1 - wavedThrough) / 3), .0005);

    // Same source: 9 easy dogs (1 in 20) to 1 hard one (9 in 20) are 9 in 100 together.
    [Fact]
    public void Hard_dogs_hide_among_easy_ones_so_they_need_a_row_of_their_own() =>
        Assert.Equal(.975, RowChain.ChanceFullBy(RowProfile.Standard, 50, (.9 * .05) + (.1 * .45)), .0005);

    // Same source: what more marks buy at 1 in 3, and what they cost someone at 1 in 10
    [Theory]
    [InlineData(18, .0172, 32.0)]
    [InlineData(20, .0082, 36.0)]
    [InlineData(22, .0039, 40.0)]
    [InlineData(24, .0018, 44.0)]
    public void A_longer_row_lets_fewer_through_and_costs_grooms(int marksToFill, double through, double mean)
    {
        var row = new RowProfile(p0: .10, marksTaken: 4, marksToFill);

        Assert.Equal(through, RowChain.ChanceFullBy(row, 50, 1.0 / 3), .00006);
        Assert.Equal(mean, RowChain.MeanGrooms(row, .10), .06);
    }
}
