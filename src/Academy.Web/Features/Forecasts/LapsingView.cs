using Academy.Competence.People;
using Academy.Competence.Standings;
using Academy.Web.Features.Shared;
using Academy.Web.Wording;

namespace Academy.Web.Features.Forecasts;

/// <summary>What runs out soon, the most pressing first.</summary>
public sealed record LapsingView(string Heading, int Days, IReadOnlyList<LapsingLine> Lines)
{
    private const int Ahead = 30;

    /// <summary>Everybody who is alone in something by a day within the next 30, the nearest day first.</summary>
    public static IEnumerable<(Person Person, Standing Standing)> Lapsing(Team team, DateOnly today) =>
        from person in team.People
        from standing in team.Of(person.Id)
        let last = standing.LastDay()
        where last is { } day && day.DayNumber - today.DayNumber <= Ahead
        orderby last, person.Name
        select (person, standing);

    public static LapsingView Of(
        IReadOnlyList<(Person Person, Standing Standing)> lapsing,
        IReadOnlyList<DogOfCoat> dogs,
        Names names
    ) =>
        new(
            lapsing.Count == 0
                ? $"Nothing runs out in {Ahead} days"
                : $"{Counts.Of(lapsing.Count, "standing runs", "standings run")} out in {Ahead} days",
            Ahead,
            [
                .. from one in lapsing
                group one.Standing by (one.Person, Until: Say.Until(one.Standing, names)) into same
                select LapsingLine.Of(same.Key.Person, same.Key.Until, [.. same], dogs, names),
            ]
        );
}

/// <summary>Standings of one person that run out on one day for one reason.</summary>
/// <param name="Which">What the dogs below are.</param>
/// <param name="Dogs">Dogs on which it could be kept fresh; none where no groom would keep it.</param>
public sealed record LapsingLine(string Title, string Href, string Words, string Which, IReadOnlyList<LapsingDog> Dogs)
{
    private const int MostDogs = 4;

    // One module may end every standing of a person on one day: that is one line, not one for each.
    internal static LapsingLine Of(
        Person person,
        string until,
        IReadOnlyList<Standing> same,
        IReadOnlyList<DogOfCoat> dogs,
        Names names
    ) =>
        new(
            $"{person.Name}, {Counts.And([.. same.Select(standing => names.Of(standing.Skill))])}",
            same.Count == 1 ? Paths.Why(person.Id.Value, same[0].Skill.Value) : Paths.SkillsOf(person.Id.Value),
            $"{Say.Capital(until)}.",
            "Such dogs that have not been here for longest:",
            [
                .. same.Where(standing => standing.IsKeptByGrooms())
                    .SelectMany(standing => dogs.Where(dog => dog.Coat == standing.Skill.Value).Take(MostDogs))
                    .Select(dog => LapsingDog.Of(dog, names)),
            ]
        );
}

/// <summary>One of those dogs.</summary>
public sealed record LapsingDog(string Name, string Href, string Note)
{
    internal static LapsingDog Of(DogOfCoat dog, Names names) =>
        new(
            dog.Name,
            Paths.Dog(dog.Id),
            dog.LastGroomAt is { } at
                ? $"{dog.Breed}, last groomed on {names.Time.Date(names.Time.DayOf(at))}"
                : $"{dog.Breed}, not groomed here yet"
        );
}
