using MathNet.Numerics.Distributions;
using MathNet.Numerics.Statistics;

namespace Academy.Competence.Quizzes.Measuring;

/// <summary>The pass mark that judges ask for: what a groomer who is only just safe would score.</summary>
/// <param name="Score">The mean over the judges of what each expects, in questions.</param>
/// <param name="StandardError">How far another panel of so many judges might lie from it; null for one judge.</param>
/// <param name="Range">The score with its 95 % range by Student's t; null for one judge.</param>
/// <param name="ByQuestion">For each question the judges' mean chance.</param>
/// <remarks>
/// Angoff's method (1971): each judge says, for every question, how likely a borderline but safe groomer is to have it right. A
/// judge's own cut is the sum of these chances.
/// </remarks>
public sealed record CutScore(double Score, double? StandardError, (double Lower, double Upper)? Range, Listed<double> ByQuestion)
{
    /// <summary>From so many judges the pass mark rests on them (common practice, no published source).</summary>
    public const int FewestJudges = 3;

    /// <summary>The cut of these judges.</summary>
    /// <param name="judges">For each judge a chance for every question, 0 to 1, all in the order of the questions.</param>
    public static CutScore Of(IReadOnlyList<IReadOnlyList<double>> judges)
    {
        if (
            judges.Count == 0
            || judges.Any(judge => judge.Count != judges[0].Count || judge.Any(chance => chance is not (>= 0 and <= 1)))
        )
            throw new ArgumentException("Each judge gives a chance from 0 to 1 for every question.", nameof(judges));

        var cuts = judges.Select(judge => judge.Sum()).ToArray();
        double? error = cuts.Length < 2 ? null : cuts.StandardDeviation() / Math.Sqrt(cuts.Length);
        return new(
            cuts.Average(),
            error,
            error is { } one ? Around(cuts.Average(), one * StudentT.InvCDF(0, 1, cuts.Length - 1, .975)) : null,
            Enumerable.Range(0, judges[0].Count).Select(place => judges.Average(judge => judge[place])).ToListed()
        );
    }

    /// <summary>How many of the questions drawn have to be right.</summary>
    /// <param name="chances">The judges' mean chance for each question drawn.</param>
    /// <param name="floorPercent">The share that is asked for in any case, in percent.</param>
    /// <remarks>
    /// Rounded up, and never below the floor: judges may ask for more than the salon does, not for less. A draw of hard questions
    /// has a lower cut than one of easy ones, so nobody's luck with the draw decides.
    /// </remarks>
    public static int RightAsked(IReadOnlyCollection<double> chances, int floorPercent)
    {
        var floor = ((chances.Count * floorPercent) + 99) / 100;
        return Math.Max(floor, (int)Math.Ceiling(chances.Sum() - 1e-9));
    }

    private static (double Lower, double Upper) Around(double middle, double half) => (middle - half, middle + half);
}
