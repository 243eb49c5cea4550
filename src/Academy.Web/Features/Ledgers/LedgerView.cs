using Academy.Competence;
using Academy.Storage.Ledgers;
using Academy.Web.Features.Shared;
using Academy.Web.Wording;

namespace Academy.Web.Features.Ledgers;

/// <summary>The newest entries of the ledger.</summary>
public sealed record LedgerView(IReadOnlyList<LedgerLine> Lines, string? Older)
{
    internal static LedgerView Of(IReadOnlyList<LedgerEntry> entries, IReadOnlyList<Erasure> erasures, Names names)
    {
        var shown = entries.Take(LedgerQueries.PageSize).ToList();
        return new LedgerView(
            [.. shown.Select(entry => LedgerLine.Of(entry, erasures, names))],
            entries.Count > shown.Count ? $"{Paths.Ledger}?before={shown[^1].Seq}" : null
        );
    }
}

/// <summary>One entry.</summary>
/// <param name="WordsHref">Where the words beside it are read and erased; null where there are none.</param>
/// <param name="Erased">Who erased its words and when; null where nobody did.</param>
public sealed record LedgerLine(
    long Number,
    string When,
    string What,
    string Who,
    string? Device,
    string? WordsHref,
    string? Erased
)
{
    internal static LedgerLine Of(LedgerEntry entry, IReadOnlyList<Erasure> erasures, Names names) =>
        new(
            entry.Seq,
            $"{names.Time.Date(names.Time.DayOf(entry.RecordedAt))}, {names.Time.Clock(entry.RecordedAt)}",
            Say.Kind(entry.Kind),
            WhoOf(entry.Actor, names),
            entry.Device,
            entry.HasWords ? Paths.LedgerEntry(entry.Seq) : null,
            erasures.FirstOrDefault(erasure => erasure.Entry == entry.Seq) is { } gone
                ? $"words erased on {names.Time.Date(names.Time.DayOf(gone.At))} by {WhoOf(gone.Actor, names)}"
                : null
        );

    private static string WhoOf(string actor, Names names) =>
        Guid.TryParse(actor, out var person) ? names.Of(new PersonId(person)) : "the program itself";
}

/// <summary>Words beside an entry, by where they stand; those that may not be erased are names.</summary>
public sealed record WordsLine(string Place, string Text)
{
    internal static WordsLine Of(EntryWords words) => new(LedgerWords.Place(words.Path), words.Text ?? "erased");
}

/// <summary>One entry with the words beside it.</summary>
public sealed record EntryView(LedgerLine Line, IReadOnlyList<WordsLine> Words, bool MayErase, bool HasNames)
{
    internal static EntryView Of(
        LedgerEntry entry,
        IReadOnlyList<EntryWords> words,
        IReadOnlyList<Erasure> erasures,
        Names names
    ) =>
        new(
            LedgerLine.Of(entry, erasures, names),
            [.. words.Select(WordsLine.Of)],
            words.Any(IsLeft),
            words.Any(one => !one.MayBeErased)
        );

    /// <summary>Whether these words are there and may be erased.</summary>
    internal static bool IsLeft(EntryWords words) => words is { Text: not null, MayBeErased: true };
}

/// <summary>What came of checking the whole ledger.</summary>
public sealed record CheckedView(bool Holds, string Heading, string Counted, string? Broken)
{
    internal static CheckedView Of(LedgerChecked found) =>
        new(
            found.Holds,
            found.Holds ? "The ledger holds" : "The ledger does not hold",
            $"{Counts.Of((int)found.Entries, "entry", "entries")} in one unbroken chain, {found.Words} pieces of writing checked against their seals, {found.Erased} of them erased.",
            found.First is { } fault ? LedgerWords.Broken(fault) : null
        );
}
