using Academy.Competence;
using Academy.Competence.Incidents;
using Academy.Competence.Salons;
using Academy.Storage;
using Academy.Storage.Rows;
using Microsoft.EntityFrameworkCore;

namespace Academy.Web.Features.Decisions;

/// <summary>A groom done alone by somebody who was not alone for it.</summary>
public sealed record FlaggedGroom(Guid Groom, Guid Person, DateTimeOffset StartedAt, string Skills, string Dog);

/// <summary>A critical incident that waits for its review.</summary>
public sealed record OpenReview(Guid Incident, DateTimeOffset ReportedAt, Guid Person, IncidentKind Kind, string Dog);

/// <summary>A dispute that waits for its answer.</summary>
public sealed record OpenDispute(Guid SignOff, DateTimeOffset At, Guid By, string Dog);

/// <summary>Reads what waits for the owner beside the standings.</summary>
public sealed class DecideQueries(AcademyDb db)
{
    private const int Most = 50;

    /// <summary>Flagged grooms that the owner has not spoken about, oldest first.</summary>
    public async Task<IReadOnlyList<FlaggedGroom>> FlaggedAsync(SalonId salon, CancellationToken stop) =>
        await (
            from flag in db.Flags
            where flag.SalonId == salon.Value && flag.SpokenAt == null
            join groom in db.Grooms on new { flag.SalonId, Id = flag.Groom } equals new { groom.SalonId, groom.Id }
            join dog in db.Dogs on new { groom.SalonId, Id = groom.Dog } equals new { dog.SalonId, dog.Id } into dogs
            from dog in dogs.DefaultIfEmpty()
            orderby flag.At, flag.Groom, flag.Person
            select new FlaggedGroom(groom.Id, flag.Person, groom.StartedAt, flag.Skills, dog.Name ?? groom.Breed)
        )
            .AsNoTracking()
            .Take(Most)
            .ToListAsync(stop);

    public async Task<IReadOnlyList<OpenReview>> ReviewsAsync(SalonId salon, CancellationToken stop) =>
        await (
            from incident in db.Incidents
            where incident.SalonId == salon.Value && incident.IsCritical && incident.ReviewedAt == null
            join groom in db.Grooms on new { incident.SalonId, Id = incident.Groom } equals new { groom.SalonId, groom.Id }
            join dog in db.Dogs on new { groom.SalonId, Id = groom.Dog } equals new { dog.SalonId, dog.Id } into dogs
            from dog in dogs.DefaultIfEmpty()
            orderby incident.ReportedAt, incident.Id
            select new OpenReview(
                incident.Id,
                incident.ReportedAt,
                incident.Person,
                (IncidentKind)incident.Kind,
                dog.Name ?? groom.Breed
            )
        )
            .AsNoTracking()
            .Take(Most)
            .ToListAsync(stop);

    public async Task<IReadOnlyList<OpenDispute>> DisputesAsync(SalonId salon, CancellationToken stop) =>
        await (
            from dispute in db.Disputes
            where dispute.SalonId == salon.Value && dispute.AnsweredAt == null
            join groom in db.Grooms on new { dispute.SalonId, Id = dispute.Groom } equals new { groom.SalonId, groom.Id }
            join dog in db.Dogs on new { groom.SalonId, Id = groom.Dog } equals new { dog.SalonId, dog.Id } into dogs
            from dog in dogs.DefaultIfEmpty()
            orderby dispute.At, dispute.SignOff
            select new OpenDispute(dispute.SignOff, dispute.At, dispute.By, dog.Name ?? groom.Breed)
        )
            .AsNoTracking()
            .Take(Most)
            .ToListAsync(stop);
}
