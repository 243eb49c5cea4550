using Microsoft.EntityFrameworkCore;

namespace Academy.Storage.Sqlite;

public static class Migrating
{
    /// <summary>Brings the file to this version's tables, and makes sure that the ledger's guards stand.</summary>
    public static async Task MigrateAsync(this DatabaseFile file, CancellationToken stop)
    {
        await using var db = file.NewDb();
        await db.Database.ExecuteSqlRawAsync("PRAGMA journal_mode=WAL", stop);
        if ((await db.Database.GetPendingMigrationsAsync(stop)).Any())
        {
            await ClearLeftOverLockAsync(db, stop);
            await db.Database.MigrateAsync(stop);
        }
        // A later migration that rebuilds a table would silently drop its triggers.
        await db.Database.ExecuteSqlRawAsync(AppendOnly.Guards, stop);
    }

    // EF marks a migration that is going on with a row and waits for ever for one whose process was killed. This process
    // holds the file's lock, so whoever wrote such a row is gone.
    private static async Task ClearLeftOverLockAsync(AcademyDb db, CancellationToken stop)
    {
        await db.Database.ExecuteSqlRawAsync(
            """CREATE TABLE IF NOT EXISTS "__EFMigrationsLock" ("Id" INTEGER NOT NULL PRIMARY KEY, "Timestamp" TEXT NOT NULL)""",
            stop
        );
        await db.Database.ExecuteSqlRawAsync("""DELETE FROM "__EFMigrationsLock" """, stop);
    }
}
