namespace Academy.Competence.Quizzes.Measuring;

/// <summary>What one person made of the questions of one quiz.</summary>
/// <param name="Answers">One for each question that was asked, in any order. A question left empty was asked, and is wrong.</param>
/// <remarks>
/// For measuring a quiz, only a person's first whole quiz on a module belongs here: whoever has seen the explanations answers
/// another question than before.
/// </remarks>
public sealed record AnswerSheet(Listed<MarkedAnswer> Answers)
{
    /// <summary>How many were right.</summary>
    public int Right => Answers.Count(answer => answer.IsRight);

    /// <summary>The share of right answers among the others than this one; null where there are no others.</summary>
    public double? ShareOfTheRest(MarkedAnswer one) =>
        Answers.Count > 1 ? (Right - (one.IsRight ? 1 : 0)) / (double)(Answers.Count - 1) : null;
}

/// <summary>One question as one person answered it.</summary>
/// <param name="Question">The question's stable short name.</param>
/// <param name="IsRight">Whether it was right.</param>
/// <param name="Chose">What was chosen, in words that stay the same from person to person; empty where nothing was.</param>
public sealed record MarkedAnswer(string Question, bool IsRight, Listed<string> Chose);
