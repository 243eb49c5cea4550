namespace Academy.Competence.Statistics;

/// <summary>What one rated groom says about one skill.</summary>
/// <remarks>
/// The order of the values is the order in which a groom is judged: a critical incident makes the groom critical,
/// whatever its support level was.
/// </remarks>
public enum Verdict
{
    /// <summary>Support level 4 or 5, skin safety and the dog's comfort met, nothing else "not yet".</summary>
    Suitable,

    /// <summary>Anything that is neither suitable nor critical.</summary>
    Unsuitable,

    /// <summary>A critical incident on the salon's list happened and technique contributed, or that is not yet known.</summary>
    Critical,
}
