using Academy.Competence;
using Academy.Storage;
using Microsoft.EntityFrameworkCore;

namespace Academy.Web.Features.Ledgers;

/// <summary>One entry of the ledger: what kind of thing, who, when, from where.</summary>
public sealed record LedgerEntry(long Seq, string Kind, string Actor, DateTimeOffset RecordedAt, string? Device);

/// <summary>Reads the newest entries.</summary>
public sealed class LedgerQueries(AcademyDb db)
{
    public const int PageSize = 50;

    /// <summary>Entries before this one, newest first, one more than a page shows.</summary>
    public async Task<IReadOnlyList<LedgerEntry>> EntriesAsync(SalonId salon, long? before, CancellationToken stop) =>
        await db
            .Ledger.AsNoTracking()
            .Where(row => row.SalonId == salon.Value && (before == null || row.Seq < before))
            .OrderByDescending(row => row.Seq)
            .Take(PageSize + 1)
            .Select(row => new LedgerEntry(row.Seq, row.Kind, row.Actor, row.RecordedAt, row.Device))
            .ToListAsync(stop);
}
