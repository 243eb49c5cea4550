using Academy.Competence;
using Academy.Competence.People;
using Academy.Competence.Skills;
using Academy.Competence.Standings;
using Academy.Web.Features.Shared;
using Academy.Web.Wording;
using Microsoft.AspNetCore.Mvc.Rendering;

namespace Academy.Web.Features.People;

/// <summary>The skills that may be chosen, those in which she is alone already left out of what can be declared.</summary>
public sealed record ExperienceView(string Name, IReadOnlyList<Pick> MayDeclare, IReadOnlyList<SelectListItem> Skills)
{
    public static ExperienceView Of(Person person, Team team) =>
        new(
            person.Name,
            [
                .. team
                    .Skills.Where(skill => team[person.Id, skill.Code] is { Kind: not StandingKind.Alone })
                    .Select(skill => new Pick(skill.Code.Value, skill.Name, Group: Group(skill.Kind))),
            ],
            [new SelectListItem("choose", ""), .. team.Skills.Select(skill => new SelectListItem(skill.Name, skill.Code.Value))]
        );

    private static string Group(SkillKind kind) => Say.Capital(Say.Word(kind)) + "s";
}
