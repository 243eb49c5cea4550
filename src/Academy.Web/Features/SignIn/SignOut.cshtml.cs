using Academy.Web.Access;
using Academy.Web.Features.Shared;
using Microsoft.AspNetCore.Authorization;
using Microsoft.AspNetCore.Mvc;

namespace Academy.Web.Features.SignIn;

/// <summary>Ends the session. Opened as a page it only leads on: a link must not sign anybody out.</summary>
[AllowAnonymous, AsksForSalon]
public sealed class SignOutModel : AcademyPage
{
    public IActionResult OnGet() => LocalRedirect("~/");

    public async Task<IActionResult> OnPostAsync()
    {
        await HttpContext.SignOutAsync();
        Response.Headers["Clear-Site-Data"] = "\"cache\"";
        return Done(Paths.SignIn, "You are signed out.");
    }
}
