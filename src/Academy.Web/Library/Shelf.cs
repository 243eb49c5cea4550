using System.Collections.Concurrent;
using System.Collections.Immutable;
using Academy.Competence;
using Academy.Competence.Quizzes;
using Academy.Competence.Salons;
using Academy.Modules;
using Academy.Modules.Parcels;
using Academy.Modules.Pictures;
using Academy.Storage;
using Academy.Web.Access;

namespace Academy.Web.Library;

/// <summary>The modules as one salon studies them: those of the library, and the salon's own editions in their place.</summary>
public sealed class Shelf
{
    private readonly ModuleLibrary _library;
    private readonly ImmutableDictionary<string, Lesson> _lessons;

    public Shelf(ModuleLibrary library, IEnumerable<Lesson> own, IEnumerable<ModuleName> unread)
    {
        _library = library;
        Own = own.ToImmutableDictionary(lesson => lesson.Module.Name.Value, StringComparer.Ordinal);
        Unread = [.. unread];
        _lessons = library
            .Lessons.ToImmutableDictionary(lesson => lesson.Module.Name.Value, StringComparer.Ordinal)
            .SetItems(Own);
        Lessons = [.. _lessons.Values.OrderBy(lesson => lesson.Module.Name.Value, StringComparer.Ordinal)];
        Modules = [.. Lessons.Select(lesson => lesson.Module)];
        Titles = Modules.ToDictionary(module => module.Name, module => module.Title);
    }

    /// <summary>The modules that can be studied, by name.</summary>
    public Listed<Module> Modules { get; }

    /// <summary>The same modules with their pages and pictures.</summary>
    public Listed<Lesson> Lessons { get; }

    /// <summary>What they are called.</summary>
    public IReadOnlyDictionary<ModuleName, string> Titles { get; }

    /// <summary>The salon's own editions, by name.</summary>
    public ImmutableDictionary<string, Lesson> Own { get; }

    /// <summary>Own editions that cannot be read any more: the library's stand in their place.</summary>
    public Listed<ModuleName> Unread { get; }

    /// <summary>What was found in the files of the library.</summary>
    public Listed<Finding> Findings => _library.Findings;

    /// <summary>The lesson of that name, or null.</summary>
    public Lesson? Find(string name) => _lessons.GetValueOrDefault(name);

    /// <summary>The library's lesson of that name, whether the salon has one of its own or not; null where it has none.</summary>
    public Lesson? FindInLibrary(string name) => _library.Find(name);

    /// <summary>The fingerprint of the library's edition whose words this lesson has; null where they are its own.</summary>
    public string? LibrarysIn(Lesson lesson) =>
        FindInLibrary(lesson.Module.Name.Value) is { } librarys && HasWordsOf(librarys, lesson) ? librarys.Module.Hash : null;

    /// <summary>Whether two lessons differ in nothing but the numbers of their editions, which are each shelf's own.</summary>
    public static bool HasWordsOf(Lesson one, Lesson other) =>
        EditionNumbers.Write(one.Text, other.Module.Edition, other.Module.SafetyCriticalSince) == other.Text
        && one.Pictures.Count == other.Pictures.Count
        && one.Pictures.Values.All(picture =>
            other.Pictures.TryGetValue(picture.File, out var same) && same.Bytes.Span.SequenceEqual(picture.Bytes.Span)
        );

    /// <summary>A picture that the lesson of that name shows, or null.</summary>
    public Picture? FindPicture(string name, string file) => Find(name)?.Pictures.GetValueOrDefault(file);
}

/// <summary>Puts the shelves up: one for each set of own editions, made once.</summary>
public sealed class Shelves(ModuleLibrary library, OldEditions old, ILogger<Shelves> log)
{
    private readonly ConcurrentDictionary<string, Shelf> _made = new(StringComparer.Ordinal);

    /// <summary>The modules of the library and no salon's own.</summary>
    public Shelf OfLibrary { get; } = new(library, [], []);

    public async ValueTask<Shelf> OfAsync(SalonBook book, EditionBook kept, CancellationToken stop)
    {
        if (book.OwnModules.IsEmpty)
            return OfLibrary;
        var key = string.Join(' ', book.OwnModules.Select(own => own.ContentHash));
        return _made.TryGetValue(key, out var made) ? made : _made.GetOrAdd(key, await MakeAsync(book, kept, stop));
    }

    private async Task<Shelf> MakeAsync(SalonBook book, EditionBook kept, CancellationToken stop)
    {
        List<Lesson> own = [];
        List<ModuleName> unread = [];
        foreach (var module in book.OwnModules)
            if (await ReadAsync(module, kept, stop) is { } lesson)
                own.Add(lesson);
            else
                unread.Add(module.Module);
        foreach (var module in unread)
            log.LogError("The salon's own edition of {Module} cannot be read any more; the library's is served", module.Value);
        return new(library, own, unread);
    }

    private async Task<Lesson?> ReadAsync(OwnModule own, EditionBook kept, CancellationToken stop) =>
        old.Find(own.ContentHash)
        ?? (
            await kept.TextAsync(own.Module, own.ContentHash, stop) is { } text
            && KeptEdition.Read(own.Module, own.ContentHash, text) is { } lesson
                ? old.Keep(own.ContentHash, lesson)
                : null
        );
}

/// <summary>The shelf of the salon that a request is for; the library's alone while nobody is signed in.</summary>
public sealed class ShelfHere(Shelves shelves)
{
    public Shelf Shelf { get; private set; } = shelves.OfLibrary;

    internal void PutUp(Shelf shelf) => Shelf = shelf;
}

/// <summary>Puts the salon's shelf up for the request, after it is known who comes.</summary>
internal sealed class PutsShelfUp(RequestDelegate next)
{
    public async Task InvokeAsync(HttpContext http, Who who, Shelves shelves, ShelfHere here, EditionBook kept)
    {
        if (who.IsHere)
            here.PutUp(await shelves.OfAsync(who.Book, kept, http.RequestAborted));
        await next(http);
    }
}
