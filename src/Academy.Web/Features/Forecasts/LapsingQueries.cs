using Academy.Competence;
using Academy.Storage;
using Microsoft.EntityFrameworkCore;

namespace Academy.Web.Features.Forecasts;

/// <summary>A dog that is still groomed here.</summary>
public sealed record DogOfCoat(Guid Id, string Name, string Breed, string Coat, DateTimeOffset? LastGroomAt);

/// <summary>Finds the dogs on which a coat could be kept fresh.</summary>
public sealed class LapsingQueries(AcademyDb db)
{
    /// <summary>Dogs of these coats that still come, those first that have not been here for longest.</summary>
    public async Task<IReadOnlyList<DogOfCoat>> DogsAsync(SalonId salon, string[] coats, CancellationToken stop) =>
        coats.Length == 0
            ? []
            : await db
                .Dogs.AsNoTracking()
                .Where(row => row.SalonId == salon.Value && !row.IsGone && row.Coat != null && coats.Contains(row.Coat))
                .OrderBy(row => row.LastGroomAt)
                .ThenBy(row => row.Name)
                .Select(row => new DogOfCoat(row.Id, row.Name, row.Breed, row.Coat!, row.LastGroomAt))
                .ToListAsync(stop);
}
