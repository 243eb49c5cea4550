using Academy.Web.Features.Shared;
using Academy.Web.Wording;

namespace Academy.Web.Features.Quizzes;

/// <summary>One question as it was answered so far. Whether that is right is not in it.</summary>
/// <param name="Said">What was answered; empty where it is open.</param>
public sealed record GivenLine(int Number, string Text, IReadOnlyList<string> Said, string Href);

/// <summary>A quiz before it is handed in.</summary>
public sealed record HandInView(
    string Module,
    string Heading,
    string Lead,
    IReadOnlyList<GivenLine> Open,
    IReadOnlyList<GivenLine> Given,
    string Back,
    string? ReadOut
)
{
    public static HandInView Of(DrawnQuiz quiz, Names names)
    {
        var lines = Enumerable.Range(1, quiz.Asked.Count).Select(number => Line(quiz, number)).ToList();
        var open = quiz.Open;
        return new(
            quiz.Lesson.Module.Title,
            open.Count == 0
                ? $"All {quiz.Asked.Count} questions are answered"
                : $"{Counts.OutOf(quiz.Asked.Count - open.Count, quiz.Asked.Count)} questions are answered",
            open.Count == 0
                ? "Change what you like, or hand in."
                : "A question without an answer counts as wrong. There is no time limit.",
            [.. lines.Where(line => line.Said.Count == 0)],
            [.. lines.Where(line => line.Said.Count > 0)],
            Paths.Quiz(quiz.Module, quiz.Attempt, open is [var first, ..] ? first : 1),
            QuestionView.ReadOutOf(quiz, names)
        );
    }

    private static GivenLine Line(DrawnQuiz quiz, int number)
    {
        var question = quiz.Asked[number - 1];
        return new(
            number,
            question.Text,
            quiz.GivenAt(number) is { } given ? Say.Answer(question.Kind, given) : [],
            Paths.Quiz(quiz.Module, quiz.Attempt, number)
        );
    }
}
