using Academy.Web.Features.Shared;
using Academy.Web.Wording;

namespace Academy.Web.Features.Dogs;

/// <summary>A dog in the list: its words, and where it leads.</summary>
public sealed record FoundDog(string Name, string Href, string Line, string? Swatch, string Last);

/// <summary>The list of dogs.</summary>
public sealed record FindView(string Heading, IReadOnlyList<FoundDog> Dogs, Guid? Next, bool IsSearch, bool IsFirst, bool HasAny)
{
    public static FindView Nothing { get; } = new("", [], null, false, true, false);

    public static FindView Of(DogPage page, string? words, bool isFirst, SalonTime time)
    {
        var isSearch = !string.IsNullOrWhiteSpace(words);
        return new(
            HeadingOf(page.Matching, isSearch),
            [.. page.Dogs.Select(dog => Line(dog, time))],
            page.Last,
            isSearch,
            isFirst,
            HasAny: page.Matching > 0
        );
    }

    private static string HeadingOf(int matching, bool isSearch) =>
        (matching, isSearch) switch
        {
            (0, true) => "No dog like that",
            (0, false) => "No dogs yet",
            (_, true) => $"{Counts.Of(matching, "dog")} found",
            _ => Counts.Of(matching, "dog"),
        };

    private static FoundDog Line(DogLine dog, SalonTime time) =>
        new(
            dog.Name,
            Paths.Dog(dog.Id),
            string.Join(
                ", ",
                new[] { dog.Breed, dog.Client, dog.IsGone ? "no longer comes" : "" }.Where(part => part.Length > 0)
            ),
            CoatSwatch.Of(dog.Coat),
            dog.LastGroomAt is { } last ? time.Ago(time.DayOf(last)) : "not groomed here yet"
        );
}
