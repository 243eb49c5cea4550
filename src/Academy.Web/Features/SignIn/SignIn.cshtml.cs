using System.ComponentModel.DataAnnotations;
using System.Globalization;
using Academy.Competence;
using Academy.Web.Access;
using Academy.Web.Features.Shared;
using Microsoft.AspNetCore.Authorization;
using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;

namespace Academy.Web.Features.SignIn;

/// <summary>The cover: a name and a password, or in the demo a step into the invented salon.</summary>
[AllowAnonymous, AsksForSalon]
public sealed class SignInModel(Door door, Accounts accounts, Who who, DemoDoor demo, SignInQueries queries) : AcademyPage
{
    [BindProperty(SupportsGet = true, Name = "back")]
    public string? Back { get; set; }

    [
        BindProperty,
        Required(ErrorMessage = "Name: write the name that you sign in with"),
        StringLength(SignInNames.Longest, ErrorMessage = "Name: write the name that you sign in with")
    ]
    public string? Name { get; set; }

    [BindProperty, Required(ErrorMessage = "Password: write your password")]
    public string? Password { get; set; }

    [BindProperty]
    public bool OwnDevice { get; set; }

    public SignInView View { get; private set; } = SignInView.Empty;

    public async Task<IActionResult> OnGetAsync(CancellationToken stop)
    {
        if (who.IsHere)
            return Onwards();
        View = await ViewAsync(stop);
        return Page();
    }

    public async Task<IActionResult> OnPostAsync(CancellationToken stop)
    {
        View = await ViewAsync(stop);
        if (!ModelState.IsValid)
            return Again();

        var entrance = await door.TryAsync(SignInNames.Tidy(Name!), Password!, Sources.Of(HttpContext));

        if (entrance is not Entrance.Open open)
            return NotIn(entrance);
        await HttpContext.SignInAsync(await accounts.FindAsync(open.Account), OwnDevice);
        return Onwards();
    }

    public async Task<IActionResult> OnPostStepInAsync(Guid person, CancellationToken stop)
    {
        if (!demo.IsOpen || await queries.PersonAsync(new PersonId(person), stop) is not { } found)
            return NotFound();

        var account = await accounts.OpenWithoutPasswordAsync(found.Salon, found.Person.Id);
        await HttpContext.SignInAsync(account, ownDevice: false);
        return Onwards();
    }

    private async Task<SignInView> ViewAsync(CancellationToken stop) => SignInView.Of(await queries.BookAsync(stop), demo.IsOpen);

    private PageResult NotIn(Entrance entrance)
    {
        ModelState.AddModelError(nameof(Name), entrance.Why!);
        var again = Again();
        if (entrance is Entrance.Waits or Entrance.Stopped)
            again.StatusCode = Response.StatusCode = StatusCodes.Status429TooManyRequests;
        if (entrance is Entrance.Waits wait)
            Response.Headers.RetryAfter = Math.Ceiling(wait.Left.TotalSeconds).ToString(CultureInfo.InvariantCulture);
        return again;
    }

    private LocalRedirectResult Onwards() => LocalRedirect(Url.IsLocalUrl(Back) ? Back : "~/");
}
