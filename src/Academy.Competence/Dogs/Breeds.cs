namespace Academy.Competence.Dogs;

/// <summary>The breeds and crosses that come to a salon. Sources: README.md beside the table.</summary>
public static class Breeds
{
    /// <summary>All of them: breeds by name, then crosses and unknowns.</summary>
    public static IReadOnlyList<Breed> All { get; } = BreedTable.Read();

    /// <summary>The breed of exactly this name, without regard to case, accents and punctuation; null when there is none.</summary>
    public static Breed? Named(string name)
    {
        var asked = SearchText.Folded(name);
        return All.FirstOrDefault(breed => SearchText.Folded(breed.Name) == asked);
    }

    /// <summary>The breeds that this text may mean, the likeliest first.</summary>
    /// <param name="text">Part of a name, or words of it in any order. Case, accents and punctuation do not matter.</param>
    /// <returns>
    /// Names that begin with the text; then those in which a word does; then those that have all its words; then those that
    /// hold it anywhere. Nothing for a text without a letter.
    /// </returns>
    public static IReadOnlyList<Breed> Find(string text)
    {
        var asked = SearchText.Folded(text);
        return asked.Length == 0 ? [] : [.. Ranked(asked)];
    }

    private static IEnumerable<Breed> Ranked(string asked) =>
        from breed in All
        let rank = RankOf(SearchText.Folded(breed.Name), asked)
        where rank is not null
        orderby rank
        select breed;

    private static int? RankOf(string name, string asked) =>
        name.StartsWith(asked, StringComparison.Ordinal) ? 0
        : HasWord(name, asked) ? 1
        : asked.Split(' ').All(word => HasWord(name, word)) ? 2
        : name.Contains(asked, StringComparison.Ordinal) ? 3
        : null;

    private static bool HasWord(string name, string beginning) => $" {name}".Contains($" {beginning}", StringComparison.Ordinal);
}
