using Academy.Competence.People;
using Academy.Competence.Standings;
using Academy.Web.Wording;

namespace Academy.Web.Features.Decisions;

internal static class PersonWords
{
    /// <summary>"Pim is ready in 2 skills", "Pim is ready in none; alone in 4".</summary>
    public static string Heading(Person person, IReadOnlyCollection<Standing> standings)
    {
        var ready = standings.Count(standing => standing.Kind == StandingKind.Ready);
        var alone = standings.Count(standing => standing.Kind == StandingKind.Alone);
        return ready > 0
            ? $"{person.Name} is ready in {Counts.Of(ready, "skill")}"
            : $"{person.Name} is ready in none, and alone in {alone}";
    }

    public static string Signed(Person person, IReadOnlyList<string> skills) =>
        $"Signed. {person.Name} may do alone: {Counts.And(skills)}.";

    public static string Refused(Person person, string skill) => $"{person.Name} reads your words on {skill}.";

    public static string Stopped(Person person, IReadOnlyList<string> skills) =>
        $"{person.Name} is stood down: {Counts.And(skills)}.";

    public static string Lifted(Person person, IReadOnlyList<string> skills) =>
        $"Lifted for {person.Name}: {Counts.And(skills)}.";
}
