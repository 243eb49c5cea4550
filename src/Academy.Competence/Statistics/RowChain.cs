namespace Academy.Competence.Statistics;

/// <summary>What a row lets through, exactly: no simulation, no approximation.</summary>
/// <remarks>
/// <para>
/// From s marks a suitable groom leads to s + 1 and an unsuitable one to max(0, s - m); the row is full at H. A rate is
/// the chance that one rated groom is unsuitable; grooms are taken as independent of each other, which easy and hard days
/// make a little too kind. Critical incidents are not part of the chain.
/// </para>
/// <para>
/// The method is that of Biau and Porcher 2010 (doi 10.1002/sim.3947) on whole marks. Its figures were checked against
/// the run lengths of R's surveillance package and a Monte Carlo of 200,000 paths.
/// </para>
/// </remarks>
public static class RowChain
{
    /// <summary>The chance that the row is full at or before groom <paramref name="grooms"/>, at a constant rate.</summary>
    /// <param name="profile">How the row is counted.</param>
    /// <param name="grooms">Rated grooms from now, 0 or more.</param>
    /// <param name="rate">The chance that a groom is unsuitable, 0 to 1.</param>
    /// <param name="start">Marks already there; a full row gives 1.</param>
    public static double ChanceFullBy(RowProfile profile, int grooms, double rate, int start = 0) =>
        ChanceFullBy(profile, grooms, _ => rate, start);

    /// <summary>The chance that the row is full at or before groom <paramref name="grooms"/>, for someone who changes.</summary>
    /// <param name="profile">How the row is counted.</param>
    /// <param name="grooms">Rated grooms from now, 0 or more.</param>
    /// <param name="rateAt">The chance that groom n from now (the next one is 1) is unsuitable.</param>
    /// <param name="start">Marks already there; a full row gives 1.</param>
    public static double ChanceFullBy(RowProfile profile, int grooms, Func<int, double> rateAt, int start = 0)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(grooms);
        return IsFull(profile, start) ? 1 : Math.Min(1, FillingAt(profile, rateAt, start).Take(grooms).Sum());
    }

    /// <summary>The chances that the row fills at exactly groom 1, 2, 3 and so on from now.</summary>
    /// <param name="profile">How the row is counted.</param>
    /// <param name="rateAt">The chance that groom n from now (the next one is 1) is unsuitable.</param>
    /// <param name="start">Marks already there, fewer than fill the row.</param>
    /// <returns>A sequence without end: draw as many as are wanted.</returns>
    public static IEnumerable<double> FillingAt(RowProfile profile, Func<int, double> rateAt, int start = 0)
    {
        if (IsFull(profile, start))
            throw new ArgumentOutOfRangeException(nameof(start), start, "The row is full already.");

        return Chain(profile).Arrivals(start, rateAt);
    }

    /// <summary>The mean number of rated grooms until the row is full, at a constant rate.</summary>
    /// <param name="profile">How the row is counted.</param>
    /// <param name="rate">The chance that a groom is unsuitable, 0 to 1.</param>
    /// <param name="start">Marks already there; a full row gives 0.</param>
    /// <returns>Infinity when every groom is unsuitable.</returns>
    /// <remarks>
    /// A row climbs one mark at a time, so the mean is the sum of the means from each mark to the next:
    /// t(s) = (1 + p (t(max(0, s-m)) + ... + t(s-1))) / (1 - p). Nothing is subtracted, so nothing is lost however rare
    /// the end is; it equals the solution of (I - Q) x = 1.
    /// </remarks>
    public static double MeanGrooms(RowProfile profile, double rate, int start = 0)
    {
        Rates.Checked(rate);
        if (IsFull(profile, start))
            return 0;

        var toNext = new double[profile.MarksToFill];
        for (var marks = 0; marks < toNext.Length; marks++)
            toNext[marks] = (1 + (rate * toNext.AsSpan(Row.Step(marks, Verdict.Unsuitable, profile)..marks).Sum())) / (1 - rate);
        return toNext.AsSpan(start).Sum();
    }

    /// <summary>The fewest rated grooms by which the row is full with at least <paramref name="chance"/>, at a constant rate.</summary>
    /// <returns>Null when that takes more than <paramref name="atMost"/> grooms.</returns>
    public static int? GroomsUntil(RowProfile profile, double chance, double rate, int start = 0, int atMost = 500) =>
        GroomsUntil(profile, chance, _ => rate, start, atMost);

    /// <summary>The fewest rated grooms by which the row is full with at least <paramref name="chance"/>.</summary>
    /// <param name="profile">How the row is counted.</param>
    /// <param name="chance">.5 for the median; between 0 and 1.</param>
    /// <param name="rateAt">The chance that groom n from now (the next one is 1) is unsuitable.</param>
    /// <param name="start">Marks already there; a full row gives 0.</param>
    /// <param name="atMost">How far to look.</param>
    /// <returns>Null when that takes more than <paramref name="atMost"/> grooms.</returns>
    public static int? GroomsUntil(RowProfile profile, double chance, Func<int, double> rateAt, int start = 0, int atMost = 500)
    {
        Rates.CheckedChance(chance);
        return IsFull(profile, start) ? 0 : FillingAt(profile, rateAt, start).FirstBy(chance, atMost);
    }

    /// <summary>
    /// The shortest row that lets someone at the rate that is not fine through with at most
    /// <paramref name="errorRate"/> within <paramref name="horizon"/> rated grooms.
    /// </summary>
    /// <param name="p0">The fine rate.</param>
    /// <param name="marksTaken">Marks that one unsuitable groom takes.</param>
    /// <param name="errorRate">The chance of a false clearance that the owner accepts, between 0 and 1.</param>
    /// <param name="horizon">Rated grooms after which the case goes to a talk, 1 or more.</param>
    /// <returns>Null when no row of at most <see cref="RowProfile.MostMarks"/> marks is strict enough.</returns>
    /// <remarks>A row longer than the horizon passes too: it lets nobody through in time.</remarks>
    public static RowProfile? Shortest(double p0, int marksTaken, double errorRate, int horizon)
    {
        Rates.CheckedChance(errorRate);
        ArgumentOutOfRangeException.ThrowIfLessThan(horizon, 1);
        return Enough(RowProfile.MostMarks) ? Of(Least(RowProfile.MostMarks, Enough)) : null;

        RowProfile Of(int marks) => new(p0, marksTaken, marks);
        bool Enough(int marks) => ChanceFullBy(Of(marks), horizon, Of(marks).P1) <= errorRate;
    }

    // A longer row never lets more people through, so halving finds the shortest.
    private static int Least(int high, Func<int, bool> enough)
    {
        var low = 1;
        while (low < high)
        {
            var middle = (low + high) / 2;
            (low, high) = enough(middle) ? (low, middle) : (middle + 1, high);
        }
        return low;
    }

    private static bool IsFull(RowProfile profile, int start)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(start);
        return Row.IsFull(start, profile);
    }

    private static MarkChain Chain(RowProfile profile) =>
        new(
            profile.MarksToFill,
            marks => Row.Step(marks, Verdict.Suitable, profile),
            marks => Row.Step(marks, Verdict.Unsuitable, profile)
        );

    private static double Sum(this Span<double> numbers)
    {
        var sum = 0.0;
        foreach (var number in numbers)
            sum += number;
        return sum;
    }
}
