using Academy.Competence.Quizzes;
using Academy.Modules;
using Academy.Storage;
using Academy.Web.Features.Shared;
using Academy.Web.Library;
using Academy.Web.Wording;
using Paths = Academy.Web.Features.Shared.Paths;

namespace Academy.Web.Features.ModuleEditions;

/// <summary>One edition in the history of a module.</summary>
/// <param name="Compare">Where it stands beside the one before; null for the first.</param>
public sealed record EditionLine(
    string Title,
    string When,
    string By,
    string? Change,
    string? Safety,
    string? Compare,
    bool IsInForce
);

/// <summary>The draft of the next edition.</summary>
public sealed record DraftNotice(string Words, string Compare);

/// <summary>How the library's edition stands to the salon's own.</summary>
/// <param name="HasChanged">Whether it is another one than the one that was known when the own was published.</param>
public sealed record LibraryNotice(string Heading, string Words, string? Compare, string? Take, bool HasChanged);

/// <summary>The editions of a module, newest first.</summary>
public sealed record EditionsView(
    string Title,
    string Heading,
    string Lead,
    string Module,
    string Affected,
    string Pack,
    DraftNotice? Draft,
    LibraryNotice? Library,
    IReadOnlyList<EditionLine> Editions
)
{
    public static EditionsView Of(Lesson lesson, EditionHistory history, Draft? draft, Lesson? librarys, Names names)
    {
        var module = lesson.Module;
        var name = module.Name.Value;
        return new(
            module.Title,
            $"{module.Title}: edition {module.Edition}",
            LeadOf(history),
            Paths.Module(name),
            Paths.ModuleAffected(name),
            Paths.PackModules(name),
            draft is null ? null : NoticeOf(draft, module, names),
            history.InForce is { IsOwn: true } && librarys is not null ? NoticeOf(history, lesson, librarys) : null,
            [.. history.Editions.Index().Reverse().Select(one => LineOf(history, one.Index, names))]
        );
    }

    private static string LeadOf(EditionHistory history) =>
        history.InForce switch
        {
            null => "The salon has not heard of it yet.",
            { IsOwn: true } => $"The salon’s own. {Counts.Of(history.Editions.Count, "edition")} so far.",
            _ => $"It comes with the library. {Counts.Of(history.Editions.Count, "edition")} so far.",
        };

    private static DraftNotice NoticeOf(Draft draft, Module module, Names names) =>
        new(
            draft.AskedAt is null
                ? $"{names.Of(draft.Author)} is writing the next edition, saved {names.Time.Ago(draft.SavedAt)}."
                : $"{names.Of(draft.Author)} asks for a second reader of the next edition, {names.Time.Ago(draft.SavedAt)}.",
            Paths.CompareEditions(draft.Module.Value, module.Hash, Paths.Draft)
        );

    private static LibraryNotice NoticeOf(EditionHistory history, Lesson here, Lesson there)
    {
        var (own, librarys) = (here.Module, there.Module);
        var hasChanged = history.HasLibraryChanged(librarys.Hash);
        if (Shelf.HasWordsOf(there, here))
            return new(
                "The library’s edition",
                $"The salon’s edition has the words of the library’s edition {librarys.Edition}.",
                Compare: null,
                Take: null,
                HasChanged: false
            );
        return new(
            hasChanged ? "The library has changed since" : "The library’s edition",
            hasChanged
                ? $"Its edition {librarys.Edition} is another one than the salon knew. What changed in it does not reach you by itself."
                : "It is the one that was there when the salon wrote its own. You may go back to it.",
            Paths.CompareEditions(own.Name.Value, own.Hash, librarys.Hash),
            Paths.TakeLibrarys(own.Name.Value),
            hasChanged
        );
    }

    private static EditionLine LineOf(EditionHistory history, int place, Names names)
    {
        var edition = history.Editions[place];
        var next = place + 1 < history.Editions.Count ? history.Editions[place + 1] : null;
        var before = place > 0 ? history.Editions[place - 1] : null;
        return new(
            $"Edition {edition.Seen.Edition}",
            EditionWords.When(edition, next, names.Time),
            EditionWords.By(edition, names),
            edition.Published is { Change.IsEmpty: false } own ? own.Change.Text : null,
            EditionWords.Safety(edition, names),
            before is null
                ? null
                : Paths.CompareEditions(history.Module.Value, before.Seen.ContentHash, edition.Seen.ContentHash),
            next is null
        );
    }
}
