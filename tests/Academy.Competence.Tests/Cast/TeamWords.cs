using System.Collections.Immutable;
using Academy.Competence.Evidence;
using Academy.Competence.People;
using Academy.Competence.Skills;
using Academy.Competence.Standings;
using Academy.Competence.Thresholds;
using static Academy.Competence.Tests.Cast.PathWords;
using static Academy.Competence.Tests.Cast.TestSalon;

namespace Academy.Competence.Tests.Cast;

/// <summary>Who works here and whose paths there are; everybody has passed every module.</summary>
internal sealed record TeamWords(ImmutableList<Person> People, ImmutableDictionary<(PersonId, SkillCode), Step[]> Paths)
{
    private static readonly ModuleAsked[] s_library =
    [
        .. SkillBook
            .Defaults.SelectMany(skill => skill.Modules)
            .Distinct()
            .Select(module => new ModuleAsked(module, 1, SafetyCriticalSince: 1, RefresherDays: null, RenewedEachSpring: false)),
    ];

    /// <summary>The whole cast, and nobody has done anything yet.</summary>
    public static readonly TeamWords Beginning = new(
        [Olga, Rosa, Dora, Pim, Mei, Uli, Gus],
        ImmutableDictionary<(PersonId, SkillCode), Step[]>.Empty
    );

    /// <summary>Rosa may do everything; Dora everything but wire coats and hand-stripping.</summary>
    public static readonly TeamWords TwoSeniors = Beginning
        .MayAlone(Rosa, AllSkills)
        .MayAlone(Dora, [.. AllSkills.Except([SkillBook.Wire, SkillBook.HandStripping])]);

    public static SkillCode[] AllSkills => [.. SkillBook.Defaults.Select(skill => skill.Code)];

    public IReadOnlyList<Skill> Skills { get; init; } = SkillBook.Defaults;

    public ImmutableDictionary<SkillCode, Threshold> Thresholds { get; init; } = ImmutableDictionary<SkillCode, Threshold>.Empty;

    public TeamWords MayAlone(Person person, params SkillCode[] skills) =>
        skills.Aggregate(this, (team, skill) => team.Path(person, skill, Declared(Ago(10))));

    public TeamWords Path(Person person, SkillCode skill, params IEnumerable<Step> path) =>
        this with
        {
            Paths = Paths.SetItem((person.Id, skill), [.. path]),
        };

    public TeamWords Retire(SkillCode code) =>
        this with
        {
            Skills = [.. Skills.Select(skill => skill.Code == code ? skill with { IsRetired = true } : skill)],
        };

    public Threshold ThresholdOf(SkillCode skill) =>
        Thresholds.GetValueOrDefault(skill) ?? TestSalon.ThresholdOf(skill) with { IsOn = true };

    public Team Now => At(TestSalon.Now);

    public Team At(DateTimeOffset moment) =>
        Team.Of(
            new TeamEvidence(
                People,
                Skills,
                Skills.ToDictionary(skill => skill.Code, skill => ThresholdOf(skill.Code)),
                Paths.ToDictionary(one => one.Key, one => Tally.Of(one.Value, ThresholdOf(one.Key.Item2))),
                People
                    .SelectMany(person => s_library.Select(module => (person.Id, module.Module)))
                    .ToLookup(
                        one => one.Id,
                        one => new QuizTaken(one.Module, 1, TestSalon.Now.AddDays(-100), HasPassed: true, IsRefresher: false)
                    ),
                s_library,
                House,
                London
            ),
            moment
        );
}
