using Academy.Competence.Salons;
using Academy.Competence.Skills;

namespace Academy.Competence.Dogs;

/// <summary>What is known of a dog's age where its day of birth is not.</summary>
public enum AgeByLook
{
    /// <summary>Nobody said: the dog check asks.</summary>
    NotSaid,

    /// <summary>Looks very young.</summary>
    VeryYoung,

    /// <summary>Looks grown and not old.</summary>
    Grown,

    /// <summary>Looks old.</summary>
    Elderly,
}

/// <summary>A dog as last told: breed or cross, coat (or two), born, weight, hazards. No more about its owner than the salon needs to find it.</summary>
/// <param name="Id">Stable.</param>
/// <param name="Name">What it answers to.</param>
/// <param name="Breed">Breed or cross, from the list or in free words.</param>
/// <param name="Coat">The coat it usually wears; null until somebody chose one.</param>
/// <param name="SecondCoat">A second coat, where it wears two; the dog then asks for both.</param>
/// <param name="Hazards">Hazards that somebody recorded; those that follow from age, weight and breed are added when asked.</param>
/// <param name="BornOn">Day of birth, where known.</param>
/// <param name="Age">What it looks like, where the day of birth is unknown.</param>
/// <param name="WeightKg">Last known weight in whole kilograms, rounded up; null if never weighed.</param>
/// <param name="Client">An optional surname or reference, nothing more.</param>
/// <param name="IsGone">No longer comes; kept for its grooms.</param>
public sealed record Dog(
    DogId Id,
    string Name,
    string Breed,
    SkillCode? Coat,
    SkillCode? SecondCoat,
    Listed<SkillCode> Hazards,
    DateOnly? BornOn,
    AgeByLook Age,
    int? WeightKg,
    string Client = "",
    bool IsGone = false
)
{
    /// <summary>Whether anybody can tell on this day if the dog is elderly or very young.</summary>
    public bool IsAgeKnown =>
        BornOn is not null
        || Age != AgeByLook.NotSaid
        || Hazards.Contains(SkillBook.Elderly)
        || Hazards.Contains(SkillBook.VeryYoung);

    /// <summary>Recorded hazards, then those that follow from age, weight and breed at this day, each once.</summary>
    /// <remarks>A dog born on 29 February is a year older on 28 February of a common year.</remarks>
    public Listed<SkillCode> HazardsOn(DateOnly day, HouseRules house) =>
        Hazards.Concat(OfAge(day, house)).Concat(OfWeight()).Concat(OfBreed()).Distinct().ToListed();

    private IEnumerable<SkillCode> OfAge(DateOnly day, HouseRules house)
    {
        if (Age == AgeByLook.Elderly && BornOn is null || BornOn?.AddYears(house.ElderlyFromYears) <= day)
            yield return SkillBook.Elderly;
        if (Age == AgeByLook.VeryYoung && BornOn is null || BornOn?.AddDays(7 * house.VeryYoungUntilWeeks) > day)
            yield return SkillBook.VeryYoung;
    }

    private IEnumerable<SkillCode> OfWeight() => WeightKg >= 50 ? [SkillBook.FiftyKilos] : [];

    private IEnumerable<SkillCode> OfBreed() => HeatRisk.IsHeatProne(Breed) ? [SkillBook.HeatProne] : [];
}
