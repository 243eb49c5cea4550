using System.Text.Json.Nodes;
using Academy.Storage.Rows;
using Microsoft.EntityFrameworkCore;

namespace Academy.Storage.Tests;

/// <summary>
/// A ledger as text, to compare two that were told the same. Words are sealed under keys that nobody can foresee, so seals and
/// the hashes over them differ; the words themselves are compared.
/// </summary>
internal static class LedgerDump
{
    public static async Task<string> OfAsync(TestDatabase database, CancellationToken stop)
    {
        await using var db = database.NewDb();
        var salons = await db.Salons.OrderBy(row => row.Id).ToListAsync(stop);
        var entries = await db.Ledger.OrderBy(row => row.SalonId).ThenBy(row => row.Seq).ToListAsync(stop);
        var words = await db.Words.OrderBy(row => row.FactId).ThenBy(row => row.Path).ToListAsync(stop);
        return string.Join(
            '\n',
            [
                .. salons.Select(row => $"{row.Id} {row.Version} {row.BookVersion}"),
                .. entries.Select(Spell),
                .. words.Select(row => $"{row.FactId} {row.Path} {row.Text}"),
            ]
        );
    }

    private static string Spell(LedgerRow row)
    {
        var told = JsonNode.Parse(row.Canonical)!.AsObject();
        told.Remove("words");
        return $"{row.Seq} {row.FactId} {row.Kind} {row.Subject} {row.At:O} {row.RecordedAt:O} {row.Actor} {row.Device} {told.ToJsonString()}";
    }
}
