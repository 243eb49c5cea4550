using Academy.Competence.Statistics;

namespace Academy.Competence.Quizzes.Measuring;

/// <summary>What the answers of a salon say about a quiz, as far as so many answers can say anything.</summary>
/// <param name="People">How many people's first whole quizzes it rests on.</param>
/// <param name="Questions">Every question of the module, in its order, those never asked too.</param>
/// <param name="Reliability">How far the quiz tells the same each time; null below <see cref="GreyBelow"/> people.</param>
public sealed record QuizMeasure(int People, Listed<QuestionMeasure> Questions, Reliability? Reliability)
{
    /// <summary>Below so many answers a question has counts and nothing else.</summary>
    public const int CountsOnlyBelow = 10;

    /// <summary>Below so many answers nothing is said of how questions hang together.</summary>
    public const int GreyBelow = 30;

    /// <summary>From so many answers the best are compared with the weakest.</summary>
    public const int HighLowFrom = 40;

    /// <summary>From so many people the figures are no longer shown in grey.</summary>
    public const int FirmFrom = 100;

    /// <summary>Whether the figures are still to be read with care: fewer than <see cref="FirmFrom"/> people.</summary>
    public bool IsTentative => People < FirmFrom;

    /// <summary>Measures a quiz.</summary>
    /// <param name="questions">The questions of the module with what can be chosen, in its order.</param>
    /// <param name="sheets">The first whole quiz of each person.</param>
    /// <remarks>
    /// The smallest numbers are common practice of test analysis, no published source for so small a workplace: 10 answers for a
    /// share, 30 for a correlation, 40 for a comparison of the ends.
    /// </remarks>
    public static QuizMeasure Of(IEnumerable<MeasuredQuestion> questions, IReadOnlyCollection<AnswerSheet> sheets)
    {
        var agreements = new Agreements(sheets);
        var length = ItemAnalysis.LengthOf(sheets);
        return new(
            sheets.Count,
            questions.Select(question => Measured(question, sheets, Without(question))).ToListed(),
            sheets.Count < GreyBelow ? null : Reliability.Of(sheets)
        );

        double? Without(MeasuredQuestion question) => sheets.Count < GreyBelow ? null : agreements.Alpha(length - 1, question.Id);
    }

    private static QuestionMeasure Measured(MeasuredQuestion question, IReadOnlyCollection<AnswerSheet> sheets, double? without)
    {
        var asked = ItemAnalysis.Asked(question.Id, sheets).ToArray();
        var right = asked.Count(one => one.Answer.IsRight);
        double? easiness = asked.Length < CountsOnlyBelow ? null : right / (double)asked.Length;
        var measured = new QuestionMeasure(
            question.Id,
            asked.Length,
            right,
            easiness,
            easiness is null ? null : Proportion.Wilson(right, asked.Length),
            asked.Length < GreyBelow ? null : ItemAnalysis.Fit(question.Id, sheets),
            asked.Length < HighLowFrom ? null : ItemAnalysis.HighLow(question.Id, sheets),
            without,
            question.Choices.Select(choice => Measured(choice, question, asked, sheets)).ToListed(),
            []
        );
        return measured with { Doubts = Doubts(measured, question.IsMustKnow).ToListed() };
    }

    private static ChoiceMeasure Measured(
        MeasuredChoice choice,
        MeasuredQuestion question,
        (AnswerSheet Sheet, MarkedAnswer Answer)[] asked,
        IReadOnlyCollection<AnswerSheet> sheets
    )
    {
        var by = asked
            .Where(one => one.Answer.Chose.Contains(choice.Text))
            .Select(one => ItemAnalysis.Score(one.Sheet))
            .ToArray();
        return new(
            choice.Text,
            choice.IsRight,
            by.Length,
            asked.Length == 0 ? 0 : by.Length / (double)asked.Length,
            by.Length == 0 ? null : by.Average(),
            asked.Length < GreyBelow ? null : ItemAnalysis.Pull(question.Id, choice.Text, sheets)
        );
    }

    private static IEnumerable<QuestionDoubt> Doubts(QuestionMeasure question, bool isMustKnow)
    {
        if (question.Fit < 0)
            yield return QuestionDoubt.CheckTheKey;
        if (question.Choices.Any(choice => !choice.IsRight && choice.Pull > 0))
            yield return QuestionDoubt.WrongChoiceDrawsTheBest;
        if (question.Easiness < .30)
            yield return QuestionDoubt.Hard;
        if (question.Fit is >= 0 and < .10)
            yield return QuestionDoubt.TellsLittle;
        if (question.Asked >= GreyBelow && question.Choices.Any(choice => !choice.IsRight && choice.Share < .05))
            yield return QuestionDoubt.ChoiceNobodyBelieves;
        if (question.Easiness > .95 && !isMustKnow)
            yield return QuestionDoubt.Easy;
    }
}

/// <summary>A question to be measured.</summary>
/// <param name="Id">Its stable short name.</param>
/// <param name="IsMustKnow">Whether it is must-know.</param>
/// <param name="Choices">What can be chosen; empty where the answer is written.</param>
public sealed record MeasuredQuestion(string Id, bool IsMustKnow, Listed<MeasuredChoice> Choices);

/// <summary>A choice to be measured.</summary>
/// <param name="Text">In the words that <see cref="MarkedAnswer.Chose"/> names it with.</param>
/// <param name="IsRight">Whether it belongs to the right answer.</param>
public sealed record MeasuredChoice(string Text, bool IsRight);
