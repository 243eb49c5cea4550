using Academy.Competence.Facts;

namespace Academy.Competence.Dogs;

/// <summary>Folds what was said about one dog.</summary>
public static class DogStories
{
    /// <summary>The dog as last told; null if it never was.</summary>
    public static Dog? Of(IEnumerable<Recorded> facts) =>
        facts.Select(told => told.Fact).OfType<DogDescribed>().LastOrDefault() is { } told ? Of(told) : null;

    /// <summary>The dog that one fact describes.</summary>
    public static Dog Of(DogDescribed told) =>
        new(
            told.Dog,
            told.Name.Text,
            told.Breed,
            told.Coat,
            told.SecondCoat,
            told.Hazards,
            told.BornOn,
            told.Age,
            told.WeightKg,
            told.Client.Text,
            told.IsGone
        );
}
