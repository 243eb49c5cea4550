using Academy.Competence;
using Academy.Storage;
using Academy.Web.Features.Shared;
using Microsoft.EntityFrameworkCore;

namespace Academy.Web.Features.OwnSkills;

/// <summary>A person's part in a groom, as a line of her list.</summary>
public sealed record GroomLine(DateTimeOffset EndedAt, Guid Groom, string Dog, string Coat, Guid? Watcher, bool HasIncident);

/// <summary>A dispute over a sign-off of this person.</summary>
public sealed record DisputeLine(Guid SignOff, Guid Groom, DateTimeOffset At, DateTimeOffset? AnsweredAt);

/// <summary>Reads one person's grooms and disputes.</summary>
public sealed class SkillsQueries(AcademyDb db)
{
    public const int PageSize = 20;

    /// <summary>Her grooms, newest first, one more than a page shows.</summary>
    public async Task<IReadOnlyList<GroomLine>> GroomsAsync(
        SalonId salon,
        PersonId person,
        ListPlace? after,
        CancellationToken stop
    )
    {
        var doers = db.GroomDoers.Where(doer => doer.SalonId == salon.Value && doer.Person == person.Value);
        if (after is not null)
            doers = doers.Where(doer =>
                doer.EndedAt < after.At || (doer.EndedAt == after.At && doer.Groom.CompareTo(after.Id) < 0)
            );
        return await (
            from doer in doers
            join groom in db.Grooms on new { doer.SalonId, Id = doer.Groom } equals new { groom.SalonId, groom.Id }
            join dog in db.Dogs on new { groom.SalonId, Id = groom.Dog } equals new { dog.SalonId, dog.Id } into dogs
            from dog in dogs.DefaultIfEmpty()
            orderby doer.EndedAt descending, doer.Groom descending
            select new GroomLine(doer.EndedAt, doer.Groom, dog.Name ?? groom.Breed, groom.Coat, doer.Watcher, groom.HasIncident)
        )
            .AsNoTracking()
            .Take(PageSize + 1)
            .ToListAsync(stop);
    }

    /// <summary>Her disputes, newest first.</summary>
    public async Task<IReadOnlyList<DisputeLine>> DisputesAsync(SalonId salon, PersonId person, CancellationToken stop) =>
        await db
            .Disputes.AsNoTracking()
            .Where(dispute => dispute.SalonId == salon.Value && dispute.By == person.Value)
            .OrderByDescending(dispute => dispute.At)
            .Take(PageSize)
            .Select(dispute => new DisputeLine(dispute.SignOff, dispute.Groom, dispute.At, dispute.AnsweredAt))
            .ToListAsync(stop);
}
