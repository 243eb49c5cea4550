using Academy.Competence.Forecasts;
using CsCheck;

namespace Academy.Competence.Tests.Forecasts;

public class LearningCurveTests
{
    // data/competence/learning_and_eb.json, R 4.2.2
    [Theory]
    [InlineData("a")]
    [InlineData("b")]
    [InlineData("c")]
    [InlineData("d")]
    public void A_curve_agrees_with_the_check_values(string set)
    {
        var check = CheckFigures.Read("competence/learning_and_eb.json").GetProperty("learning_curve").GetProperty(set);
        var curve = LearningCurve.Of([.. check.GetProperty("sequence").GetString()!.Select(mark => mark == 'F')]);
        var next = check.GetProperty("next_n").GetInt32();

        Assert.Equal(check.Number("alpha"), curve.Start, 1e-8);
        Assert.Equal(check.Number("gamma"), curve.Pace, 1e-8);
        Assert.Equal(check.Number("se_alpha"), curve.StartError, 1e-8);
        Assert.Equal(check.Number("se_gamma"), curve.PaceError, 1e-8);
        Assert.Equal(check.Number("cov"), curve.Covariance, 1e-8);
        Assert.Equal(check.Number("p_next"), curve.ChanceAt(next), 1e-8);
        Assert.Equal(check.Number("p_next_lo90"), curve.RangeAt(next).Lower, 1e-8);
        Assert.Equal(check.Number("p_next_hi90"), curve.RangeAt(next).Upper, 1e-8);
        Assert.Equal(1, curve.GroomsUntil(.1) / check.Number("n_to_10pct"), 1e-6);
    }

    [Fact]
    public void Without_grooms_it_is_what_is_expected_of_anybody()
    {
        var curve = LearningCurve.Of([]);

        Assert.Equal((.2, .7), (curve.Start, curve.Pace));
        Assert.Equal((1, .4), (Math.Round(curve.StartError, 9), Math.Round(curve.PaceError, 9)));
    }

    [Fact]
    public void It_never_breaks_whatever_the_grooms_were() =>
        Gen
            .Bool.List[0, 80]
            .Sample(grooms =>
            {
                var curve = LearningCurve.Of(grooms);
                Assert.True(double.IsFinite(curve.Start) && double.IsFinite(curve.Pace));
                Assert.InRange(curve.ChanceAt(grooms.Count + 1), 0, 1);
            });
}
