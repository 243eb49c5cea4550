namespace Academy.Competence.Statistics;

/// <summary>Checks on the shares and counts that the exact chains are asked about.</summary>
internal static class Rates
{
    /// <summary>The rate itself, refused when it is no share from 0 to 1.</summary>
    public static double Checked(double rate) =>
        rate is >= 0 and <= 1 ? rate : throw new ArgumentOutOfRangeException(nameof(rate), rate, "A rate lies from 0 to 1.");

    /// <summary>The chance itself, refused when nothing or everything would be asked for.</summary>
    public static double CheckedChance(double chance) =>
        chance is > 0 and < 1
            ? chance
            : throw new ArgumentOutOfRangeException(nameof(chance), chance, "A chance asked for lies between 0 and 1.");

    /// <summary>The number of the first groom by which the sum of <paramref name="arrivals"/> reaches the chance.</summary>
    /// <returns>Null when it is not reached within <paramref name="atMost"/> grooms.</returns>
    public static int? FirstBy(this IEnumerable<double> arrivals, double chance, int atMost)
    {
        var sum = 0.0;
        var groom = 0;
        foreach (var arrived in arrivals.Take(atMost))
        {
            groom++;
            sum += arrived;
            if (sum >= chance)
                return groom;
        }
        return null;
    }
}
