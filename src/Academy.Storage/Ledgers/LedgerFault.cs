namespace Academy.Storage.Ledgers;

public enum LedgerFaultKind
{
    /// <summary>The number after the last one is not there: an entry was taken out, or moved.</summary>
    EntryMissing,

    /// <summary>The entry does not say the hash of the one before it.</summary>
    ChainBroken,

    /// <summary>The entry's text is not the text that was hashed.</summary>
    EntryAltered,

    /// <summary>The columns beside the text say something else than the text.</summary>
    ColumnsAltered,

    /// <summary>Words are not the words that were sealed.</summary>
    WordsAltered,

    /// <summary>Words have no row at all; erased words keep theirs.</summary>
    WordsMissing,

    /// <summary>The salon knows of more entries, or of another end of the chain, than the ledger has.</summary>
    TailMissing,
}

/// <summary>The first thing wrong with a salon's ledger.</summary>
public sealed record LedgerFault(long Seq, LedgerFaultKind Kind, string Path = "");

/// <summary>What came of checking one salon's ledger from its first entry to its last.</summary>
public sealed record LedgerChecked(Guid Salon, long Entries, long Words, long Erased, LedgerFault? First)
{
    public bool Holds => First is null;
}
