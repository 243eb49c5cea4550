using Academy.Modules;
using Academy.Modules.Lessons;
using Academy.Storage;

namespace Academy.Web.Library;

/// <summary>Finds words in the modules of one shelf. An edition is read for it when it is first searched, and once.</summary>
public sealed class ModuleIndex(IModuleSearch search) : IDisposable
{
    private const int MostModules = 20;

    private readonly HashSet<string> _read = new(StringComparer.Ordinal);
    private readonly SemaphoreSlim _turn = new(1, 1);

    public async Task<IReadOnlyList<FoundPassage>> FindAsync(Shelf shelf, string? typed, CancellationToken stop)
    {
        var words = SearchWords.Of(typed);
        if (words.Count == 0)
            return [];
        await ReadAsync(shelf, stop);
        return await search.FindAsync(words, [.. shelf.Modules.Select(module => module.Hash)], MostModules, stop);
    }

    public void Dispose() => _turn.Dispose();

    private async Task ReadAsync(Shelf shelf, CancellationToken stop)
    {
        await _turn.WaitAsync(stop);
        try
        {
            Lesson[] news = [.. shelf.Lessons.Where(lesson => !_read.Contains(lesson.Module.Hash))];
            if (news.Length > 0)
                await search.AddAsync(news.AsParallel().AsOrdered().Select(Words), stop);
            _read.UnionWith(news.Select(lesson => lesson.Module.Hash));
        }
        finally
        {
            _turn.Release();
        }
    }

    private static SearchedModule Words(Lesson lesson) =>
        new(
            lesson.Module.Hash,
            lesson.Module.Title,
            [.. Passages.Of(lesson).Select(passage => new SearchedPassage(passage.Part, passage.Heading, passage.Words))]
        );
}
