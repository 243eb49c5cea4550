using Academy.Competence;
using Academy.Storage;
using Academy.Storage.Rows;
using Academy.Web.Features.Shared;
using Microsoft.EntityFrameworkCore;

namespace Academy.Web.Features.DogChecks;

/// <summary>A dog to choose from.</summary>
public sealed record DogChoice(Guid Id, string Name, string Breed, string? Coat);

/// <summary>Which dogs there are to ask about, and what was done with one last time.</summary>
public sealed class DogCheckQueries(AcademyDb db)
{
    public const int Shown = 24;

    /// <summary>Dogs by the words searched for; without words those that came last.</summary>
    public async Task<IReadOnlyList<DogChoice>> FindAsync(SalonId salon, string? words, CancellationToken stop)
    {
        var here = DogSearchQueries.In(db, salon, words);
        var found = string.IsNullOrWhiteSpace(words)
            ? here.OrderByDescending(row => row.LastGroomAt).ThenBy(row => row.Name)
            : here.OrderBy(row => row.Search).ThenBy(row => row.Id);
        return await found.Take(Shown).Select(row => new DogChoice(row.Id, row.Name, row.Breed, row.Coat)).ToListAsync(stop);
    }

    /// <summary>The newest groom of a dog that was told; null if there is none.</summary>
    public async Task<GroomId?> LastGroomAsync(SalonId salon, DogId dog, CancellationToken stop)
    {
        var id = await db
            .Grooms.AsNoTracking()
            .Where(row => row.SalonId == salon.Value && row.Dog == dog.Value && row.State == GroomState.Told)
            .OrderByDescending(row => row.StartedAt)
            .Select(row => (Guid?)row.Id)
            .FirstOrDefaultAsync(stop);
        return id is { } last ? new GroomId(last) : null;
    }
}
