using Academy.Competence;
using Academy.Storage;
using Academy.Storage.Rows;
using Microsoft.EntityFrameworkCore;

namespace Academy.Web.Features.Shared;

/// <summary>Dogs by the words that somebody searches for.</summary>
internal static class DogSearchQueries
{
    /// <summary>The salon's dogs that have every word anywhere in name, breed or client; a search for nothing finds them all.</summary>
    public static IQueryable<DogRow> In(AcademyDb db, SalonId salon, string? words, bool alsoGone = false)
    {
        var rows = db.Dogs.AsNoTracking().Where(row => row.SalonId == salon.Value && (alsoGone || !row.IsGone));
        return DogSearch
            .Folded(words ?? "")
            .Split(' ', StringSplitOptions.RemoveEmptyEntries)
            .Aggregate(rows, (found, word) => found.Where(row => row.Search.Contains(word)));
    }
}
