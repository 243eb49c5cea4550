using MathNet.Numerics.Distributions;

namespace Academy.Competence.Statistics;

/// <summary>A range of rates, both ends included.</summary>
/// <param name="Lower">The lower end, 0 or more.</param>
/// <param name="Upper">The upper end, 1 or less.</param>
public sealed record RateRange(double Lower, double Upper);

/// <summary>What x of n says about the rate behind it. For showing, never for deciding.</summary>
/// <remarks>
/// Looked at again after every groom a "95 %" bound is wrong 16 to 18 times in 100, so no rule of a threshold uses these.
/// Wilson's range is the one to show (Brown, Cai and DasGupta 2001 recommend it for small n); Clopper and Pearson's is
/// for where "at most" must be guaranteed. Both refuse an n below 1: no evidence has no range.
/// </remarks>
public static class Proportion
{
    /// <summary>Wilson's score range for <paramref name="x"/> of <paramref name="n"/>.</summary>
    /// <param name="x">How many of them, 0 to <paramref name="n"/>.</param>
    /// <param name="n">Of how many, 1 or more.</param>
    /// <param name="confidence">Between 0 and 1.</param>
    public static RateRange Wilson(int x, int n, double confidence = .95) =>
        new(WilsonAtLeast(x, n, EachSide(confidence)), WilsonAtMost(x, n, EachSide(confidence)));

    /// <summary>The rate is at least this, by Wilson's score with one side only; 0 for x = 0.</summary>
    public static double WilsonAtLeast(int x, int n, double confidence = .95) => 1 - WilsonAtMost(n - x, n, confidence);

    /// <summary>The rate is at most this, by Wilson's score with one side only; 1 for x = n.</summary>
    public static double WilsonAtMost(int x, int n, double confidence = .95)
    {
        Check(x, n);
        if (x == n)
            return 1;

        var z = Normal.InvCDF(mean: 0, stddev: 1, Rates.CheckedChance(confidence));
        var spread = z * Math.Sqrt(((double)x * (n - x) / n) + (z * z / 4));
        return (x + (z * z / 2) + spread) / (n + (z * z));
    }

    /// <summary>Clopper and Pearson's exact range for <paramref name="x"/> of <paramref name="n"/>.</summary>
    /// <param name="x">How many of them, 0 to <paramref name="n"/>.</param>
    /// <param name="n">Of how many, 1 or more.</param>
    /// <param name="confidence">Between 0 and 1; the range covers the rate at least so often.</param>
    public static RateRange ClopperPearson(int x, int n, double confidence = .95) =>
        new(ClopperPearsonAtLeast(x, n, EachSide(confidence)), ClopperPearsonAtMost(x, n, EachSide(confidence)));

    /// <summary>The rate is at least this, guaranteed with one side only; 0 for x = 0.</summary>
    public static double ClopperPearsonAtLeast(int x, int n, double confidence = .95)
    {
        Check(x, n);
        return x == 0 ? 0 : BetaQuantile(x, n - x + 1, 1 - Rates.CheckedChance(confidence));
    }

    /// <summary>The rate is at most this, guaranteed with one side only; 1 for x = n.</summary>
    public static double ClopperPearsonAtMost(int x, int n, double confidence = .95)
    {
        Check(x, n);
        return x == n ? 1 : BetaQuantile(x + 1, n - x, Rates.CheckedChance(confidence));
    }

    /// <summary>The range of rates that groomers with such a record typically have, for the words beside a row.</summary>
    /// <param name="unsuitable">How many of the last rated grooms needed fixing.</param>
    /// <param name="rated">Of how many, 0 to 20 by the salon's window.</param>
    /// <param name="chance">How much of the range to show, .90 by default.</param>
    /// <remarks>
    /// The middle of the posterior from a flat prior, Beta(1 + unsuitable, 1 + suitable). With 2 of 20 needing fixing: 4
    /// to 27 in 100. With nothing rated it is the flat prior itself.
    /// </remarks>
    public static RateRange Typical(int unsuitable, int rated, double chance = .90)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(rated);
        CheckShare(unsuitable, rated);
        var tail = 1 - EachSide(chance);
        return new(
            BetaQuantile(1 + unsuitable, 1 + rated - unsuitable, tail),
            BetaQuantile(1 + unsuitable, 1 + rated - unsuitable, 1 - tail)
        );
    }

    /// <summary>The number below which a Beta(<paramref name="a"/>, <paramref name="b"/>) lies with <paramref name="chance"/>.</summary>
    /// <param name="a">Above 0.</param>
    /// <param name="b">Above 0.</param>
    /// <param name="chance">Between 0 and 1.</param>
    /// <remarks>Good to 1e-9 absolute; where the answer is itself below 1e-10 its digits mean nothing.</remarks>
    public static double BetaQuantile(double a, double b, double chance)
    {
        if (!(a > 0 && b > 0))
            throw new ArgumentOutOfRangeException(nameof(a), a, "Both shapes of a Beta lie above 0.");

        return Beta.InvCDF(a, b, Rates.CheckedChance(chance));
    }

    private static double EachSide(double confidence) => (1 + Rates.CheckedChance(confidence)) / 2;

    private static void Check(int x, int n)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(n, 1);
        CheckShare(x, n);
    }

    private static void CheckShare(int x, int n)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(x);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(x, n);
    }
}
