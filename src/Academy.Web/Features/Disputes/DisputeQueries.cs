using Academy.Competence;
using Academy.Storage;
using Academy.Storage.Rows;
using Microsoft.EntityFrameworkCore;

namespace Academy.Web.Features.Disputes;

/// <summary>A dispute in the owner's list.</summary>
public sealed record DisputeLine(Guid SignOff, Guid By, DateTimeOffset At, DateTimeOffset? AnsweredAt, string Dog);

/// <summary>A late sign-off that does not count.</summary>
public sealed record LateLine(Guid SignOff, Guid Person, Guid Senior, DateTimeOffset SignedAt, string Dog);

/// <summary>Some lines, and whether more follow.</summary>
public sealed record LinePage<T>(IReadOnlyList<T> Lines, bool HasMore);

/// <summary>Disputes, and late sign-offs that wait for the owner's word.</summary>
public sealed class DisputeQueries(AcademyDb db)
{
    public const int PageSize = 20;

    /// <summary>Not answered yet, oldest first, from after this one on.</summary>
    public async Task<LinePage<DisputeLine>> OpenAsync(SalonId salon, Guid? after, CancellationToken stop)
    {
        var open = Of(salon).Where(row => row.AnsweredAt == null);
        var from = after is { } last
            ? await Of(salon).Where(row => row.SignOff == last).Select(row => (DateTimeOffset?)row.At).SingleOrDefaultAsync(stop)
            : null;
        var following = from is null
            ? open
            : open.Where(row => row.At > from || (row.At == from && row.SignOff.CompareTo(after!.Value) > 0));
        var lines = await Lines(following.OrderBy(row => row.At).ThenBy(row => row.SignOff).Take(PageSize + 1)).ToListAsync(stop);
        return new([.. lines.OrderBy(line => line.At).ThenBy(line => line.SignOff).Take(PageSize)], lines.Count > PageSize);
    }

    /// <summary>The newest that were answered.</summary>
    public async Task<IReadOnlyList<DisputeLine>> AnsweredAsync(SalonId salon, CancellationToken stop)
    {
        var newest = Of(salon).Where(row => row.AnsweredAt != null).OrderByDescending(row => row.AnsweredAt).Take(PageSize);
        var lines = await Lines(newest).ToListAsync(stop);
        return [.. lines.OrderByDescending(line => line.AnsweredAt)];
    }

    /// <summary>Late ones that do not count, oldest first, from after this one on.</summary>
    public async Task<LinePage<LateLine>> LateAsync(SalonId salon, Guid? after, CancellationToken stop)
    {
        var late = Doers(salon).Where(row => row.SignOff != null && row.IsLate);
        var from = after is { } last
            ? await Doers(salon).Where(row => row.SignOff == last).Select(row => row.SignedAt).SingleOrDefaultAsync(stop)
            : null;
        var following = from is null
            ? late
            : late.Where(row => row.SignedAt > from || (row.SignedAt == from && row.SignOff!.Value.CompareTo(after!.Value) > 0));
        var lines = await Late(following.OrderBy(row => row.SignedAt).ThenBy(row => row.SignOff).Take(PageSize + 1))
            .ToListAsync(stop);
        return new([.. lines.OrderBy(line => line.SignedAt).ThenBy(line => line.SignOff).Take(PageSize)], lines.Count > PageSize);
    }

    /// <summary>The groom of a sign-off that is in force or was disputed; null if this salon has no such one.</summary>
    public async Task<Guid?> GroomOfAsync(SalonId salon, Guid signOff, CancellationToken stop) =>
        await Doers(salon).Where(row => row.SignOff == signOff).Select(row => (Guid?)row.Groom).FirstOrDefaultAsync(stop)
        ?? await Of(salon).Where(row => row.SignOff == signOff).Select(row => (Guid?)row.Groom).FirstOrDefaultAsync(stop);

    private IQueryable<DisputeRow> Of(SalonId salon) => db.Disputes.AsNoTracking().Where(row => row.SalonId == salon.Value);

    private IQueryable<GroomDoerRow> Doers(SalonId salon) =>
        db.GroomDoers.AsNoTracking().Where(row => row.SalonId == salon.Value);

    private IQueryable<DisputeLine> Lines(IQueryable<DisputeRow> rows) =>
        from row in rows
        join groom in db.Grooms on new { row.SalonId, Id = row.Groom } equals new { groom.SalonId, groom.Id }
        join dog in db.Dogs on new { row.SalonId, Id = groom.Dog } equals new { dog.SalonId, dog.Id }
        select new DisputeLine(row.SignOff, row.By, row.At, row.AnsweredAt, dog.Name);

    private IQueryable<LateLine> Late(IQueryable<GroomDoerRow> rows) =>
        from row in rows
        join groom in db.Grooms on new { row.SalonId, Id = row.Groom } equals new { groom.SalonId, groom.Id }
        join dog in db.Dogs on new { row.SalonId, Id = groom.Dog } equals new { dog.SalonId, dog.Id }
        select new LateLine(row.SignOff!.Value, row.Person, row.Senior!.Value, row.SignedAt!.Value, dog.Name);
}
