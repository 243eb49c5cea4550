using MathNet.Numerics.RootFinding;

namespace Academy.Competence.Statistics;

/// <summary>How a row is counted: what one unsuitable groom costs, and how many marks fill it.</summary>
/// <remarks>
/// The row is a learning-curve CUSUM (Biau and Porcher 2010, doi 10.1002/sim.3947; Biau 2008, doi 10.1002/bjs.6056) on
/// whole marks. A rate is the share of rated grooms that are unsuitable. <see cref="P0"/> is the rate that is fine; the
/// test is built against <see cref="P1"/>, the rate that is not. Both are value choices of the owner, not facts.
/// </remarks>
public sealed record RowProfile
{
    /// <summary>The longest row that makes sense to ask of anybody; it also bounds the work of the exact chain.</summary>
    public const int MostMarks = 200;

    /// <summary>Makes a profile, refusing numbers with which the marks would mean nothing.</summary>
    /// <param name="p0">The fine rate, above 0 and below 1 / (<paramref name="marksTaken"/> + 1).</param>
    /// <param name="marksTaken">Marks that one unsuitable groom takes, 1 to <see cref="MostMarks"/>.</param>
    /// <param name="marksToFill">Marks that fill the row, 1 to <see cref="MostMarks"/>.</param>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside its range.</exception>
    /// <remarks>
    /// At a rate of 1 / (m + 1) a groomer gains on average nothing. A fine rate must lie below it, or the row would be
    /// expected to empty for the very people whom it should let through.
    /// </remarks>
    public RowProfile(double p0, int marksTaken, int marksToFill)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(marksTaken, 1);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(marksTaken, MostMarks);
        ArgumentOutOfRangeException.ThrowIfLessThan(marksToFill, 1);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(marksToFill, MostMarks);
        if (!(p0 > 0 && p0 < StandstillAt(marksTaken)))
            throw new ArgumentOutOfRangeException(nameof(p0), p0, "The fine rate lies above 0 and below 1 / (marks taken + 1).");

        P0 = p0;
        MarksTaken = marksTaken;
        MarksToFill = marksToFill;
        P1 = MirrorOf(p0, marksTaken);
    }

    /// <summary>15 marks, -3, fine rate .15: smooth coats and everyday techniques.</summary>
    public static RowProfile Basic { get; } = new(p0: .15, marksTaken: 3, marksToFill: 15);

    /// <summary>15 marks, -4, fine rate .10: double, silky and combination coats.</summary>
    public static RowProfile Standard { get; } = new(p0: .10, marksTaken: 4, marksToFill: 15);

    /// <summary>17 marks, -6, fine rate .05: wool and wire coats.</summary>
    public static RowProfile Strict { get; } = new(p0: .05, marksTaken: 6, marksToFill: 17);

    /// <summary>8 marks, -6, fine rate .05: rare skills, whose row would otherwise never fill.</summary>
    /// <remarks>It lets someone who needs fixing 1 groom in 3 through 19 % of the time within 20, and must say so.</remarks>
    public static RowProfile Short { get; } = new(p0: .05, marksTaken: 6, marksToFill: 8);

    /// <summary>23 marks, -8, fine rate .05: for an owner who thinks that 1 unsuitable groom in 5 is already unacceptable.</summary>
    public static RowProfile Strictest { get; } = new(p0: .05, marksTaken: 8, marksToFill: 23);

    /// <summary>The rate of unsuitable grooms that is fine, 0 to 1.</summary>
    public double P0 { get; }

    /// <summary>The rate that is not fine, above <see cref="P0"/>: the other root of ln(p1/p0) = m ln((1-p0)/(1-p1)).</summary>
    /// <remarks>Solved so that one unsuitable groom weighs exactly <see cref="MarksTaken"/> suitable ones.</remarks>
    public double P1 { get; }

    /// <summary>Marks that one unsuitable groom takes (m).</summary>
    public int MarksTaken { get; }

    /// <summary>Marks that fill the row (H).</summary>
    public int MarksToFill { get; }

    /// <summary>What one mark is worth as evidence: ln((1-p0)/(1-p1)), a natural logarithm of a likelihood ratio.</summary>
    public double Unit => Math.Log((1 - P0) / (1 - P1));

    private static double StandstillAt(int marksTaken) => 1.0 / (marksTaken + 1);

    // ln p + m ln(1-p) rises to its top at the standstill rate and falls after it, so the second root lies beyond the top.
    private static double MirrorOf(double p0, int marksTaken) =>
        Brent.FindRoot(
            p => Math.Log(p / p0) - (marksTaken * Math.Log((1 - p0) / (1 - p))),
            StandstillAt(marksTaken),
            Math.BitDecrement(1),
            accuracy: 1e-15,
            maxIterations: 200
        );
}
