using Academy.Competence;
using Academy.Competence.People;
using Academy.Web.Features.Shared;
using Academy.Web.Wording;

namespace Academy.Web.Features.Grooms;

/// <summary>A dog or a groom to go on with.</summary>
public sealed record ChoiceLine(string Href, string Name, string Line, string? Swatch, string Note);

/// <summary>What may be logged: dogs on the table, dogs that were here today, dogs found.</summary>
public sealed record ChooseView(
    IReadOnlyList<ChoiceLine> OnTheTable,
    IReadOnlyList<ChoiceLine> Told,
    IReadOnlyList<ChoiceLine> OfOthers,
    IReadOnlyList<ChoiceLine> Found,
    bool IsSearch
)
{
    public static ChooseView Nothing { get; } = new([], [], [], [], false);

    public static ChooseView Of(
        IReadOnlyList<GroomToday> today,
        IReadOnlyList<DogChoice> found,
        string? words,
        Person me,
        Names names
    )
    {
        var mine = today.Where(groom => groom.By == me.Id.Value).ToList();
        return new(
            [.. mine.Where(groom => !groom.IsTold).Select(groom => Started(groom, names))],
            [.. mine.Where(groom => groom.IsTold).Select(groom => ToldToday(groom, names))],
            [
                .. today
                    .Where(groom => mine.TrueForAll(own => own.Dog != groom.Dog))
                    .DistinctBy(groom => groom.Dog)
                    .Select(groom => OfAnother(groom, names)),
            ],
            [.. found.Select(Found_)],
            !string.IsNullOrWhiteSpace(words)
        );
    }

    private static ChoiceLine Started(GroomToday groom, Names names) =>
        new(
            Paths.Log(groom.Id),
            groom.Name,
            groom.Watcher is { } watcher ? $"{groom.Breed}; {names.Of(new PersonId(watcher))} watches" : groom.Breed,
            CoatSwatch.Of(groom.Coat),
            $"since {names.Time.Clock(groom.StartedAt)}"
        );

    private static ChoiceLine ToldToday(GroomToday groom, Names names) =>
        new(
            Paths.Groom(groom.Id),
            groom.Name,
            groom.Breed,
            CoatSwatch.Of(groom.Coat),
            $"{names.Time.Clock(groom.StartedAt)} to {names.Time.Clock(groom.EndedAt ?? groom.StartedAt)}"
        );

    private static ChoiceLine OfAnother(GroomToday groom, Names names) =>
        new(
            Paths.LogDog(groom.Dog),
            groom.Name,
            groom.Breed,
            CoatSwatch.Of(groom.Coat),
            $"{names.Of(new PersonId(groom.By))}, {names.Time.Clock(groom.StartedAt)}"
        );

    private static ChoiceLine Found_(DogChoice dog) =>
        new(
            Paths.LogDog(dog.Id),
            dog.Name,
            dog.Client.Length > 0 ? $"{dog.Breed}, {dog.Client}" : dog.Breed,
            CoatSwatch.Of(dog.Coat),
            ""
        );
}
