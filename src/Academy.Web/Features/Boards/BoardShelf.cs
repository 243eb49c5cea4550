using System.Security.Cryptography;
using System.Text;
using Academy.Competence;
using Microsoft.AspNetCore.Html;
using Microsoft.Extensions.Caching.Memory;

namespace Academy.Web.Features.Boards;

/// <summary>Everything that a board depends on: another fact, day, viewer, filter or language is another board.</summary>
public sealed record BoardKey(SalonId Salon, long Version, DateOnly Day, PersonId Viewer, bool OnlyIn, string Culture)
{
    /// <summary>Five minutes, after which the moment that the page shows is told anew even if nothing was recorded.</summary>
    private static readonly TimeSpan Fresh = TimeSpan.FromMinutes(5);

    /// <summary>Where it is kept: a newer board of the same viewer takes the place of an older one.</summary>
    internal (SalonId, PersonId, bool) Place => (Salon, Viewer, OnlyIn);

    /// <summary>The page's entity tag. It names the person too, so that a tablet never shows one person what another was sent.</summary>
    public string TagAt(DateTimeOffset now)
    {
        var said = $"{this}|{now.UtcTicks / Fresh.Ticks}";
        return $"\"{Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(said)).AsSpan(0, 12))}\"";
    }
}

/// <summary>A board as it was made, and its tables once they were drawn.</summary>
public sealed record BoardMade(BoardKey Key, BoardView View, IHtmlContent? Drawn = null);

/// <summary>The newest board of each viewer, kept ready: looking again costs no standing to be worked out and no cell to be drawn.</summary>
public sealed class BoardShelf : IDisposable
{
    private const int Most = 64;

    private readonly MemoryCache _boards = new(new MemoryCacheOptions { SizeLimit = Most });

    /// <summary>The board of this key; what was kept for an older version is of no use to anybody.</summary>
    public BoardMade? Find(BoardKey key) => _boards.Get<BoardMade>(key.Place) is { } made && made.Key == key ? made : null;

    public BoardMade Keep(BoardMade board) =>
        _boards.Set(
            board.Key.Place,
            board,
            new MemoryCacheEntryOptions { Size = 1, SlidingExpiration = TimeSpan.FromMinutes(20) }
        );

    public void Dispose() => _boards.Dispose();
}
