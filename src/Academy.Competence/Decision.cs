using Academy.Competence.Facts;

namespace Academy.Competence;

/// <summary>What a decision came to: granted facts, or all reasons against.</summary>
public abstract record Decision
{
    private protected Decision() { }

    /// <summary>The facts if there is no reason against, otherwise all reasons.</summary>
    internal static Decision Of(IEnumerable<Reason> reasons, Func<Listed<Fact>> facts)
    {
        var against = reasons.ToListed();
        return against.IsEmpty ? new Granted(facts()) : new Refused(against);
    }

    /// <summary>The fact if there is no reason against, otherwise all reasons.</summary>
    internal static Decision Of(IEnumerable<Reason> reasons, Fact fact) => Of(reasons, () => [fact]);

    /// <summary>
    /// Both decisions as one, to be kept together or not at all: the facts of this one and then of the other, or every reason
    /// against either.
    /// </summary>
    public Decision And(Decision other) =>
        (this, other) switch
        {
            (Granted mine, Granted others) => new Granted(mine.Facts.Concat(others.Facts).ToListed()),
            _ => new Refused(Against(this).Concat(Against(other)).Distinct().ToListed()),
        };

    private static Listed<Reason> Against(Decision decision) => decision is Refused refused ? refused.Reasons : [];
}

/// <summary>Facts that may be kept. Only this library makes it, so nothing can be kept that was not decided.</summary>
public sealed record Granted : Decision
{
    internal Granted(Listed<Fact> facts) => Facts = facts;

    /// <summary>What is kept, in one transaction, in this order.</summary>
    public Listed<Fact> Facts { get; }
}

/// <summary>All reasons against, never only the first.</summary>
public sealed record Refused(Listed<Reason> Reasons) : Decision;
