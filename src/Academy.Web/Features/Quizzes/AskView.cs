using System.Globalization;
using Academy.Competence.Quizzes;
using Academy.Modules;
using Academy.Web.Features.Shared;
using Academy.Web.Wording;
using Microsoft.AspNetCore.Mvc.Rendering;

namespace Academy.Web.Features.Quizzes;

/// <summary>One row of an order or of pairs: what it is about, and what can be chosen for it.</summary>
public sealed record RowLine(string Label, IReadOnlyList<SelectListItem> Items);

/// <summary>A letter on a picture, and the choice that tapping it makes.</summary>
/// <param name="X">Its middle, in the units of <see cref="PictureLine"/>, written for a page.</param>
public sealed record MarkerLine(string X, string Y, string Left, string Top, char Letter, string For);

/// <summary>A picture with letters on it, as wide as a phone shows it: a unit is about one of its pixels.</summary>
public sealed record PictureLine(string Href, string Words, int Width, string Height, IReadOnlyList<MarkerLine> Markers)
{
    /// <summary>How wide it is in its own units.</summary>
    public const int Across = 360;

    /// <summary>How wide and high a marker is to a finger: never under 44 pixels on a phone 390 pixels wide.</summary>
    public const int Finger = 46;

    public static PictureLine? Of(QuestionKind kind, DrawnQuiz quiz)
    {
        if (kind is not OnPicture asked || !quiz.Lesson.Pictures.TryGetValue(asked.Picture, out var picture))
            return null;
        var scale = (decimal)Across / picture.Width;
        return new(
            Paths.QuizPicture(quiz.Module, quiz.Attempt, picture.File),
            $"A picture with {asked.Spots.Count} places marked {Say.Letter(0)} to {Say.Letter(asked.Spots.Count - 1)}. Each is described below.",
            Across,
            Written(picture.Height * scale),
            [
                .. asked.Spots.Select(
                    (spot, place) =>
                        MarkerOf((spot.X - picture.Origin.Left) * scale, (spot.Y - picture.Origin.Top) * scale, place)
                ),
            ]
        );
    }

    private static MarkerLine MarkerOf(decimal x, decimal y, int place) =>
        new(
            Written(x),
            Written(y),
            Written(x - Finger / 2m),
            Written(y - Finger / 2m),
            Say.Letter(place),
            place == 0 ? "Picked" : $"Picked-{AnswerForm.Written(place)}"
        );

    private static string Written(decimal units) => units.ToString("0.##", CultureInfo.InvariantCulture);
}

/// <summary>What there is to choose or to type. What is right is not in it.</summary>
/// <param name="Options">What can be picked.</param>
/// <param name="Many">Whether several may be picked.</param>
/// <param name="Rows">The rows of an order or of pairs.</param>
/// <param name="HasBareNumber">A number without a unit: a keyboard of digits is enough for it.</param>
public sealed record AskView(
    IReadOnlyList<Pick> Options,
    bool Many,
    IReadOnlyList<RowLine> Rows,
    bool IsNumber,
    bool HasBareNumber,
    PictureLine? Picture
)
{
    public static AskView Of(QuestionKind kind, DrawnQuiz quiz) =>
        new(
            [.. OptionsOf(kind)],
            kind is Choice { SeveralRight: true },
            [.. AnswerForm.RowsOf(kind).Select(row => new RowLine(row, ItemsOf(kind)))],
            kind is Number,
            kind is Number number && !number.Units.Any(),
            PictureLine.Of(kind, quiz)
        );

    private static IEnumerable<Pick> OptionsOf(QuestionKind kind) =>
        kind switch
        {
            Choice choice => choice.Options.Select((option, place) => new Pick(AnswerForm.Written(place), option.Text)),
            TrueOrFalse => Say.Truths.Select((words, place) => new Pick(AnswerForm.Written(place), words)),
            OnPicture picture => picture.Spots.Select(
                (spot, place) => new Pick(AnswerForm.Written(place), spot.Words, Number: Say.Letter(place).ToString())
            ),
            _ => [],
        };

    private static SelectListItem[] ItemsOf(QuestionKind kind)
    {
        IEnumerable<string> choices = kind switch
        {
            InOrder order => order.Steps.Select((_, place) => Say.Ordinal(place + 1)),
            Matching match => match.Sides,
            _ => [],
        };
        return [new("Choose", ""), .. choices.Select((words, place) => new SelectListItem(words, AnswerForm.Written(place)))];
    }
}
