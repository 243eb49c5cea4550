namespace Academy.Competence.Statistics;

/// <summary>The row in its general form, for two rates chosen freely: evidence in logarithms instead of whole marks.</summary>
/// <remarks>
/// <para>
/// A suitable groom adds ln((1-p0)/(1-p1)), an unsuitable one ln(p0/p1), never below 0; the row is full at the limit
/// (method text of Verhaeghe 2021, doi 10.1186/s12909-021-02615-w). Published papers draw it with other signs, and their
/// limits cannot be carried over: they depend on the base of the logarithm and on the horizon.
/// </para>
/// <para>
/// With <see cref="RowProfile.P0"/> and <see cref="RowProfile.P1"/> of a profile it is that profile's row, each mark
/// being worth <see cref="RowProfile.Unit"/>. It is here to prove that, and to weigh limits from the literature.
/// </para>
/// </remarks>
public sealed record LogLikelihoodRow
{
    // Sums of logarithms in another order differ in the last digits; a limit is reached when only those are missing.
    private const double LastDigits = 1e-9;

    /// <summary>Makes a row for two rates and a limit.</summary>
    /// <param name="p0">The fine rate, above 0.</param>
    /// <param name="p1">The rate that is not fine, above <paramref name="p0"/> and below 1.</param>
    /// <param name="limit">The evidence that fills the row, above 0, in natural logarithms.</param>
    public LogLikelihoodRow(double p0, double p1, double limit)
    {
        if (!(p0 > 0 && p0 < p1 && p1 < 1))
            throw new ArgumentOutOfRangeException(nameof(p0), p0, "The rates obey 0 < p0 < p1 < 1.");
        if (!(limit > 0 && double.IsFinite(limit)))
            throw new ArgumentOutOfRangeException(nameof(limit), limit, "The limit lies above 0.");

        Limit = limit;
        WhenSuitable = Math.Log((1 - p0) / (1 - p1));
        WhenUnsuitable = Math.Log(p0 / p1);
    }

    /// <summary>The evidence that fills the row.</summary>
    public double Limit { get; }

    /// <summary>What a suitable groom adds, above 0.</summary>
    public double WhenSuitable { get; }

    /// <summary>What an unsuitable groom adds, below 0.</summary>
    public double WhenUnsuitable { get; }

    /// <summary>The general form of a profile's row.</summary>
    public static LogLikelihoodRow Of(RowProfile profile) => new(profile.P0, profile.P1, profile.MarksToFill * profile.Unit);

    /// <summary>The evidence after one more rated groom, 0 to <see cref="Limit"/>.</summary>
    public double Step(double evidence, Verdict verdict) =>
        verdict switch
        {
            Verdict.Suitable => Math.Min(Limit, evidence + WhenSuitable),
            Verdict.Unsuitable => Math.Max(0, evidence + WhenUnsuitable),
            Verdict.Critical => 0,
            _ => throw new ArgumentOutOfRangeException(nameof(verdict), verdict, "Not a verdict."),
        };

    /// <summary>Whether this evidence fills the row.</summary>
    public bool IsFull(double evidence) => evidence >= Limit - LastDigits;

    /// <summary>The chance that the row is full at or before groom <paramref name="grooms"/>, at a constant rate.</summary>
    /// <remarks>
    /// Exact: the evidence is known from how many suitable and unsuitable grooms there were since it was last 0, so the
    /// chain runs over those pairs.
    /// </remarks>
    public double ChanceFullBy(int grooms, double rate)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(grooms);
        Rates.Checked(rate);
        var now = new Dictionary<(int, int), double> { [default] = 1 };
        for (var groom = 0; groom < grooms; groom++)
            now = Move(now, rate);
        return Math.Max(0, 1 - now.Values.Sum());
    }

    // Rows that are full leave the chain: what is missing from the sum has arrived.
    private Dictionary<(int, int), double> Move(Dictionary<(int, int), double> now, double rate)
    {
        var next = new Dictionary<(int, int), double>();
        foreach (var ((suitable, unsuitable), chance) in now)
        {
            Put(next, suitable + 1, unsuitable, chance * (1 - rate));
            Put(next, suitable, unsuitable + 1, chance * rate);
        }
        return next;
    }

    private void Put(Dictionary<(int, int), double> next, int suitable, int unsuitable, double chance)
    {
        var evidence = (suitable * WhenSuitable) + (unsuitable * WhenUnsuitable);
        if (IsFull(evidence))
            return;

        var since = evidence > LastDigits ? (suitable, unsuitable) : default;
        next[since] = next.GetValueOrDefault(since) + chance;
    }
}
