using System.Diagnostics;
using Academy.Competence.Salons;
using Academy.Modules;
using Academy.Web.Features.Shared;
using Academy.Web.Library;
using Academy.Web.Wording;
using Severity = Academy.Modules.Severity;

namespace Academy.Web.Features.Study;

/// <summary>One finding: where, how much it matters, what to do.</summary>
public sealed record FindingLine(string Place, string Kind, string Words, bool IsBroken);

/// <summary>A module whose comparison with its sources is due.</summary>
public sealed record ReviewLine(string Title, string Href, string Words);

/// <summary>The state of the module files, for the owner.</summary>
public sealed record FindingsView(
    string Heading,
    string Lead,
    IReadOnlyList<FindingLine> Findings,
    IReadOnlyList<ReviewLine> Reviews,
    IReadOnlyList<string> Missing
)
{
    public static FindingsView Of(Shelf library, SalonBook book, Names names)
    {
        var toPutRight = library.Findings.Count(finding => finding.Severity > Severity.Hint);
        return new(
            toPutRight == 0
                ? "Nothing to put right in the modules"
                : $"{Counts.Of(toPutRight, "thing")} to put right in the modules",
            $"{Counts.Of(library.Modules.Count, "module")} can be studied. The files are read when the portal starts.",
            [.. library.Findings.OrderByDescending(finding => finding.Severity).Select(Line)],
            [
                .. library
                    .Modules.Where(module => module.ReviewDueOn <= names.Time.Today)
                    .OrderBy(module => module.ReviewDueOn)
                    .Select(module => new ReviewLine(
                        module.Title,
                        Paths.Module(module.Name.Value),
                        $"Due since {names.Time.Date(module.ReviewDueOn)}; last compared on {names.Time.Date(module.ReviewedOn)}."
                    )),
            ],
            [.. MissingOf(library, book, names)]
        );
    }

    private static FindingLine Line(Finding finding) =>
        new(
            finding.Line > 0 ? $"{finding.File}, line {finding.Line}" : finding.File,
            Word(finding.Severity),
            finding.Message,
            finding.Severity == Severity.Broken
        );

    private static string Word(Severity severity) =>
        severity switch
        {
            Severity.Broken => "broken: not served",
            Severity.Fault => "fault",
            Severity.Hint => "hint",
            _ => throw new UnreachableException($"No word for {severity}."),
        };

    private static IEnumerable<string> MissingOf(Shelf library, SalonBook book, Names names) =>
        from skill in book.Skills
        where !skill.IsRetired
        from module in skill.Modules
        where library.Find(module.Value) is null
        group skill.Name by module into asking
        select $"{names.Of(asking.Key)}: asked for by {Say.Some([.. asking])}";
}
