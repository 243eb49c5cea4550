namespace Academy.Storage.Accounts;

/// <summary>A sign-in that is going on. Kept here and not in the cookie, so that ending it ends it at once.</summary>
public sealed class Session
{
    public required string Key { get; init; }

    public Guid AccountId { get; init; }

    public string? Device { get; init; }

    public DateTimeOffset OpenedAt { get; init; }

    public DateTimeOffset LastSeenAt { get; set; }

    public DateTimeOffset ExpiresAt { get; set; }

    public required byte[] Value { get; set; }
}
