using System.Globalization;
using Academy.Storage.Ledgers;
using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;

namespace Academy.Storage.Sqlite;

/// <summary>What came of a backup: a checked copy, or the reason why there is none.</summary>
public abstract record BackedUp
{
    private BackedUp() { }

    public sealed record Made(string Path, long Bytes, long Entries) : BackedUp;

    /// <summary>The database's own check found damage; the first lines say what.</summary>
    public sealed record Damaged(string Findings) : BackedUp;

    /// <summary>The file is sound but a ledger in it is not.</summary>
    public sealed record LedgerFails(LedgerChecked Found) : BackedUp;
}

/// <summary>
/// A copy of the whole database while it is in use. It gets its name only after it was read again and found sound, so
/// whatever bears a backup's name is one.
/// </summary>
public static class Backup
{
    public static async Task<BackedUp> BackUpAsync(this DatabaseFile file, string target, CancellationToken stop)
    {
        var full = Path.GetFullPath(target);
        var part = full + ".part";
        File.Delete(part);
        try
        {
            await CopyAsync(file, part, stop);
            var found = await CheckAsync(part, stop);
            if (found is BackedUp.Made)
                Name(part, full);
            return found is BackedUp.Made made ? made with { Path = full } : found;
        }
        finally
        {
            File.Delete(part);
        }
    }

    private static async Task CopyAsync(DatabaseFile file, string part, CancellationToken stop)
    {
        await using var connection = new SqliteConnection(file.ConnectionString);
        await connection.OpenAsync(stop);
        await using var command = connection.CreateCommand();
        command.CommandText = "VACUUM INTO $part";
        command.Parameters.AddWithValue("$part", part);
        await command.ExecuteNonQueryAsync(stop);
    }

    private static async Task<BackedUp> CheckAsync(string part, CancellationToken stop)
    {
        using var copy = DatabaseFile.OpenToRead(part);
        await using var db = copy.NewDb();
        var findings = await db
            .Database.SqlQueryRaw<string>("SELECT integrity_check AS Value FROM pragma_integrity_check")
            .ToArrayAsync(stop);
        if (findings is not ["ok"])
            return new BackedUp.Damaged(string.Join(Environment.NewLine, findings));
        var ledgers = await new LedgerCheck(db).CheckAllAsync(stop);
        return ledgers.FirstOrDefault(ledger => !ledger.Holds) is { } broken
            ? new BackedUp.LedgerFails(broken)
            : new BackedUp.Made(part, new FileInfo(part).Length, ledgers.Sum(ledger => ledger.Entries));
    }

    private static void Name(string part, string full)
    {
        using (var written = new FileStream(part, FileMode.Open, FileAccess.ReadWrite))
            written.Flush(flushToDisk: true);
        File.Move(part, full, overwrite: true);
    }
}
