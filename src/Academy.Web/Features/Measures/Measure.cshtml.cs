using Academy.Web.Access;
using Academy.Web.Features.Shared;
using Microsoft.AspNetCore.Authorization;
using Microsoft.AspNetCore.Mvc;

namespace Academy.Web.Features.Measures;

/// <summary>One quiz: how far it tells the same each time, and each of its questions.</summary>
[Authorize(Policy = Policies.Owner)]
public sealed class MeasureModel(MeasureQueries measures) : AcademyPage
{
    public MeasureView View { get; private set; } = null!;

    public async Task<IActionResult> OnGetAsync(string module, CancellationToken stop)
    {
        if (await measures.OfAsync(module, stop) is not { } measured)
            return NotFound();
        View = MeasureView.Of(measured);
        return Page();
    }
}
