namespace Academy.Storage;

/// <summary>A piece of a module, to be searched.</summary>
/// <param name="Part">Where it begins on the page; empty for the beginning.</param>
public sealed record SearchedPassage(string Part, string Heading, string Words);

/// <summary>The words of one edition, to be searched. What is not to be found is not in it: no question and no answer.</summary>
public sealed record SearchedModule(string ContentHash, string Title, IReadOnlyList<SearchedPassage> Passages);

/// <summary>A run of words of what was found, and whether it is what was looked for.</summary>
public sealed record FoundWords(string Words, bool IsMatch);

/// <summary>A piece of a module in which the words were found.</summary>
public sealed record FoundPassage(
    string ContentHash,
    string Part,
    IReadOnlyList<FoundWords> Title,
    IReadOnlyList<FoundWords> Heading,
    IReadOnlyList<FoundWords> Excerpt
);

/// <summary>
/// Finds words in editions of modules, whichever accents and endings they are typed with. It knows texts by their fingerprints and
/// nothing of salons: whoever asks names the editions that may be found.
/// </summary>
public interface IModuleSearch
{
    /// <summary>Adds editions; one that is there already is not added again.</summary>
    Task AddAsync(IEnumerable<SearchedModule> modules, CancellationToken stop);

    /// <summary>The passages in which all of the words stand, the best first, at most two of a module.</summary>
    /// <param name="words">As <see cref="SearchWords.Of"/> gives them; the last may be the beginning of a word.</param>
    /// <param name="hashes">The editions that may be found.</param>
    /// <param name="most">How many modules at most.</param>
    /// <param name="stop">Stops it.</param>
    Task<IReadOnlyList<FoundPassage>> FindAsync(
        IReadOnlyList<string> words,
        IReadOnlyCollection<string> hashes,
        int most,
        CancellationToken stop
    );
}

/// <summary>What somebody typed to search for, as words and nothing else: no sign in it means anything to a database.</summary>
public static class SearchWords
{
    private const int Most = 8;
    private const int LongestTyped = 200;

    public static IReadOnlyList<string> Of(string? typed)
    {
        var letters = (typed ?? "").Take(LongestTyped).Select(letter => char.IsLetterOrDigit(letter) ? letter : ' ');
        return
        [
            .. string.Concat(letters)
                .Split(' ', StringSplitOptions.RemoveEmptyEntries)
                .Distinct(StringComparer.OrdinalIgnoreCase)
                .Take(Most),
        ];
    }
}
