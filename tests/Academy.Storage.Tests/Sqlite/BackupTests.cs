using Academy.Storage.Ledgers;
using Academy.Storage.Sqlite;
using Microsoft.EntityFrameworkCore;

namespace Academy.Storage.Tests.Sqlite;

public sealed class BackupTests
{
    private const int Entries = 300;

    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    [Fact]
    public async Task A_backup_holds_everything_and_opens_as_a_database_of_its_own()
    {
        using var database = await WithEntriesAsync();
        var target = database.PathOf("backup.db");

        var made = Assert.IsType<BackedUp.Made>(await database.File.BackUpAsync(target, Stop));

        Assert.Equal(new BackedUp.Made(target, new FileInfo(target).Length, Entries), made);
        using var restored = DatabaseFile.Open(target);
        await restored.MigrateAsync(Stop);
        await using var original = database.NewDb();
        await using var copy = restored.NewDb();
        Assert.Equal(await TextsAsync(original), await TextsAsync(copy));
        await RawLedger.AppendAsync(copy, entries: 1);
        Assert.True((await new LedgerCheck(copy).CheckAsync(RawLedger.Salon, Stop)).Holds);
    }

    [Fact]
    public async Task A_backup_made_while_writing_goes_on_holds_a_whole_ledger_up_to_some_entry()
    {
        using var database = await WithEntriesAsync();
        using var done = new CancellationTokenSource();
        var writing = Task.Run(() => WriteUntilAsync(database, done.Token), Stop);

        var made = Assert.IsType<BackedUp.Made>(await database.File.BackUpAsync(database.PathOf("backup.db"), Stop));

        await done.CancelAsync();
        Assert.InRange(made.Entries, Entries, Entries + await writing);
    }

    [Fact]
    public async Task A_backup_of_a_ledger_that_fails_its_check_gets_no_name()
    {
        using var database = await WithEntriesAsync();
        database.Tamper("DROP TRIGGER ledger_is_never_changed; UPDATE ledger SET at = 0 WHERE seq = 17");

        var fails = Assert.IsType<BackedUp.LedgerFails>(await database.File.BackUpAsync(database.PathOf("backup.db"), Stop));

        Assert.Equal(new LedgerFault(17, LedgerFaultKind.ColumnsAltered), fails.Found.First);
        Assert.Empty(Directory.GetFiles(Path.GetDirectoryName(database.File.Path)!, "backup.db*"));
    }

    [Fact]
    public async Task A_newer_backup_takes_the_place_of_an_older_one_and_of_a_part_left_behind()
    {
        using var database = await WithEntriesAsync();
        var target = database.PathOf("backup.db");
        await database.File.BackUpAsync(target, Stop);
        await File.WriteAllTextAsync(target + ".part", "left by a process that was killed", Stop);
        await using (var db = database.NewDb())
            await RawLedger.AppendAsync(db, entries: 1);

        var made = Assert.IsType<BackedUp.Made>(await database.File.BackUpAsync(target, Stop));

        Assert.Equal(Entries + 1, made.Entries);
        Assert.False(File.Exists(target + ".part"));
    }

    [Fact]
    public async Task A_backup_can_be_made_from_beside_the_process_that_writes()
    {
        using var database = await WithEntriesAsync();
        using var beside = DatabaseFile.OpenToRead(database.File.Path);

        var made = Assert.IsType<BackedUp.Made>(await beside.BackUpAsync(database.PathOf("backup.db"), Stop));

        Assert.Equal(Entries, made.Entries);
    }

    private static async Task<TestDatabase> WithEntriesAsync()
    {
        var database = await TestDatabase.NewAsync();
        await using var db = database.NewDb();
        await RawLedger.AppendAsync(db, Entries);
        return database;
    }

    private static async Task<int> WriteUntilAsync(TestDatabase database, CancellationToken done)
    {
        var written = 0;
        for (; !done.IsCancellationRequested; written++)
        {
            await using var db = database.NewDb();
            await RawLedger.AppendAsync(db, entries: 1);
        }
        return written;
    }

    private static Task<string[]> TextsAsync(AcademyDb db) =>
        db.Ledger.OrderBy(entry => entry.Seq).Select(entry => entry.Canonical).ToArrayAsync(Stop);
}
