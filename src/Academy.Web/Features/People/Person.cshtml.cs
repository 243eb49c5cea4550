using Academy.Competence;
using Academy.Competence.People;
using Academy.Storage.Accounts;
using Academy.Web.Access;
using Academy.Web.Features.Shared;
using Microsoft.AspNetCore.Authorization;
using Microsoft.AspNetCore.Mvc;

namespace Academy.Web.Features.People;

/// <summary>One person as the owner sees her: role and days, and how she signs in.</summary>
[Authorize(Policy = Policies.Owner)]
public sealed class PersonModel(Who who, Links links, Accounts accounts, Sessions sessions, Door door, TimeProvider clock)
    : AcademyPage
{
    [BindProperty(SupportsGet = true, Name = "id")]
    public Guid Id { get; set; }

    public PersonView View { get; private set; } = null!;

    public Task<IActionResult> OnGetAsync(CancellationToken stop) => WithAsync(person => ShowAsync(person, stop));

    /// <summary>Shown in this answer and never again: the database knows only its hash.</summary>
    public Task<IActionResult> OnPostLinkAsync(CancellationToken stop) =>
        WithAsync(async person =>
        {
            if (person.LeftOn <= who.Today)
                return NotFound();
            var path = await links.MakeAsync(who.Salon, person.Id);
            await ShowAsync(person, stop);
            View = View with { NewLink = $"{Request.Scheme}://{Request.Host}{Request.PathBase}{path}" };
            return Page();
        });

    public Task<IActionResult> OnPostEndAsync(string session, CancellationToken stop) =>
        WithAsync(async person =>
        {
            if ((await SessionsAsync(person, stop)).All(one => one.Key != session))
                return NotFound();
            await sessions.EndAsync(session);
            return Done(Paths.Person(Id), "That session has ended.");
        });

    public Task<IActionResult> OnPostEndAllAsync() =>
        WithAsync(async person =>
        {
            if (await accounts.FindAsync(who.Salon, person.Id) is { } account)
                await sessions.EndAllOfAsync(account.Id);
            return Done(Paths.Person(Id), $"Everything that was open for {person.Name} has ended.");
        });

    public Task<IActionResult> OnPostLetTryAsync() =>
        WithAsync(async person =>
        {
            if (await accounts.FindAsync(who.Salon, person.Id) is { } account)
                await door.LetTryAgainAsync(account.UserName!);
            return Done(Paths.Person(Id), $"{person.Name} may try to sign in again.");
        });

    private async Task<IActionResult> WithAsync(Func<Person, Task<IActionResult>> work) =>
        who.Book.Find(new PersonId(Id)) is { } person ? await work(person) : NotFound();

    private async Task<IActionResult> ShowAsync(Person person, CancellationToken stop)
    {
        var account = await accounts.FindAsync(who.Salon, person.Id, stop);
        var failures = account is null ? 0 : await door.FailuresOfAsync(account.UserName!, stop);
        var until = await links.WaitsUntilAsync(who.Salon, person.Id, stop);
        View = PersonView.Of(person, account, until, failures, await SessionsAsync(account, stop), who.Time);
        return Page();
    }

    private async Task<IReadOnlyList<Session>> SessionsAsync(Person person, CancellationToken stop) =>
        await SessionsAsync(await accounts.FindAsync(who.Salon, person.Id, stop), stop);

    private async Task<IReadOnlyList<Session>> SessionsAsync(Account? account, CancellationToken stop) =>
        account is null ? [] : await sessions.OfAsync(account.Id, clock.GetUtcNow(), stop);
}
