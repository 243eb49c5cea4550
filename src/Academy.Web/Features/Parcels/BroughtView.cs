using Academy.Competence;
using Academy.Modules;
using Academy.Modules.Parcels;
using Academy.Storage;
using Academy.Web.Access;
using Academy.Web.Features.Shared;
using Academy.Web.Library;
using Academy.Web.Wording;
using Severity = Academy.Modules.Severity;

namespace Academy.Web.Features.Parcels;

/// <summary>How a module of a parcel stands to what the salon has.</summary>
public enum BroughtState
{
    /// <summary>The salon does not have it.</summary>
    New,

    /// <summary>The salon has it in other words.</summary>
    Changed,

    /// <summary>The salon has it in these words.</summary>
    Same,

    /// <summary>Somebody is writing it here already.</summary>
    BeingWritten,

    /// <summary>It cannot be taken in as it is.</summary>
    Refused,
}

/// <summary>One module of a parcel.</summary>
/// <param name="Note">What it is, or why it is not taken.</param>
/// <param name="IsOwnDraft">Whether the draft that is there is this very text of this person.</param>
public sealed record BroughtModule(
    ModuleFiles Files,
    string Title,
    BroughtState State,
    string Note,
    bool IsOwnDraft,
    IReadOnlyList<string> Findings
)
{
    public string Name => Files.Name;

    public bool MayBeTaken => State is BroughtState.New or BroughtState.Changed;

    internal static BroughtModule Of(LookedThrough looked, Shelf shelf, Draft? draft, Who who)
    {
        var (files, title, findings) = looked;
        var state = StateOf(looked, shelf, draft);
        return new(
            files,
            title ?? files.Name,
            state,
            BroughtWords.Note(state, findings, draft, who.Names),
            draft is not null && draft.Author == who.Person.Id && draft.Text == files.Text,
            [.. findings.Where(finding => finding.Severity > Severity.Hint).Select(ParcelsView.Words)]
        );
    }

    private static BroughtState StateOf(LookedThrough looked, Shelf shelf, Draft? draft) =>
        looked.Title is null || looked.Findings.Any(IsOfAPicture) ? BroughtState.Refused
        : draft is not null ? BroughtState.BeingWritten
        : shelf.Find(looked.Files.Name) is not { } here ? BroughtState.New
        : IsSame(looked.Files, here) ? BroughtState.Same
        : BroughtState.Changed;

    // A picture that may not be shown is left out of a page, and a module without it is another module.
    private static bool IsOfAPicture(Finding finding) =>
        finding.Severity > Severity.Hint && !finding.File.EndsWith(ModuleFiles.TextFile, StringComparison.Ordinal);

    // The numbers of editions are each salon's own: where only they differ, nothing does.
    private static bool IsSame(ModuleFiles brought, Lesson here)
    {
        var numbered = EditionNumbers.Write(brought.Text, here.Module.Edition, here.Module.SafetyCriticalSince);
        return numbered == here.Text
            && brought.Pictures.Count == here.Pictures.Count
            && here.Pictures.All(picture =>
                brought.Pictures.TryGetValue(picture.Key, out var bytes) && bytes.Span.SequenceEqual(picture.Value.Bytes.Span)
            );
    }
}

/// <summary>What is in a parcel.</summary>
/// <param name="Others">Modules that are not taken, each with why.</param>
public sealed record BroughtView(
    string Heading,
    IReadOnlyList<Pick> ToTake,
    IReadOnlyList<BroughtLine> Others,
    IReadOnlyList<BroughtLine> Faults
)
{
    public static BroughtView Of(IReadOnlyList<BroughtModule> modules) =>
        new(
            $"{Counts.Of(modules.Count, "module")} in the parcel",
            [.. modules.Where(module => module.MayBeTaken).Select(module => new Pick(module.Name, module.Title, module.Note))],
            [.. modules.Where(module => !module.MayBeTaken).Select(BroughtLine.Of)],
            [.. modules.Where(module => module.MayBeTaken && module.Findings.Count > 0).Select(BroughtLine.Of)]
        );
}

/// <summary>A module of a parcel with what was found in it.</summary>
public sealed record BroughtLine(string Title, string Note, IReadOnlyList<string> Findings)
{
    internal static BroughtLine Of(BroughtModule module) =>
        new(module.Title, module.Note, module.State == BroughtState.Same ? [] : module.Findings);
}
