using Academy.Storage;
using Academy.Web.Access;
using Academy.Web.Features.Shared;
using Academy.Web.Library;
using Academy.Web.Wording;
using Microsoft.AspNetCore.Authorization;
using Microsoft.AspNetCore.Mvc;

namespace Academy.Web.Features.ModuleEditions;

/// <summary>Everybody whose clearances rest on a module: where they stand in it, what they have to do and by when.</summary>
[Authorize(Policy = Policies.Writer)]
public sealed class AffectedModel(
    Who who,
    RecordBook records,
    EditionQueries editions,
    Shelf shelf,
    Titles titles,
    TimeProvider clock
) : AcademyPage
{
    public AffectedView View { get; private set; } = null!;

    public async Task<IActionResult> OnGetAsync(string module, CancellationToken stop)
    {
        if (shelf.Find(module) is not { } lesson)
            return NotFound();

        var now = clock.GetUtcNow();
        var team = await records.TeamAsync(who.Salon, now, stop);
        var history = await editions.HistoryAsync(module, stop);
        View = AffectedView.Of(lesson.Module, history, team, who.Book, Names.Of(who.Book, now, titles.All));
        return Page();
    }
}
