using Academy.Storage.Rows;
using Microsoft.EntityFrameworkCore;

namespace Academy.Storage.Accounts;

/// <summary>Private addresses from which calendars read what is due. A person has at most one; only the hash of its token is here.</summary>
public sealed class CalendarAddresses(AcademyDb db)
{
    /// <summary>Makes an address in place of the one before it, which opens no more.</summary>
    public Task MakeAsync(CalendarAddressRow address) =>
        db.WriteAsync(async () =>
        {
            await Of(address.SalonId, address.Person).ExecuteDeleteAsync();
            db.CalendarAddresses.Add(address);
            return await db.SaveChangesAsync();
        });

    /// <summary>Takes a person's address back; none is no harm.</summary>
    public Task EndAsync(Guid salon, Guid person) => db.WriteAsync(() => Of(salon, person).ExecuteDeleteAsync());

    /// <summary>Whose address this token opens; null where it opens none.</summary>
    public Task<CalendarAddressRow?> FindAsync(byte[] tokenHash, CancellationToken stop) =>
        db.CalendarAddresses.AsNoTracking().SingleOrDefaultAsync(row => row.TokenHash == tokenHash, stop);

    /// <summary>Since when a person has one; null where she has none.</summary>
    public Task<DateTimeOffset?> MadeAtAsync(Guid salon, Guid person, CancellationToken stop) =>
        Of(salon, person).Select(row => (DateTimeOffset?)row.MadeAt).SingleOrDefaultAsync(stop);

    private IQueryable<CalendarAddressRow> Of(Guid salon, Guid person) =>
        db.CalendarAddresses.Where(row => row.SalonId == salon && row.Person == person);
}
