namespace Academy.Competence.Skills;

/// <summary>What a skill is about.</summary>
public enum SkillKind
{
    /// <summary>A class of coat.</summary>
    Coat,

    /// <summary>A piece of work with its own risk.</summary>
    Technique,

    /// <summary>What makes a dog, or a day, riskier.</summary>
    Hazard,
}

/// <summary>What a standing is about: a coat, a technique or a hazard.</summary>
/// <param name="Code">Stable; evidence points at it.</param>
/// <param name="Kind">Coat, technique or hazard.</param>
/// <param name="Name">What the salon calls it.</param>
/// <param name="Modules">The modules it asks for.</param>
/// <param name="IsRetired">A retired skill is asked of no dog and keeps its history.</param>
public sealed record Skill(SkillCode Code, SkillKind Kind, string Name, Listed<ModuleName> Modules, bool IsRetired = false)
{
    /// <summary>The modules that it did not ask for from its beginning, each with the day since which it does.</summary>
    public Listed<ModuleAdded> Added { get; init; }

    /// <summary>The day since which it asks for a module; null for one asked from its beginning, or not at all.</summary>
    public DateOnly? AddedOn(ModuleName module) => Added.FirstOrDefault(one => one.Module == module)?.On;

    /// <summary>The skill as it is described anew on a day: what it asks for now and did not before is new since then.</summary>
    internal Skill Anew(Skill described, DateOnly day) =>
        described with
        {
            Added = described
                .Modules.Select(module => (Module: module, On: Modules.Contains(module) ? AddedOn(module) : day))
                .Where(one => one.On is not null)
                .Select(one => new ModuleAdded(one.Module, one.On!.Value))
                .ToListed(),
        };
}

/// <summary>A module that a skill asks for since a day.</summary>
public sealed record ModuleAdded(ModuleName Module, DateOnly On);
