using Academy.Competence;
using Academy.Competence.People;
using Academy.Competence.Standings;
using Academy.Web.Features.Shared;
using Academy.Web.Wording;

namespace Academy.Web.Features.Decisions;

/// <summary>One person before the owner: what may be signed, what the rules still lack.</summary>
/// <param name="Name">Who.</param>
/// <param name="Heading">The state of things.</param>
/// <param name="Skills">Skills in which she is ready, and those she is alone in, whose limits may change.</param>
/// <param name="Others">Skills in which the rules do not hold.</param>
/// <param name="SkillsHref">The person's page.</param>
/// <param name="StandDown">Where she is stood down.</param>
public sealed record PersonDecideView(
    string Name,
    string Heading,
    IReadOnlyList<SkillToSign> Skills,
    IReadOnlyList<LackingSkill> Others,
    string SkillsHref,
    string StandDown
)
{
    /// <summary>How many of them are ready; they come first.</summary>
    public int Ready => Skills.Count(skill => skill.IsReady);

    internal static PersonDecideView Of(Person person, Team team, Names names)
    {
        var all = team.Of(person.Id).ToList();
        var signed = ToSign(all).ToList();
        return new PersonDecideView(
            person.Name,
            PersonWords.Heading(person, all),
            [.. signed.Select(standing => SkillToSign.Of(standing, team, names))],
            [
                .. all.Except(signed)
                    .Where(IsOn)
                    .OrderByDescending(CellNote.HasBegun)
                    .Select(standing => LackingSkill.Of(standing, names)),
            ],
            Paths.SkillsOf(person.Id.Value),
            Paths.StandDown(person.Id.Value)
        );
    }

    /// <summary>Ready first, then alone.</summary>
    internal static IEnumerable<Standing> ToSign(IEnumerable<Standing> all) =>
        all.Where(standing => standing.Kind is StandingKind.Ready or StandingKind.Alone).OrderBy(standing => standing.Kind);

    private static bool IsOn(Standing standing) => !standing.Why.Any(gap => gap is SkillTurnedOff);
}

/// <summary>A skill that may be signed.</summary>
public sealed record SkillToSign(
    string Code,
    string Name,
    string? Coat,
    string Standing,
    bool IsReady,
    string Record,
    string? Note,
    string Href
)
{
    internal static SkillToSign Of(Standing standing, Team team, Names names) =>
        new(
            standing.Skill.Value,
            names.Of(standing.Skill),
            CoatSwatch.Of(team.Skills.First(skill => skill.Code == standing.Skill)),
            Say.Shape(standing.Kind),
            standing.Kind == StandingKind.Ready,
            DecideWords.Record(standing, names),
            CellNote.Of(standing, names.Time),
            Paths.DecideOn(standing.Person.Value, standing.Skill.Value)
        );
}

/// <summary>A skill in which the rules do not hold.</summary>
public sealed record LackingSkill(string Name, string Href, string Standing, string? Note)
{
    internal static LackingSkill Of(Standing standing, Names names) =>
        new(
            names.Of(standing.Skill),
            Paths.DecideOn(standing.Person.Value, standing.Skill.Value),
            Say.Shape(standing.Kind),
            CellNote.HasBegun(standing) ? CellNote.Of(standing, names.Time) : CellNote.Instead(standing)
        );
}

/// <summary>One person and one skill: every gap, before anything is decided against the rules.</summary>
/// <param name="Name">Who.</param>
/// <param name="Skill">In what.</param>
/// <param name="Heading">The state of things.</param>
/// <param name="Standing">Its shape.</param>
/// <param name="Gaps">What lacks, all of it.</param>
/// <param name="MayGoAgainst">Whether the rules do not hold: only then is there anything to go against.</param>
/// <param name="Why">Every rule and every groom.</param>
public sealed record SkillDecideView(
    string Name,
    string Skill,
    string Heading,
    string Standing,
    IReadOnlyList<string> Gaps,
    bool MayGoAgainst,
    string Why
)
{
    internal static SkillDecideView Of(Person person, Standing standing, Names names) =>
        new(
            person.Name,
            names.Of(standing.Skill),
            Say.Heading(standing, names),
            Say.Shape(standing.Kind),
            Say.Why(standing, names),
            standing.Kind is not (StandingKind.Ready or StandingKind.Alone),
            Paths.Why(standing.Person.Value, standing.Skill.Value)
        );
}
