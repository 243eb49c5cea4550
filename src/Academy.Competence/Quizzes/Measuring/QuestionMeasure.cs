namespace Academy.Competence.Quizzes.Measuring;

/// <summary>What the answers say about one question.</summary>
/// <param name="Question">Its stable short name.</param>
/// <param name="Asked">How many people were asked it.</param>
/// <param name="Right">How many had it right.</param>
/// <param name="Easiness">The share of right answers; null below <see cref="QuizMeasure.CountsOnlyBelow"/> answers.</param>
/// <param name="EasinessRange">Wilson's 95 % range of that share; null where the share is.</param>
/// <param name="Fit">
/// Whether those who know the rest know this: the correlation of the question with the rest of each person's quiz (the corrected
/// point-biserial). Null below <see cref="QuizMeasure.GreyBelow"/> answers, and where nobody differs.
/// </param>
/// <param name="HighLow">
/// The share right among the best 27 in 100 less that among the weakest (Kelley 1939); null below
/// <see cref="QuizMeasure.HighLowFrom"/> answers.
/// </param>
/// <param name="AlphaWithout">The quiz's alpha if this question were not in it; null where alpha is.</param>
/// <param name="Choices">Each choice that somebody made, and each that nobody made.</param>
/// <param name="Doubts">What to look at, in the order of weight.</param>
public sealed record QuestionMeasure(
    string Question,
    int Asked,
    int Right,
    double? Easiness,
    Statistics.RateRange? EasinessRange,
    double? Fit,
    double? HighLow,
    double? AlphaWithout,
    Listed<ChoiceMeasure> Choices,
    Listed<QuestionDoubt> Doubts
);

/// <summary>What the answers say about one choice of a question.</summary>
/// <param name="Choice">The choice, in words.</param>
/// <param name="IsRight">Whether it belongs to the right answer.</param>
/// <param name="Chosen">How many chose it.</param>
/// <param name="Share">Of those asked.</param>
/// <param name="MeanScore">The mean share right in the whole quiz of those who chose it; null where nobody did.</param>
/// <param name="Pull">
/// The correlation of choosing it with the share right in the whole quiz. Above 0 it draws the better people. Null where nobody, or
/// everybody, chose it.
/// </param>
public sealed record ChoiceMeasure(string Choice, bool IsRight, int Chosen, double Share, double? MeanScore, double? Pull);

/// <summary>Something about a question that its author should look at.</summary>
public enum QuestionDoubt
{
    /// <summary>The better people get it wrong: fit below 0. Check which answer is marked right.</summary>
    CheckTheKey,

    /// <summary>A wrong choice draws the better people: its pull is above 0.</summary>
    WrongChoiceDrawsTheBest,

    /// <summary>Fewer than 30 in 100 have it right.</summary>
    Hard,

    /// <summary>It hardly tells who knows the rest: fit from 0 to below .10.</summary>
    TellsLittle,

    /// <summary>A wrong choice that fewer than 5 in 100 make.</summary>
    ChoiceNobodyBelieves,

    /// <summary>More than 95 in 100 have it right. Good for a must-know question, which is not doubted.</summary>
    Easy,
}
