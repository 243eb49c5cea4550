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
using Microsoft.AspNetCore.Mvc.RazorPages;

namespace Academy.Web.Features.People;

/// <summary>A person is described anew: another name, another role, a last day.</summary>
[Authorize(Policy = Policies.Owner)]
public sealed class ChangeModel(Who who, RecordBook records, Ledger ledger, Ids ids) : AcademyPage
{
    [BindProperty(SupportsGet = true, Name = "id")]
    public Guid Id { get; set; }

    [BindProperty]
    public Guid Operation { get; set; } = ids.New();

    [BindProperty]
    public long Version { get; set; }

    [BindProperty]
    public PersonForm Told { get; set; } = new();

    /// <summary>What people call her now, and what is known of her now.</summary>
    public (string Name, string About) Now { get; private set; }

    public async Task<IActionResult> OnGetAsync(CancellationToken stop)
    {
        if (Find() is not { } person)
            return NotFound();
        Told = PersonForm.Of(person);
        Version = await records.VersionOfAsync(who.Salon, Id, stop);
        return Page();
    }

    public async Task<IActionResult> OnPostAsync()
    {
        if (Find() is not { } before)
            return NotFound();
        if (!ModelState.IsValid)
            return Again();

        var decision = Staffing.Describe(Told.Person(before.Id), before, who.Person, who.Book.OwnersOn(who.Today));

        if (decision is not Granted granted)
            return Again(Say.Reasons(((Refused)decision).Reasons, who.Names));
        var kept = await ledger.KeepAsync(who.Salon, granted, who.Hand, new OperationId(Operation), new Expected(Id, Version));
        return kept is Kept.RecordMovedOn now ? Anew(now.Version) : Done(Paths.Person(Id), $"{Told.Name} is described anew.");
    }

    private Person? Find()
    {
        var person = who.Book.Find(new PersonId(Id));
        if (person is not null)
            Now = (person.Name, PersonWords.About(person, who.Time));
        return person;
    }

    // What was typed stays; sent once more it is sent in knowledge of what is there now.
    private PageResult Anew(long version)
    {
        ModelState.Remove(nameof(Version));
        Version = version;
        ModelState.AddModelError(
            "",
            $"Somebody described this person in between: {Now.Name}, {Now.About}. Look, and keep yours if it holds"
        );
        return MovedOn();
    }
}
