using Microsoft.AspNetCore.Identity;

namespace Academy.Storage.Accounts;

/// <summary>A sign-in. Who the person is, is said by the salon's record of people, never here.</summary>
public sealed class Account : IdentityUser<Guid>
{
    public Guid SalonId { get; set; }

    public Guid PersonId { get; set; }

    public DateTimeOffset OpenedAt { get; set; }

    /// <summary>From this moment nobody signs in with it: the person left, or the owner closed it.</summary>
    public DateTimeOffset? LockedFrom { get; set; }

    /// <summary>For the salon's shared tablet only: worthless away from an enrolled device.</summary>
    public string? PinHash { get; set; }

    public int PinFailures { get; set; }

    public DateTimeOffset? PinSetAt { get; set; }

    public bool MayOpen(DateTimeOffset now) => LockedFrom is null || now < LockedFrom;
}
