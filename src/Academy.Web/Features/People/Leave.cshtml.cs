using System.ComponentModel.DataAnnotations;
using Academy.Competence;
using Academy.Competence.People;
using Academy.Storage;
using Academy.Storage.Accounts;
using Academy.Storage.Ledgers;
using Academy.Web.Access;
using Academy.Web.Features.Shared;
using Academy.Web.Shell;
using Academy.Web.Wording;
using Microsoft.AspNetCore.Authorization;
using Microsoft.AspNetCore.Mvc;

namespace Academy.Web.Features.People;

/// <summary>A person leaves, or is back.</summary>
[Authorize(Policy = Policies.Owner)]
public sealed class LeaveModel(Who who, Ledger ledger, Accounts accounts, CalendarAddresses calendars, Ids ids) : AcademyPage
{
    [BindProperty(SupportsGet = true, Name = "id")]
    public Guid Id { get; set; }

    [BindProperty]
    public Guid Operation { get; set; } = ids.New();

    [BindProperty, Required(ErrorMessage = "Day: write it")]
    public DateOnly? On { get; set; } = who.Today;

    public string Name { get; private set; } = "";

    public bool HasLeft { get; private set; }

    public IActionResult OnGet() => Find() is null ? NotFound() : Page();

    public async Task<IActionResult> OnPostAsync()
    {
        if (Find() is not { } person)
            return NotFound();
        if (!ModelState.IsValid)
            return Again();
        return HasLeft ? await ComeBackAsync(person) : await GoAsync(person);
    }

    private async Task<IActionResult> GoAsync(Person person)
    {
        var decision = Staffing.Leave(person, On!.Value, who.Person, who.Book.OwnersOn(who.Today));

        if (decision is not Granted granted)
            return Again(Say.Reasons(((Refused)decision).Reasons, who.Names));
        await ledger.KeepAsync(who.Salon, granted, who.Hand, new OperationId(Operation));
        // Whoever leaves on a day to come works and signs in until then; her day ends it by itself.
        if (On <= who.Today)
            await accounts.CloseAsync(who.Salon, person.Id);
        return Done(Paths.Person(Id), $"{person.Name} leaves on {who.Time.Date(On.Value)}.");
    }

    private async Task<IActionResult> ComeBackAsync(Person person)
    {
        var decision = Staffing.ComeBack(person, On!.Value, who.Person);

        if (decision is not Granted granted)
            return Again(Say.Reasons(((Refused)decision).Reasons, who.Names));
        await ledger.KeepAsync(who.Salon, granted, who.Hand, new OperationId(Operation));
        // What ended with a day to come is still there: whoever is back begins anew.
        await calendars.EndAsync(who.Salon.Value, person.Id.Value);
        return Done(Paths.Person(Id), $"{person.Name} is back. A new link lets {person.Name} sign in.");
    }

    private Person? Find()
    {
        var person = who.Book.Find(new PersonId(Id));
        (Name, HasLeft) = (person?.Name ?? "", person?.LeftOn is not null);
        return person;
    }
}
