using System.Collections.Concurrent;
using Academy.Competence;
using Academy.Competence.Salons;
using Academy.Competence.Standings;

namespace Academy.Storage;

/// <summary>The newest book and standings of each salon, kept in memory under their versions; one for the whole process.</summary>
/// <remarks>Both are immutable and their version is raised in the transaction that changes them, so an old copy is never served.</remarks>
public sealed class BookShelf
{
    private readonly ConcurrentDictionary<SalonId, (long Version, SalonBook Book)> _books = new();
    private readonly ConcurrentDictionary<SalonId, Kept> _teams = new();

    internal SalonBook? Find(SalonId salon, long version) =>
        _books.TryGetValue(salon, out var kept) && kept.Version == version ? kept.Book : null;

    internal SalonBook Keep(SalonId salon, long version, SalonBook book)
    {
        _books[salon] = (version, book);
        return book;
    }

    /// <summary>The standings of this day, read at this moment or earlier on it. A clock that was put back finds nothing.</summary>
    internal Team? FindTeam(SalonId salon, long version, DateOnly day, DateTimeOffset now) =>
        _teams.TryGetValue(salon, out var kept) && kept.Version == version && kept.Day == day && kept.ReadAt <= now
            ? kept.Team
            : null;

    internal Team KeepTeam(SalonId salon, long version, DateOnly day, DateTimeOffset readAt, Team team)
    {
        _teams[salon] = new(version, day, readAt, team);
        return team;
    }

    private sealed record Kept(long Version, DateOnly Day, DateTimeOffset ReadAt, Team Team);
}
