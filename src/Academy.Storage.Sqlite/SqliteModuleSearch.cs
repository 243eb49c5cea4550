using System.Globalization;
using System.Text.Json;
using Microsoft.Data.Sqlite;

namespace Academy.Storage.Sqlite;

/// <summary>
/// The full-text index of SQLite (FTS5), in memory: it is made of the shelf's own texts and made again at every start, so no backup,
/// no migration and no erasing has to think of it.
/// </summary>
public sealed class SqliteModuleSearch : IModuleSearch, IDisposable
{
    private const int OfOneModule = 2;
    private const char Begin = '\u0002';
    private const char End = '\u0003';

    private const string Table = """
        CREATE VIRTUAL TABLE passages USING fts5(
          hash UNINDEXED, part UNINDEXED, title, heading, words, tokenize = 'porter unicode61 remove_diacritics 2');
        """;

    private const string Rank = """
        SELECT rowid, hash FROM passages
        WHERE passages MATCH $match AND hash IN (SELECT value FROM json_each($hashes))
        ORDER BY bm25(passages, 0, 0, 10, 5, 1)
        """;

    private const string Show = """
        SELECT rowid, hash, part, highlight(passages, 2, $begin, $end), highlight(passages, 3, $begin, $end),
          snippet(passages, 4, $begin, $end, '…', 28)
        FROM passages WHERE passages MATCH $match AND rowid IN (SELECT value FROM json_each($rows))
        """;

    private readonly SqliteConnection _memory = new("Data Source=:memory:");
    private readonly HashSet<string> _known = new(StringComparer.Ordinal);
    private readonly SemaphoreSlim _turn = new(1, 1);

    public SqliteModuleSearch()
    {
        _memory.Open();
        using var made = _memory.CreateCommand();
        made.CommandText = Table;
        made.ExecuteNonQuery();
    }

    public Task AddAsync(IEnumerable<SearchedModule> modules, CancellationToken stop) =>
        InTurnAsync(
            () =>
            {
                Add([.. modules.Where(module => !_known.Contains(module.ContentHash))]);
                return 0;
            },
            stop
        );

    public Task<IReadOnlyList<FoundPassage>> FindAsync(
        IReadOnlyList<string> words,
        IReadOnlyCollection<string> hashes,
        int most,
        CancellationToken stop
    ) =>
        words.Count == 0
            ? Task.FromResult<IReadOnlyList<FoundPassage>>([])
            : InTurnAsync<IReadOnlyList<FoundPassage>>(() => Find(MatchOf(words), hashes, most), stop);

    public void Dispose()
    {
        _memory.Dispose();
        _turn.Dispose();
    }

    private void Add(IReadOnlyList<SearchedModule> modules)
    {
        using var all = _memory.BeginTransaction();
        using var row = _memory.CreateCommand();
        row.Transaction = all;
        row.CommandText = "INSERT INTO passages VALUES ($hash, $part, $title, $heading, $words)";
        var (hash, part, title, heading, words) = (At("$hash"), At("$part"), At("$title"), At("$heading"), At("$words"));
        foreach (var module in modules)
        foreach (var passage in module.Passages)
        {
            (hash.Value, part.Value, title.Value) = (module.ContentHash, passage.Part, module.Title);
            (heading.Value, words.Value) = (passage.Heading, passage.Words);
            row.ExecuteNonQuery();
        }
        all.Commit();
        _known.UnionWith(modules.Select(module => module.ContentHash));

        SqliteParameter At(string name) => row.Parameters.Add(name, SqliteType.Text);
    }

    private List<FoundPassage> Find(string match, IReadOnlyCollection<string> hashes, int most)
    {
        var rows = RowsOf(match, hashes, most);
        using var show = _memory.CreateCommand();
        show.CommandText = Show;
        show.Parameters.AddWithValue("$match", match);
        show.Parameters.AddWithValue("$rows", JsonSerializer.Serialize(rows));
        show.Parameters.AddWithValue("$begin", Begin.ToString(CultureInfo.InvariantCulture));
        show.Parameters.AddWithValue("$end", End.ToString(CultureInfo.InvariantCulture));
        using var read = show.ExecuteReader();
        Dictionary<long, FoundPassage> found = [];
        while (read.Read())
            found.Add(
                read.GetInt64(0),
                new(
                    read.GetString(1),
                    read.GetString(2),
                    Marked(read.GetString(3)),
                    Marked(read.GetString(4)),
                    Marked(read.GetString(5))
                )
            );
        return [.. rows.Select(row => found[row])];
    }

    // The best two passages of each module, the module with the best of all first.
    private List<long> RowsOf(string match, IReadOnlyCollection<string> hashes, int most)
    {
        using var rank = _memory.CreateCommand();
        rank.CommandText = Rank;
        rank.Parameters.AddWithValue("$match", match);
        rank.Parameters.AddWithValue("$hashes", JsonSerializer.Serialize(hashes));
        using var read = rank.ExecuteReader();
        List<(long Row, string Hash)> rows = [];
        while (read.Read())
            rows.Add((read.GetInt64(0), read.GetString(1)));
        return
        [
            .. rows.GroupBy(row => row.Hash, StringComparer.Ordinal)
                .Take(most)
                .SelectMany(module => module.Take(OfOneModule).Select(row => row.Row)),
        ];
    }

    private async Task<T> InTurnAsync<T>(Func<T> work, CancellationToken stop)
    {
        await _turn.WaitAsync(stop);
        try
        {
            return work();
        }
        finally
        {
            _turn.Release();
        }
    }

    // A word in quotation marks is a word, whatever it would mean otherwise.
    private static string MatchOf(IReadOnlyList<string> words) => $"{string.Join(' ', words.Select(word => $"\"{word}\""))}*";

    private static List<FoundWords> Marked(string words)
    {
        List<FoundWords> runs = [];
        foreach (var (place, piece) in words.Split(Begin).Index())
        {
            var end = place == 0 ? -1 : piece.IndexOf(End);
            if (end >= 0)
                runs.Add(new(piece[..end], IsMatch: true));
            if (end + 1 < piece.Length)
                runs.Add(new(piece[(end + 1)..], IsMatch: false));
        }
        return runs;
    }
}
