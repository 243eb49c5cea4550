using Academy.Competence.Dogs;
using Academy.Web.Wording;

namespace Academy.Web.Features.Shared;

/// <summary>A dog in half a line.</summary>
public static class DogWords
{
    /// <summary>"Golden Retriever, 31 kg, 4 years", and by what its owner is found, where the salon wrote that down.</summary>
    public static string Line(Dog dog, SalonTime time) =>
        string.Join(
            ", ",
            new[] { dog.Breed, dog.WeightKg is { } kilos ? $"{kilos} kg" : "", Age(dog, time), dog.Client }.Where(part =>
                part.Length > 0
            )
        );

    private static string Age(Dog dog, SalonTime time) =>
        dog.BornOn is { } born ? time.Age(born)
        : dog.Age == AgeByLook.NotSaid ? ""
        : Say.Word(dog.Age);
}
