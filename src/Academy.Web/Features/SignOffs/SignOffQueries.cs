using Academy.Competence;
using Academy.Storage;
using Academy.Storage.Rows;
using Microsoft.EntityFrameworkCore;

namespace Academy.Web.Features.SignOffs;

/// <summary>One person's part in a groom that waits.</summary>
public sealed record WaitingLine(
    Guid Groom,
    Guid Person,
    Guid? Watcher,
    DateTimeOffset EndedAt,
    string Dog,
    string Breed,
    string Coat,
    bool HasIncident
);

/// <summary>Some of them, oldest first, and whether more follow.</summary>
public sealed record WaitingPage(IReadOnlyList<WaitingLine> Lines, bool HasMore)
{
    public static WaitingPage None { get; } = new([], HasMore: false);
}

/// <summary>After which line the next page begins.</summary>
public sealed record After(DateTimeOffset EndedAt, Guid Groom, Guid Person);

/// <summary>Who asks what waits for her.</summary>
/// <param name="Salon">In which salon.</param>
/// <param name="Person">Who asks: her own work is never among it.</param>
/// <param name="AloneIn">In which skills she is alone: she may judge those.</param>
/// <param name="EndedAfter">Grooms that ended after this moment.</param>
/// <param name="EndedBy">Grooms that ended at this moment at the latest.</param>
/// <param name="After">Only those after this line.</param>
public sealed record WaitingAsked(
    SalonId Salon,
    PersonId Person,
    IReadOnlyList<string> AloneIn,
    DateTimeOffset EndedAfter,
    DateTimeOffset EndedBy,
    After? After = null
);

/// <summary>What waits for a sign-off, oldest first.</summary>
public sealed class SignOffQueries(AcademyDb db)
{
    public const int PageSize = 20;

    private const int MostAlone = 200;

    /// <summary>Supervised grooms in which she was named as watching.</summary>
    public Task<WaitingPage> NamedAsync(WaitingAsked asked, CancellationToken stop) =>
        PageAsync(asked, Waiting(asked).Where(row => row.Watcher == asked.Person.Value), stop);

    /// <summary>Supervised grooms in which another was named and of which she may judge at least one skill.</summary>
    public Task<WaitingPage> OthersAsync(WaitingAsked asked, CancellationToken stop) =>
        PageAsync(
            asked,
            MayJudge(asked, Waiting(asked).Where(row => row.Watcher != null && row.Watcher != asked.Person.Value)),
            stop
        );

    /// <summary>Both, of the time asked.</summary>
    public Task<WaitingPage> AllAsync(WaitingAsked asked, CancellationToken stop)
    {
        var mayJudge = MayJudge(asked, Waiting(asked));
        return PageAsync(
            asked,
            Waiting(asked)
                .Where(row =>
                    row.Watcher != null
                    && (
                        row.Watcher == asked.Person.Value
                        || mayJudge.Any(may => may.Groom == row.Groom && may.Person == row.Person)
                    )
                ),
            stop
        );
    }

    /// <summary>Grooms done alone whose finished dog is to be inspected: those of these people in one of these of their skills.</summary>
    public async Task<WaitingPage> AloneAsync(WaitingAsked asked, ILookup<Guid, string> due, CancellationToken stop)
    {
        if (due.Count == 0)
            return WaitingPage.None;

        var people = due.Select(one => one.Key).ToList();
        var rows = Waiting(asked).Where(row => row.Watcher == null && people.Contains(row.Person));
        var found = await rows.Join(
                db.Steps,
                row => new
                {
                    row.SalonId,
                    Source = row.Groom,
                    row.Person,
                },
                step => new
                {
                    step.SalonId,
                    step.Source,
                    step.Person,
                },
                (row, step) => new { row, step }
            )
            .Where(both => both.step.KnownUntil == null && asked.AloneIn.Contains(both.step.Skill))
            .OrderBy(both => both.row.EndedAt)
            .Take(MostAlone)
            .Select(both => new
            {
                both.row.Groom,
                both.row.Person,
                both.step.Skill,
            })
            .ToListAsync(stop);
        var grooms = found.Where(one => due[one.Person].Contains(one.Skill)).Select(one => one.Groom).Distinct().ToList();
        return await PageAsync(asked, rows.Where(row => grooms.Contains(row.Groom)), stop);
    }

    private IQueryable<GroomDoerRow> Waiting(WaitingAsked asked) =>
        db
            .GroomDoers.AsNoTracking()
            .Where(row =>
                row.SalonId == asked.Salon.Value
                && row.SignOff == null
                && row.EndedAt > asked.EndedAfter
                && row.EndedAt <= asked.EndedBy
                && !db.GroomDoers.Any(own =>
                    own.SalonId == row.SalonId && own.Groom == row.Groom && own.Person == asked.Person.Value
                )
            );

    private IQueryable<GroomDoerRow> MayJudge(WaitingAsked asked, IQueryable<GroomDoerRow> rows) =>
        rows.Where(row =>
            db.Steps.Any(step =>
                step.SalonId == row.SalonId
                && step.Source == row.Groom
                && step.Person == row.Person
                && step.KnownUntil == null
                && asked.AloneIn.Contains(step.Skill)
            )
        );

    private async Task<WaitingPage> PageAsync(WaitingAsked asked, IQueryable<GroomDoerRow> rows, CancellationToken stop)
    {
        var lines = await Following(asked.After, rows)
            .Join(
                db.Grooms,
                row => new { row.SalonId, Id = row.Groom },
                groom => new { groom.SalonId, groom.Id },
                (row, groom) => new { row, groom }
            )
            .OrderBy(both => both.row.EndedAt)
            .ThenBy(both => both.row.Groom)
            .ThenBy(both => both.row.Person)
            .Take(PageSize + 1)
            .Select(both => new WaitingLine(
                both.row.Groom,
                both.row.Person,
                both.row.Watcher,
                both.row.EndedAt,
                db.Dogs.Where(dog => dog.SalonId == both.row.SalonId && dog.Id == both.groom.Dog)
                    .Select(dog => dog.Name)
                    .FirstOrDefault()
                    ?? both.groom.Breed,
                both.groom.Breed,
                both.groom.Coat,
                both.groom.HasIncident
            ))
            .ToListAsync(stop);
        return new(lines.Take(PageSize).ToList(), lines.Count > PageSize);
    }

    private static IQueryable<GroomDoerRow> Following(After? after, IQueryable<GroomDoerRow> rows) =>
        after is null
            ? rows
            : rows.Where(row =>
                row.EndedAt > after.EndedAt
                || (row.EndedAt == after.EndedAt && row.Groom.CompareTo(after.Groom) > 0)
                || (row.EndedAt == after.EndedAt && row.Groom == after.Groom && row.Person.CompareTo(after.Person) > 0)
            );
}
