using Academy.Competence.Statistics;
using CsCheck;

namespace Academy.Competence.Tests.Statistics;

public class RowProfileTests
{
    // data/competence/lc_cusum.csv, third line of its head
    public static TheoryData<RowProfile, double, int, int, double, double> Presets { get; } =
        new()
        {
            { RowProfile.Basic, .15, 3, 15, .3720813644, .3028257526 },
            { RowProfile.Standard, .10, 4, 15, .3345139656, .3018771109 },
            { RowProfile.Strict, .05, 6, 17, .2921234220, .2941922309 },
            { RowProfile.Short, .05, 6, 8, .2921234220, .2941922309 },
            { RowProfile.Strictest, .05, 8, 23, .2022790685, .1747031582 },
        };

    [Theory]
    [MemberData(nameof(Presets))]
    public void A_preset_states_its_marks_and_both_rates(
        RowProfile profile,
        double p0,
        int taken,
        int toFill,
        double p1,
        double unit
    )
    {
        Assert.Equal((p0, taken, toFill), (profile.P0, profile.MarksTaken, profile.MarksToFill));
        Assert.Equal(p1, profile.P1, 1e-10);
        Assert.Equal(unit, profile.Unit, 1e-10);
    }

    [Theory]
    [InlineData(0.0, 4, 15)] // nobody is perfect
    [InlineData(-.1, 4, 15)]
    [InlineData(.2, 4, 15)] // at 1 in 5 a row of -4 stands still
    [InlineData(.5, 1, 15)]
    [InlineData(double.NaN, 4, 15)]
    [InlineData(.1, 0, 15)]
    [InlineData(.1, -4, 15)]
    [InlineData(.001, 201, 15)]
    [InlineData(.1, 4, 0)]
    [InlineData(.1, 4, 201)]
    public void Numbers_with_which_marks_mean_nothing_are_refused(double p0, int marksTaken, int marksToFill) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => new RowProfile(p0, marksTaken, marksToFill));

    [Fact]
    public void The_rate_that_is_not_fine_lies_above_the_standstill_and_solves_its_equation() =>
        Profiles.Any.Sample(profile =>
        {
            Assert.InRange(profile.P1, 1.0 / (profile.MarksTaken + 1), 1);
            Assert.Equal(Math.Log(profile.P1 / profile.P0), profile.MarksTaken * profile.Unit, 1e-9);
        });

    [Fact]
    public void Even_the_most_extreme_rates_are_solved() =>
        Assert.All(
            [new RowProfile(1e-9, 1, 1), new RowProfile(.4999, 1, 1), new RowProfile(.004, 200, 200)],
            profile => Assert.Equal(Math.Log(profile.P1 / profile.P0), profile.MarksTaken * profile.Unit, 1e-6)
        );
}
