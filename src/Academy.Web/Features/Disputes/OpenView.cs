using Academy.Competence;
using Academy.Web.Features.Shared;
using Academy.Web.Wording;

namespace Academy.Web.Features.Disputes;

/// <summary>One line of a list.</summary>
public sealed record OpenEntry(string Title, string Told, string Href);

/// <summary>What waits for the owner's word.</summary>
public sealed record OpenView(
    string Heading,
    IReadOnlyList<OpenEntry> Disputes,
    string? MoreDisputes,
    IReadOnlyList<OpenEntry> Late,
    string? MoreLate,
    IReadOnlyList<OpenEntry> Answered
)
{
    public static OpenView Of(
        LinePage<DisputeLine> open,
        LinePage<LateLine> late,
        IReadOnlyList<DisputeLine> answered,
        Names names
    ) =>
        new(
            HeadingOf(open),
            [.. open.Lines.Select(line => Entry(line, names))],
            open.HasMore ? $"{Paths.Disputes}?after={open.Lines[^1].SignOff}" : null,
            [.. late.Lines.Select(line => Entry(line, names))],
            late.HasMore ? $"{Paths.Disputes}?late={late.Lines[^1].SignOff}" : null,
            [.. answered.Select(line => Entry(line, names))]
        );

    private static string HeadingOf(LinePage<DisputeLine> open) =>
        open switch
        {
            { Lines.Count: 0 } => "No dispute waits for your answer",
            { Lines.Count: 1 } => "1 dispute waits for your answer",
            { HasMore: true } => $"More than {open.Lines.Count} disputes wait for your answer",
            _ => $"{open.Lines.Count} disputes wait for your answer",
        };

    private static OpenEntry Entry(DisputeLine line, Names names) =>
        new(
            $"{names.Of(new PersonId(line.By))} with {line.Dog}",
            line.AnsweredAt is { } answered
                ? $"Answered {names.Time.Ago(answered)}"
                : $"Disputed {names.Time.Ago(line.At)}, {names.Time.At(line.At)}",
            Paths.Dispute(line.SignOff)
        );

    private static OpenEntry Entry(LateLine line, Names names) =>
        new(
            $"{names.Of(new PersonId(line.Person))} with {line.Dog}",
            $"Signed late by {names.Of(new PersonId(line.Senior))}, {names.Time.At(line.SignedAt)}",
            Paths.Dispute(line.SignOff)
        );
}
