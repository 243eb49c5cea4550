using Academy.Competence;
using Academy.Competence.Facts;
using Academy.Competence.Grooms;
using Academy.Competence.SignOffs;
using Academy.Competence.Skills;
using Academy.Competence.Standings;
using Academy.Storage.Ledgers;
using Academy.Storage.Projections;
using Microsoft.EntityFrameworkCore;

namespace Academy.Storage.Tests.Projections;

public sealed class RebuildingTests
{
    private static readonly DateTimeOffset Afternoon = TestSalon.Opening.AddDays(1).AddHours(6);

    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    [Fact]
    public async Task Tables_written_anew_from_the_ledger_are_the_tables_that_were_kept()
    {
        using var salon = await TestSalon.BusyAsync();
        var kept = await ProjectionDump.OfAsync(salon.Database, Stop);

        var facts = await salon.InDbAsync(db => new Rebuilding(db).RebuildAsync(TestSalon.Salon, Afternoon.AddDays(2)));

        Assert.Equal(kept, await ProjectionDump.OfAsync(salon.Database, Stop));
        Assert.Equal(await salon.ReadAsync(book => book.VersionAsync(TestSalon.Salon, Stop)), facts);
    }

    [Theory]
    [InlineData("DELETE FROM steps")]
    [InlineData("UPDATE tallies SET tally = zeroblob(8)")]
    [InlineData(
        "DELETE FROM tallies; DELETE FROM grooms; DELETE FROM groom_doers; DELETE FROM dogs; DELETE FROM record_versions"
    )]
    [InlineData("INSERT INTO presences VALUES (randomblob(16), '2026-01-05', randomblob(16), 0, randomblob(16), 1)")]
    public async Task Whatever_happened_to_the_tables_the_ledger_brings_them_back(string sql)
    {
        using var salon = await TestSalon.BusyAsync();
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
        "UPDATE tallies SET tally = (SELECT other.tally FROM tallies other WHERE other.skill = 'nails') WHERE skill = 'wire'",
        "wire",
        StandingFaultKind.TallyDiffers
    )]
    [InlineData(
        "UPDATE tallies SET tally = substr(tally, 1, length(tally) - 1) WHERE skill = 'wire'",
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
        using var salon = await TestSalon.BusyAsync();

        Assert.True(salon.Database.Tamper(sql) > 0, "nothing was tampered with");

        var first = Assert.Single(await salon.InDbAsync(db => new StandingsCheck(db).CheckAllAsync(Stop))).First;
        Assert.Equal((skill, kind), (first?.Skill.Value, first?.Kind));
    }

    [Fact]
    public async Task A_tally_in_an_older_form_is_folded_again_where_it_is_read_and_once_for_all_at_the_start()
    {
        using var salon = await TestSalon.BusyAsync();
        var (kept, standing) = (await ProjectionDump.OfAsync(salon.Database, Stop), await WireAsync(salon));
        salon.Database.Tamper("""UPDATE tallies SET tally = '{"row":3,"rated":7}', rest_tally = '{"row":1}'""");

        Assert.Equal(standing, await WireAsync(salon));
        var paths = await salon.InDbAsync(db => new Refolding(db).RefoldOldFormsAsync(Afternoon.AddDays(2), Stop));

        Assert.Equal(await salon.InDbAsync(db => db.Tallies.CountAsync(Stop)), paths);
        Assert.Equal(kept, await ProjectionDump.OfAsync(salon.Database, Stop));
        Assert.Equal(0, await salon.InDbAsync(db => new Refolding(db).RefoldOldFormsAsync(Afternoon.AddDays(2), Stop)));
    }

    [Fact]
    public async Task A_damaged_tally_gives_no_standing_and_says_what_is_wrong()
    {
        using var salon = await TestSalon.BusyAsync();
        salon.Database.Tamper("UPDATE tallies SET tally = substr(tally, 1, length(tally) - 1) WHERE skill = 'wire'");

        var said = await Assert.ThrowsAsync<FormatException>(() => WireAsync(salon));

        Assert.Contains("checksum", said.Message, StringComparison.Ordinal);
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

    private static Task<Standing> WireAsync(TestSalon salon) =>
        salon.StandingAsync(TestSalon.Pim, SkillBook.Wire, Afternoon.AddDays(2));

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
}
