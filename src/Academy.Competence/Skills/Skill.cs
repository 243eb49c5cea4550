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
public sealed record Skill(SkillCode Code, SkillKind Kind, string Name, Listed<ModuleName> Modules, bool IsRetired = false);
