using Academy.Competence;
using Academy.Competence.People;
using Academy.Storage;
using Academy.Storage.Ledgers;
using Academy.Web.Access;
using Academy.Web.Features.Shared;
using Academy.Web.Shell;
using Academy.Web.Wording;
using Microsoft.AspNetCore.Authorization;
using Microsoft.AspNetCore.Mvc;

namespace Academy.Web.Features.People;

/// <summary>Somebody joins.</summary>
[Authorize(Policy = Policies.Owner)]
public sealed class NewModel(Who who, Ledger ledger, Ids ids) : AcademyPage
{
    /// <summary>Also the id that the person gets: sent twice it is one person.</summary>
    [BindProperty]
    public Guid Operation { get; set; } = ids.New();

    [BindProperty]
    public PersonForm Told { get; set; } = new() { Role = nameof(Role.Junior), JoinedOn = who.Today };

    public void OnGet() { }

    public async Task<IActionResult> OnPostAsync()
    {
        if (!ModelState.IsValid)
            return Again();

        var person = Told.Person(new PersonId(Operation));
        var decision = Staffing.Describe(person, who.Book.Find(person.Id), who.Person, who.Book.OwnersOn(who.Today));

        if (decision is not Granted granted)
            return Again(Say.Reasons(((Refused)decision).Reasons, who.Names));
        await ledger.KeepAsync(who.Salon, granted, who.Hand, new OperationId(Operation));
        return Done(Paths.Person(Operation), $"{person.Name} is in the book. Make a link, so that {person.Name} can sign in.");
    }
}
