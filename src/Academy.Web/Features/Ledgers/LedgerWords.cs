using System.Diagnostics;
using Academy.Storage.Ledgers;

namespace Academy.Web.Features.Ledgers;

internal static class LedgerWords
{
    /// <summary>The first broken place in words.</summary>
    public static string Broken(LedgerFault fault) => $"The first broken place is entry {fault.Seq}: {What(fault)}.";

    /// <summary>"/groom/notes" as "groom notes", "/whatHappened" as "what happened".</summary>
    public static string Place(string path) => string.Concat(path.TrimStart('/').Select(letter => Spelled(letter)));

    private static string Spelled(char letter) =>
        letter == '/' ? " "
        : char.IsUpper(letter) ? $" {char.ToLowerInvariant(letter)}"
        : letter.ToString();

    private static string What(LedgerFault fault) =>
        fault.Kind switch
        {
            LedgerFaultKind.EntryMissing => "an entry was taken out or moved",
            LedgerFaultKind.ChainBroken => "it does not follow on the one before it",
            LedgerFaultKind.EntryAltered => "its text is not the text that was sealed",
            LedgerFaultKind.ColumnsAltered => "what stands beside its text says something else",
            LedgerFaultKind.WordsAltered => $"its words ({fault.Path}) are not the words that were sealed",
            LedgerFaultKind.WordsMissing => $"its words ({fault.Path}) are gone without being erased",
            LedgerFaultKind.TailMissing => "the end of the ledger is missing",
            _ => throw new UnreachableException(),
        };
}
