using Academy.Competence;
using Academy.Competence.Salons;
using Academy.Web.Features.Shared;
using Academy.Web.Wording;

namespace Academy.Web.Features.Incidents;

/// <summary>One incident of a list.</summary>
public sealed record IncidentEntry(string Title, string Told, string Href);

/// <summary>What waits for review.</summary>
public sealed record ReviewsView(
    string Heading,
    IReadOnlyList<IncidentEntry> Critical,
    string? MoreCritical,
    IReadOnlyList<IncidentEntry> Others,
    string? MoreOthers,
    IReadOnlyList<IncidentEntry> Reviewed
)
{
    public static ReviewsView Of(IncidentPage critical, IncidentPage others, IReadOnlyList<IncidentLine> reviewed, Names names) =>
        new(
            HeadingOf(critical),
            [.. critical.Lines.Select(line => Entry(line, names))],
            critical.HasMore ? $"{Paths.Reviews}?critical={critical.Lines[^1].Id}" : null,
            [.. others.Lines.Select(line => Entry(line, names))],
            others.HasMore ? $"{Paths.Reviews}?other={others.Lines[^1].Id}" : null,
            [.. reviewed.Select(line => Entry(line, names))]
        );

    private static string HeadingOf(IncidentPage critical) =>
        critical switch
        {
            { Lines.Count: 0 } => "No critical incident waits for your review",
            { Lines.Count: 1 } => "1 critical incident waits for your review",
            { HasMore: true } => $"More than {critical.Lines.Count} critical incidents wait for your review",
            _ => $"{critical.Lines.Count} critical incidents wait for your review",
        };

    private static IncidentEntry Entry(IncidentLine line, Names names) =>
        new(
            $"{names.Of(new PersonId(line.Person))} with {line.Dog}: {Say.Word((IncidentKind)line.Kind)}, {Say.Word((Severity)line.Severity)}",
            line.ReviewedAt is { } reviewed
                ? $"Reviewed {names.Time.Ago(reviewed)}"
                : $"Reported {names.Time.Ago(line.ReportedAt)}, {names.Time.At(line.ReportedAt)}",
            Paths.Review(line.Id)
        );
}
