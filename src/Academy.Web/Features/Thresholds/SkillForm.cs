using System.ComponentModel.DataAnnotations;
using Academy.Competence;
using Academy.Competence.Skills;

namespace Academy.Web.Features.Thresholds;

/// <summary>A skill as the owner describes it.</summary>
public sealed class SkillForm : BookForm
{
    [StringLength(60, ErrorMessage = "Name: at most 60 letters")]
    public string? Name { get; set; }

    public string[] Modules { get; set; } = [];

    /// <summary>Coat, technique or hazard; only a new skill is asked.</summary>
    public string? Kind { get; set; }

    public bool IsRetired { get; set; }

    internal Skill Read(SkillCode code, SkillKind kind) =>
        new(code, kind, Name?.Trim() ?? "", Modules.Select(module => new ModuleName(module)).ToListed(), IsRetired);

    internal static SkillForm Of(Skill skill) =>
        new()
        {
            Name = skill.Name,
            Kind = skill.Kind.ToString(),
            Modules = [.. skill.Modules.Select(module => module.Value)],
            IsRetired = skill.IsRetired,
        };
}
