using MathNet.Numerics.Distributions;

namespace Academy.Competence.Forecasts;

/// <summary>How many rated grooms of a skill somebody gets in a week, with how sure that is: a Gamma distribution.</summary>
/// <param name="Grooms">Its shape: grooms seen, with those the start is worth.</param>
/// <param name="Weeks">Its rate: weeks watched, with those the start is worth.</param>
/// <remarks>
/// Grooms come as a Poisson stream. The start (prior) is worth the salon's mean over one week, so somebody new is expected to get
/// what others get.
/// </remarks>
public sealed record GroomRate(double Grooms, double Weeks)
{
    /// <summary>The mean, in grooms a week.</summary>
    public double Mean => Grooms / Weeks;

    /// <summary>The rate after so many grooms were seen in so many weeks.</summary>
    public GroomRate After(int grooms, double weeks) => new(Grooms + grooms, Weeks + weeks);

    /// <summary>The mean number of grooms in the next weeks.</summary>
    public double MeanIn(double weeks) => Mean * weeks;

    /// <summary>The variance of that number: a negative binomial distribution.</summary>
    public double VarianceIn(double weeks) => MeanIn(weeks) * (Weeks + weeks) / Weeks;

    /// <summary>The chance of at least so many grooms in the next weeks.</summary>
    public double ChanceOf(int grooms, double weeks) =>
        grooms <= 0 ? 1
        : weeks <= 0 ? 0
        : Beta.CDF(grooms, Grooms, weeks / (weeks + Weeks));

    /// <summary>The weeks within which so many grooms come with this chance.</summary>
    /// <remarks>(b + t) B / (1 - B), with B the quantile of a Beta(m, a + k): no search is needed.</remarks>
    public double WeeksUntil(int grooms, double chance)
    {
        var share = Statistics.Proportion.BetaQuantile(grooms, Grooms, chance);
        return Weeks * share / (1 - share);
    }
}
