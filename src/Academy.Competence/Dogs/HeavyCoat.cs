namespace Academy.Competence.Dogs;

/// <summary>When a coat counts as heavy, a hazard in heat.</summary>
public static class HeavyCoat
{
    private const int SpitzGroup = 5;

    /// <summary>Whether to suggest the hazard for this breed; the person who enters the dog decides.</summary>
    /// <remarks>
    /// A double coat on a breed that is usually 20 kg or more, or on a spitz (FCI group 5) of any size. Our own rule: common
    /// practice, no published source. Behind it stands that the authors of the heat study point to dense double coats for
    /// the Chow Chow and the Golden Retriever. A heavy double coat on a small dog of another group (a Shetland Sheepdog, a
    /// Pekingese, a cross with a spitz) is for the person to add.
    /// </remarks>
    public static bool IsSuggestedFor(Breed breed) =>
        breed.Coat == "double" && (breed.WeightClass >= WeightClass.From20 || breed.FciGroup == SpitzGroup);
}
