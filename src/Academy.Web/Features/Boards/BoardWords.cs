using System.Diagnostics;
using Academy.Competence.People;
using Academy.Competence.Skills;
using Academy.Competence.Standings;
using Academy.Web.Wording;

namespace Academy.Web.Features.Boards;

/// <summary>The words around the cells of the board.</summary>
internal static class BoardWords
{
    // What asks for somebody's attention comes first.
    private static readonly StandingKind[] InOrder =
    [
        StandingKind.StoodDown,
        StandingKind.CheckAgain,
        StandingKind.Lapsed,
        StandingKind.Ready,
        StandingKind.Alone,
        StandingKind.Learning,
    ];

    public static string Id(SkillKind kind) =>
        kind switch
        {
            SkillKind.Coat => "coats",
            SkillKind.Technique => "techniques",
            SkillKind.Hazard => "hazards",
            _ => throw new UnreachableException(),
        };

    public static string Caption(SkillKind kind) =>
        kind switch
        {
            SkillKind.Coat => "Coats",
            SkillKind.Technique => "Techniques",
            SkillKind.Hazard => "Hazards of the dog and the day",
            _ => throw new UnreachableException(),
        };

    public static string Role(Person person) =>
        $"{Say.Word(person.Role)}{(person.IsUnder18 ? ", under 18" : "")}{(person.IsDeputy ? ", deputy" : "")}";

    /// <summary>"1 check again, 4 alone, 6 learning".</summary>
    public static string Summary(IEnumerable<StandingKind> kinds)
    {
        var counted = kinds.CountBy(kind => kind).ToDictionary();
        var said = InOrder.Where(counted.ContainsKey).Select(kind => $"{counted[kind]} {Say.Word(kind)}");
        return string.Join(", ", said) is { Length: > 0 } words ? words : "nothing begun yet";
    }

    public static string? NotBegun(IEnumerable<string> skills) =>
        string.Join(", ", skills) is { Length: > 0 } names ? $"Not begun: {names}." : null;
}
