using Academy.Competence;
using Academy.Storage;
using Academy.Storage.Rows;
using Academy.Web.Features.Shared;
using Microsoft.EntityFrameworkCore;

namespace Academy.Web.Features.Dogs;

/// <summary>A dog in a list.</summary>
public sealed record DogLine(
    Guid Id,
    string Name,
    string Breed,
    string Client,
    string? Coat,
    DateTimeOffset? LastGroomAt,
    bool IsGone
);

/// <summary>Some dogs in the order of their names, how many match in all, and after which one the next page begins.</summary>
public sealed record DogPage(IReadOnlyList<DogLine> Dogs, int Matching, Guid? Last);

/// <summary>A groom in a dog's list.</summary>
public sealed record GroomLine(Guid Id, DateTimeOffset StartedAt, Guid By, Guid? Watcher, string Coat, bool HasIncident);

/// <summary>The grooms of a dog that this person may see, newest first, and how many there are in all.</summary>
public sealed record GroomPage(IReadOnlyList<GroomLine> Grooms, int Seen, int All);

/// <summary>Lists of dogs and of one dog's grooms.</summary>
public sealed class DogQueries(AcademyDb db)
{
    public const int PageSize = 50;

    public async Task<DogPage> FindAsync(SalonId salon, string words, bool alsoGone, Guid? after, CancellationToken stop)
    {
        var matching = DogSearchQueries.In(db, salon, words, alsoGone);
        var count = await matching.CountAsync(stop);
        var page = await Following(salon, matching, after)
            .OrderBy(row => row.Search)
            .ThenBy(row => row.Id)
            .Take(PageSize + 1)
            .Select(row => new DogLine(row.Id, row.Name, row.Breed, row.Client, row.Coat, row.LastGroomAt, row.IsGone))
            .ToListAsync(stop);
        return new(page.Take(PageSize).ToList(), count, page.Count > PageSize ? page[PageSize - 1].Id : null);
    }

    /// <param name="salon">The salon.</param>
    /// <param name="dog">The dog.</param>
    /// <param name="only">Whose grooms alone are listed; null for everybody's.</param>
    /// <param name="before">Grooms that started before this moment; null for the newest.</param>
    /// <param name="stop">Stops the reading.</param>
    public async Task<GroomPage> GroomsOfAsync(
        SalonId salon,
        DogId dog,
        PersonId? only,
        DateTimeOffset? before,
        CancellationToken stop
    )
    {
        var all = db
            .Grooms.AsNoTracking()
            .Where(row => row.SalonId == salon.Value && row.Dog == dog.Value && row.State == GroomState.Told);
        var seen = only is { Value: var person }
            ? all.Where(row =>
                db.GroomDoers.Any(doer => doer.SalonId == row.SalonId && doer.Groom == row.Id && doer.Person == person)
            )
            : all;
        var count = await all.CountAsync(stop);
        var seenCount = only is null ? count : await seen.CountAsync(stop);
        var page = await seen.Where(row => before == null || row.StartedAt < before)
            .OrderByDescending(row => row.StartedAt)
            .Take(PageSize)
            .Select(row => new GroomLine(row.Id, row.StartedAt, row.By, row.Watcher, row.Coat, row.HasIncident))
            .ToListAsync(stop);
        return new(page, seenCount, count);
    }

    private IQueryable<DogRow> Following(SalonId salon, IQueryable<DogRow> rows, Guid? after)
    {
        if (after is not { } last)
            return rows;
        var marks = db.Dogs.Where(row => row.SalonId == salon.Value && row.Id == last).Select(row => row.Search);
        return rows.Where(row =>
            row.Search.CompareTo(marks.First()) > 0 || (row.Search == marks.First() && row.Id.CompareTo(last) > 0)
        );
    }
}
