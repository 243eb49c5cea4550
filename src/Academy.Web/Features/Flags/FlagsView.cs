using Academy.Competence;
using Academy.Web.Features.Shared;
using Academy.Web.Wording;

namespace Academy.Web.Features.Flags;

/// <summary>One flagged groom in a list.</summary>
public sealed record FlagEntry(string Title, string Told, string Href)
{
    internal static FlagEntry Of(FlagLine line, Names names) =>
        new(
            $"{names.Of(new PersonId(line.Person))} with {line.Dog}",
            $"{Say.Capital(SkillsOf(line, names))}; groomed {names.Time.At(line.StartedAt)}"
                + (line.SpokenAt is { } at ? $", spoken about {names.Time.Ago(at)}" : ""),
            Paths.Flag(line.Groom, line.Person)
        );

    private static string SkillsOf(FlagLine line, Names names) =>
        Counts.And([.. line.Skills.Split(',').Select(code => names.Of(new SkillCode(code)))]);
}

/// <summary>Grooms done alone by somebody who was not alone for them: those to speak about, and the last that were.</summary>
public sealed record FlagsView(string Heading, IReadOnlyList<FlagEntry> Open, string? More, IReadOnlyList<FlagEntry> Spoken)
{
    public static FlagsView Of(IReadOnlyList<FlagLine> open, int after, IReadOnlyList<FlagLine> spoken, Names names)
    {
        var hasMore = open.Count > FlagQueries.PageSize;
        var shown = open.Take(FlagQueries.PageSize).ToList();
        return new(
            HeadingOf(shown.Count, hasMore || after > 0),
            [.. shown.Select(line => FlagEntry.Of(line, names))],
            hasMore ? $"{Paths.Flags}?after={after + shown.Count}" : null,
            [.. spoken.Select(line => FlagEntry.Of(line, names))]
        );
    }

    private static string HeadingOf(int shown, bool areMore) =>
        (shown, areMore) switch
        {
            (0, _) => "No flagged groom waits for a word",
            (_, true) => "Many flagged grooms wait for a word",
            _ => $"{Counts.Of(shown, "flagged groom waits", "flagged grooms wait")} for a word",
        };
}
