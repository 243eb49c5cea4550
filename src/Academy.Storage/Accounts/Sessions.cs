using Microsoft.EntityFrameworkCore;

namespace Academy.Storage.Accounts;

/// <summary>The sign-ins that are going on. An expired one is not found, whether it was swept away yet or not.</summary>
public sealed class Sessions(AcademyDb db)
{
    public async Task OpenAsync(Session session)
    {
        db.Sessions.Add(session);
        await db.SaveChangesAsync();
    }

    public Task<Session?> FindAsync(string key, DateTimeOffset now, CancellationToken stop) =>
        db.Sessions.AsNoTracking().SingleOrDefaultAsync(session => session.Key == key && session.ExpiresAt > now, stop);

    public async Task<IReadOnlyList<Session>> OfAsync(Guid account, DateTimeOffset now, CancellationToken stop) =>
        await db
            .Sessions.AsNoTracking()
            .Where(session => session.AccountId == account && session.ExpiresAt > now)
            .OrderByDescending(session => session.LastSeenAt)
            .ToArrayAsync(stop);

    /// <summary>False when the session was ended meanwhile: a renewal never brings one back.</summary>
    public Task<bool> RenewAsync(string key, byte[] value, DateTimeOffset seenAt, DateTimeOffset expiresAt) =>
        db.WriteAsync(async () =>
            await db
                .Sessions.Where(session => session.Key == key)
                .ExecuteUpdateAsync(set =>
                    set.SetProperty(session => session.Value, value)
                        .SetProperty(session => session.LastSeenAt, seenAt)
                        .SetProperty(session => session.ExpiresAt, expiresAt)
                ) == 1
        );

    public Task EndAsync(string key) => DeleteAsync(db.Sessions.Where(session => session.Key == key));

    public Task EndAllOfAsync(Guid account) => DeleteAsync(db.Sessions.Where(session => session.AccountId == account));

    public Task EndAllOnAsync(string device) => DeleteAsync(db.Sessions.Where(session => session.Device == device));

    public Task<int> SweepAsync(DateTimeOffset now) => DeleteAsync(db.Sessions.Where(session => session.ExpiresAt <= now));

    private Task<int> DeleteAsync(IQueryable<Session> ended) => db.WriteAsync(() => ended.ExecuteDeleteAsync());
}
