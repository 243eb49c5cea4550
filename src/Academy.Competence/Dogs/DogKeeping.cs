using Academy.Competence.Facts;

namespace Academy.Competence.Dogs;

/// <summary>Describing a dog.</summary>
public static class DogKeeping
{
    /// <summary>Describes a dog: new, or anew. Coat, age and weight may stay unknown; the dog check then asks.</summary>
    public static Decision Describe(Dog dog, DateOnly today)
    {
        return Decision.Of(
            Against(),
            new DogDescribed(
                dog.Id,
                new(dog.Name),
                dog.Breed,
                dog.Coat,
                dog.SecondCoat,
                dog.Hazards,
                dog.BornOn,
                dog.Age,
                dog.WeightKg,
                new(dog.Client),
                dog.IsGone
            )
        );

        IEnumerable<Reason> Against()
        {
            if (string.IsNullOrWhiteSpace(dog.Name))
                yield return new WordsNeeded(WordsFor.Name);
            if (dog.BornOn is { } born && (born > today || born < today.AddYears(-30)))
                yield return new BirthdayNotPlausible(born);
            if (dog.WeightKg is { } kilos and (< 1 or > 120))
                yield return new WeightNotPlausible(kilos);
            if (dog.SecondCoat is { } second && second == dog.Coat)
                yield return new SameCoatTwice(second);
        }
    }
}
