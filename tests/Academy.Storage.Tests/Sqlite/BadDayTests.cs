using Academy.Storage.Ledgers;
using Academy.Storage.Projections;
using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;

namespace Academy.Storage.Tests.Sqlite;

/// <summary>What the disk or another program may do to us while a groom is being kept.</summary>
public sealed class BadDayTests
{
    private const int SqliteBusy = 5;

    private const int SqliteFull = 13;

    private static readonly DateTimeOffset Afternoon = TestSalon.Opening.AddDays(1).AddHours(6);

    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    [Fact]
    public async Task A_write_waits_for_a_tool_that_holds_the_database_and_is_kept_when_it_lets_go()
    {
        using var salon = await TestSalon.OpenAsync();
        await using var tool = await HoldAsync(salon);
        var logging = Task.Run(() => salon.LogAsync(Afternoon, TestSalon.Rosa), Stop);

        Assert.Equal(0L, salon.Database.Scalar("SELECT count(*) FROM grooms"));
        await tool.DisposeAsync();
        await logging;

        Assert.Equal(1, await salon.InDbAsync(db => db.Grooms.CountAsync(Stop)));
    }

    [Fact]
    public async Task A_write_that_waited_too_long_says_so_and_keeps_nothing_and_the_next_one_works()
    {
        using var salon = await TestSalon.OpenAsync(patience: TimeSpan.FromSeconds(1));
        await using (await HoldAsync(salon))
        {
            var busy = await Assert.ThrowsAsync<SqliteException>(() => salon.LogAsync(Afternoon, TestSalon.Rosa));
            Assert.Equal(SqliteBusy, busy.SqliteErrorCode);
        }

        Assert.Equal(0, await salon.InDbAsync(db => db.Grooms.CountAsync(Stop)));
        await salon.LogAsync(Afternoon, TestSalon.Rosa);
        Assert.Equal(1, await salon.InDbAsync(db => db.Grooms.CountAsync(Stop)));
    }

    [Fact]
    public async Task A_disk_that_is_full_at_any_page_keeps_all_of_a_report_or_nothing()
    {
        using var salon = await TestSalon.OpenAsync();
        var groom = await salon.LogAsync(Afternoon, TestSalon.Rosa);
        var before = await ProjectionDump.OfAsync(salon.Database, Stop);
        var refused = 0;

        for (var pages = 0; await IsRefusedAsync(salon, groom, pages); pages++, refused++)
        {
            Assert.Equal(before, await ProjectionDump.OfAsync(salon.Database, Stop));
            Assert.True(refused < 100, "the disk never had room");
        }

        Assert.True(refused > 0, "no round was short of room");
        Assert.True(Assert.Single(await salon.InDbAsync(db => new LedgerCheck(db).CheckAllAsync(Stop))).Holds);
        Assert.True(Assert.Single(await salon.InDbAsync(db => new StandingsCheck(db).CheckAllAsync(Stop))).Holds);
        Assert.Single((await salon.StoryAsync(groom.Id)).Incidents);
    }

    // The limit belongs to a connection, so the write and the limit share one.
    private static async Task<bool> IsRefusedAsync(TestSalon salon, Competence.Grooms.Groom groom, int pages)
    {
        await using var db = salon.Database.NewDb();
        await db.Database.OpenConnectionAsync(Stop);
        var used = (long)(await ScalarAsync(db, "PRAGMA page_count"))!;
        await ScalarAsync(db, $"PRAGMA max_page_count = {used + pages}");
        try
        {
            await salon.ReportAsync(groom, Afternoon.AddHours(1), db, what: new string('x', 60_000));
            return false;
        }
        catch (DbUpdateException full) when (full.InnerException is SqliteException { SqliteErrorCode: SqliteFull })
        {
            return true;
        }
        finally
        {
            await ScalarAsync(db, "PRAGMA max_page_count = 1073741823");
        }
    }

    private static async Task<object?> ScalarAsync(AcademyDb db, string sql)
    {
        await using var command = db.Database.GetDbConnection().CreateCommand();
        command.CommandText = sql;
        return await command.ExecuteScalarAsync(Stop);
    }

    private static async Task<SqliteConnection> HoldAsync(TestSalon salon)
    {
        var tool = new SqliteConnection($"Data Source={salon.Database.File.Path};Pooling=False");
        await tool.OpenAsync(Stop);
        await using var command = tool.CreateCommand();
        command.CommandText = "BEGIN IMMEDIATE";
        await command.ExecuteNonQueryAsync(Stop);
        return tool;
    }
}
