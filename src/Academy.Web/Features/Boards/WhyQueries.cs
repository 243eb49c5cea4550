using Academy.Competence;
using Academy.Competence.Evidence;
using Academy.Competence.Incidents;
using Academy.Competence.Salons;
using Academy.Competence.Statistics;
using Academy.Storage;
using Academy.Storage.Rows;
using Academy.Web.Features.Shared;
using Microsoft.EntityFrameworkCore;

namespace Academy.Web.Features.Boards;

/// <summary>A groom on somebody's path in one skill.</summary>
public sealed record PathGroom(
    DateTimeOffset At,
    Guid Groom,
    StepKind Kind,
    DateOnly Day,
    Verdict? Verdict,
    string Breed,
    Guid? Senior,
    string? Dog
);

/// <summary>A stop by the rule on critical incidents.</summary>
public sealed record PathStop(
    DateTimeOffset At,
    Guid Incident,
    Guid Groom,
    IncidentKind What,
    bool IsReviewOpen,
    bool IsTechnique
);

/// <summary>Whose path in which skill is read, as it was known at which moment.</summary>
public sealed record PathAsked(SalonId Salon, PersonId Person, SkillCode Skill, DateTimeOffset At);

/// <summary>Reads the grooms and stops behind one standing.</summary>
public sealed class WhyQueries(AcademyDb db)
{
    public const int PageSize = 30;

    private static readonly int[] Grooms =
    [
        (int)StepKind.Alone,
        (int)StepKind.Watched,
        (int)StepKind.Rated,
        (int)StepKind.Inspected,
        (int)StepKind.Elsewhere,
    ];

    /// <summary>The grooms of a path, newest first, one more than a page shows.</summary>
    public async Task<IReadOnlyList<PathGroom>> GroomsAsync(PathAsked asked, ListPlace? after, CancellationToken stop)
    {
        var steps = Steps(asked).Where(step => Grooms.Contains(step.Kind));
        if (after is not null)
            steps = steps.Where(step => step.At < after.At || (step.At == after.At && step.Source.CompareTo(after.Id) < 0));
        var rows = await (
            from step in steps
            join groom in db.Grooms on new { step.SalonId, Id = step.Source } equals new { groom.SalonId, groom.Id } into grooms
            from groom in grooms.DefaultIfEmpty()
            join dog in db.Dogs on new { groom.SalonId, Id = groom.Dog } equals new { dog.SalonId, dog.Id } into dogs
            from dog in dogs.DefaultIfEmpty()
            orderby step.At descending, step.Source descending
            select new PathGroom(
                step.At,
                step.Source,
                (StepKind)step.Kind,
                step.Day,
                (Verdict?)step.Verdict,
                step.Breed,
                step.Senior,
                dog.Name
            )
        )
            .AsNoTracking()
            .Take(PageSize + 1)
            .ToListAsync(stop);
        return rows;
    }

    /// <summary>Every stop after a critical incident, newest first.</summary>
    public async Task<IReadOnlyList<PathStop>> StopsAsync(PathAsked asked, CancellationToken stop) =>
        await (
            from step in Steps(asked)
            where step.Kind == (int)StepKind.StoodDown
            join incident in db.Incidents on new { step.SalonId, Id = step.Source } equals new { incident.SalonId, incident.Id }
            orderby step.At descending
            select new PathStop(
                step.At,
                incident.Id,
                incident.Groom,
                (IncidentKind)incident.Kind,
                step.IsReviewOpen,
                step.IsTechnique
            )
        )
            .AsNoTracking()
            .ToListAsync(stop);

    private IQueryable<StepRow> Steps(PathAsked asked) =>
        db.Steps.Where(step =>
            step.SalonId == asked.Salon.Value
            && step.Person == asked.Person.Value
            && step.Skill == asked.Skill.Value
            && step.At <= asked.At
            && step.KnownFrom <= asked.At
            && (step.KnownUntil == null || step.KnownUntil > asked.At)
        );
}
