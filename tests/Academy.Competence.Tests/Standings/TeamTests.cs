using Academy.Competence.People;
using Academy.Competence.Skills;
using Academy.Competence.Standings;
using Academy.Competence.Tests.Cast;
using static Academy.Competence.Tests.Cast.PathWords;
using static Academy.Competence.Tests.Cast.TestSalon;

namespace Academy.Competence.Tests.Standings;

public class TeamTests
{
    [Fact]
    public void Everybody_who_works_here_that_day_has_a_standing_in_every_skill()
    {
        var team = TeamWords.Beginning.Now;

        Assert.Equal([Olga, Rosa, Dora, Pim, Mei, Uli], team.People); // Gus left yesterday
        Assert.Equal(SkillBook.Defaults.Count, team.Of(Pim.Id).Count());
        Assert.Null(team[Gus.Id, SkillBook.Wire]);
    }

    [Fact]
    public void Whoever_left_is_there_when_a_day_before_is_asked() =>
        Assert.NotNull(TeamWords.Beginning.At(Now.AddDays(-2))[Gus.Id, SkillBook.Wire]);

    [Fact]
    public void A_retired_skill_is_asked_of_nobody_and_remembered_as_retired()
    {
        var team = TeamWords.TwoSeniors.Retire(SkillBook.Nervous).Now;

        Assert.Null(team[Rosa.Id, SkillBook.Nervous]);
        Assert.DoesNotContain(team.Skills, skill => skill.Code == SkillBook.Nervous);
        Assert.Equal([SkillBook.Nervous], team.Retired);
    }

    [Fact]
    public void Whoever_is_alone_in_a_skill_and_is_a_senior_or_the_owner_may_judge_it()
    {
        var team = TeamWords.TwoSeniors.MayAlone(Pim, SkillBook.Wire).MayAlone(Olga, SkillBook.Wire).Now;

        Assert.Equal([Olga, Rosa, Pim], team.AloneIn(SkillBook.Wire));
        Assert.Equal([Olga, Rosa], team.MayJudge(SkillBook.Wire));
        Assert.Equal([Rosa, Dora], team.MayJudge(SkillBook.Double));
    }

    // who may judge double coats besides the person asked
    [Fact]
    public void Seniors_are_asked_by_how_many_others_may_judge_the_skill()
    {
        var team = TeamWords.TwoSeniors.Now;

        Assert.Equal(2, SeniorsAsked(team, Pim, SkillBook.Double));
        Assert.Equal(1, SeniorsAsked(team, Dora, SkillBook.Double)); // herself not counted
        Assert.Equal(1, SeniorsAsked(team, Pim, SkillBook.Wire)); // Dora may not strip wire coats
        Assert.Equal(0, SeniorsAsked(TeamWords.Beginning.Now, Pim, SkillBook.Double));
    }

    [Fact]
    public void A_rare_skill_is_ready_once_its_owner_is_alone_in_a_coat()
    {
        var stripped = TeamWords.TwoSeniors.Path(Pim, SkillBook.HandStripping, FullRow(Ago(1), grooms: 8));

        Assert.Equal([new NoCoatAlone()], stripped.Now[Pim.Id, SkillBook.HandStripping]!.Gaps);
        Assert.Equal(StandingKind.Ready, stripped.MayAlone(Pim, SkillBook.Smooth).Now[Pim.Id, SkillBook.HandStripping]!.Kind);
        Assert.Equal([new NoCoatAlone()], stripped.MayAlone(Pim, SkillBook.Nails).Now[Pim.Id, SkillBook.HandStripping]!.Gaps);
    }

    [Fact]
    public void A_person_without_a_path_is_learning() =>
        Assert.Equal(StandingKind.Learning, TeamWords.TwoSeniors.Now[Mei.Id, SkillBook.Wire]!.Kind);

    [Fact]
    public void A_skill_of_the_salons_own_without_a_threshold_starts_with_the_standard_row()
    {
        var poodleClip = new Skill(new("show-clip"), SkillKind.Technique, "show clip", Modules: []);
        var team = (TeamWords.Beginning with { Skills = [poodleClip] }).Now;

        Assert.Contains(new RowNotFull(0, 15), team[Pim.Id, poodleClip.Code]!.Gaps);
    }

    [Fact]
    public void The_day_asked_is_the_salons_local_day()
    {
        var lapsesTomorrow = TeamWords.Beginning.Path(Rosa, SkillBook.Double, Declared(Ago(119)));

        Assert.Equal(StandingKind.Alone, lapsesTomorrow.At(At("2026-06-15 22:59Z"))[Rosa.Id, SkillBook.Double]!.Kind);
        Assert.Equal(StandingKind.Lapsed, lapsesTomorrow.At(At("2026-06-15 23:00Z"))[Rosa.Id, SkillBook.Double]!.Kind); // midnight in London
    }

    private static int SeniorsAsked(Team team, Person person, SkillCode skill) =>
        team[person.Id, skill]!.Findings.OfType<BreadthFound>().Single().SeniorsAsked;
}
