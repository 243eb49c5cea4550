using System.Globalization;
using Academy.Competence.Quizzes;
using Academy.Web.Features.Shared;
using Academy.Web.Wording;

namespace Academy.Web.Features.Quizzes;

/// <summary>One question in the list that one jumps by.</summary>
public sealed record JumpLine(int Number, bool IsAnswered, bool IsHere);

/// <summary>One question of a quiz under way. Which options are right is not in it.</summary>
/// <param name="ReadOut">Who reads it out to whom; null where nobody does.</param>
public sealed record QuestionView(
    string Module,
    int Number,
    int Last,
    int Answered,
    bool IsMustKnow,
    string Text,
    string HowMarked,
    bool SeveralRight,
    IReadOnlyList<Pick> Options,
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
            question.Kind is Choice { SeveralRight: true },
            [.. OptionsOf(question.Kind)],
            [
                .. Enumerable
                    .Range(1, quiz.Asked.Count)
                    .Select(other => new JumpLine(other, quiz.IsAnswered(other), other == number)),
            ],
            ReadOutOf(quiz, names)
        );
    }

    private static IEnumerable<Pick> OptionsOf(QuestionKind kind) =>
        kind switch
        {
            Choice choice => choice.Options.Select((option, place) => new Pick(Written(place), option.Text)),
            TrueOrFalse => Say.Truths.Select((words, place) => new Pick(Written(place), words)),
            OnPicture picture => picture.Spots.Select(
                (spot, place) => new Pick(Written(place), spot.Words, Number: Say.Letter(place).ToString())
            ),
            _ => [],
        };

    private static string Written(int place) => place.ToString(CultureInfo.InvariantCulture);

    internal static string? ReadOutOf(DrawnQuiz quiz, Names names) =>
        quiz.Sitting.ReadOutBy is { } senior
            ? $"{names.Of(senior)} reads this out to {names.Of(quiz.Sitting.Person)}; the attempt says so."
            : null;
}
