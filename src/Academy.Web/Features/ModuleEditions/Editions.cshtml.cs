using Academy.Web.Access;
using Academy.Web.Features.Shared;
using Academy.Web.Library;
using Academy.Web.Wording;
using Microsoft.AspNetCore.Authorization;
using Microsoft.AspNetCore.Mvc;

namespace Academy.Web.Features.ModuleEditions;

/// <summary>The editions of a module in this salon: when, by whom, and what changed.</summary>
[Authorize(Policy = Policies.Writer)]
public sealed class EditionsModel(Who who, EditionQueries editions, Shelf shelf, Titles titles, TimeProvider clock) : AcademyPage
{
    public EditionsView View { get; private set; } = null!;

    public async Task<IActionResult> OnGetAsync(string module, CancellationToken stop)
    {
        if (shelf.Find(module) is not { } lesson)
            return NotFound();

        var history = await editions.HistoryAsync(module, stop);
        var draft = await editions.DraftAsync(module, stop);
        var names = Names.Of(who.Book, clock.GetUtcNow(), titles.All);
        View = EditionsView.Of(lesson, history, draft, shelf.FindInLibrary(module), names);
        return Page();
    }
}
