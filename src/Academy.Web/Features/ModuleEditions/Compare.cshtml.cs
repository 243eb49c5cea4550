using Academy.Modules.Comparing;
using Academy.Modules.Parcels;
using Academy.Web.Access;
using Academy.Web.Features.Shared;
using Academy.Web.Library;
using Academy.Web.Wording;
using Microsoft.AspNetCore.Authorization;
using Microsoft.AspNetCore.Mvc;

namespace Academy.Web.Features.ModuleEditions;

/// <summary>Two editions of a module side by side, or the draft beside the edition in force.</summary>
[Authorize(Policy = Policies.Writer)]
public sealed class CompareModel(Who who, EditionQueries editions, Shelf shelf, Titles titles, TimeProvider clock) : AcademyPage
{
    [FromQuery]
    public string? From { get; set; }

    [FromQuery]
    public string? To { get; set; }

    public CompareView View { get; private set; } = null!;

    public async Task<IActionResult> OnGetAsync(string module, CancellationToken stop)
    {
        if (shelf.Find(module) is not { } lesson)
            return NotFound();

        var history = await editions.HistoryAsync(module, stop);
        var before = From is null ? null : await editions.FilesAsync(history, From, stop);
        var after =
            To == Paths.Draft ? await editions.DraftFilesAsync(module, stop)
            : To is null ? null
            : await editions.FilesAsync(history, To, stop);
        if (before is null || after is null)
            return NotFound();

        var sides = new Sides(lesson.Module, history, From!, To!, Findings(after));
        var names = Names.Of(who.Book, clock.GetUtcNow(), titles.All);
        View = CompareView.Of(sides, EditionComparison.Of(before, after), names);
        return Page();
    }

    // A draft is looked through as it will be when it is published; what was published was.
    private int Findings(ModuleFiles after) => To == Paths.Draft ? after.Read().Findings.Count : 0;
}
