using Academy.Web.Access;
using Academy.Web.Features.Shared;
using Microsoft.AspNetCore.Authorization;
using Microsoft.AspNetCore.Mvc;

namespace Academy.Web.Features.Measures;

/// <summary>One question as its answers show it, choice by choice.</summary>
[Authorize(Policy = Policies.Owner)]
public sealed class QuestionModel(MeasureQueries measures) : AcademyPage
{
    public QuestionView View { get; private set; } = null!;

    public async Task<IActionResult> OnGetAsync(string module, string question, CancellationToken stop)
    {
        if (
            await measures.OfAsync(module, stop) is not { } measured
            || QuestionView.Of(measured, question, Request.PathBase) is not { } view
        )
            return NotFound();
        View = view;
        return Page();
    }
}
