using Academy.Competence;
using Academy.Storage;
using Academy.Storage.Rows;
using Microsoft.EntityFrameworkCore;

namespace Academy.Web.Features.Incidents;

/// <summary>An incident in the owner's list.</summary>
public sealed record IncidentLine(
    Guid Id,
    Guid Groom,
    Guid Person,
    int Kind,
    int Severity,
    DateTimeOffset ReportedAt,
    DateTimeOffset? ReviewedAt,
    string Dog
);

/// <summary>Some of them, and whether more follow.</summary>
public sealed record IncidentPage(IReadOnlyList<IncidentLine> Lines, bool HasMore);

/// <summary>Incidents that wait for the owner's review, and those reviewed.</summary>
public sealed class IncidentQueries(AcademyDb db)
{
    public const int PageSize = 20;

    /// <summary>Not reviewed yet, oldest first, from after this one on.</summary>
    public async Task<IncidentPage> OpenAsync(SalonId salon, bool isCritical, Guid? after, CancellationToken stop)
    {
        var open = Of(salon).Where(row => row.ReviewedAt == null && row.IsCritical == isCritical);
        var from = after is { } last ? await ReportedAtAsync(salon, last, stop) : null;
        var following = from is null
            ? open
            : open.Where(row => row.ReportedAt > from || (row.ReportedAt == from && row.Id.CompareTo(after!.Value) > 0));
        var lines = await Lines(following.OrderBy(row => row.ReportedAt).ThenBy(row => row.Id).Take(PageSize + 1))
            .ToListAsync(stop);
        return new([.. lines.OrderBy(line => line.ReportedAt).ThenBy(line => line.Id).Take(PageSize)], lines.Count > PageSize);
    }

    /// <summary>The newest that were reviewed.</summary>
    public async Task<IReadOnlyList<IncidentLine>> ReviewedAsync(SalonId salon, CancellationToken stop)
    {
        var newest = Of(salon).Where(row => row.ReviewedAt != null).OrderByDescending(row => row.ReviewedAt).Take(PageSize);
        var lines = await Lines(newest).ToListAsync(stop);
        return [.. lines.OrderByDescending(line => line.ReviewedAt)];
    }

    /// <summary>The groom of an incident; null if this salon has no such incident.</summary>
    public Task<Guid?> GroomOfAsync(SalonId salon, Guid incident, CancellationToken stop) =>
        Of(salon).Where(row => row.Id == incident).Select(row => (Guid?)row.Groom).SingleOrDefaultAsync(stop);

    private Task<DateTimeOffset?> ReportedAtAsync(SalonId salon, Guid incident, CancellationToken stop) =>
        Of(salon).Where(row => row.Id == incident).Select(row => (DateTimeOffset?)row.ReportedAt).SingleOrDefaultAsync(stop);

    private IQueryable<IncidentRow> Of(SalonId salon) => db.Incidents.AsNoTracking().Where(row => row.SalonId == salon.Value);

    private IQueryable<IncidentLine> Lines(IQueryable<IncidentRow> rows) =>
        from row in rows
        join groom in db.Grooms on new { row.SalonId, Id = row.Groom } equals new { groom.SalonId, groom.Id }
        join dog in db.Dogs on new { row.SalonId, Id = groom.Dog } equals new { dog.SalonId, dog.Id }
        select new IncidentLine(row.Id, row.Groom, row.Person, row.Kind, row.Severity, row.ReportedAt, row.ReviewedAt, dog.Name);
}
