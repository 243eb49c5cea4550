namespace Academy.Competence.Skills;

/// <summary>The salon's skills by code: which is a coat, which a technique, which a hazard.</summary>
public sealed class SkillKinds(IEnumerable<Skill> skills)
{
    private readonly Dictionary<SkillCode, Skill> _skills = skills.ToDictionary(skill => skill.Code);

    /// <summary>All skills, in the salon's order.</summary>
    public IReadOnlyCollection<Skill> All => _skills.Values;

    /// <summary>The skill of this code; null if the salon has none.</summary>
    public Skill? Find(SkillCode code) => _skills.GetValueOrDefault(code);

    /// <summary>Whether the code is a coat's.</summary>
    public bool IsCoat(SkillCode code) => Find(code) is { Kind: SkillKind.Coat };
}
