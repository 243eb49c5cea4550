using System.Text.Json.Nodes;
using Academy.Competence;
using Academy.Competence.Facts;
using Academy.Storage;
using Academy.Storage.Ledgers;
using Academy.Storage.Rows;
using Microsoft.EntityFrameworkCore;

namespace Academy.Web.Features.Ledgers;

/// <summary>One entry of the ledger: what kind of thing, who, when, from where, and whether there are words beside it.</summary>
public sealed record LedgerEntry(long Seq, string Kind, string Actor, DateTimeOffset RecordedAt, string? Device, bool HasWords);

/// <summary>That the words of an entry were erased.</summary>
public sealed record Erasure(long Entry, string Actor, DateTimeOffset At);

/// <summary>Words beside an entry, and where in it they stand; null where they are erased.</summary>
public sealed record EntryWords(string Path, string? Text, bool MayBeErased);

/// <summary>Reads entries of the ledger, and the words beside them.</summary>
public sealed class LedgerQueries(AcademyDb db)
{
    public const int PageSize = 50;
    private static readonly string Erased = FactForms.CodeOf<WordsErased>();

    /// <summary>Entries before this one, newest first, one more than a page shows.</summary>
    public async Task<IReadOnlyList<LedgerEntry>> EntriesAsync(SalonId salon, long? before, CancellationToken stop) =>
        await Told(
                Of(salon).Where(row => before == null || row.Seq < before).OrderByDescending(row => row.Seq).Take(PageSize + 1)
            )
            .ToListAsync(stop);

    /// <summary>One entry; null if there is none of that number.</summary>
    public Task<LedgerEntry?> EntryAsync(SalonId salon, long seq, CancellationToken stop) =>
        Told(Of(salon).Where(row => row.Seq == seq)).SingleOrDefaultAsync(stop);

    /// <summary>Every erasure of this salon: they are few.</summary>
    public async Task<IReadOnlyList<Erasure>> ErasuresAsync(SalonId salon, CancellationToken stop)
    {
        var rows = await Of(salon)
            .Where(row => row.Kind == Erased)
            .OrderBy(row => row.Seq)
            .Select(row => new
            {
                row.Canonical,
                row.Actor,
                row.RecordedAt,
            })
            .ToListAsync(stop);
        return [.. rows.Select(row => new Erasure(EntryOf(row.Canonical), row.Actor, row.RecordedAt))];
    }

    /// <summary>The words beside one entry.</summary>
    public async Task<IReadOnlyList<EntryWords>> WordsAsync(SalonId salon, long seq, CancellationToken stop)
    {
        var words = await Of(salon)
            .Where(row => row.Seq == seq)
            .Join(
                db.Words,
                row => new { row.SalonId, row.FactId },
                word => new { word.SalonId, word.FactId },
                (row, word) =>
                    new
                    {
                        row.Kind,
                        word.Path,
                        word.Text,
                    }
            )
            .ToListAsync(stop);
        return
        [
            .. words
                .OrderBy(word => word.Path, StringComparer.Ordinal)
                .Select(word => new EntryWords(word.Path, word.Text, Erasing.MayBeErased(word.Kind, word.Path))),
        ];
    }

    private IQueryable<LedgerRow> Of(SalonId salon) => db.Ledger.AsNoTracking().Where(row => row.SalonId == salon.Value);

    private IQueryable<LedgerEntry> Told(IQueryable<LedgerRow> rows) =>
        rows.Select(row => new LedgerEntry(
            row.Seq,
            row.Kind,
            row.Actor,
            row.RecordedAt,
            row.Device,
            db.Words.Any(word => word.SalonId == row.SalonId && word.FactId == row.FactId)
        ));

    private static long EntryOf(string canonical) => JsonNode.Parse(canonical)!["data"]!["entry"]!.GetValue<long>();
}
