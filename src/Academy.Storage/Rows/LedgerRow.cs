namespace Academy.Storage.Rows;

/// <summary>
/// One fact as it was kept. The canonical text is what was hashed and is never written again; the columns beside it only
/// help to find it.
/// </summary>
public sealed class LedgerRow
{
    public Guid SalonId { get; init; }

    /// <summary>0, 1, 2 ... without a gap within one salon.</summary>
    public long Seq { get; init; }

    public Guid FactId { get; init; }

    public required string Kind { get; init; }

    /// <summary>The groom, dog or person that the fact is about, where it is about one.</summary>
    public Guid? Subject { get; init; }

    public DateTimeOffset At { get; init; }

    public DateTimeOffset RecordedAt { get; init; }

    public required string Actor { get; init; }

    public string? Device { get; init; }

    public required string Canonical { get; init; }

    public required byte[] PrevHash { get; init; }

    public required byte[] Hash { get; init; }
}
