using Academy.Web.Wording;

namespace Academy.Web.Access;

/// <summary>What came of a name and a password. None of it says whether there is such a name.</summary>
public abstract record Entrance
{
    private Entrance() { }

    public sealed record Open(Guid Account) : Entrance;

    public sealed record NotFitting : Entrance;

    /// <summary>Too many tries; the password was not looked at.</summary>
    public sealed record Waits(TimeSpan Left) : Entrance;

    /// <summary>So many tries that the owner has to let this name in again.</summary>
    public sealed record Stopped : Entrance;

    /// <summary>Why not, in words; nothing when it is open.</summary>
    public string? Why =>
        this switch
        {
            NotFitting => "Name and password do not fit together: write both once more",
            Waits wait => $"Too many tries: wait {Words(wait.Left)}, then try once more",
            Stopped => "Too many tries: the owner has to let this name in again, on the page of the person",
            _ => null,
        };

    public static string Words(TimeSpan wait) =>
        wait <= TimeSpan.FromMinutes(1)
            ? Counts.Of((int)Math.Ceiling(wait.TotalSeconds), "second")
            : Counts.Of((int)Math.Ceiling(wait.TotalMinutes), "minute");
}
