using Academy.Storage.Ledgers;
using Microsoft.Data.Sqlite;

namespace Academy.Storage.Tests.Ledgers;

public sealed class LedgerCheckTests
{
    private const string DropGuards = """
        DROP TRIGGER ledger_is_never_changed; DROP TRIGGER ledger_is_never_removed; DROP TRIGGER ledger_only_grows;
        DROP TRIGGER words_are_only_erased; DROP TRIGGER words_are_never_removed; DROP TRIGGER words_stand_once;
        """;

    private const int Entries = 1234;

    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    [Fact]
    public async Task A_ledger_that_nobody_touched_holds()
    {
        using var database = await WithEntriesAsync();

        Assert.Equal(
            new LedgerChecked(RawLedger.Salon, Entries, Words: Entries, Erased: 0, First: null),
            await CheckAsync(database)
        );
    }

    [Fact]
    public async Task A_salon_without_facts_holds()
    {
        using var database = await TestDatabase.NewAsync();
        await using var db = database.NewDb();

        Assert.Empty(await new LedgerCheck(db).CheckAllAsync(Stop));
    }

    [Theory]
    [InlineData("UPDATE ledger SET canonical = replace(canonical, '1100', '1101') WHERE seq = 1100")]
    [InlineData("UPDATE ledger SET kind = 'test.other' WHERE seq = 1100")]
    [InlineData("DELETE FROM ledger WHERE seq = 1100")]
    [InlineData("DELETE FROM ledger")]
    [InlineData("INSERT OR REPLACE INTO ledger SELECT * FROM ledger WHERE seq = 1100")]
    [InlineData(
        "REPLACE INTO ledger SELECT salon_id, 1234, fact_id, kind, subject, at, recorded_at, actor, device, canonical, prev_hash, hash FROM ledger WHERE seq = 3"
    )]
    [InlineData(
        "INSERT INTO ledger SELECT salon_id, 1300, x'00', kind, subject, at, recorded_at, actor, device, canonical, prev_hash, hash FROM ledger WHERE seq = 3"
    )]
    [InlineData("UPDATE words SET text = 'did it well'")]
    [InlineData("UPDATE words SET path = 'elsewhere', text = NULL, key = NULL")]
    [InlineData("DELETE FROM words")]
    [InlineData("REPLACE INTO words SELECT salon_id, fact_id, path, 'did it well', key FROM words LIMIT 1")]
    public async Task The_database_itself_refuses_to_rewrite_the_ledger(string sql)
    {
        using var database = await WithEntriesAsync();

        var refused = Assert.Throws<SqliteException>(() => database.Tamper(sql));

        Assert.Equal(SqliteConstraintTrigger, refused.SqliteExtendedErrorCode);
        Assert.True((await CheckAsync(database)).Holds);
    }

    [Theory]
    [InlineData(
        "UPDATE ledger SET canonical = replace(canonical, '\"number\":1100', '\"number\":1101') WHERE seq = 1100",
        1100,
        LedgerFaultKind.EntryAltered
    )]
    [InlineData("UPDATE ledger SET hash = randomblob(32) WHERE seq = 1100", 1100, LedgerFaultKind.EntryAltered)]
    [InlineData("UPDATE ledger SET prev_hash = zeroblob(32) WHERE seq = 1100", 1100, LedgerFaultKind.ChainBroken)]
    [InlineData("UPDATE ledger SET prev_hash = x'00' WHERE seq = 0", 0, LedgerFaultKind.ChainBroken)]
    [InlineData("UPDATE ledger SET at = at + 1 WHERE seq = 1100", 1100, LedgerFaultKind.ColumnsAltered)]
    [InlineData("UPDATE ledger SET actor = 'nobody' WHERE seq = 1100", 1100, LedgerFaultKind.ColumnsAltered)]
    [InlineData("UPDATE ledger SET kind = 'test.other' WHERE seq = 1100", 1100, LedgerFaultKind.ColumnsAltered)]
    [InlineData("DELETE FROM ledger WHERE seq = 1100", 1100, LedgerFaultKind.EntryMissing)]
    [InlineData("DELETE FROM ledger WHERE seq = 0", 0, LedgerFaultKind.EntryMissing)]
    [InlineData("DELETE FROM ledger WHERE seq >= 1200", 1200, LedgerFaultKind.TailMissing)]
    [InlineData("DELETE FROM ledger", 0, LedgerFaultKind.TailMissing)]
    [InlineData("DELETE FROM salons", Entries, LedgerFaultKind.TailMissing)]
    [InlineData(
        "UPDATE ledger SET seq = -1 WHERE seq = 7; UPDATE ledger SET seq = 7 WHERE seq = 8; UPDATE ledger SET seq = 8 WHERE seq = -1",
        7,
        LedgerFaultKind.ChainBroken
    )]
    [InlineData("UPDATE words SET text = 'did it well' WHERE rowid = 1", 0, LedgerFaultKind.WordsAltered)]
    [InlineData("UPDATE words SET key = NULL WHERE rowid = 1", 0, LedgerFaultKind.WordsAltered)]
    [InlineData("UPDATE words SET path = 'elsewhere' WHERE rowid = 1", 0, LedgerFaultKind.WordsMissing)]
    [InlineData("DELETE FROM words WHERE rowid = 1", 0, LedgerFaultKind.WordsMissing)]
    [InlineData(
        "INSERT INTO words SELECT salon_id, fact_id, 'why', text, key FROM words WHERE rowid = 1",
        0,
        LedgerFaultKind.WordsAltered
    )]
    public async Task Whoever_goes_round_the_guards_is_found_at_the_first_entry_touched(
        string sql,
        long seq,
        LedgerFaultKind kind
    )
    {
        using var database = await WithEntriesAsync();

        database.Tamper(DropGuards + sql);

        var first = (await CheckAsync(database)).First;
        Assert.Equal((seq, kind), (first?.Seq, first?.Kind));
    }

    [Fact]
    public async Task Erased_words_leave_the_chain_whole()
    {
        using var database = await WithEntriesAsync();

        database.Tamper("UPDATE words SET text = NULL, key = NULL WHERE rowid <= 3");

        Assert.Equal(
            new LedgerChecked(RawLedger.Salon, Entries, Words: Entries, Erased: 3, First: null),
            await CheckAsync(database)
        );
    }

    [Fact]
    public async Task Guards_that_were_dropped_stand_again_after_the_next_start()
    {
        using var database = await WithEntriesAsync();
        database.Tamper(DropGuards);

        await Academy.Storage.Sqlite.Migrating.MigrateAsync(database.File, Stop);

        Assert.Throws<SqliteException>(() => database.Tamper("DELETE FROM ledger"));
        Assert.Throws<SqliteException>(() => database.Tamper("DELETE FROM words"));
    }

    private const int SqliteConstraintTrigger = 1811;

    private static async Task<TestDatabase> WithEntriesAsync()
    {
        var database = await TestDatabase.NewAsync();
        await using var db = database.NewDb();
        await RawLedger.AppendAsync(db, Entries);
        return database;
    }

    private static async Task<LedgerChecked> CheckAsync(TestDatabase database)
    {
        await using var db = database.NewDb();
        return Assert.Single(await new LedgerCheck(db).CheckAllAsync(Stop));
    }
}
