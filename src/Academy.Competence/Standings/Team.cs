using Academy.Competence.Evidence;
using Academy.Competence.People;
using Academy.Competence.Salons;
using Academy.Competence.Skills;
using Academy.Competence.Thresholds;

namespace Academy.Competence.Standings;

/// <summary>Everything the standings of a whole team are read from, at one moment.</summary>
/// <param name="People">Everybody who has ever worked here.</param>
/// <param name="Skills">The salon's skills in its order.</param>
/// <param name="Thresholds">The version in force on the day asked, for each skill.</param>
/// <param name="Tallies">Tallies under those versions; nobody's missing one is empty.</param>
/// <param name="Taken">Quizzes handed in, by person.</param>
/// <param name="Library">What each module asks today.</param>
/// <param name="House">House rules.</param>
/// <param name="Zone">The salon's zone.</param>
public sealed record TeamEvidence(
    IReadOnlyList<Person> People,
    IReadOnlyList<Skill> Skills,
    IReadOnlyDictionary<SkillCode, Threshold> Thresholds,
    IReadOnlyDictionary<(PersonId Person, SkillCode Skill), Tally> Tallies,
    ILookup<PersonId, QuizTaken> Taken,
    IReadOnlyCollection<ModuleAsked> Library,
    HouseRules House,
    TimeZoneInfo Zone
);

/// <summary>The standing of everybody who works here on a day, in every skill that is not retired.</summary>
/// <remarks>
/// Read in two passes: who is alone depends on nobody else, and breadth, the coat under a technique and entitlement to judge
/// depend on who is alone.
/// </remarks>
public sealed class Team
{
    private readonly Dictionary<(PersonId, SkillCode), Standing> _standings;

    private Team(
        Dictionary<(PersonId, SkillCode), Standing> standings,
        IReadOnlyList<Person> people,
        IReadOnlyList<Skill> skills,
        IReadOnlySet<SkillCode> retired
    )
    {
        _standings = standings;
        People = people;
        Skills = skills;
        Retired = retired;
    }

    /// <summary>Everybody who works here on the day asked.</summary>
    public IReadOnlyList<Person> People { get; }

    /// <summary>The skills asked, in the salon's order.</summary>
    public IReadOnlyList<Skill> Skills { get; }

    /// <summary>Skills that are asked of no dog any more.</summary>
    public IReadOnlySet<SkillCode> Retired { get; }

    /// <summary>One person's standing in one skill; null for somebody who does not work here or a skill that is retired.</summary>
    public Standing? this[PersonId person, SkillCode skill] => _standings.GetValueOrDefault((person, skill));

    /// <summary>One person's standings in every skill, in the salon's order.</summary>
    public IEnumerable<Standing> Of(PersonId person) => Skills.Select(skill => this[person, skill.Code]).OfType<Standing>();

    /// <summary>People who are alone in a skill.</summary>
    public IEnumerable<Person> AloneIn(SkillCode skill) =>
        People.Where(person => this[person.Id, skill] is { Kind: StandingKind.Alone });

    /// <summary>People entitled to judge a skill.</summary>
    public IEnumerable<Person> MayJudge(SkillCode skill) => AloneIn(skill).Where(person => person.MayJudgeByRole);

    /// <summary>The team's standings at this moment.</summary>
    public static Team Of(TeamEvidence evidence, DateTimeOffset now)
    {
        var today = SalonDay.Of(now, evidence.Zone);
        var people = evidence.People.Where(person => person.WorksOn(today)).ToList();
        var skills = evidence.Skills.Where(skill => !skill.IsRetired).ToList();
        var cases = people.SelectMany(person => skills.Select(skill => Gather(evidence, person, skill, today))).ToList();

        var alone = cases
            .Where(one => one.Tally.Clearance is not null && Standing.Of(one, today, evidence.House).Kind == StandingKind.Alone)
            .ToList();
        var judges = alone.Where(one => one.Person.MayJudgeByRole).ToLookup(one => one.Skill.Code, one => one.Person.Id);
        var inACoat = alone.Where(one => one.Skill.Kind == SkillKind.Coat).Select(one => one.Person.Id).ToHashSet();

        var standings = cases
            .Select(one =>
                one with
                {
                    OthersEntitled = judges[one.Skill.Code].Count(judge => judge != one.Person.Id),
                    IsAloneInACoat = inACoat.Contains(one.Person.Id),
                }
            )
            .ToDictionary(one => (one.Person.Id, one.Skill.Code), one => Standing.Of(one, today, evidence.House));
        return new Team(
            standings,
            people,
            skills,
            retired: evidence.Skills.Where(skill => skill.IsRetired).Select(skill => skill.Code).ToHashSet()
        );
    }

    private static Case Gather(TeamEvidence evidence, Person person, Skill skill, DateOnly today) =>
        new(
            person,
            skill,
            evidence.Thresholds.TryGetValue(skill.Code, out var set) ? set : DefaultThresholds.For(skill.Code, DateOnly.MinValue),
            evidence.Tallies.GetValueOrDefault((person.Id, skill.Code)) ?? Tally.Empty,
            Knowledge.Of(skill.Modules, evidence.Library, [.. evidence.Taken[person.Id]], today, evidence.Zone, evidence.House),
            OthersEntitled: 0,
            IsAloneInACoat: false
        );
}
