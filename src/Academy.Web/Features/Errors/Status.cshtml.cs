using Microsoft.AspNetCore.Authorization;
using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;

namespace Academy.Web.Features.Errors;

/// <summary>What stands in place of a page that could not be shown. A refused form is run again here, so it asks for no token.</summary>
[AllowAnonymous, IgnoreAntiforgeryToken]
public sealed class StatusModel : PageModel
{
    [BindProperty(SupportsGet = true, Name = "code")]
    public int Code { get; set; }

    public (string Heading, string Then) Words =>
        Code switch
        {
            StatusCodes.Status400BadRequest => (
                "This form could not be read",
                "It may have stood open too long, or you signed in again in between. Go back, load the page anew and send it once more."
            ),
            StatusCodes.Status401Unauthorized => ("Sign in first", "This page is for people of the salon."),
            StatusCodes.Status403Forbidden => (
                "This page is not yours to open",
                "It belongs to another role. Ask the owner if you need it. What you may groom is on the board."
            ),
            StatusCodes.Status404NotFound => (
                "There is no such page here",
                "It may have moved, or it is not in your salon. Nothing was changed."
            ),
            StatusCodes.Status405MethodNotAllowed => (
                "This address takes no such thing",
                "Go back and use the buttons of the page."
            ),
            StatusCodes.Status409Conflict => (
                "Someone wrote in between",
                "Go back and look at what is there now. What you sent was not kept."
            ),
            StatusCodes.Status413PayloadTooLarge => ("This file is too large", "Send a smaller one. Nothing was kept."),
            StatusCodes.Status429TooManyRequests => ("Too many tries", "Wait a minute, then try once more."),
            >= 500 => ("The portal is not well", "Nothing was kept. Try once more in a minute."),
            _ => ("This could not be shown", "Nothing was changed."),
        };

    public void OnGet() { }

    public void OnPost() { }
}
