namespace Academy.Competence.Quizzes.Measuring;

/// <summary>How close a score is to the pass mark.</summary>
public static class NearMark
{
    /// <summary>How far one score lies from what the person would score on average over many draws, in questions.</summary>
    /// <param name="right">How many were right.</param>
    /// <param name="of">Of how many; 2 or more.</param>
    /// <remarks>
    /// The root of x (n - x) / (n - 1): the error of a score on questions drawn by chance from a larger bank, from that score alone
    /// (Lord 1955, as printed in the SAGE Encyclopedia of Educational Research, Measurement, and Evaluation, "Conditional standard
    /// error of measurement"). It needs no other people, so a salon of three has it from the first day.
    /// </remarks>
    public static double StandardError(int right, int of)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(of, 2);
        ArgumentOutOfRangeException.ThrowIfNegative(right);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(right, of);
        return Math.Sqrt(right * (of - right) / (of - 1.0));
    }

    /// <summary>Whether a score below the mark is within one standard error of it: nearly there, and no more than that.</summary>
    /// <param name="right">How many were right, below <paramref name="asked"/>.</param>
    /// <param name="asked">How many had to be right.</param>
    /// <param name="of">Of how many.</param>
    public static bool IsNearly(int right, int asked, int of) => right < asked && asked - right <= StandardError(right, of);
}
