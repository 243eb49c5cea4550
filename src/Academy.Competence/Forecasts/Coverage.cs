using Academy.Competence.People;
using Academy.Competence.Skills;
using Academy.Competence.Standings;

namespace Academy.Competence.Forecasts;

/// <summary>Somebody who is alone in a skill, with the last day on which that holds if nothing is done; null for no end in sight.</summary>
public sealed record Cover(Person Person, DateOnly? Until)
{
    /// <summary>Whether it still holds on a later day if nothing is done meanwhile.</summary>
    public bool HoldsOn(DateOnly day) => Until is null || day <= Until;
}

/// <summary>Who can do one skill alone, now and later, if nothing is done about it.</summary>
/// <remarks>A standing that runs out can be kept: the dates say what has to be done by when, not what will happen.</remarks>
/// <param name="Skill">The skill.</param>
/// <param name="Alone">Everybody who may do it alone on the day asked.</param>
public sealed record SkillCover(Skill Skill, Listed<Cover> Alone)
{
    /// <summary>Everybody who would still be alone in it on a day, leaving out those who are away.</summary>
    public IEnumerable<Person> On(DateOnly day, params IEnumerable<PersonId> away) =>
        Alone.Where(cover => cover.HoldsOn(day) && !away.Contains(cover.Person.Id)).Select(cover => cover.Person);

    /// <summary>The cover of every skill that is not retired, in the salon's order.</summary>
    public static Listed<SkillCover> Of(Team team) =>
        team
            .Skills.Select(skill => new SkillCover(
                skill,
                team.AloneIn(skill.Code)
                    .Select(person => new Cover(person, LastDayOf(person, team[person.Id, skill.Code]!)))
                    .ToListed()
            ))
            .ToListed();

    private static DateOnly? LastDayOf(Person person, Standing standing) => new[] { standing.LastDay(), person.EndsOn }.Min();
}
