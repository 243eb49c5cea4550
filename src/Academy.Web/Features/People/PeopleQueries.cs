using Academy.Competence;
using Academy.Storage;
using Microsoft.EntityFrameworkCore;

namespace Academy.Web.Features.People;

/// <summary>How the people of a salon sign in: who has a sign-in, whose link still waits.</summary>
public sealed class PeopleQueries(AcademyDb db, TimeProvider clock)
{
    public async Task<IReadOnlyDictionary<PersonId, SignInOf>> SignInsAsync(SalonId salon, CancellationToken stop)
    {
        var now = clock.GetUtcNow();
        var accounts = await db
            .Users.AsNoTracking()
            .Where(one => one.SalonId == salon.Value)
            .Select(one => new { one.PersonId, IsOpen = one.PasswordHash != null && one.LockedFrom == null })
            .ToListAsync(stop);
        var links = await db
            .Invitations.AsNoTracking()
            .Where(one => one.SalonId == salon.Value && one.UsedAt == null && one.ExpiresAt > now)
            .Select(one => new { one.Person, one.ExpiresAt })
            .ToListAsync(stop);
        var open = accounts.Where(one => one.IsOpen).Select(one => one.PersonId).ToHashSet();
        var waits = links.ToDictionary(one => one.Person, one => one.ExpiresAt);
        return open.Concat(waits.Keys)
            .Distinct()
            .ToDictionary(
                person => new PersonId(person),
                person => new SignInOf(open.Contains(person), waits.TryGetValue(person, out var until) ? until : null)
            );
    }
}

/// <summary>Whether somebody can sign in, and until when a link of hers waits.</summary>
public sealed record SignInOf(bool IsOpen, DateTimeOffset? LinkUntil)
{
    public static readonly SignInOf None = new(IsOpen: false, LinkUntil: null);
}
