namespace Academy.Storage.Rows;

/// <summary>
/// Words that a person typed, kept beside the ledger entry that holds only their seal. Text and key may be erased together;
/// they may never be changed.
/// </summary>
public sealed class WordsRow
{
    public Guid SalonId { get; init; }

    public Guid FactId { get; init; }

    /// <summary>Where in the fact the words stand.</summary>
    public required string Path { get; init; }

    public string? Text { get; set; }

    public byte[]? Key { get; set; }
}
