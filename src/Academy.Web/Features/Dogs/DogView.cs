using Academy.Competence;
using Academy.Competence.Dogs;
using Academy.Competence.Heat;
using Academy.Competence.Salons;
using Academy.Competence.Skills;
using Academy.Competence.Trade;
using Academy.Web.Features.Shared;
using Academy.Web.Wording;

namespace Academy.Web.Features.Dogs;

/// <summary>One groom of a dog, in a line.</summary>
public sealed record GroomOfDog(string Href, string Day, string Coat, string Who, bool HasIncident);

/// <summary>One dog as the salon knows it.</summary>
public sealed record DogView(
    Guid Id,
    string Name,
    string Line,
    string? Swatch,
    IReadOnlyList<string> Coats,
    IReadOnlyList<string> Hazards,
    string? Unknown,
    string? Lift,
    bool IsAtRiskInHeat,
    bool IsGone,
    IReadOnlyList<GroomOfDog> Grooms,
    string GroomsHeading,
    string? Unseen,
    long? Older
)
{
    public static DogView Nothing { get; } = new(default, "", "", null, [], [], null, null, false, false, [], "", null, null);

    public static DogView Of(Dog dog, GroomPage grooms, SalonBook book, DateTimeOffset now)
    {
        var names = Names.Of(book, now);
        var hazards = dog.HazardsOn(names.Time.Today, book.House);
        return new(
            dog.Id.Value,
            dog.Name,
            DogWords.Line(dog, names.Time),
            CoatSwatch.Of(dog.Coat?.Value),
            [.. CoatsOf(dog).Select(names.Of)],
            [.. hazards.Select(names.Of)],
            UnknownOf(dog),
            LiftOf(dog, book.House),
            RoomHeat.IsAtRisk(hazards),
            dog.IsGone,
            [.. grooms.Grooms.Select(groom => InALine(groom, names))],
            grooms.Seen == 0 ? "No grooms yet" : Counts.Of(grooms.Seen, "groom"),
            UnseenOf(grooms),
            grooms.Grooms.Count == DogQueries.PageSize ? grooms.Grooms[^1].StartedAt.UtcTicks : null
        );
    }

    /// <summary>What the book says by now, where somebody described the dog in between.</summary>
    public static string MovedOn(Dog dog, SalonBook book)
    {
        var parts = new[]
        {
            dog.Breed,
            string.Join(" and ", CoatsOf(dog).Select(coat => book.Find(coat)?.Name ?? coat.Value)),
            dog.WeightKg is { } kilos ? $"{kilos} kg" : "no weight",
            string.Join(", ", dog.Hazards.Select(hazard => book.Find(hazard)?.Name ?? hazard.Value)),
        };
        var said = string.Join("; ", parts.Where(part => part.Length > 0));
        return $"Somebody described {dog.Name} while you wrote. It now says: {said}. Save again to put yours in its place.";
    }

    private static IEnumerable<SkillCode> CoatsOf(Dog dog) => new[] { dog.Coat, dog.SecondCoat }.OfType<SkillCode>();

    // Unknown means no at the dog check; saying it here is sooner.
    private static string? UnknownOf(Dog dog)
    {
        var unknown = new List<string>();
        if (dog.Coat is null)
            unknown.Add("its coat");
        if (!dog.IsAgeKnown)
            unknown.Add("how old it is");
        if (dog.WeightKg is null)
            unknown.Add("what it weighs");
        return unknown.Count == 0 ? null : $"Nobody has said {Counts.Or(unknown)} yet. The dog check asks for it.";
    }

    private static string? LiftOf(Dog dog, HouseRules house) =>
        dog.WeightKg is { } kilos && Lifting.NeedsTwoPeople(kilos, house.LiftAloneUpToKg)
            ? $"{kilos} kg: two lift it together. One person alone lifts up to {house.LiftAloneUpToKg} kg."
            : null;

    private static string? UnseenOf(GroomPage grooms) =>
        grooms.All == grooms.Seen ? null : $"And {Counts.Of(grooms.All - grooms.Seen, "groom")} by others.";

    private static GroomOfDog InALine(GroomLine groom, Names names) =>
        new(
            Paths.Groom(groom.Id),
            names.Time.Day(groom.StartedAt),
            names.Of(new SkillCode(groom.Coat)),
            groom.Watcher is { } watcher
                ? $"{names.Of(new PersonId(groom.By))}, {names.Of(new PersonId(watcher))} watched"
                : $"{names.Of(new PersonId(groom.By))}, alone",
            groom.HasIncident
        );
}
