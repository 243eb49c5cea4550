using System.Diagnostics;
using Academy.Competence;
using Academy.Modules;
using Academy.Storage;
using Academy.Web.Wording;
using Severity = Academy.Modules.Severity;

namespace Academy.Web.Features.Parcels;

/// <summary>The sentences about a parcel.</summary>
internal static class BroughtWords
{
    public static string Note(BroughtState state, Listed<Finding> findings, Draft? draft, Names names) =>
        state switch
        {
            BroughtState.New => "new here" + ToPutRight(findings),
            BroughtState.Changed => "in other words than here" + ToPutRight(findings),
            BroughtState.Same => "the same as here",
            BroughtState.BeingWritten =>
                $"{names.Of(draft!.Author)} is writing it here; publish that draft or throw it away first",
            BroughtState.Refused => "refused",
            _ => throw new UnreachableException($"No words for {state}."),
        };

    /// <summary>"Drafts of yours: Heat and Nails."</summary>
    public static string Begun(IReadOnlyList<string> titles) =>
        titles.Count == 1
            ? $"{titles[0]} is a draft of yours now. A second reader looks at it before it is studied."
            : $"{Counts.And(titles)} are drafts of yours now. A second reader looks at each before it is studied.";

    private static string ToPutRight(Listed<Finding> findings) =>
        findings.Count(finding => finding.Severity > Severity.Hint) is > 0 and var faults
            ? $", {Counts.Of(faults, "thing")} to put right"
            : "";
}
