using Academy.Competence.Facts;

namespace Academy.Competence.Quizzes;

/// <summary>One edition of a module, as a salon came to study it.</summary>
/// <param name="Seen">The edition and what it asks.</param>
/// <param name="Published">Who wrote it and what changed, where it is the salon's own; null for the library's.</param>
/// <param name="Since">From when on it was studied here.</param>
/// <param name="IsSafetyChange">Whether older passes ran out with it; never true of a salon's first edition.</param>
/// <param name="LibraryHash">
/// The fingerprint of the library's edition that was last studied or taken here, this one included; null where there was none.
/// </param>
public sealed record EditionInForce(
    ModuleEditionSeen Seen,
    ModulePublished? Published,
    DateTimeOffset Since,
    bool IsSafetyChange,
    string? LibraryHash
)
{
    /// <summary>Whether the salon published it itself.</summary>
    public bool IsOwn => Published is not null;
}

/// <summary>The editions of one module in one salon, oldest first; the last one is in force.</summary>
public sealed record EditionHistory(ModuleName Module, Listed<EditionInForce> Editions)
{
    /// <summary>The edition in force; null where the salon has not heard of the module.</summary>
    public EditionInForce? InForce => Editions.IsEmpty ? null : Editions[^1];

    /// <summary>The edition with this fingerprint; null where it was never studied here.</summary>
    public EditionInForce? Find(string hash) => Editions.LastOrDefault(edition => edition.Seen.ContentHash == hash);

    /// <summary>Whether the library has another edition now than the one that was last studied or taken here.</summary>
    /// <remarks>Words of one's own never settle that: only taking the library's edition does.</remarks>
    /// <param name="hash">The fingerprint of the library's edition now; null where it has none.</param>
    public bool HasLibraryChanged(string? hash) => InForce is { IsOwn: true } own && hash is not null && own.LibraryHash != hash;

    /// <summary>The history of a module, from facts in the order of the ledger; those about other things change nothing.</summary>
    public static EditionHistory Of(IEnumerable<Recorded> facts, ModuleName module)
    {
        List<EditionInForce> editions = [];
        ModulePublished? published = null;
        foreach (var told in facts)
            if (told.Fact is ModulePublished one && one.Module == module)
                published = one;
            else if (told.Fact is ModuleEditionSeen seen && seen.Module == module)
                editions.Add(After(editions.LastOrDefault(), seen, published, told.RecordedAt));
        return new(module, editions.ToListed());
    }

    // An edition of one's own is published and seen in one breath, under one fingerprint.
    private static EditionInForce After(
        EditionInForce? before,
        ModuleEditionSeen seen,
        ModulePublished? published,
        DateTimeOffset since
    )
    {
        var own = published?.ContentHash == seen.ContentHash ? published : null;
        return new(
            seen,
            own,
            since,
            before is not null && seen.SafetyCriticalSince > before.Seen.SafetyCriticalSince,
            own is null ? seen.ContentHash : own.LibraryHash ?? before?.LibraryHash
        );
    }
}
