using System.Collections.Concurrent;
using Academy.Competence;
using Academy.Modules;
using Academy.Storage;

namespace Academy.Web.Library;

/// <summary>The edition that somebody saw: from the shelf while it is the newest, otherwise from what was kept of it.</summary>
public sealed class Editions(Shelf library, EditionBook kept, OldEditions old)
{
    /// <summary>Null where neither the shelf nor the book has that edition.</summary>
    public async ValueTask<Lesson?> FindAsync(ModuleName module, string hash, CancellationToken stop) =>
        library.Find(module.Value) is { } newest && newest.Module.Hash == hash ? newest
        : library.FindInLibrary(module.Value) is { } librarys && librarys.Module.Hash == hash ? librarys
        : old.Find(hash) ?? await ReadAsync(module, hash, stop);

    private async Task<Lesson?> ReadAsync(ModuleName module, string hash, CancellationToken stop) =>
        await kept.TextAsync(module, hash, stop) is { } text && KeptEdition.Read(module, hash, text) is { } lesson
            ? old.Keep(hash, lesson)
            : null;
}

/// <summary>Old editions that were asked for since the portal started; reading one takes a while, and there are few.</summary>
public sealed class OldEditions
{
    private readonly ConcurrentDictionary<string, Lesson> _read = new(StringComparer.Ordinal);

    public Lesson? Find(string hash) => _read.GetValueOrDefault(hash);

    public Lesson Keep(string hash, Lesson lesson) => _read.GetOrAdd(hash, lesson);
}
