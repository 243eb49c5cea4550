using System.Text.Json.Nodes;
using Academy.Competence;
using Academy.Competence.Facts;
using Academy.Storage.Ledgers;
using Academy.Storage.Rows;
using Microsoft.EntityFrameworkCore;

namespace Academy.Storage;

/// <summary>Reads facts back from the ledger, with their words put back in, in the order in which they were recorded.</summary>
internal static class LedgerReader
{
    /// <summary>The facts of these entries. Words that were erased come back as none.</summary>
    public static async Task<IReadOnlyList<Recorded>> ReadAsync(
        this IQueryable<LedgerRow> entries,
        AcademyDb db,
        CancellationToken stop
    )
    {
        var rows = await entries.AsNoTracking().OrderBy(row => row.Seq).ToListAsync(stop);
        if (rows.Count == 0)
            return [];

        var words = await db
            .Words.AsNoTracking()
            .Join(entries, word => new { word.SalonId, word.FactId }, row => new { row.SalonId, row.FactId }, (word, _) => word)
            .ToListAsync(stop);
        var byFact = words.Where(word => word.Text is not null).ToLookup(word => word.FactId);
        return [.. rows.Select(row => Read(row, byFact[row.FactId]))];
    }

    private static Recorded Read(LedgerRow row, IEnumerable<WordsRow> words)
    {
        var data = JsonNode.Parse(row.Canonical)!["data"]!.AsObject();
        var fact = FactForms.Read(
            row.Kind,
            data,
            words.ToDictionary(word => word.Path, word => word.Text!, StringComparer.Ordinal)
        );
        return new Recorded(fact, Guid.TryParse(row.Actor, out var actor) ? new PersonId(actor) : null, row.RecordedAt, row.Seq);
    }
}
