using Academy.Competence;
using Academy.Competence.Quizzes;
using Academy.Competence.Salons;
using Academy.Storage;
using Academy.Web.Access;
using Academy.Web.Library;
using Academy.Web.Wording;
using Paths = Academy.Web.Features.Shared.Paths;

namespace Academy.Web.Features.Writing;

/// <summary>A draft to be read over.</summary>
/// <param name="Lead">"Edition 3, written by Rosa, saved 5 minutes ago".</param>
/// <param name="Waits">What it waits for, where whoever looks has nothing to do; null where she publishes or gives back.</param>
/// <param name="Change">What changed, in the author's words; null for a first edition.</param>
/// <param name="InForce">The lesson as it is studied now; null for a first edition.</param>
/// <param name="Compare">That lesson and the draft side by side.</param>
public sealed record ReadOverView(
    string Title,
    string Lead,
    string? Waits,
    bool MayTakeBack,
    bool MayGiveBack,
    bool IsFirst,
    string? Change,
    string? InForce,
    string? Compare,
    string Author,
    ShownView Shown
)
{
    internal static ReadOverView Of(DraftRead read, string title, Shelf shelf, Who who, Names names, PathString mounted)
    {
        var draft = read.Draft;
        var now = shelf.Find(draft.Module.Value);
        var isMine = draft.Author == who.Person.Id;
        var could = Publishing.CouldReview(who.Book, draft.Author, who.Today).ToListed();
        var next = Publishing.NextEdition(who.Book, draft.Module);
        return new(
            title,
            $"Edition {next}, written by {names.Of(draft.Author)}, saved {names.Time.Ago(draft.SavedAt)}.",
            draft.AskedAt is null ? $"{names.Of(draft.Author)} is still writing it."
                : isMine && !could.IsEmpty ? $"It waits to be read by {DraftWords.Readers(could)}."
                : null,
            draft.AskedAt is not null && isMine,
            !isMine,
            next == 1,
            draft.Change.Length == 0 ? null : draft.Change,
            now is null ? null : Paths.Module(draft.Module.Value),
            now is null ? null : Paths.CompareEditions(draft.Module.Value, now.Module.Hash, Paths.Draft),
            names.Of(draft.Author),
            ShownView.Of(read, mounted)
        );
    }

    internal static string Published(SalonBook book, string module) =>
        book.Skills.Any(skill => !skill.IsRetired && skill.Modules.Any(asked => asked.Value == module))
            ? "It is published, and studied from now on."
            : "It is published. No skill asks for it yet: the owner adds it to a skill, under Thresholds and Skills.";

    internal static string MovedOn(Draft there, long seen, Names names) =>
        there.Version == seen
            ? "Something of it, or of the salon, changed while you read. Below is what is there now: read it over again"
            : $"{names.Of(there.Author)} saved it {names.Time.Ago(there.SavedAt)}, while you read. Below is what is there now: read it over again";
}
