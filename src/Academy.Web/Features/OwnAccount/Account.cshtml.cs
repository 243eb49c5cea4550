using System.ComponentModel.DataAnnotations;
using Academy.Storage.Accounts;
using Academy.Web.Access;
using Academy.Web.Features.Shared;
using Microsoft.AspNetCore.Authorization;
using Microsoft.AspNetCore.Mvc;

namespace Academy.Web.Features.OwnAccount;

/// <summary>One's own sign-in: a new password, what is open where, and the address for a calendar.</summary>
[Authorize(Policy = Policies.AnyoneHere)]
public sealed class AccountModel(Who who, Accounts accounts, Sessions sessions, CalendarLinks calendars, TimeProvider clock)
    : AcademyPage
{
    /// <summary>Empty whenever it is shown: no answer carries a password.</summary>
    public PasswordForm Form { get; } = new();

    public string Name { get; private set; } = "";

    public IReadOnlyList<SessionLine> Open { get; private set; } = [];

    /// <summary>Since when there is an address for a calendar; null where there is none.</summary>
    public string? CalendarSince { get; private set; }

    /// <summary>The address that was just made: in this answer and never again.</summary>
    public string? NewCalendar { get; private set; }

    public async Task OnGetAsync(CancellationToken stop) => await ReadAsync(stop);

    public async Task<IActionResult> OnPostPasswordAsync(
        [FromForm(Name = nameof(Form))] PasswordForm form,
        CancellationToken stop
    )
    {
        await ReadAsync(stop);
        if (ModelState.IsValid)
            await CheckAsync(form);
        if (!ModelState.IsValid)
            return Again();

        var account = await accounts.FindAsync(who.Account);
        var session = (await sessions.OfAsync(account.Id, clock.GetUtcNow(), stop)).Single(one => one.Key == who.Session);
        await accounts.ChangePasswordAsync(account, form.New!);
        await HttpContext.SignInAsync(account, Badge.Of(session).IsOwnDevice);
        return Done(Paths.Account, "The new password holds. What was open elsewhere has ended.");
    }

    public async Task<IActionResult> OnPostEndAsync(string session, CancellationToken stop)
    {
        var own = await sessions.OfAsync(who.Account, clock.GetUtcNow(), stop);
        if (own.All(one => one.Key != session))
            return NotFound();
        await sessions.EndAsync(session);
        return Done(Paths.Account, "That session has ended.");
    }

    /// <summary>Shown in this answer and never again: the database knows only its hash.</summary>
    public async Task<IActionResult> OnPostCalendarAsync(CancellationToken stop)
    {
        var path = await calendars.MakeAsync(who.Salon, who.Person.Id);
        await ReadAsync(stop);
        NewCalendar = $"{Request.Scheme}://{Request.Host}{Request.PathBase}{path}";
        return Page();
    }

    public async Task<IActionResult> OnPostEndCalendarAsync()
    {
        await calendars.EndAsync(who.Salon, who.Person.Id);
        return Done(Paths.Account, "The address opens nothing any more.");
    }

    private async Task CheckAsync(PasswordForm form)
    {
        foreach (var wrong in PasswordRules.Against(form.New!, who.Book.Name, who.Person.Name, Name))
            ModelState.AddModelError($"{nameof(Form)}.{nameof(form.New)}", wrong);
        if (ModelState.IsValid && !await who.ConfirmAsync(form.Old))
            ModelState.AddModelError($"{nameof(Form)}.{nameof(form.Old)}", who.Unconfirmed!);
    }

    private async Task ReadAsync(CancellationToken stop)
    {
        Name = (await accounts.FindAsync(who.Account)).UserName!;
        var open = await sessions.OfAsync(who.Account, clock.GetUtcNow(), stop);
        Open = [.. open.Select(session => SessionLine.Of(session, who.Session, who.Time))];
        CalendarSince = await calendars.MadeAtAsync(who.Salon, who.Person.Id, stop) is { } at
            ? who.Time.Since(who.Time.DayOf(at))
            : null;
    }
}

/// <summary>The password as it is and as it is to be.</summary>
public sealed class PasswordForm
{
    [Required(ErrorMessage = "Password now: write it")]
    public string? Old { get; set; }

    [Required(ErrorMessage = "New password: write the one that you want")]
    public string? New { get; set; }
}
