using Academy.Competence.Skills;

namespace Academy.Competence.Dogs;

/// <summary>What a breed suggests of a dog that nobody has looked at yet. The dog in front of you wins; a person decides.</summary>
/// <param name="Coat">The usual coat; null for a name that is not in the table.</param>
/// <param name="Hazards">Flat-faced, heavy coat, heat-prone: those that are usual for it, in this order.</param>
public sealed record BreedSuggestion(SkillCode? Coat, Listed<SkillCode> Hazards)
{
    /// <summary>What the breed or cross of this name suggests. A name in free words suggests no coat, and may still be heat-prone.</summary>
    public static BreedSuggestion Of(string breedName)
    {
        var breed = Breeds.Named(breedName);
        return new(breed is null ? null : new SkillCode(breed.Coat), HazardsOf(breed, breedName).ToListed());
    }

    private static IEnumerable<SkillCode> HazardsOf(Breed? breed, string breedName)
    {
        if (breed is { FlatFaced: true })
            yield return SkillBook.FlatFaced;
        if (breed is not null && HeavyCoat.IsSuggestedFor(breed))
            yield return SkillBook.HeavyCoat;
        if (HeatRisk.IsHeatProne(breedName))
            yield return SkillBook.HeatProne;
    }
}
