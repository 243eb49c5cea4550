using Academy.Competence.Skills;
using Academy.Web.Shell.Tags;

namespace Academy.Web.Features.Shared;

/// <summary>Which skills have a swatch: the eight coats. A coat of the salon's own has a word only.</summary>
public static class CoatSwatch
{
    public static string? Of(Skill skill) => skill.Kind == SkillKind.Coat ? Of(skill.Code.Value) : null;

    public static string? Of(string? coat) => Drawn.Coats.Contains(coat, StringComparer.Ordinal) ? coat : null;
}
