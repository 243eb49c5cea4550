namespace Academy.Competence.Statistics;

/// <summary>The marks of the sequential test, and how one rated groom moves them.</summary>
/// <remarks>
/// A suitable groom adds one mark up to the profile's <see cref="RowProfile.MarksToFill"/>; an unsuitable one takes
/// <see cref="RowProfile.MarksTaken"/>, never below none; a critical one takes all. A full row may lose marks again.
/// </remarks>
public static class Row
{
    /// <summary>The marks after one more rated groom.</summary>
    /// <param name="marks">The marks before it, 0 to <see cref="RowProfile.MarksToFill"/>.</param>
    /// <param name="verdict">What the groom said.</param>
    /// <param name="profile">How the row is counted.</param>
    public static int Step(int marks, Verdict verdict, RowProfile profile) =>
        verdict switch
        {
            Verdict.Suitable => Math.Min(profile.MarksToFill, marks + 1),
            Verdict.Unsuitable => Math.Max(0, marks - profile.MarksTaken),
            Verdict.Critical => 0,
            _ => throw new ArgumentOutOfRangeException(nameof(verdict), verdict, "Not a verdict."),
        };

    /// <summary>The marks after all of <paramref name="verdicts"/>, in the order of the grooms.</summary>
    public static int Replay(IEnumerable<Verdict> verdicts, RowProfile profile, int start = 0) =>
        verdicts.Aggregate(start, (marks, verdict) => Step(marks, verdict, profile));

    /// <summary>Whether these marks fill the row.</summary>
    public static bool IsFull(int marks, RowProfile profile) => marks >= profile.MarksToFill;
}
