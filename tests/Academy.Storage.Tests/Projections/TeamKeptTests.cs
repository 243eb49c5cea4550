using Academy.Competence.Skills;
using Academy.Competence.Standings;

namespace Academy.Storage.Tests.Projections;

/// <summary>The standings that are kept in memory: never served when they could be others.</summary>
public sealed class TeamKeptTests
{
    private static readonly DateTimeOffset Noon = TestSalon.Opening.AddHours(4);

    [Fact]
    public async Task Standings_are_worked_out_once_while_nothing_is_told_and_it_is_the_same_day()
    {
        using var salon = await TestSalon.OpenAsync();

        var first = await TeamAsync(salon, Noon);

        Assert.Same(first, await TeamAsync(salon, Noon.AddHours(2)));
    }

    [Fact]
    public async Task A_fact_makes_them_new()
    {
        using var salon = await TestSalon.OpenAsync();
        var before = await TeamAsync(salon, Noon);

        await salon.ClearAsync(SkillBook.Nails, Noon);

        Assert.NotEqual(StandingKind.Alone, before[TestSalon.Pim, SkillBook.Nails]!.Kind);
        Assert.Equal(StandingKind.Alone, (await TeamAsync(salon, Noon))[TestSalon.Pim, SkillBook.Nails]!.Kind);
    }

    [Fact]
    public async Task The_next_day_has_its_own_though_nothing_was_told()
    {
        using var salon = await TestSalon.OpenAsync();
        var before = await TeamAsync(salon, Noon);

        var later = await TeamAsync(salon, Noon.AddDays(400));

        Assert.Equal(StandingKind.Alone, before[TestSalon.Rosa, SkillBook.Wire]!.Kind);
        Assert.Equal(StandingKind.Lapsed, later[TestSalon.Rosa, SkillBook.Wire]!.Kind);
    }

    [Fact]
    public async Task A_clock_that_was_put_back_reads_what_there_was_by_then()
    {
        using var salon = await TestSalon.OpenAsync();
        await salon.ClearAsync(SkillBook.Nails, Noon);
        var now = await TeamAsync(salon, Noon.AddHours(1));

        var earlier = await TeamAsync(salon, Noon.AddHours(-1));

        Assert.Equal(StandingKind.Alone, now[TestSalon.Pim, SkillBook.Nails]!.Kind);
        Assert.NotEqual(StandingKind.Alone, earlier[TestSalon.Pim, SkillBook.Nails]!.Kind);
    }

    [Fact]
    public async Task What_lies_ahead_of_the_clock_counts_once_its_time_has_come()
    {
        using var salon = await TestSalon.OpenAsync();
        await salon.ClearAsync(SkillBook.Nails, Noon);

        var early = await TeamAsync(salon, Noon.AddHours(-1));
        var due = await TeamAsync(salon, Noon.AddHours(1));

        Assert.NotEqual(StandingKind.Alone, early[TestSalon.Pim, SkillBook.Nails]!.Kind);
        Assert.Equal(StandingKind.Alone, due[TestSalon.Pim, SkillBook.Nails]!.Kind);
    }

    private static Task<Team> TeamAsync(TestSalon salon, DateTimeOffset at) =>
        salon.ReadAsync(book => book.TeamAsync(TestSalon.Salon, at, TestSalon.Stop));
}
