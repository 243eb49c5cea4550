using MathNet.Numerics.Distributions;
using MathNet.Numerics.Statistics;

namespace Academy.Competence.Quizzes.Measuring;

/// <summary>How far a quiz tells the same of the same people each time: KR-20, which is Cronbach's alpha for right or wrong.</summary>
/// <param name="Alpha">At most 1. Below 0 where questions pull against each other.</param>
/// <param name="Range">Feldt's 95 % range of it (Feldt 1965, by the F distribution); wide where few people answered.</param>
/// <param name="StandardError">
/// How far a score lies from what the person would score on average, in questions: the sample's standard deviation of the totals
/// times the root of 1 - alpha.
/// </param>
public sealed record Reliability(double Alpha, (double Lower, double Upper) Range, double StandardError)
{
    /// <summary>The reliability of one quiz; null where it cannot be computed because nobody, or everybody, differs in nothing.</summary>
    /// <remarks>
    /// <para>
    /// Alpha is k c / (v + (k - 1) c), with k questions in a quiz, v the mean variance of a question and c the mean covariance of
    /// two. Where everybody had the same questions this is KR-20 to the last digit. Where each quiz draws its own, every pair of
    /// questions counts over the people who had both.
    /// </para>
    /// <para>Kuder and Richardson 1937, formula 20; Cronbach 1951.</para>
    /// </remarks>
    public static Reliability? Of(IReadOnlyCollection<AnswerSheet> sheets)
    {
        if (sheets.Count < 2)
            return null;

        var length = ItemAnalysis.LengthOf(sheets);
        var totals = sheets.Select(sheet => (double)sheet.Right).ToArray();
        return new Agreements(sheets).Alpha(length) is { } alpha
            ? new(alpha, Feldt(alpha, sheets.Count, length), totals.StandardDeviation() * Math.Sqrt(1 - alpha))
            : null;
    }

    /// <summary>What alpha is made of, for explaining it; null where it cannot be computed.</summary>
    public static AlphaParts? PartsOf(IReadOnlyCollection<AnswerSheet> sheets) =>
        sheets.Count < 2 ? null : new Agreements(sheets).Parts(ItemAnalysis.LengthOf(sheets));

    private static (double Lower, double Upper) Feldt(double alpha, int people, int questions)
    {
        var (among, within) = (people - 1.0, (people - 1.0) * (questions - 1));
        return (
            1 - ((1 - alpha) * FisherSnedecor.InvCDF(among, within, .975)),
            1 - ((1 - alpha) * FisherSnedecor.InvCDF(among, within, .025))
        );
    }
}

/// <summary>What alpha is made of.</summary>
/// <param name="Questions">How many questions a quiz has.</param>
/// <param name="Variance">The mean variance of a question: p times 1 - p, where p is the share right.</param>
/// <param name="Covariance">The mean covariance of two questions: how much more often both are right than by chance.</param>
public sealed record AlphaParts(int Questions, double Variance, double Covariance)
{
    /// <summary>k c / (v + (k - 1) c).</summary>
    public double Alpha => Questions * Covariance / (Variance + ((Questions - 1) * Covariance));
}
