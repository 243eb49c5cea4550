namespace Academy.Storage.Ledgers;

/// <summary>Which words of the ledger may be erased.</summary>
public static class Erasing
{
    private const string Name = "/name";

    /// <summary>
    /// Everything that somebody wrote freely. Not the names by which people, dogs and the salon are found: they are described
    /// anew, and what they were called before stays with the facts of that time.
    /// </summary>
    /// <param name="kind">The code of the fact.</param>
    /// <param name="path">Where in it the words stand.</param>
    public static bool MayBeErased(string kind, string path) => !RecordBook.IsOfTheBook(kind) && path != Name;
}
