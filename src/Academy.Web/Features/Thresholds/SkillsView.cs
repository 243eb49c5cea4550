using Academy.Competence;
using Academy.Competence.Salons;
using Academy.Competence.Skills;
using Academy.Web.Features.Shared;
using Academy.Web.Wording;

namespace Academy.Web.Features.Thresholds;

/// <summary>The salon's skills, retired ones last.</summary>
public sealed record SkillsView(IReadOnlyList<SkillGroup> Groups)
{
    internal static SkillsView Of(SalonBook book, Names names) =>
        new([
            .. from skill in book.Skills
            group SkillLine.Of(skill, names) by skill.Kind into lines
            orderby lines.Key
            select new SkillGroup(
                lines.Key.ToString().ToLowerInvariant(),
                Say.Group(lines.Key),
                [.. lines.OrderBy(line => line.IsRetired)]
            ),
        ]);
}

/// <summary>Coats, techniques or hazards.</summary>
public sealed record SkillGroup(string Id, string Caption, IReadOnlyList<SkillLine> Lines);

/// <summary>One skill and the modules it asks for.</summary>
public sealed record SkillLine(string Name, string Href, string Modules, bool IsRetired)
{
    internal static SkillLine Of(Skill skill, Names names) =>
        new(
            skill.Name,
            Paths.Skill(skill.Code.Value),
            skill.Modules.IsEmpty ? "no module" : Counts.And([.. skill.Modules.Select(names.Of)]),
            skill.IsRetired
        );
}

/// <summary>What may be chosen for a skill.</summary>
public sealed record SkillView(
    string Heading,
    string Kind,
    IReadOnlyList<Pick> Modules,
    string Hint,
    IReadOnlyList<Pick> Kinds,
    string? Rules
)
{
    internal static SkillView Of(Skill? skill, HouseRules house, IReadOnlyDictionary<ModuleName, string> titles) =>
        new(
            skill is null ? "A skill of your own" : Say.Capital(skill.Name),
            skill is null ? "" : Say.Word(skill.Kind),
            [.. Named(skill, titles).Select(module => new Pick(module.Name.Value, module.Title))],
            $"Whoever is alone lapses when one of them is overdue. For one added today there are {Counts.Of(house.ModulesDueInDays, "day")}.",
            Say.Picks<SkillKind>(Say.Word),
            skill is null ? null : Paths.Threshold(skill.Code.Value)
        );

    // A module that the skill asks for and the library has not must stay on the form, or saving would take it away.
    private static IEnumerable<(ModuleName Name, string Title)> Named(
        Skill? skill,
        IReadOnlyDictionary<ModuleName, string> titles
    ) =>
        titles
            .Select(module => (module.Key, module.Value))
            .Concat(
                (skill?.Modules ?? [])
                    .Where(asked => !titles.ContainsKey(asked))
                    .Select(asked => (asked, $"{asked.Value} (not in the library)"))
            )
            .OrderBy(module => module.Item2, StringComparer.Ordinal);
}
