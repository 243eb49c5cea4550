using Academy.Competence.Forecasts;
using Academy.Competence.Skills;
using Academy.Competence.Standings;
using Academy.Competence.Tests.Cast;
using static Academy.Competence.Tests.Cast.TestSalon;

namespace Academy.Competence.Tests.Forecasts;

/// <summary>Who can do a skill alone, and what becomes of that by itself.</summary>
public class SkillCoverTests
{
    private static readonly Team Now = TeamWords.TwoSeniors.Now;

    [Fact]
    public void A_skill_is_covered_by_everybody_who_is_alone_in_it_until_that_runs_out()
    {
        var wire = SkillCover.Of(Now).Single(cover => cover.Skill.Code == SkillBook.Wire);
        var last = Now[Rosa.Id, SkillBook.Wire]!.LastDay()!.Value;

        Assert.Equal([new(Rosa, last)], wire.Alone);
        Assert.Equal([Rosa], wire.On(last));
        Assert.Empty(wire.On(last.AddDays(1)));
    }

    [Fact]
    public void Who_is_away_covers_nothing()
    {
        var doubles = SkillCover.Of(Now).Single(cover => cover.Skill.Code == SkillBook.Double);

        Assert.Equal([Rosa, Dora], doubles.On(Today));
        Assert.Equal([Dora], doubles.On(Today, Rosa.Id));
    }

    [Fact]
    public void Nobody_covers_anything_after_her_last_day()
    {
        var leaving = TeamWords.Beginning with { People = [Rosa with { EndsOn = Today.AddDays(5) }] };
        var bath = SkillCover.Of(leaving.MayAlone(Rosa, SkillBook.Bath).Now).Single(cover => cover.Skill.Code == SkillBook.Bath);

        Assert.Equal(Today.AddDays(5), bath.Alone[0].Until);
        Assert.Empty(bath.On(Today.AddDays(6)));
    }

    [Fact]
    public void Every_skill_that_is_not_retired_is_there_also_where_nobody_covers_it()
    {
        var retired = TeamWords.Beginning.Retire(SkillBook.Corded);

        Assert.Equal(SkillBook.Defaults.Count - 1, SkillCover.Of(retired.Now).Count);
        Assert.All(SkillCover.Of(retired.Now), cover => Assert.Empty(cover.Alone));
    }
}
