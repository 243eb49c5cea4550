using Academy.Competence.Quizzes.Measuring;

namespace Academy.Web.Wording;

// What the answers say about a question, and what to do about it.
public static partial class Say
{
    /// <summary>What somebody should look at, in a sentence or two.</summary>
    public static string Advice(QuestionDoubt doubt, QuestionMeasure question) =>
        doubt switch
        {
            QuestionDoubt.CheckTheKey =>
                "Those who know the rest get this one wrong more often. Check which answer is marked right, and whether the words say what you mean.",
            QuestionDoubt.WrongChoiceDrawsTheBest =>
                $"{Wrong(question, choice => choice.Pull > 0, "attracts", "attract")} those who know most: check the key, and whether more than that is right.",
            QuestionDoubt.Hard =>
                $"{Counts.OutOf(question.Right, question.Asked)} have it right. Is it in the lesson, and are the words plain?",
            QuestionDoubt.TellsLittle =>
                "It hardly tells who knows the rest. Read it as a junior would: is it about something else, or a guess?",
            QuestionDoubt.ChoiceNobodyBelieves =>
                $"{Wrong(question, choice => choice.Share < .05, "is", "are")} hardly ever chosen: write one that somebody might believe.",
            QuestionDoubt.Easy =>
                $"{Counts.OutOf(question.Right, question.Asked)} have it right. Good if it must be known; else it could make room for another.",
            _ => throw Unknown(doubt),
        };

    private static string Wrong(QuestionMeasure question, Func<ChoiceMeasure, bool> which, string one, string many)
    {
        var words = question
            .Choices.Where(choice => !choice.IsRight && which(choice))
            .Select(choice => $"“{choice.Choice}”")
            .ToList();
        return words.Count == 1 ? $"The wrong answer {words[0]} {one}" : $"The wrong answers {Counts.And(words)} {many}";
    }
}
