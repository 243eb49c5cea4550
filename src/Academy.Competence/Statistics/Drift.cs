namespace Academy.Competence.Statistics;

/// <summary>What the monitoring of someone who is alone says.</summary>
public enum DriftSign
{
    /// <summary>Nothing to see.</summary>
    Steady,

    /// <summary>A senior stands beside for the next three: the alarm is at 2m or above.</summary>
    Watch,

    /// <summary>Back to rated grooms: the alarm is at 3m or above.</summary>
    CheckAgain,
}

/// <summary>The mirrored row, which runs after clearance on inspected solo grooms and upheld complaints.</summary>
/// <remarks>
/// <para>
/// An unsuitable groom raises the alarm by m (<see cref="RowProfile.MarksTaken"/>), a suitable one lowers it by 1, never
/// below 0 and without a top. It is at watch from 2m, two unsuitable in a row, and at check again from 3m.
/// </para>
/// <para>
/// The form is the Bernoulli CUSUM (Steiner 2000, Biostatistics 1:441). Limits that grow with m are our own choice: fixed
/// ones would stop good groomers on strict rows (with m = 8 and a limit of 12, 31 % of those at .05 within 40).
/// </para>
/// </remarks>
public static class Drift
{
    /// <summary>The alarm after one more rated groom.</summary>
    /// <param name="alarm">The alarm before it, 0 or more.</param>
    /// <param name="verdict">What the groom said. A critical one leaves the alarm: it stops the clearance by itself.</param>
    /// <param name="profile">How the skill's row is counted.</param>
    public static int Step(int alarm, Verdict verdict, RowProfile profile) =>
        verdict switch
        {
            Verdict.Suitable => Lowered(alarm),
            Verdict.Unsuitable => alarm + profile.MarksTaken,
            Verdict.Critical => alarm,
            _ => throw new ArgumentOutOfRangeException(nameof(verdict), verdict, "Not a verdict."),
        };

    /// <summary>The alarm from which a senior watches: 2m.</summary>
    public static int WatchFrom(RowProfile profile) => 2 * profile.MarksTaken;

    /// <summary>The alarm from which the clearance pauses: 3m.</summary>
    public static int CheckAgainFrom(RowProfile profile) => 3 * profile.MarksTaken;

    /// <summary>What this alarm says.</summary>
    public static DriftSign SignOf(int alarm, RowProfile profile) =>
        alarm >= CheckAgainFrom(profile) ? DriftSign.CheckAgain
        : alarm >= WatchFrom(profile) ? DriftSign.Watch
        : DriftSign.Steady;

    internal static int Lowered(int alarm) => Math.Max(0, alarm - 1);
}
