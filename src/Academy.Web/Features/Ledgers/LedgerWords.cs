using System.Diagnostics;
using Academy.Storage.Ledgers;
using Academy.Storage.Projections;
using Academy.Web.Wording;

namespace Academy.Web.Features.Ledgers;

internal static class LedgerWords
{
    /// <summary>The first broken place in words.</summary>
    public static string Broken(LedgerFault fault) => $"The first broken place is entry {fault.Seq}: {What(fault)}.";

    /// <summary>What the last night's check found.</summary>
    public static string Night(NightFound found, Names names)
    {
        var when = names.Time.At(found.At);
        return found switch
        {
            { Holds: true } =>
                $"Checked {when}: {Counts.Of(found.Standings.Paths, "standing")} folded again from {Counts.Of((int)found.Ledger.Entries, "entry", "entries")} came to what is kept, and the chain holds.",
            { Ledger.First: { } fault } => $"Checked {when}: the ledger does not hold. {Broken(fault)}",
            { Standings.First: { } fault } =>
                $"Checked {when}: {names.Of(fault.Person)}, {names.Of(fault.Skill)}: {What(fault.Kind)}. Do not rest a decision on it; whoever looks after the portal runs check-standings.",
            _ => throw new UnreachableException(),
        };
    }

    /// <summary>"/groom/notes" as "groom notes", "/whatHappened" as "what happened".</summary>
    public static string Place(string path) => string.Concat(path.TrimStart('/').Select(letter => Spelled(letter)));

    private static string Spelled(char letter) =>
        letter == '/' ? " "
        : char.IsUpper(letter) ? $" {char.ToLowerInvariant(letter)}"
        : letter.ToString();

    private static string What(StandingFaultKind kind) =>
        kind switch
        {
            StandingFaultKind.StepsDiffer => "the grooms kept are not those that the ledger tells",
            StandingFaultKind.TallyMissing => "what its grooms come to is missing",
            StandingFaultKind.TallyDiffers => "what is kept is not what its grooms come to",
            _ => throw new UnreachableException(),
        };

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
