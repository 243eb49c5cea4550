using System.Globalization;
using Academy.Storage.Ledgers;
using Academy.Storage.Sqlite;
using Microsoft.EntityFrameworkCore;

namespace Academy.Storage.Tests.Sqlite;

/// <summary>A killed process, not a power cut: for that the promise rests on synchronous=FULL, which another test reads back.</summary>
public sealed class KillTests
{
    private const int Kills = 5;

    [Fact]
    public async Task Nothing_that_was_answered_as_kept_is_lost_when_the_process_is_killed()
    {
        using var folder = new TestFolder();
        var path = folder.PathOf("academy.db");

        for (var kill = 1; kill <= Kills; kill++)
        {
            var answered = await WriteAndKillAsync(path, after: 40 * kill);

            using var file = DatabaseFile.Open(path);
            await file.MigrateAsync(TestContext.Current.CancellationToken);
            await using var db = file.NewDb();
            var found = Assert.Single(await new LedgerCheck(db).CheckAllAsync(TestContext.Current.CancellationToken));
            Assert.True(found.Holds, $"{found}");
            Assert.True(found.Entries >= answered, $"{answered} were answered, {found.Entries} are there");
        }
    }

    // The ledger goes on from kill to kill, the child's count does not: what it wrote before stands in the file already.
    private static async Task<long> WriteAndKillAsync(string path, int after)
    {
        var before = File.Exists(path) ? await EntriesAsync(path) : 0;
        using var child = WriteUntilKilled.Start(path);
        var last = -1;
        while (last < after && await child.StandardOutput.ReadLineAsync() is { } line)
            last = int.Parse(line, CultureInfo.InvariantCulture);
        child.Kill();
        while (await child.StandardOutput.ReadLineAsync() is { } line)
            last = int.TryParse(line, CultureInfo.InvariantCulture, out var one) ? one : last;
        await child.WaitForExitAsync();
        Assert.True(last >= after, "the child ended by itself");
        return before + last + 1;
    }

    private static async Task<long> EntriesAsync(string path)
    {
        using var file = DatabaseFile.Open(path);
        await using var db = file.NewDb();
        return await db.Ledger.LongCountAsync();
    }
}
