using Academy.Competence;
using Academy.Competence.People;
using Academy.Competence.Salons;
using Academy.Storage;
using Academy.Web.Access;
using Academy.Web.Features.Shared;
using Microsoft.AspNetCore.Authorization;
using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;

namespace Academy.Web.Features.Join;

/// <summary>Behind a one-time link: a person chooses how she signs in. A link that does not open says so, and nothing else.</summary>
[AllowAnonymous, AsksForSalon]
public sealed class JoinModel(Links links, Accounts accounts, RecordBook records) : AcademyPage
{
    [BindProperty(SupportsGet = true, Name = "token")]
    public string Token { get; set; } = "";

    [BindProperty]
    public Credentials Own { get; set; } = new();

    public JoinView? View { get; private set; }

    public async Task<IActionResult> OnGetAsync(CancellationToken stop) => await FindAsync(stop) is null ? DoesNotOpen() : Page();

    public async Task<IActionResult> OnPostAsync(CancellationToken stop)
    {
        if (await FindAsync(stop) is not { } found)
            return DoesNotOpen();
        await CheckAsync(found);
        if (!ModelState.IsValid)
            return Again();

        if (await links.UseAsync(Token, Own.TidyName, Own.Password!) is not { } account)
            return DoesNotOpen();
        await HttpContext.SignInAsync(account, Own.OwnDevice);
        return Done(Paths.Today, $"Welcome, {found.Person.Name}. From now on you sign in as {account.UserName}.");
    }

    private async Task<(SalonId Salon, SalonBook Book, Person Person)?> FindAsync(CancellationToken stop)
    {
        if (await links.FindAsync(Token, stop) is not { } link)
            return null;
        var book = await records.SalonAsync(link.Salon, stop);
        var person = book.Find(link.Person)!;
        View = new JoinView(person.Name, book.Name);
        return (link.Salon, book, person);
    }

    private async Task CheckAsync((SalonId Salon, SalonBook Book, Person Person) found)
    {
        foreach (var wrong in Own.Against(found.Book.Name, found.Person.Name))
            ModelState.AddModelError($"{nameof(Own)}.{nameof(Own.Password)}", wrong);
        var own = await accounts.FindAsync(found.Salon, found.Person.Id);
        if (Own.Name is not null && await accounts.IsTakenAsync(Own.TidyName, own))
            ModelState.AddModelError(
                $"{nameof(Own)}.{nameof(Own.Name)}",
                "Name to sign in with: somebody has this one. Choose another"
            );
    }

    private PageResult DoesNotOpen()
    {
        View = null;
        Response.StatusCode = StatusCodes.Status404NotFound;
        return Page();
    }
}

/// <summary>Who the link is for.</summary>
public sealed record JoinView(string Person, string Salon);
