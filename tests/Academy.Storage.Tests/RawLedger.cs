using System.Text.Json.Nodes;
using Academy.Storage.Ledgers;
using Academy.Storage.Rows;

namespace Academy.Storage.Tests;

/// <summary>Entries written row by row, for tests that look at the ledger's own promises below any fact of the trade.</summary>
internal static class RawLedger
{
    public static readonly Guid Salon = new("0198c0de-0000-7000-8000-000000000001");

    private static readonly DateTimeOffset Start = new(2026, 3, 2, 9, 0, 0, TimeSpan.Zero);

    public static async Task AppendAsync(AcademyDb db, int entries, string words = "took the tail too short")
    {
        var salon = await db.Salons.FindAsync(Salon);
        if (salon is null)
            db.Salons.Add(salon = new SalonRow { Id = Salon });
        for (var i = 0; i < entries; i++)
            Append(db, salon, words);
        await db.SaveChangesAsync();
    }

    public static Guid FactOf(long seq) => new($"0198c0de-0000-7000-8001-{seq:x12}");

    private static void Append(AcademyDb db, SalonRow salon, string words)
    {
        byte[] key = [.. Enumerable.Repeat((byte)(salon.Version % 256), Chain.HashBytes)];
        var row = NewEntry(salon.Version, Chain.Seal(key, words)).After(salon.Head, Salon);
        db.Ledger.Add(row);
        db.Words.Add(
            new WordsRow
            {
                SalonId = Salon,
                FactId = row.FactId,
                Path = "what",
                Text = words,
                Key = key,
            }
        );
        salon.Head = row.Hash;
        salon.Version++;
    }

    private static Entry NewEntry(long seq, string seal) =>
        new(
            seq,
            FactOf(seq),
            "test.noted",
            Subject: null,
            Start.AddMinutes(seq),
            Start.AddMinutes(seq).AddTicks(1),
            "somebody",
            Device: null,
            Assurance: null,
            new JsonObject { ["what"] = seal },
            new JsonObject { ["number"] = seq }
        );
}
