using System.Diagnostics;
using Academy.Competence.People;
using Academy.Competence.Skills;
using Academy.Web.Wording;

namespace Academy.Web.Features.Boards;

/// <summary>The words around the cells of the board.</summary>
internal static class BoardWords
{
    public static string Id(SkillKind kind) =>
        kind switch
        {
            SkillKind.Coat => "coats",
            SkillKind.Technique => "techniques",
            SkillKind.Hazard => "hazards",
            _ => throw new UnreachableException(),
        };

    public static string Role(Person person) =>
        $"{Say.Word(person.Role)}{(person.IsUnder18 ? ", under 18" : "")}{(person.IsDeputy ? ", deputy" : "")}";
}
