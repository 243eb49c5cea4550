using Academy.Competence.Salons;
using Academy.Competence.Skills;

namespace Academy.Web.Features.Shared;

/// <summary>The salon's coats as choices, each with its swatch where there is one.</summary>
public static class CoatPicks
{
    /// <summary>Coats of the salon, and one that it has retired only where it is <paramref name="chosen"/> already.</summary>
    public static IReadOnlyList<Pick> Of(SalonBook book, string? chosen) =>
        [
            .. book
                .Skills.Where(skill => skill.Kind == SkillKind.Coat && (!skill.IsRetired || skill.Code.Value == chosen))
                .Select(coat => new Pick(coat.Code.Value, coat.Name, Coat: CoatSwatch.Of(coat))),
        ];
}
