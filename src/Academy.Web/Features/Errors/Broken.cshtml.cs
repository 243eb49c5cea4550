using Academy.Web.Features.Shared;
using Academy.Web.Shell;
using Microsoft.AspNetCore.Authorization;
using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;

namespace Academy.Web.Features.Errors;

/// <summary>Our mistake: a page with a number to quote. It needs nothing that may be broken too.</summary>
[AllowAnonymous, IgnoreAntiforgeryToken, NoFrame]
[ResponseCache(NoStore = true, Location = ResponseCacheLocation.None)]
public sealed class BrokenModel : PageModel
{
    public string Number => FailureNumber.Of(HttpContext);

    public void OnGet() { }

    public void OnPost() { }
}
