namespace Academy.Competence.Dogs;

/// <summary>The typical weight of a grown dog, in bands of kg; the lower end belongs to the band.</summary>
public enum WeightClass
{
    /// <summary>Below 10 kg.</summary>
    Under10,

    /// <summary>10 kg to below 20.</summary>
    From10,

    /// <summary>20 kg to below 30.</summary>
    From20,

    /// <summary>30 kg to below 40.</summary>
    From30,

    /// <summary>40 kg to below 50.</summary>
    From40,

    /// <summary>50 kg or more, from where published odds of heat illness are raised (Hall, Carter and O'Neill 2020).</summary>
    From50,
}

/// <summary>A breed, a variety of one, or a kind of cross, with what is usual for it.</summary>
/// <param name="Name">The name, which is its key; a variety stands in brackets: "Poodle (Toy)".</param>
/// <param name="FciNumber">The FCI's number, which varieties share; none for crosses.</param>
/// <param name="FciGroup">The FCI's group, 1 to 10; none for crosses.</param>
/// <param name="Coat">The usual coat by its code: smooth, double, wire, silky, wool, combination, hairless or corded.</param>
/// <param name="FlatFaced">Whether the skull is usually short (brachycephalic).</param>
/// <param name="WeightClass">What a grown dog usually weighs.</param>
/// <remarks>Everything here is a suggestion: the coat, the face and the weight of the dog in front of you win.</remarks>
public sealed record Breed(string Name, int? FciNumber, int? FciGroup, string Coat, bool FlatFaced, WeightClass WeightClass);
