using Academy.Competence.Skills;
using Academy.Competence.Standings;

namespace Academy.Web.Wording;

// Many standings in one line.
public static partial class Say
{
    // What asks for somebody's attention comes first.
    private static readonly StandingKind[] InOrderOfAttention =
    [
        StandingKind.StoodDown,
        StandingKind.CheckAgain,
        StandingKind.Lapsed,
        StandingKind.Ready,
        StandingKind.Alone,
        StandingKind.Learning,
    ];

    /// <summary>The heading over skills of one kind.</summary>
    public static string Group(SkillKind kind) =>
        kind switch
        {
            SkillKind.Coat => "Coats",
            SkillKind.Technique => "Techniques",
            SkillKind.Hazard => "Hazards of the dog and the day",
            _ => throw Unknown(kind),
        };

    /// <summary>"1 check again, 4 alone, 6 learning"; "nothing begun yet".</summary>
    public static string Summary(IEnumerable<StandingKind> kinds)
    {
        var counted = kinds.CountBy(kind => kind).ToDictionary();
        var said = InOrderOfAttention.Where(counted.ContainsKey).Select(kind => $"{counted[kind]} {Word(kind)}");
        return string.Join(", ", said) is { Length: > 0 } words ? words : "nothing begun yet";
    }

    /// <summary>"Not begun: hairless, corded."; null where everything has.</summary>
    public static string? NotBegun(IEnumerable<string> skills) =>
        string.Join(", ", skills) is { Length: > 0 } names ? $"Not begun: {names}." : null;
}
