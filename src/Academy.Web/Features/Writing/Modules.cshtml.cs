using Academy.Competence;
using Academy.Competence.Quizzes;
using Academy.Modules.Parcels;
using Academy.Storage;
using Academy.Web.Access;
using Academy.Web.Features.Shared;
using Academy.Web.Library;
using Academy.Web.Wording;
using Microsoft.AspNetCore.Authorization;
using Microsoft.AspNetCore.Mvc;

namespace Academy.Web.Features.Writing;

/// <summary>What is being written, and what can be changed.</summary>
[Authorize(Policy = Policies.Writer)]
public sealed class ModulesModel(Who who, DraftBook drafts, DraftQueries desk, Shelf shelf, TimeProvider clock) : AcademyPage
{
    public ModulesView View { get; private set; } = null!;

    public async Task OnGetAsync(CancellationToken stop) =>
        View = ModulesView.Of(
            await drafts.AllAsync(who.Salon, stop),
            shelf,
            who.Person.Id,
            Names.Of(who.Book, clock.GetUtcNow(), shelf.Titles)
        );

    /// <summary>Begins to change a module as it is now; where somebody has begun already, it is gone on with.</summary>
    public async Task<IActionResult> OnPostChangeAsync(string module)
    {
        if (shelf.Find(module) is not { } lesson)
            return NotFound();

        var name = lesson.Module.Name;
        var draft = DraftStart.Of(name, lesson.Text, who.Person.Id, clock.GetUtcNow()).Numbered(who.Book, isSafety: false);
        return await drafts.BeginAsync(who.Salon, draft, desk.PicturesOnShelf(name))
            ? LocalRedirect(Paths.Write(module))
            : Done(Paths.Write(module), "It is being written already: go on here.");
    }
}

/// <summary>How drafts begin, and which edition they become.</summary>
internal static class DraftStart
{
    /// <summary>A draft that was never saved.</summary>
    public static Draft Of(ModuleName module, string text, PersonId author, DateTimeOffset now) =>
        new(module, text, author, now, AskedAt: null, Change: "", CatchUpBy: null, Returned: null, Version: 0);

    /// <summary>The draft with the number of the edition that it becomes next, which may be a safety change.</summary>
    public static Draft Numbered(this Draft draft, Competence.Salons.SalonBook book, bool isSafety)
    {
        var next = Publishing.NextEdition(book, draft.Module);
        var asked = book.Library.FirstOrDefault(one => one.Module == draft.Module);
        return draft with
        {
            Text = EditionNumbers.Write(draft.Text, next, isSafety || asked is null ? next : asked.SafetyCriticalSince),
        };
    }
}
