using MathNet.Numerics.Statistics;

namespace Academy.Competence.Quizzes.Measuring;

/// <summary>The figures of classical item analysis, without a word about how many answers they need.</summary>
/// <remarks><see cref="QuizMeasure"/> is what is shown: it keeps back what a small number of answers cannot say.</remarks>
public static class ItemAnalysis
{
    /// <summary>The correlation of a question with the rest of each person's quiz; null where nobody differs.</summary>
    public static double? Fit(string question, IEnumerable<AnswerSheet> sheets) =>
        Correlation(
            Asked(question, sheets)
                .Where(one => one.Sheet.Answers.Count > 1)
                .Select(one => (one.Answer.IsRight ? 1.0 : 0, one.Sheet.ShareOfTheRest(one.Answer)!.Value))
        );

    /// <summary>What that correlation is made of, for explaining it; null where nobody differs.</summary>
    public static FitParts? PartsOfFit(string question, IEnumerable<AnswerSheet> sheets)
    {
        var asked = Asked(question, sheets).Where(one => one.Sheet.Answers.Count > 1).ToArray();
        var rest = asked.ToLookup(one => one.Answer.IsRight, one => one.Sheet.ShareOfTheRest(one.Answer)!.Value);
        double[] all = [.. rest[true], .. rest[false]];
        return rest[true].Any() && rest[false].Any() && Differs(all)
            ? new(
                rest[true].Count(),
                rest[false].Count(),
                rest[true].Average(),
                rest[false].Average(),
                all.PopulationStandardDeviation()
            )
            : null;
    }

    /// <summary>The correlation of choosing something with the share right in the whole quiz; null where nobody differs.</summary>
    public static double? Pull(string question, string choice, IEnumerable<AnswerSheet> sheets) =>
        Correlation(Asked(question, sheets).Select(one => (one.Answer.Chose.Contains(choice) ? 1.0 : 0, Score(one.Sheet))));

    /// <summary>The share right among the best 27 in 100 less that among the weakest; ties by the order given.</summary>
    /// <remarks>The groups are round(.27 n) people each, and at least one.</remarks>
    public static double? HighLow(string question, IEnumerable<AnswerSheet> sheets)
    {
        var best = Asked(question, sheets)
            .OrderByDescending(one => Score(one.Sheet))
            .Select(one => one.Answer.IsRight ? 1.0 : 0)
            .ToArray();
        var group = Math.Max(1, (int)Math.Round(.27 * best.Length, MidpointRounding.ToEven));
        return best.Length < 2 ? null : best.Take(group).Average() - best.TakeLast(group).Average();
    }

    /// <summary>Alpha of the quiz if it did not have this question; null where it has no value.</summary>
    public static double? AlphaWithout(string question, IReadOnlyCollection<AnswerSheet> sheets) =>
        new Agreements(sheets).Alpha(LengthOf(sheets) - 1, question);

    internal static int LengthOf(IReadOnlyCollection<AnswerSheet> sheets) =>
        sheets.Count == 0 ? 0 : (int)Math.Round(sheets.Average(sheet => sheet.Answers.Count), MidpointRounding.AwayFromZero);

    internal static double Score(AnswerSheet sheet) => sheet.Right / (double)sheet.Answers.Count;

    internal static IEnumerable<(AnswerSheet Sheet, MarkedAnswer Answer)> Asked(
        string question,
        IEnumerable<AnswerSheet> sheets
    ) =>
        sheets.SelectMany(
            sheet => sheet.Answers.Where(answer => answer.Question == question),
            (sheet, answer) => (sheet, answer)
        );

    private static double? Correlation(IEnumerable<(double X, double Y)> points)
    {
        var all = points.ToArray();
        var (xs, ys) = (all.Select(point => point.X).ToArray(), all.Select(point => point.Y).ToArray());
        return Differs(xs) && Differs(ys) ? MathNet.Numerics.Statistics.Correlation.Pearson(xs, ys) : null;
    }

    private static bool Differs(double[] values) => values.Length > 1 && values.Maximum() - values.Minimum() > 1e-12;
}

/// <summary>What the fit of a question is made of: those who had it right against those who had it wrong.</summary>
/// <param name="Right">How many had it right.</param>
/// <param name="Wrong">How many had it wrong.</param>
/// <param name="RestOfRight">The mean share of the other questions that the first had right.</param>
/// <param name="RestOfWrong">The same of the others.</param>
/// <param name="Spread">The standard deviation of that share over all of them (of the whole group, not of a sample).</param>
public sealed record FitParts(int Right, int Wrong, double RestOfRight, double RestOfWrong, double Spread)
{
    /// <summary>The point-biserial correlation: the distance of the means in spreads, times the root of p (1 - p).</summary>
    public double Fit
    {
        get
        {
            var p = Right / (double)(Right + Wrong);
            return (RestOfRight - RestOfWrong) / Spread * Math.Sqrt(p * (1 - p));
        }
    }
}
