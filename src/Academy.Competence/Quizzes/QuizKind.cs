namespace Academy.Competence.Quizzes;

/// <summary>How many questions a quiz draws and what passes it.</summary>
/// <param name="Questions">How many questions are drawn, where the module has that many.</param>
/// <param name="MostMustKnow">How many must-know questions are drawn, where the module has that many, and never more.</param>
/// <param name="PassPercent">The share of right answers that passes, in percent, inclusive.</param>
public sealed record QuizKind(int Questions, int MostMustKnow, int PassPercent)
{
    /// <summary>The quiz at the end of a module: 20 questions, of which 16 right pass.</summary>
    /// <remarks>
    /// With 20 questions and 80 % somebody who knows 60 % passes 1 time in 20 by luck, with 10 questions 1 time in 6 (binomial
    /// distribution). Four must-know questions at most keep the must-know rule from failing people who know the module.
    /// </remarks>
    public static QuizKind Whole { get; } = new(20, 4, 80);

    /// <summary>A refresher: 8 questions, of which 6 right pass.</summary>
    /// <remarks>At 80 % of 8, hence 7, somebody who knows 90 % would fail 1 time in 5 (binomial distribution).</remarks>
    public static QuizKind Refresher { get; } = new(8, 4, 75);

    /// <summary>A quiz on what changed in an edition: at most 8 questions, every must-know among them, of which 3 in 4 pass.</summary>
    public static QuizKind CatchUp { get; } = new(8, 8, 75);

    /// <summary>How many of so many have to be right: the share of the kind, and what judges ask for where that is more.</summary>
    /// <param name="of">How many were asked.</param>
    /// <param name="expected">For each question asked the judges' mean chance; empty where they did not judge.</param>
    public int RightAsked(int of, IReadOnlyCollection<double> expected) =>
        Math.Max(
            ((of * PassPercent) + 99) / 100,
            expected.Count == of ? Measuring.CutScore.RightAsked(expected, PassPercent) : 0
        );

    /// <summary>Whether this many right answers reach the pass mark; no questions at all never do.</summary>
    public bool IsPassMark(int right, int of) => of > 0 && right >= RightAsked(of, []);

    /// <summary>The kind of a quiz that is a refresher, one to catch up, or neither.</summary>
    internal static QuizKind Of(bool isRefresher, bool isCatchUp) =>
        isCatchUp ? CatchUp
        : isRefresher ? Refresher
        : Whole;
}
