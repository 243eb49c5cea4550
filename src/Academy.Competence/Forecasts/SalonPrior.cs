using MathNet.Numerics;
using MathNet.Numerics.Distributions;

namespace Academy.Competence.Forecasts;

/// <summary>How often grooms of one skill need fixing across the salon: the Beta distribution that its people come from.</summary>
/// <param name="A">Its first shape.</param>
/// <param name="B">Its second shape.</param>
/// <remarks>
/// Empirical Bayes on a Beta-binomial. The sum of the shapes has a prior, ln(a + b) from N(ln 20, 1), so that five people who
/// happen to be alike do not make it infinite. Where nobody in the salon ever needed fixing, or everybody always did, no shape fits
/// best; then the mean is (0 + .5) or (n + .5) of (n + 1), as Jeffreys' prior has it, and the sum 20. The figures are ours.
/// </remarks>
public sealed record SalonPrior(double A, double B)
{
    private const double LogOfTwenty = 2.995732273553991;

    /// <summary>The distribution that fits these people best.</summary>
    /// <param name="people">For each how many of their rated grooms needed fixing, and of how many; none gives a mean of 1 in 10.</param>
    public static SalonPrior Of(IReadOnlyCollection<(int Unsuitable, int Rated)> people)
    {
        if (people.Count == 0)
            return new(2, 18);
        var (unsuitable, rated) = (people.Sum(one => one.Unsuitable), people.Sum(one => one.Rated));
        if (unsuitable == 0 || unsuitable == rated)
            return WithMean((unsuitable + .5) / (rated + 1));

        var found = FindMinimum.OfFunction(
            (a, b) => -Worth(people, Math.Exp(a), Math.Exp(b)),
            Math.Log(2),
            Math.Log(18),
            tolerance: 1e-10,
            maxIterations: 5000
        );
        return new(Math.Exp(found.Item1), Math.Exp(found.Item2));
    }

    /// <summary>The chance that somebody with this record truly needs fixing more often than this.</summary>
    public double ChanceAbove(double rate, int unsuitable, int rated) =>
        1 - Beta.CDF(A + unsuitable, B + rated - unsuitable, rate);

    /// <summary>What somebody with this record is expected to need fixing, on average.</summary>
    public double MeanOf(int unsuitable, int rated) => (A + unsuitable) / (A + B + rated);

    /// <summary>The 90 % range of that.</summary>
    public Statistics.RateRange RangeOf(int unsuitable, int rated) =>
        new(
            Statistics.Proportion.BetaQuantile(A + unsuitable, B + rated - unsuitable, .05),
            Statistics.Proportion.BetaQuantile(A + unsuitable, B + rated - unsuitable, .95)
        );

    private static SalonPrior WithMean(double mean) => new(20 * mean, 20 * (1 - mean));

    private static double Worth(IEnumerable<(int Unsuitable, int Rated)> people, double a, double b) =>
        people.Sum(one => LogOfOne(one.Unsuitable, one.Rated, a, b)) + Normal.PDFLn(LogOfTwenty, 1, Math.Log(a + b));

    private static double LogOfOne(int unsuitable, int rated, double a, double b) =>
        SpecialFunctions.BinomialLn(rated, unsuitable)
        + SpecialFunctions.BetaLn(unsuitable + a, rated - unsuitable + b)
        - SpecialFunctions.BetaLn(a, b);
}
