using System.Diagnostics;
using System.Globalization;
using Academy.Competence.Quizzes;
using Academy.Modules;
using Academy.Web.Features.Shared;
using Academy.Web.Library;
using Academy.Web.Wording;
using Paths = Academy.Web.Features.Shared.Paths;

namespace Academy.Web.Features.Writing;

/// <summary>Something found in a draft.</summary>
/// <param name="Line">Its line in the text; 0 where all of it, or a picture, is meant.</param>
/// <param name="Place">"Line 34", "back.svg", "The whole text".</param>
/// <param name="Quote">What stands in that line.</param>
public sealed record FoundLine(int Line, string Place, string Kind, string Words, string? Quote, bool IsWrong);

/// <summary>What can be chosen or has to be written, and whether it is right.</summary>
public sealed record OptionLine(string Words, bool IsRight);

/// <summary>A question as whoever reads a draft over sees it: with its answers.</summary>
/// <param name="Kind">"must-know, One answer is right."</param>
/// <param name="Because">The reason, safe to be put into a page as it is.</param>
public sealed record QuestionLine(
    string Name,
    string Text,
    string Kind,
    string? Picture,
    IReadOnlyList<OptionLine> Options,
    string Because
);

/// <summary>How a draft will look, and what was found in it.</summary>
/// <param name="Heading">"Nothing has to be put right".</param>
/// <param name="Title">Its title; null where it is broken and cannot be shown.</param>
/// <param name="Html">The lesson, safe to be put into a page as it is; empty where it cannot be shown.</param>
public sealed record ShownView(
    string Heading,
    IReadOnlyList<FoundLine> Found,
    string? Title,
    string Summary,
    string Html,
    IReadOnlyList<QuestionLine> Questions
)
{
    private const int LongestQuote = 80;

    public static ShownView Of(DraftRead read, PathString mounted)
    {
        var lines = read.Draft.Text.Split('\n');
        string AddressOf(string file) => Paths.DraftPicture(read.Draft.Module.Value, file);
        return new(
            DraftWords.Found(read.Findings),
            [.. read.Findings.Select(finding => LineOf(finding, lines))],
            read.Lesson?.Module.Title,
            read.Lesson?.Module.Summary ?? "",
            read.Lesson is { } lesson ? LessonPage.OfDraft(lesson.Html, mounted, AddressOf) : "",
            read.Lesson is { } asked
                ? [.. asked.Module.Questions.Select(question => LineOf(question, asked, mounted, AddressOf))]
                : []
        );
    }

    private static FoundLine LineOf(Finding finding, string[] lines)
    {
        var isText = finding.File.EndsWith("/module.md", StringComparison.Ordinal);
        var line = isText && finding.Line <= lines.Length ? finding.Line : 0;
        return new(
            line,
            line > 0 ? string.Create(CultureInfo.InvariantCulture, $"Line {line}")
                : isText ? "The whole text"
                : finding.File[(finding.File.LastIndexOf('/') + 1)..],
            DraftWords.Kind(finding.Severity),
            finding.Message,
            line > 0 ? Quoted(lines[line - 1]) : null,
            finding.Severity > Severity.Hint
        );
    }

    private static string? Quoted(string line) =>
        line.Trim() is not { Length: > 0 } words ? null
        : words.Length > LongestQuote ? words[..LongestQuote] + "…"
        : words;

    private static QuestionLine LineOf(Question question, Lesson lesson, PathString mounted, Func<string, string> addressOf) =>
        new(
            question.Id,
            question.Text,
            $"{(question.IsMustKnow ? "Must-know. " : "")}{Say.HowMarked(question.Kind)}",
            question.Kind is OnPicture { Picture: var file } ? addressOf(file) : null,
            [.. OptionsOf(question.Kind)],
            lesson.Explanations.TryGetValue(question.Id, out var because) ? LessonPage.OfDraft(because, mounted, addressOf) : ""
        );

    private static IEnumerable<OptionLine> OptionsOf(QuestionKind kind) =>
        kind switch
        {
            Choice choice => choice.Options.Select(option => new OptionLine(option.Text, option.IsRight)),
            OnPicture picture => picture.Spots.Select(spot => new OptionLine(
                string.Create(CultureInfo.InvariantCulture, $"{spot.X}, {spot.Y}: {spot.Words}"),
                spot.IsRight
            )),
            Matching match => match
                .Pairs.Select(pair => new OptionLine($"{pair.Left}: {pair.Right}", IsRight: true))
                .Concat(
                    match
                        .Sides.Except(match.Pairs.Select(pair => pair.Right))
                        .Select(spare => new OptionLine($"Spare: {spare}", IsRight: false))
                ),
            TrueOrFalse or InOrder or Number => Say.RightAnswer(kind).Select(words => new OptionLine(words, IsRight: true)),
            _ => throw new UnreachableException($"No lines for {kind}."),
        };
}
