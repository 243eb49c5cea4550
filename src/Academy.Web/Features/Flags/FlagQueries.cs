using Academy.Competence;
using Academy.Storage;
using Academy.Storage.Rows;
using Microsoft.EntityFrameworkCore;

namespace Academy.Web.Features.Flags;

/// <summary>A flagged groom in the owner's list.</summary>
public sealed record FlagLine(
    Guid Groom,
    Guid Person,
    DateTimeOffset At,
    string Skills,
    DateTimeOffset? SpokenAt,
    DateTimeOffset StartedAt,
    string Dog
);

/// <summary>Grooms done alone by somebody who was not alone for them. None is forgotten until the owner has spoken about it.</summary>
public sealed class FlagQueries(AcademyDb db)
{
    public const int PageSize = 20;

    /// <summary>Not spoken about yet, oldest first, from after so many on; one more than a page where more follow.</summary>
    public async Task<IReadOnlyList<FlagLine>> OpenAsync(SalonId salon, int after, CancellationToken stop)
    {
        var open = Of(salon)
            .Where(row => row.SpokenAt == null)
            .OrderBy(row => row.At)
            .ThenBy(row => row.Groom)
            .ThenBy(row => row.Person)
            .Skip(after)
            .Take(PageSize + 1);
        var lines = await Lines(open).ToListAsync(stop);
        return [.. lines.OrderBy(line => line.At).ThenBy(line => line.Groom).ThenBy(line => line.Person)];
    }

    /// <summary>The newest that were spoken about.</summary>
    public async Task<IReadOnlyList<FlagLine>> SpokenAsync(SalonId salon, CancellationToken stop)
    {
        var spoken = Of(salon).Where(row => row.SpokenAt != null).OrderByDescending(row => row.SpokenAt).Take(PageSize);
        return [.. (await Lines(spoken).ToListAsync(stop)).OrderByDescending(line => line.SpokenAt)];
    }

    private IQueryable<FlagRow> Of(SalonId salon) => db.Flags.AsNoTracking().Where(row => row.SalonId == salon.Value);

    private IQueryable<FlagLine> Lines(IQueryable<FlagRow> rows) =>
        from flag in rows
        join groom in db.Grooms on new { flag.SalonId, Id = flag.Groom } equals new { groom.SalonId, groom.Id }
        join dog in db.Dogs on new { flag.SalonId, Id = groom.Dog } equals new { dog.SalonId, dog.Id }
        select new FlagLine(flag.Groom, flag.Person, flag.At, flag.Skills, flag.SpokenAt, groom.StartedAt, dog.Name);
}
