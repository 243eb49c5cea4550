using Academy.Competence.Dogs;
using Academy.Competence.Salons;
using Academy.Web.Wording;

namespace Academy.Web.Features.Shared;

/// <summary>A dog in half a line.</summary>
public static class DogWords
{
    /// <summary>"Golden Retriever, 31 kg, 4 years", and by what its owner is found, where the salon wrote that down.</summary>
    public static string Line(Dog dog, SalonTime time) => Said(dog.Breed, Weight(dog), Age(dog, time), dog.Client);

    /// <summary>"Golden Retriever, double coat, 31 kg, 4 years. Heavy coat.": what a dog asks for, and what is not known of it.</summary>
    public static string Asked(Dog dog, HouseRules house, Names names)
    {
        var line = Said(
            dog.Breed,
            dog.Coat is { } coat ? $"{names.Of(coat)} coat" : "no coat chosen",
            dog.SecondCoat is { } second ? $"and {names.Of(second)}" : "",
            dog.WeightKg is null ? "weight unknown" : Weight(dog),
            dog.IsAgeKnown ? Age(dog, names.Time) : "age unknown"
        );
        var hazards = dog.HazardsOn(names.Time.Today, house).Select(names.Of).ToList();
        return hazards.Count == 0 ? $"{line}." : $"{line}. {Say.Capital(Counts.And(hazards))}.";
    }

    private static string Said(params IEnumerable<string> parts) => string.Join(", ", parts.Where(part => part.Length > 0));

    private static string Weight(Dog dog) => dog.WeightKg is { } kilos ? $"{kilos} kg" : "";

    private static string Age(Dog dog, SalonTime time) =>
        dog.BornOn is { } born ? time.Age(born)
        : dog.Age == AgeByLook.NotSaid ? ""
        : Say.Word(dog.Age);
}
