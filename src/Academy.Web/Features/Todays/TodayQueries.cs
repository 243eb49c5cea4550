using Academy.Competence;
using Academy.Storage;
using Academy.Storage.Rows;
using Microsoft.EntityFrameworkCore;

namespace Academy.Web.Features.Todays;

/// <summary>A groom of today or one that waits, for the first page.</summary>
public sealed record TodayGroom(
    Guid Id,
    Guid By,
    Guid? Watcher,
    string Dog,
    string Coat,
    DateTimeOffset StartedAt,
    DateTimeOffset? EndedAt,
    bool IsStarted
);

/// <summary>What the first page of the day shows.</summary>
public sealed class TodayQueries(AcademyDb db)
{
    /// <summary>Grooms that began on or after this moment, and those begun before and not told yet, newest first.</summary>
    public async Task<IReadOnlyList<TodayGroom>> GroomsAsync(
        SalonId salon,
        DateTimeOffset from,
        PersonId? only,
        CancellationToken stop
    )
    {
        var grooms = db
            .Grooms.AsNoTracking()
            .Where(row =>
                row.SalonId == salon.Value
                && row.State != GroomState.Abandoned
                && (row.StartedAt >= from || row.State == GroomState.Started)
            );
        if (only is { } person)
            grooms = grooms.Where(row => row.By == person.Value);
        return await grooms
            .OrderByDescending(row => row.StartedAt)
            .Take(40)
            .Join(
                db.Dogs,
                row => new { row.SalonId, row.Dog },
                dog => new { dog.SalonId, Dog = dog.Id },
                (row, dog) =>
                    new TodayGroom(
                        row.Id,
                        row.By,
                        row.Watcher,
                        dog.Name,
                        row.Coat == "" ? dog.Coat ?? "" : row.Coat,
                        row.StartedAt,
                        row.EndedAt,
                        row.State == GroomState.Started
                    )
            )
            .ToListAsync(stop);
    }

    /// <summary>Supervised parts not signed off yet: how many name this senior, and how many there are in all.</summary>
    public async Task<(int Named, int All)> UnsignedAsync(SalonId salon, PersonId senior, CancellationToken stop)
    {
        var waiting = db
            .GroomDoers.AsNoTracking()
            .Where(row => row.SalonId == salon.Value && row.SignOff == null && row.Watcher != null && row.Person != senior.Value);
        return (await waiting.CountAsync(row => row.Watcher == senior.Value, stop), await waiting.CountAsync(stop));
    }

    /// <summary>A person's own parts that wait for a sign-off.</summary>
    public Task<int> OwnUnsignedAsync(SalonId salon, PersonId person, CancellationToken stop) =>
        db
            .GroomDoers.AsNoTracking()
            .CountAsync(
                row => row.SalonId == salon.Value && row.Person == person.Value && row.SignOff == null && row.Watcher != null,
                stop
            );

    /// <summary>Modules that are being written and wait for this person: to be read over, or to be mended.</summary>
    public async Task<(IReadOnlyList<string> ToRead, IReadOnlyList<string> Back)> DraftsAsync(
        SalonId salon,
        PersonId writer,
        CancellationToken stop
    )
    {
        var drafts = await db
            .Drafts.AsNoTracking()
            .Where(row => row.SalonId == salon.Value && (row.AskedAt != null || row.ReturnedBy != null))
            .OrderBy(row => row.Module)
            .Select(row => new
            {
                row.Module,
                IsAsked = row.AskedAt != null,
                IsOwn = row.Author == writer.Value,
            })
            .ToListAsync(stop);
        return (
            [.. drafts.Where(draft => draft.IsAsked && !draft.IsOwn).Select(draft => draft.Module)],
            [.. drafts.Where(draft => !draft.IsAsked && draft.IsOwn).Select(draft => draft.Module)]
        );
    }

    /// <summary>Incidents without a review, disputes without an answer, flagged grooms that nobody has spoken about.</summary>
    public async Task<(int Reviews, int Disputes, int Flags)> ForTheOwnerAsync(SalonId salon, CancellationToken stop) =>
        (
            await db.Incidents.AsNoTracking().CountAsync(row => row.SalonId == salon.Value && row.ReviewedAt == null, stop),
            await db.Disputes.AsNoTracking().CountAsync(row => row.SalonId == salon.Value && row.AnsweredAt == null, stop),
            await db.Flags.AsNoTracking().CountAsync(row => row.SalonId == salon.Value && row.SpokenAt == null, stop)
        );
}
