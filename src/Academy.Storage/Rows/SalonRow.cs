using Academy.Storage.Ledgers;

namespace Academy.Storage.Rows;

/// <summary>One salon: how many facts it has kept, which is its version, and the hash at the end of its chain.</summary>
public sealed class SalonRow
{
    public Guid Id { get; init; }

    /// <summary>Raised by every fact; also the number the next ledger entry gets.</summary>
    public long Version { get; set; }

    /// <summary>The salon's version after the newest fact about its book: people, skills, thresholds, house rules, editions.</summary>
    public long BookVersion { get; set; }

    public byte[] Head { get; set; } = Chain.Genesis;
}
