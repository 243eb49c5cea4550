using Academy.Modules;
using Academy.Web.Access;
using Academy.Web.Features.Shared;
using Academy.Web.Library;
using Microsoft.AspNetCore.Authorization;
using Microsoft.AspNetCore.Mvc;

namespace Academy.Web.Features.Quizzes;

/// <summary>A quiz whose module has changed under it: begin again, nothing counts against anybody.</summary>
[Authorize(Policy = Policies.Junior)]
public sealed class ChangedModel(QuizTableQueries table, Shelf library) : AcademyPage
{
    /// <summary>The title of the module; null where it is not here any more.</summary>
    public string? Module { get; private set; }

    /// <summary>Where to begin again, or what else to study.</summary>
    public string Href { get; private set; } = Paths.Study;

    public async Task<IActionResult> OnGetAsync(string module, Guid attempt, CancellationToken stop)
    {
        var found = await table.FindAsync(module, attempt, stop);
        if (found is not AtTheTable.Changed)
            return found.Leads is { } path ? LocalRedirect(path) : NotFound();

        Module = library.Find(module)?.Module.Title;
        Href = Module is null ? Paths.Study : Paths.Module(module);
        return Page();
    }
}
