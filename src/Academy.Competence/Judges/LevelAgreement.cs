using MathNet.Numerics.Distributions;

namespace Academy.Competence.Judges;

/// <summary>How much of the differences between ratings lies in the grooms, when every judge rated every groom.</summary>
/// <param name="Grooms">How many were rated.</param>
/// <param name="Judges">By how many judges each.</param>
/// <param name="Same">
/// Absolute agreement, ICC(2,1): 1 where all give the same level. Somebody is cleared by levels, so this is the one that counts.
/// </param>
/// <param name="SameOrder">Consistency, ICC(3,1): 1 where all put the grooms into one order, whatever their levels.</param>
/// <param name="SameOfMean">ICC(2,k): absolute agreement of the mean of so many judges.</param>
/// <param name="Range">The 95 % range of <paramref name="Same"/>.</param>
/// <remarks>
/// Shrout and Fleiss 1979 (doi 10.1037/0033-2909.86.2.420). Where <paramref name="SameOrder"/> is high and
/// <paramref name="Same"/> is low, the judges see the same differences and set the bar at different heights.
/// </remarks>
public sealed record LevelAgreement(
    int Grooms,
    int Judges,
    double Same,
    double SameOrder,
    double SameOfMean,
    (double Lower, double Upper) Range
)
{
    /// <summary>The agreement of these ratings; null with fewer than two grooms or judges, or where nothing differs.</summary>
    /// <param name="ratings">For each groom the level by each judge, all in the same order.</param>
    public static LevelAgreement? Of(IReadOnlyList<IReadOnlyList<double>> ratings)
    {
        if (ratings.Count < 2 || ratings[0].Count < 2 || ratings.Any(groom => groom.Count != ratings[0].Count))
            return null;

        var parts = MeanSquares.Of(ratings);
        return parts.OfGrooms < 1e-12 && parts.OfJudges < 1e-12 && parts.OfRest < 1e-12 ? null : Of(parts);
    }

    private static LevelAgreement Of(MeanSquares parts)
    {
        var (n, k, between, judges, rest) = (
            (double)parts.Grooms,
            (double)parts.Judges,
            parts.OfGrooms,
            parts.OfJudges,
            parts.OfRest
        );
        var same = (between - rest) / (between + ((k - 1) * rest) + (k * (judges - rest) / n));
        return new(
            parts.Grooms,
            parts.Judges,
            same,
            (between - rest) / (between + ((k - 1) * rest)),
            (between - rest) / (between + ((judges - rest) / n)),
            rest < 1e-12 ? (same, same) : RangeOf(same, parts)
        );
    }

    // Shrout and Fleiss 1979, by Satterthwaite's degrees of freedom.
    private static (double Lower, double Upper) RangeOf(double same, MeanSquares parts)
    {
        var (n, k, between, judges, rest) = (
            (double)parts.Grooms,
            (double)parts.Judges,
            parts.OfGrooms,
            parts.OfJudges,
            parts.OfRest
        );
        var (ratio, spread) = (judges / rest, (n * (1 + ((k - 1) * same))) - (k * same));
        var freedom =
            (k - 1)
            * (n - 1)
            * Math.Pow((k * same * ratio) + spread, 2)
            / (((n - 1) * k * k * same * same * ratio * ratio) + (spread * spread));
        var (low, high) = (FisherSnedecor.InvCDF(n - 1, freedom, .975), FisherSnedecor.InvCDF(freedom, n - 1, .975));
        var others = (k * judges) + (((k * n) - k - n) * rest);
        return (
            n * (between - (low * rest)) / ((low * others) + (n * between)),
            n * ((high * between) - rest) / (others + (n * high * between))
        );
    }

    /// <summary>The mean squares of a two-way layout without repetition.</summary>
    private sealed record MeanSquares(int Grooms, int Judges, double OfGrooms, double OfJudges, double OfRest)
    {
        public static MeanSquares Of(IReadOnlyList<IReadOnlyList<double>> ratings)
        {
            var (n, k) = (ratings.Count, ratings[0].Count);
            var all = ratings.SelectMany(groom => groom).Average();
            var ofGrooms = k * ratings.Sum(groom => Square(groom.Average() - all));
            var ofJudges = n * Enumerable.Range(0, k).Sum(judge => Square(ratings.Average(groom => groom[judge]) - all));
            var total = ratings.Sum(groom => groom.Sum(level => Square(level - all)));
            return new(n, k, ofGrooms / (n - 1), ofJudges / (k - 1), (total - ofGrooms - ofJudges) / ((n - 1.0) * (k - 1)));
        }

        private static double Square(double number) => number * number;
    }
}
