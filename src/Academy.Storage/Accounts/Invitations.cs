using Academy.Storage.Rows;
using Microsoft.EntityFrameworkCore;

namespace Academy.Storage.Accounts;

/// <summary>One-time links with which people choose their password. A person has at most one that still opens.</summary>
public sealed class Invitations(AcademyDb db)
{
    /// <summary>Makes a link and voids the one before it.</summary>
    public Task MakeAsync(InvitationRow invitation) =>
        db.WriteAsync(async () =>
        {
            await Unused(invitation.SalonId, invitation.Person).ExecuteDeleteAsync();
            db.Invitations.Add(invitation);
            return await db.SaveChangesAsync();
        });

    public Task VoidAsync(Guid salon, Guid person) => db.WriteAsync(() => Unused(salon, person).ExecuteDeleteAsync());

    /// <summary>The link that this token opens; null if there is none, if it was used, or if its days are over.</summary>
    public Task<InvitationRow?> FindAsync(byte[] tokenHash, DateTimeOffset now, CancellationToken stop) =>
        Open(tokenHash, now).AsNoTracking().SingleOrDefaultAsync(stop);

    /// <summary>The link of a person that still waits to be used.</summary>
    public Task<InvitationRow?> WaitingAsync(Guid salon, Guid person, DateTimeOffset now, CancellationToken stop) =>
        Unused(salon, person).AsNoTracking().SingleOrDefaultAsync(row => row.ExpiresAt > now, stop);

    /// <summary>Uses a link up and does the work in one transaction; false, and nothing done, when the link does not open.</summary>
    public Task<bool> RedeemAsync(byte[] tokenHash, DateTimeOffset now, Func<InvitationRow, Task> work) =>
        db.WriteAsync(async () =>
        {
            if (await Open(tokenHash, now).SingleOrDefaultAsync() is not { } invitation)
                return false;
            invitation.UsedAt = now;
            await work(invitation);
            await db.SaveChangesAsync();
            return true;
        });

    private IQueryable<InvitationRow> Open(byte[] tokenHash, DateTimeOffset now) =>
        db.Invitations.Where(row => row.TokenHash == tokenHash && row.UsedAt == null && row.ExpiresAt > now);

    private IQueryable<InvitationRow> Unused(Guid salon, Guid person) =>
        db.Invitations.Where(row => row.SalonId == salon && row.Person == person && row.UsedAt == null);
}
