using Academy.Web.Wording;

namespace Academy.Web.Features.Quizzes;

/// <summary>One question in the list that one jumps by.</summary>
public sealed record JumpLine(int Number, bool IsAnswered, bool IsHere);

/// <summary>One question of a quiz under way. What is right is not in it.</summary>
/// <param name="ReadOut">Who reads it out to whom; null where nobody does.</param>
public sealed record QuestionView(
    string Module,
    int Number,
    int Last,
    int Answered,
    bool IsMustKnow,
    string Text,
    string HowMarked,
    AskView Ask,
    IReadOnlyList<JumpLine> Jumps,
    string? ReadOut
)
{
    public bool IsLast => Number == Last;

    public static QuestionView Of(DrawnQuiz quiz, int number, Names names)
    {
        var question = quiz.Asked[number - 1];
        return new(
            quiz.Lesson.Module.Title,
            number,
            quiz.Asked.Count,
            quiz.Asked.Count - quiz.Open.Count,
            question.IsMustKnow,
            question.Text,
            Say.HowMarked(question.Kind),
            AskView.Of(question.Kind, quiz),
            [
                .. Enumerable
                    .Range(1, quiz.Asked.Count)
                    .Select(other => new JumpLine(other, quiz.IsAnswered(other), other == number)),
            ],
            ReadOutOf(quiz, names)
        );
    }

    internal static string? ReadOutOf(DrawnQuiz quiz, Names names) =>
        quiz.Sitting.ReadOutBy is { } senior
            ? $"{names.Of(senior)} reads this out to {names.Of(quiz.Sitting.Person)}; the attempt says so."
            : null;
}
