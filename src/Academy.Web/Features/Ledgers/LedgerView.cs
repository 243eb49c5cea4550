using Academy.Competence;
using Academy.Storage.Ledgers;
using Academy.Web.Features.Shared;
using Academy.Web.Wording;

namespace Academy.Web.Features.Ledgers;

/// <summary>The newest entries of the ledger.</summary>
public sealed record LedgerView(IReadOnlyList<LedgerLine> Lines, string? Older)
{
    internal static LedgerView Of(IReadOnlyList<LedgerEntry> entries, Names names)
    {
        var shown = entries.Take(LedgerQueries.PageSize).ToList();
        return new LedgerView(
            [.. shown.Select(entry => LedgerLine.Of(entry, names))],
            entries.Count > shown.Count ? $"{Paths.Ledger}?before={shown[^1].Seq}" : null
        );
    }
}

/// <summary>One entry.</summary>
public sealed record LedgerLine(long Number, string When, string What, string Who, string? Device)
{
    internal static LedgerLine Of(LedgerEntry entry, Names names) =>
        new(
            entry.Seq,
            $"{names.Time.Date(names.Time.DayOf(entry.RecordedAt))}, {names.Time.Clock(entry.RecordedAt)}",
            Say.Kind(entry.Kind),
            Guid.TryParse(entry.Actor, out var person) ? names.Of(new PersonId(person)) : "the program itself",
            entry.Device
        );
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
