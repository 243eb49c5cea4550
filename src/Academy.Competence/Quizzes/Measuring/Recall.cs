namespace Academy.Competence.Quizzes.Measuring;

/// <summary>How likely somebody still knows the answer to a question, by a half-life.</summary>
/// <remarks>
/// The chance halves with each half-life that passes (the form of Settles and Meeder 2016). It starts at 184 days, so that 9 in 10
/// still know after 28 days, when the first refresher is due; a right answer doubles it, a wrong one halves it. The figures are
/// ours: nothing is fitted to a team of ten. It orders the questions of a refresher and decides nothing.
/// </remarks>
public static class Recall
{
    /// <summary>The half-life of what was just learned, in days.</summary>
    public const double FirstHalfLife = 184;

    /// <summary>The chance after so many days.</summary>
    /// <param name="halfLife">In days, above 0.</param>
    /// <param name="days">0 or more.</param>
    public static double Chance(double halfLife, double days) => Math.Pow(2, -days / halfLife);

    /// <summary>After how many days the chance has sunk to this.</summary>
    public static double DaysUntil(double halfLife, double chance) => -halfLife * Math.Log2(chance);

    /// <summary>The chance that somebody knows a question now.</summary>
    /// <param name="answers">When it was answered and whether right, in any order; none means never asked.</param>
    /// <param name="learnedAt">When the module was first passed: what counts for a question that was never asked.</param>
    /// <param name="now">The moment asked about; answers after it do not count.</param>
    public static double ChanceNow(
        IEnumerable<(DateTimeOffset At, bool IsRight)> answers,
        DateTimeOffset learnedAt,
        DateTimeOffset now
    )
    {
        var (halfLife, last) = (FirstHalfLife, learnedAt);
        foreach (var (at, isRight) in answers.Where(answer => answer.At <= now).OrderBy(answer => answer.At))
            (halfLife, last) = (isRight ? halfLife * 2 : halfLife / 2, at);
        return Chance(halfLife, Math.Max(0, (now - last).TotalDays));
    }
}
