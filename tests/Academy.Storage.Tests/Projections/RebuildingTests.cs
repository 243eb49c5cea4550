using Academy.Competence;
using Academy.Competence.Facts;
using Academy.Competence.Grooms;
using Academy.Competence.SignOffs;
using Academy.Competence.Skills;
using Academy.Storage.Ledgers;
using Academy.Storage.Projections;

namespace Academy.Storage.Tests.Projections;

public sealed class RebuildingTests
{
    private static readonly DateTimeOffset Afternoon = TestSalon.Opening.AddDays(1).AddHours(6);

    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    [Fact]
    public async Task Tables_written_anew_from_the_ledger_are_the_tables_that_were_kept()
    {
        using var salon = await BusyAsync();
        var kept = await ProjectionDump.OfAsync(salon.Database, Stop);

        var facts = await salon.InDbAsync(db => new Rebuilding(db).RebuildAsync(TestSalon.Salon, Afternoon.AddDays(2)));

        Assert.Equal(kept, await ProjectionDump.OfAsync(salon.Database, Stop));
        Assert.Equal(await salon.ReadAsync(book => book.VersionAsync(TestSalon.Salon, Stop)), facts);
    }

    [Theory]
    [InlineData("DELETE FROM steps")]
    [InlineData("UPDATE tallies SET tally = replace(tally, '\"row\":', '\"row\":1')")]
    [InlineData(
        "DELETE FROM tallies; DELETE FROM grooms; DELETE FROM groom_doers; DELETE FROM dogs; DELETE FROM record_versions"
    )]
    [InlineData("INSERT INTO presences VALUES (randomblob(16), '2026-01-05', randomblob(16), 0, randomblob(16), 1)")]
    public async Task Whatever_happened_to_the_tables_the_ledger_brings_them_back(string sql)
    {
        using var salon = await BusyAsync();
        var kept = await ProjectionDump.OfAsync(salon.Database, Stop);
        salon.Database.Tamper(
            sql.Replace(
                "VALUES (randomblob(16), '2026",
                $"VALUES (x'{Convert.ToHexString(TestSalon.Salon.Value.ToByteArray(bigEndian: true))}', '2026",
                StringComparison.Ordinal
            )
        );

        await salon.InDbAsync(db => new Rebuilding(db).RebuildAsync(TestSalon.Salon, Afternoon.AddDays(2)));

        Assert.Equal(kept, await ProjectionDump.OfAsync(salon.Database, Stop));
    }

    [Theory]
    [InlineData(
        "UPDATE tallies SET tally = replace(tally, '\"rated\":2', '\"rated\":3') WHERE skill = 'wire'",
        "wire",
        StandingFaultKind.TallyDiffers
    )]
    [InlineData("UPDATE tallies SET last_at = last_at + 1 WHERE skill = 'wire'", "wire", StandingFaultKind.TallyDiffers)]
    [InlineData("UPDATE tallies SET steps_since = 99 WHERE skill = 'wire'", "wire", StandingFaultKind.TallyDiffers)]
    [InlineData("UPDATE tallies SET threshold_version = 7 WHERE skill = 'wire'", "wire", StandingFaultKind.TallyDiffers)]
    [InlineData("DELETE FROM tallies WHERE skill = 'nails'", "nails", StandingFaultKind.TallyMissing)]
    [InlineData("UPDATE steps SET verdict = 0 WHERE verdict = 1 AND skill = 'wire'", "wire", StandingFaultKind.StepsDiffer)]
    [InlineData("DELETE FROM steps WHERE known_until IS NULL AND skill = 'wire'", "wire", StandingFaultKind.StepsDiffer)]
    [InlineData("UPDATE steps SET known_until = NULL WHERE skill = 'wire'", "wire", StandingFaultKind.StepsDiffer)]
    public async Task A_cache_that_does_not_say_what_the_facts_say_is_found(string sql, string skill, StandingFaultKind kind)
    {
        using var salon = await BusyAsync();

        Assert.True(salon.Database.Tamper(sql) > 0, "nothing was tampered with");

        var first = Assert.Single(await salon.InDbAsync(db => new StandingsCheck(db).CheckAllAsync(Stop))).First;
        Assert.Equal((skill, kind), (first?.Skill.Value, first?.Kind));
    }

    [Fact]
    public async Task A_long_path_is_right_wherever_it_is_touched()
    {
        using var salon = await TestSalon.OpenAsync();
        var grooms = await LogManyAsync(salon, 700);

        foreach (var place in (int[])[699, 400, 0, 698, 1])
        {
            await salon.SignAsync(grooms[place].Id, Afternoon.AddDays(2).AddMinutes(place));
            var found = Assert.Single(await salon.InDbAsync(db => new StandingsCheck(db).CheckAllAsync(Stop)));
            Assert.True(found.Holds, $"after groom {place}: {found}");
        }
        Assert.Equal(5, (await salon.StandingAsync(TestSalon.Pim, SkillBook.Wire, Afternoon.AddDays(4))).Tally.Rated);
    }

    private static async Task<List<Groom>> LogManyAsync(TestSalon salon, int count)
    {
        var pim = await salon.PersonAsync(TestSalon.Pim);
        var grooms = Enumerable.Range(0, count).Select(i => salon.NewGroom(Afternoon.AddMinutes(i), TestSalon.Rosa)).ToList();
        var batch = grooms.Select(groom =>
            (
                TestSalon.GrantedOf(Logging.Log(groom, earlier: null, pim, groom.EndedAt, TestSalon.Zone)),
                new Hand(TestSalon.Pim, "tablet", groom.EndedAt)
            )
        );
        await salon.InDbAsync(async db =>
        {
            await new Ledger(db, salon.Shelf).KeepAllAsync(TestSalon.Salon, [.. batch]);
            return true;
        });
        return grooms;
    }

    // One of each kind of thing that the tables hold.
    private static async Task<TestSalon> BusyAsync()
    {
        var salon = await TestSalon.OpenAsync();
        await salon.ClearAsync(SkillBook.Nails, Afternoon.AddHours(-2));
        var first = await salon.LogAsync(Afternoon.AddHours(-1), TestSalon.Rosa);
        var second = await salon.LogAsync(Afternoon, TestSalon.Rosa);
        var judged = await salon.SignAsync(first.Id, Afternoon.AddHours(1), SupportLevel.HandsOn);
        await salon.SignAsync(second.Id, Afternoon.AddHours(1));
        await salon.DisputeAsync(judged, Afternoon.AddHours(2));
        await salon.SignAsync(first.Id, Afternoon.AddHours(3), SupportLevel.TalkedThrough, replaces: judged);
        await salon.ReportAsync(second, Afternoon.AddHours(4));
        await salon.LogAsync(Afternoon.AddHours(-3), watcher: null, Afternoon.AddHours(5));
        await salon.TickAsync(TestSalon.Rosa, Afternoon);
        await salon.ReadRoomAsync(Afternoon);
        await salon.StartAsync(Afternoon.AddDays(1));
        await salon.WorkedElsewhereAsync(SkillBook.Wire, Afternoon.AddDays(1));
        return salon;
    }
}
