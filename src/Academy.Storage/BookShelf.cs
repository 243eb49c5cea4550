using System.Collections.Concurrent;
using Academy.Competence;
using Academy.Competence.Salons;

namespace Academy.Storage;

/// <summary>The newest book of each salon, kept in memory under its version; one for the whole process.</summary>
/// <remarks>A book is immutable and its version is raised in the transaction that changes it, so an old copy is never served.</remarks>
public sealed class BookShelf
{
    private readonly ConcurrentDictionary<SalonId, (long Version, SalonBook Book)> _books = new();

    internal SalonBook? Find(SalonId salon, long version) =>
        _books.TryGetValue(salon, out var kept) && kept.Version == version ? kept.Book : null;

    internal SalonBook Keep(SalonId salon, long version, SalonBook book)
    {
        _books[salon] = (version, book);
        return book;
    }
}
