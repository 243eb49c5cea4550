using Academy.Competence.Quizzes;
using Academy.Modules.Comparing;
using Academy.Web.Features.Shared;
using Academy.Web.Wording;

namespace Academy.Web.Features.ModuleEditions;

/// <summary>What is compared.</summary>
/// <param name="Findings">How many things in the later text have still to be looked at.</param>
public sealed record Sides(Module Module, EditionHistory History, string From, string To, int Findings);

/// <summary>A run of words, marked where they are what differs.</summary>
public sealed record SidePiece(string Words, bool IsChanged);

/// <summary>A line in both texts, or a gap of lines that are the same.</summary>
/// <param name="Gap">How many lines are left out here; null for a line.</param>
/// <param name="Shape">What happened to it, as the style sheet calls it.</param>
public sealed record SideLine(string? Gap, string Shape, IReadOnlyList<SidePiece> Before, IReadOnlyList<SidePiece> After);

/// <summary>One part of the comparison.</summary>
/// <param name="Word">For a question what happened to it.</param>
public sealed record SidePart(string Id, string Heading, string? Word, IReadOnlyList<SideLine> Lines);

/// <summary>Two texts of a module side by side.</summary>
public sealed record CompareView(
    string Title,
    string Heading,
    string Lead,
    string Editions,
    string Before,
    string After,
    IReadOnlyList<SidePart> Parts,
    IReadOnlyList<SidePart> Questions,
    string? SameQuestions,
    IReadOnlyList<string> Pictures
)
{
    private const int LinesAround = 1;

    public static CompareView Of(Sides sides, EditionComparison compared, Names names)
    {
        var (before, after) = (Name(sides, sides.From), Name(sides, sides.To));
        var changed = compared.Questions.Where(question => question.Change != Change.Same).ToList();
        var same = compared.Questions.Count - changed.Count;
        return new(
            $"{sides.Module.Title}: what changed",
            compared.IsSame ? "Nothing differs" : $"What changed in {sides.Module.Title}",
            $"{Say.Capital(before)}, and beside it {after}. {LeadOf(sides, after, names)}",
            Paths.ModuleEditions(sides.Module.Name.Value),
            Say.Capital(before),
            Say.Capital(after),
            [.. PartsOf(compared)],
            [.. changed.Select((question, place) => PartOf(question, place))],
            same == 0 ? null : $"{Counts.Of(same, "question")} {(same == 1 ? "is" : "are")} the same.",
            [
                .. compared
                    .Pictures.Where(picture => picture.Change != Change.Same)
                    .Select(picture => $"{picture.File}: {EditionWords.Word(picture.Change)}"),
            ]
        );
    }

    private static string Name(Sides sides, string hash) =>
        hash == Paths.Draft ? "the draft"
        : sides.History.Find(hash) is { } edition ? $"edition {edition.Seen.Edition}"
        : "the library’s edition";

    private static string LeadOf(Sides sides, string after, Names names) =>
        sides switch
        {
            { To: Paths.Draft, Findings: > 0 } =>
                $"{Counts.Of(sides.Findings, "thing")} in the draft {(sides.Findings == 1 ? "has" : "have")} still to be looked at.",
            { To: Paths.Draft } => "Nothing in the draft has to be put right.",
            _ when sides.History.Find(sides.To) is { } edition =>
                $"{Say.Capital(after)}, {EditionWords.When(edition, NextOf(sides.History, edition), names.Time)}, {EditionWords.By(edition, names)}.",
            _ => "It does not count here until the salon takes it.",
        };

    private static EditionInForce? NextOf(EditionHistory history, EditionInForce edition) =>
        history.Editions.SkipWhile(one => one != edition).Skip(1).FirstOrDefault();

    private static IEnumerable<SidePart> PartsOf(EditionComparison compared)
    {
        yield return new("about", "About the module", null, Folded(compared.About));
        yield return new("lesson", "The lesson", null, Folded(compared.Lesson));
    }

    private static SidePart PartOf(ComparedQuestion question, int place) =>
        new(
            FormattableString.Invariant($"q-{place}"),
            question.Id,
            EditionWords.Word(question.Change),
            [.. question.Lines.Select(LineOf)]
        );

    // What is the same is told in one line, but for the line before and after what differs.
    private static List<SideLine> Folded(IReadOnlyList<ComparedLine> lines)
    {
        List<SideLine> shown = [];
        var hidden = 0;
        foreach (var (place, line) in lines.Index())
        {
            var isNear = lines.Skip(place - LinesAround).Take(LinesAround + 1 + Math.Min(place, LinesAround)).Any(IsChanged);
            if (isNear && hidden > 0)
                shown.Add(GapOf(hidden));
            hidden = isNear ? 0 : hidden + 1;
            if (isNear)
                shown.Add(LineOf(line));
        }
        if (hidden > 0 && shown.Count > 0)
            shown.Add(GapOf(hidden));
        return shown;
    }

    private static bool IsChanged(ComparedLine line) => line.Change != Change.Same;

    private static SideLine GapOf(int lines) =>
        new($"{Counts.Of(lines, "line")} the same", EditionWords.Shape(Change.Same), [], []);

    private static SideLine LineOf(ComparedLine line) =>
        new(
            Gap: null,
            EditionWords.Shape(line.Change),
            [.. line.Before.Select(piece => new SidePiece(piece.Words, piece.IsChanged))],
            [.. line.After.Select(piece => new SidePiece(piece.Words, piece.IsChanged))]
        );
}
