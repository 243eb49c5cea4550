namespace Academy.Storage.Accounts;

/// <summary>A shared tablet that the owner enrolled. Only the hash of its secret is kept.</summary>
public sealed class Device
{
    public Guid SalonId { get; init; }

    public Guid Id { get; init; }

    public required string Name { get; set; }

    public required byte[] SecretHash { get; set; }

    public DateTimeOffset EnrolledAt { get; init; }

    public Guid EnrolledBy { get; init; }

    public DateTimeOffset? RevokedAt { get; set; }

    public int PinFailures { get; set; }

    public DateTimeOffset? PinFailuresSince { get; set; }
}
