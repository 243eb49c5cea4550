namespace Academy.Competence.Statistics;

/// <summary>How soon the monitoring raises its sign, exactly, in rated grooms from an alarm of 0.</summary>
/// <remarks>
/// Only rated grooms count: when 1 solo groom in 3 is inspected, the same run takes three times as many solo grooms.
/// Figures were checked against the run lengths of R's surveillance package.
/// </remarks>
/// <param name="marksTaken">What one unsuitable groom adds to the alarm (m), 1 or more.</param>
/// <param name="limit">The alarm that is waited for, 1 or more.</param>
public sealed class DriftChain(int marksTaken, int limit)
{
    private readonly MarkChain _chain = new(
        Positive(limit),
        alarm => Drift.Lowered(alarm),
        alarm => alarm + Positive(marksTaken)
    );

    /// <summary>Until a senior watches.</summary>
    public static DriftChain ToWatch(RowProfile profile) => new(profile.MarksTaken, Drift.WatchFrom(profile));

    /// <summary>Until the clearance pauses.</summary>
    public static DriftChain ToCheckAgain(RowProfile profile) => new(profile.MarksTaken, Drift.CheckAgainFrom(profile));

    /// <summary>The mean number of rated grooms until the limit is reached: the average run length.</summary>
    /// <param name="rate">The chance that a groom is unsuitable, 0 to 1.</param>
    /// <returns>Infinity when no groom is unsuitable.</returns>
    /// <remarks>Good to about seven digits for runs of up to a thousand million grooms.</remarks>
    public double MeanGrooms(double rate) => Rates.Checked(rate) == 0 ? double.PositiveInfinity : _chain.MeanGrooms(rate)[0];

    /// <summary>The chance that the limit is reached at or before groom <paramref name="grooms"/>.</summary>
    /// <param name="grooms">Rated grooms, 0 or more.</param>
    /// <param name="rate">The chance that a groom is unsuitable, 0 to 1.</param>
    public double ChanceBy(int grooms, double rate)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(grooms);
        return Math.Min(1, _chain.Arrivals(0, _ => rate).Take(grooms).Sum());
    }

    /// <summary>The fewest rated grooms by which the limit is reached with at least <paramref name="chance"/>.</summary>
    /// <param name="chance">.5 for the median; between 0 and 1.</param>
    /// <param name="rate">The chance that a groom is unsuitable, 0 to 1.</param>
    /// <param name="atMost">How far to look.</param>
    /// <returns>Null when that takes more than <paramref name="atMost"/> grooms.</returns>
    public int? GroomsUntil(double chance, double rate, int atMost = 5000) =>
        _chain.Arrivals(0, _ => rate).FirstBy(Rates.CheckedChance(chance), atMost);

    private static int Positive(int number)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(number, 1);
        return number;
    }
}
