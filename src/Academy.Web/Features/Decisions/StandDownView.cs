using Academy.Competence.People;
using Academy.Competence.Standings;
using Academy.Web.Features.Shared;
using Academy.Web.Wording;

namespace Academy.Web.Features.Decisions;

/// <summary>Whom one may stand down, and who is stood down.</summary>
public sealed record StandDownsView(string Heading, IReadOnlyList<StoodDownPerson> People)
{
    internal static StandDownsView Of(Team team, Names names)
    {
        var people = team.People.Select(person => StoodDownPerson.Of(person, team, names)).ToList();
        var stopped = people.Count(person => person.Stopped is not null);
        return new StandDownsView(
            stopped == 0 ? "Nobody is stood down" : $"{Counts.Of(stopped, "person is", "people are")} stood down",
            [.. people.OrderBy(person => person.Stopped is null)]
        );
    }
}

/// <summary>Somebody, and in what she is stood down.</summary>
public sealed record StoodDownPerson(string Name, string Href, string? Stopped)
{
    internal static StoodDownPerson Of(Person person, Team team, Names names)
    {
        var stopped = team.Of(person.Id).Where(StandDownView.IsStopped).Select(standing => names.Of(standing.Skill)).ToList();
        return new(person.Name, Paths.StandDown(person.Id.Value), stopped.Count == 0 ? null : Counts.And(stopped));
    }
}

/// <summary>One person: clearances that may be stopped, and stops that may be lifted.</summary>
/// <param name="Name">Who.</param>
/// <param name="MayStop">Clearances in force or lapsed.</param>
/// <param name="MayLift">Stops, each with what it waits for.</param>
public sealed record StandDownView(string Name, IReadOnlyList<Pick> MayStop, IReadOnlyList<Pick> MayLift)
{
    internal static bool IsStopped(Standing standing) => standing.Tally.StandDown is not null;

    internal static StandDownView Of(Person person, Team team, Names names)
    {
        var held = team.Of(person.Id).Where(standing => standing.Tally.Clearance is not null).ToList();
        return new StandDownView(
            person.Name,
            [
                .. held.Where(standing => !IsStopped(standing))
                    .Select(standing => PickOf(standing, Say.Standing(standing, names), names)),
            ],
            [.. held.Where(IsStopped).Select(standing => PickOf(standing, Waits(standing, names), names))]
        );
    }

    private static Pick PickOf(Standing standing, string note, Names names) =>
        new(standing.Skill.Value, names.Of(standing.Skill), note);

    private static string Waits(Standing standing, Names names) => string.Join(" ", Say.Reasons(standing.Why, names));
}
