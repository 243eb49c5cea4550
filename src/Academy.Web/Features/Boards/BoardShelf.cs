using System.Security.Cryptography;
using System.Text;
using Academy.Competence;
using Microsoft.Extensions.Caching.Memory;

namespace Academy.Web.Features.Boards;

/// <summary>Everything that a board depends on: another fact, day, viewer, filter or language is another board.</summary>
public sealed record BoardKey(SalonId Salon, long Version, DateOnly Day, PersonId Viewer, bool OnlyIn, string Culture)
{
    /// <summary>Five minutes, after which the moment that the page shows is told anew even if nothing was recorded.</summary>
    private static readonly TimeSpan Fresh = TimeSpan.FromMinutes(5);

    /// <summary>The page's entity tag. It names the person too, so that a tablet never shows one person what another was sent.</summary>
    public string TagAt(DateTimeOffset now)
    {
        var said = $"{this}|{now.UtcTicks / Fresh.Ticks}";
        return $"\"{Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(said)).AsSpan(0, 12))}\"";
    }
}

/// <summary>The newest boards, kept ready: looking again costs no standing to be worked out.</summary>
public sealed class BoardShelf : IDisposable
{
    private const int Most = 64;

    private readonly MemoryCache _boards = new(new MemoryCacheOptions { SizeLimit = Most });

    public BoardView? Find(BoardKey key) => _boards.Get<BoardView>(key);

    public BoardView Keep(BoardKey key, BoardView board) =>
        _boards.Set(key, board, new MemoryCacheEntryOptions { Size = 1, SlidingExpiration = TimeSpan.FromMinutes(20) });

    public void Dispose() => _boards.Dispose();
}
