using System.Globalization;
using Academy.Competence.Quizzes;
using Academy.Modules.Pictures;
using Academy.Web.Features.Shared;
using Academy.Web.Library;
using Academy.Web.Wording;

namespace Academy.Web.Features.Judgements;

/// <summary>A way to another question.</summary>
public sealed record JumpLine(int Number, bool IsJudged, bool IsHere);

/// <summary>A letter on a picture, in the picture's own units.</summary>
public sealed record LetterLine(string X, string Y, string Size, string Letter, bool IsRight);

/// <summary>The picture that a question asks about, with its letters.</summary>
public sealed record LetteredPicture(
    string Href,
    string Box,
    string Width,
    string Height,
    string Left,
    string Top,
    IReadOnlyList<LetterLine> Letters
)
{
    public static LetteredPicture? Of(QuestionKind kind, Bench bench)
    {
        if (kind is not OnPicture asked || !bench.Lesson.Pictures.TryGetValue(asked.Picture, out var picture))
            return null;
        var (left, top) = (picture.Origin.Left, picture.Origin.Top);
        var size = picture.Width / 24m;
        return new(
            $"/modules/{bench.Module.Name.Value}/{asked.Picture}?v={LessonPage.VersionOf(bench.Lesson)}",
            $"{Written(left)} {Written(top)} {Written(picture.Width)} {Written(picture.Height)}",
            Written(picture.Width),
            Written(picture.Height),
            Written(left),
            Written(top),
            [
                .. asked.Spots.Select(
                    (spot, place) =>
                        new LetterLine(
                            Written(spot.X),
                            Written(spot.Y),
                            Written(size),
                            Say.Letter(place).ToString(),
                            spot.IsRight
                        )
                ),
            ]
        );
    }

    private static string Written(decimal units) => units.ToString("0.##", CultureInfo.InvariantCulture);
}

/// <summary>One question as a judge sees it: what is asked, what is right and why.</summary>
/// <param name="Wrong">What else can be chosen.</param>
/// <param name="Because">The explanation as safe HTML.</param>
/// <param name="Sources">The sources that it cites, as safe HTML.</param>
public sealed record QuestionView(
    string Module,
    string Lesson,
    int Number,
    int Last,
    int Judged,
    string Text,
    bool IsMustKnow,
    string HowMarked,
    IReadOnlyList<string> Right,
    IReadOnlyList<string> Wrong,
    string Because,
    string Sources,
    LetteredPicture? Picture,
    IReadOnlyList<Pick> Numbers,
    IReadOnlyList<JumpLine> Jumps
)
{
    private const int Ten = 10;

    public static QuestionView Of(Bench bench, int number, PathString mounted)
    {
        var (module, question) = (bench.Module, bench.Module.Questions[number - 1]);
        var right = Say.RightAnswer(question.Kind);
        return new(
            module.Title,
            Paths.Module(module.Name.Value),
            number,
            module.Questions.Count,
            module.Questions.Count - bench.Open.Count,
            question.Text,
            question.IsMustKnow,
            Say.HowMarked(question.Kind),
            right,
            [.. All(question.Kind).Where(words => !right.Contains(words))],
            LessonPage.Explanation(bench.Lesson, question.Id, mounted),
            LessonPage.Sources(bench.Lesson, mounted),
            LetteredPicture.Of(question.Kind, bench),
            [.. Enumerable.Range(0, Ten + 1).Select(many => new Pick(Written(many), Written(many)))],
            [
                .. Enumerable
                    .Range(1, module.Questions.Count)
                    .Select(one => new JumpLine(one, bench.At(one) is not null, one == number)),
            ]
        );
    }

    private static IReadOnlyList<string> All(QuestionKind kind) =>
        kind switch
        {
            Choice choice => Say.Answer(kind, new Picked([.. Enumerable.Range(0, choice.Options.Count)])),
            OnPicture picture => Say.Answer(kind, new Picked([.. Enumerable.Range(0, picture.Spots.Count)])),
            _ => [],
        };

    private static string Written(int number) => number.ToString(CultureInfo.InvariantCulture);
}
