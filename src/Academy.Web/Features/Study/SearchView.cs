using Academy.Storage;
using Academy.Web.Features.Shared;
using Academy.Web.Library;
using Academy.Web.Wording;

namespace Academy.Web.Features.Study;

/// <summary>A run of words, marked where it is what was looked for.</summary>
public sealed record MarkedWords(string Words, bool IsMarked);

/// <summary>A place in a lesson where the words stand.</summary>
/// <param name="Heading">The heading under which they stand; none at the beginning of the lesson.</param>
public sealed record FoundPlace(string Href, IReadOnlyList<MarkedWords> Heading, IReadOnlyList<MarkedWords> Excerpt);

/// <summary>A module in which the words stand.</summary>
public sealed record FoundModule(string Href, IReadOnlyList<MarkedWords> Title, IReadOnlyList<FoundPlace> Places);

/// <summary>What was found in the modules.</summary>
/// <param name="Empty">What to do where nothing was.</param>
public sealed record SearchView(string Heading, IReadOnlyList<FoundModule> Modules, string? Empty)
{
    public static SearchView Of(string? typed, Shelf shelf, IReadOnlyList<FoundPassage> found)
    {
        var names = shelf.Modules.ToLookup(module => module.Hash, module => module.Name.Value, StringComparer.Ordinal);
        var modules = found
            .GroupBy(passage => passage.ContentHash, StringComparer.Ordinal)
            .Select(module => ModuleOf(Paths.Module(names[module.Key].First()), [.. module]))
            .ToList();
        var isAsked = !string.IsNullOrWhiteSpace(typed);
        return new(
            modules.Count switch
            {
                _ when !isAsked => "Look for words in the modules",
                0 => "Nothing found",
                var count => $"Found in {Counts.Of(count, "module")}",
            },
            modules,
            modules.Count > 0 || !isAsked
                ? null
                : "No module has all of these words. Try fewer of them, or another word for the same thing."
        );
    }

    private static FoundModule ModuleOf(string href, IReadOnlyList<FoundPassage> passages) =>
        new(href, Marked(passages[0].Title), [.. passages.Select(passage => PlaceOf(href, passage))]);

    private static FoundPlace PlaceOf(string href, FoundPassage passage) =>
        new(passage.Part.Length == 0 ? href : $"{href}#{passage.Part}", Marked(passage.Heading), Marked(passage.Excerpt));

    private static IReadOnlyList<MarkedWords> Marked(IReadOnlyList<FoundWords> words) =>
        [.. words.Select(run => new MarkedWords(run.Words, run.IsMatch))];
}
