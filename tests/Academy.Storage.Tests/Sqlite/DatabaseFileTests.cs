using Academy.Storage.Sqlite;
using Microsoft.EntityFrameworkCore;

namespace Academy.Storage.Tests.Sqlite;

public sealed class DatabaseFileTests
{
    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    [Fact]
    public async Task A_second_process_is_turned_away_with_a_message_that_says_why()
    {
        using var database = await TestDatabase.NewAsync();
        using var second = WriteUntilKilled.Start(database.File.Path);

        var said = await second.StandardError.ReadToEndAsync(Stop);
        await second.WaitForExitAsync(Stop);

        Assert.NotEqual(0, second.ExitCode);
        Assert.Contains($"Another process already has the database {database.File.Path} open.", said, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_second_opening_in_this_process_is_turned_away_too_until_the_first_is_closed()
    {
        using var database = await TestDatabase.NewAsync();

        var refused = Assert.Throws<DatabaseTakenException>(() => DatabaseFile.Open(database.File.Path));
        database.Reopen();

        Assert.Equal(database.File.Path, refused.Path);
        await using var db = database.NewDb();
        Assert.Empty(await db.Salons.ToArrayAsync(Stop));
    }

    [Fact]
    public async Task Reading_beside_the_writer_is_allowed_and_writing_through_it_is_not()
    {
        using var database = await TestDatabase.NewAsync();
        await using (var db = database.NewDb())
            await RawLedger.AppendAsync(db, entries: 3);

        using var reading = DatabaseFile.OpenToRead(database.File.Path);
        await using var beside = reading.NewDb();

        Assert.Equal(3, await beside.Ledger.CountAsync(Stop));
        await Assert.ThrowsAnyAsync<DbUpdateException>(() => RawLedger.AppendAsync(beside, entries: 1));
    }

    [Fact]
    public async Task Every_connection_is_set_to_lose_nothing_that_was_answered()
    {
        using var database = await TestDatabase.NewAsync();
        await using var db = database.NewDb();
        await db.Database.OpenConnectionAsync(Stop);

        Assert.Equal("wal", await PragmaAsync(db, "journal_mode"));
        Assert.Equal("2", await PragmaAsync(db, "synchronous")); // 2 = FULL
        Assert.Equal("1", await PragmaAsync(db, "foreign_keys"));
        Assert.Equal("5000", await PragmaAsync(db, "busy_timeout"));
        Assert.Equal("0", await PragmaAsync(db, "trusted_schema"));
        Assert.Equal("1", await PragmaAsync(db, "secure_delete"));
    }

    [Fact]
    public async Task A_lock_left_by_a_killed_migration_does_not_hold_up_the_next_start()
    {
        using var database = TestDatabase.NewEmpty();
        database.Tamper(
            """
            CREATE TABLE "__EFMigrationsLock" ("Id" INTEGER NOT NULL CONSTRAINT "PK___EFMigrationsLock" PRIMARY KEY, "Timestamp" TEXT NOT NULL);
            INSERT INTO "__EFMigrationsLock" VALUES (1, '2026-01-01 00:00:00');
            """
        );

        await database.File.MigrateAsync(Stop).WaitAsync(TimeSpan.FromSeconds(20), Stop);

        await using var db = database.NewDb();
        Assert.Empty(await db.Database.GetPendingMigrationsAsync(Stop));
    }

    [Fact]
    public async Task Migrating_twice_changes_nothing()
    {
        using var database = await TestDatabase.NewAsync();
        await using (var db = database.NewDb())
            await RawLedger.AppendAsync(db, entries: 1);

        await database.File.MigrateAsync(Stop);

        await using var again = database.NewDb();
        Assert.Equal(1, await again.Ledger.CountAsync(Stop));
    }

    [Fact]
    public async Task The_migrations_make_what_the_model_says()
    {
        using var database = await TestDatabase.NewAsync();
        await using var db = database.NewDb();

        Assert.False(db.Database.HasPendingModelChanges());
    }

    [Fact]
    public async Task The_migrations_alone_also_set_up_the_guards()
    {
        using var database = TestDatabase.NewEmpty();
        await using var db = database.NewDb();

        await db.Database.MigrateAsync(Stop);

        Assert.Equal(6L, database.Scalar("SELECT count(*) FROM sqlite_master WHERE type = 'trigger'"));
    }

    [Fact]
    public async Task Forty_writers_at_once_all_get_their_turn_and_leave_one_chain()
    {
        using var database = await TestDatabase.NewAsync();

        await Task.WhenAll(Enumerable.Range(0, 40).Select(_ => Task.Run(() => WriteAsync(database), Stop)));

        await using var db = database.NewDb();
        var found = Assert.Single(await new Academy.Storage.Ledgers.LedgerCheck(db).CheckAllAsync(Stop));
        Assert.True(found.Holds, $"{found}");
        Assert.Equal(40, found.Entries);
    }

    private static async Task WriteAsync(TestDatabase database)
    {
        await using var db = database.NewDb();
        await db.WriteAsync(async () =>
        {
            await RawLedger.AppendAsync(db, entries: 1);
            return true;
        });
    }

    private static async Task<string?> PragmaAsync(AcademyDb db, string name)
    {
        await using var command = db.Database.GetDbConnection().CreateCommand();
        command.CommandText = $"PRAGMA {name}";
        return (await command.ExecuteScalarAsync(Stop))?.ToString();
    }
}
