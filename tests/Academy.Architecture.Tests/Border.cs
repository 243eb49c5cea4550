namespace Academy.Architecture.Tests;

/// <summary>A border of the house: what it looks at, and what it objects to there.</summary>
/// <param name="Looks">Whether this is something the rule is about.</param>
/// <param name="Objects">What is wrong with it, one line each; nothing where it keeps the rule.</param>
internal sealed record Border<T>(Func<T, bool> Looks, Func<T, IEnumerable<string>> Objects)
{
    /// <summary>Passes when nothing is objected to. A rule that matches nothing would pass, so it says how much it must have looked at.</summary>
    public void Holds(IEnumerable<T> all, int atLeast)
    {
        var looked = all.Where(Looks).ToList();
        Assert.True(looked.Count >= atLeast, $"The rule looked at {looked.Count}, and there should be {atLeast} at least.");
        var offences = looked.SelectMany(Objects).Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal).ToList();
        Assert.True(offences.Count == 0, string.Join('\n', offences));
    }

    /// <summary>Passes when the rule bites: it looks at the planted offender and objects to it.</summary>
    public void Catches(T planted)
    {
        Assert.True(Looks(planted), $"The rule does not look at {planted}.");
        Assert.NotEmpty(Objects(planted));
    }

    /// <summary>Passes when the rule looks at this and has nothing against it.</summary>
    public void Allows(T fine)
    {
        Assert.True(Looks(fine), $"The rule does not look at {fine}.");
        Assert.Empty(Objects(fine));
    }
}
