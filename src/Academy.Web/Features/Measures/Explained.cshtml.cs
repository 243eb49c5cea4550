using Academy.Web.Access;
using Academy.Web.Features.Shared;
using Microsoft.AspNetCore.Authorization;
using Microsoft.AspNetCore.Mvc;

namespace Academy.Web.Features.Measures;

/// <summary>What each number means, reckoned step by step with the answers of one quiz.</summary>
[Authorize(Policy = Policies.Owner)]
public sealed class ExplainedModel(MeasureQueries measures) : AcademyPage
{
    public ExplainedView View { get; private set; } = null!;

    public async Task<IActionResult> OnGetAsync(string module, CancellationToken stop)
    {
        if (await measures.OfAsync(module, stop) is not { } measured)
            return NotFound();
        View = ExplainedView.Of(measured);
        return Page();
    }
}
