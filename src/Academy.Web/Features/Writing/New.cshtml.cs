using System.ComponentModel.DataAnnotations;
using Academy.Competence;
using Academy.Modules.Parcels;
using Academy.Storage;
using Academy.Web.Access;
using Academy.Web.Features.Shared;
using Academy.Web.Library;
using Microsoft.AspNetCore.Authorization;
using Microsoft.AspNetCore.Mvc;

namespace Academy.Web.Features.Writing;

/// <summary>A new module is begun with a text that explains the form by example.</summary>
[Authorize(Policy = Policies.Writer)]
public sealed class NewModel(Who who, DraftBook drafts, DraftQueries desk, Shelf shelf, TimeProvider clock) : AcademyPage
{
    [
        BindProperty,
        Required(ErrorMessage = "Title: write what it is called"),
        StringLength(100, ErrorMessage = "Title: at most 100 letters")
    ]
    public string? Title { get; set; }

    [BindProperty]
    public string? Name { get; set; }

    public void OnGet() { }

    public async Task<IActionResult> OnPostAsync(CancellationToken stop)
    {
        var title = Title?.Trim() ?? "";
        var name = Name?.Trim() is { Length: > 0 } chosen ? chosen : StartingText.NameFrom(title);
        if (ModelState.IsValid && Wrong(name) is { } wrong)
            ModelState.AddModelError(nameof(Name), wrong);
        if (!ModelState.IsValid)
            return Again();

        var text = StartingText.For(name, title, who.Today);
        var draft = DraftStart.Of(new(name), text, who.Person.Id, clock.GetUtcNow());
        if (await drafts.BeginAsync(who.Salon, draft, desk.PicturesOnShelf(draft.Module)) || await IsTheSameAsync(draft, stop))
            return LocalRedirect(Paths.Write(name));

        ModelState.AddModelError(nameof(Name), $"Name: somebody is writing a module called {name} already. Choose another name");
        return Again();
    }

    private string? Wrong(string name) =>
        StartingText.IsName(name) is (false, var how) ? $"Name: write {how}"
        : shelf.Find(name) is not null ? $"Name: a module is called {name} already. Choose another name, or change that one"
        : null;

    private async Task<bool> IsTheSameAsync(Draft draft, CancellationToken stop) =>
        await desk.FindAsync(draft.Module.Value, stop) is { } there && there.Author == draft.Author && there.Text == draft.Text;
}
