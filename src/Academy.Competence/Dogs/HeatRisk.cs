namespace Academy.Competence.Dogs;

/// <summary>A breed that is prone to heat illness.</summary>
/// <param name="Name">The breed's name.</param>
/// <param name="Multiple">Its odds as a rounded multiple of the Labrador Retriever's.</param>
public sealed record HeatProneBreed(string Name, int Multiple);

/// <summary>Which breeds are prone to heat illness.</summary>
/// <remarks>
/// <para>
/// Hall, Carter and O'Neill 2020, Scientific Reports 10:9128 (905,543 UK dogs in 2016, 395 events), with the rounded
/// multiples of the authors' own summary. Coat and skull are already in a breed's odds: do not multiply them by the odds
/// of flat faces or of weight, which come from other models.
/// </para>
/// <para>
/// A breed that is missing here is not safe. The reference breed itself has raised odds of heat illness after exertion,
/// and a grooming salon is a known place for it on mild days too.
/// </para>
/// </remarks>
public static class HeatRisk
{
    /// <summary>The breed to which the multiples refer.</summary>
    public const string ReferenceBreed = "Labrador Retriever";

    // Names in daily use for the same breeds: common practice, no published source.
    private static readonly Dictionary<string, string> s_alsoCalled = new(StringComparer.Ordinal)
    {
        ["english bulldog"] = "bulldog",
        ["british bulldog"] = "bulldog",
        ["chow"] = "chow chow",
        ["french mastiff"] = "dogue de bordeaux",
        ["cavalier"] = "cavalier king charles spaniel",
    };

    /// <summary>The nine breeds, the most prone first.</summary>
    public static IReadOnlyList<HeatProneBreed> Nine { get; } =
    [
        new("Chow Chow", 17),
        new("Bulldog", 14),
        new("French Bulldog", 6),
        new("Dogue de Bordeaux", 5),
        new("Greyhound", 4),
        new("Cavalier King Charles Spaniel", 3),
        new("Pug", 3),
        new("English Springer Spaniel", 3),
        new("Golden Retriever", 3),
    ];

    /// <summary>Whether this breed is one of the nine, in any variety. A cross is not: judge the dog.</summary>
    public static bool IsHeatProne(Breed breed) => IsHeatProne(breed.Name);

    /// <summary>Whether a breed of this name is one of the nine, without regard to case, accents or a variety in brackets.</summary>
    public static bool IsHeatProne(string breedName) => OneOfNine(breedName) is not null;

    /// <summary>The breed's odds as a rounded multiple of the reference breed's, which has 1.</summary>
    /// <returns>Null where the summary gives no figure, which is no promise.</returns>
    public static int? MultipleOf(Breed breed) =>
        OneOfNine(breed.Name)?.Multiple ?? (KeyOf(breed.Name) == KeyOf(ReferenceBreed) ? 1 : null);

    private static HeatProneBreed? OneOfNine(string breedName)
    {
        var key = KeyOf(breedName);
        return Nine.FirstOrDefault(prone => KeyOf(prone.Name) == s_alsoCalled.GetValueOrDefault(key, key));
    }

    private static string KeyOf(string breedName) => SearchText.Folded(breedName.Split('(')[0]);
}
