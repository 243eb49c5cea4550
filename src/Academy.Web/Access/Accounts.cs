using Academy.Competence;
using Academy.Storage.Accounts;
using Academy.Web.Shell;
using Microsoft.AspNetCore.Identity;
using Microsoft.EntityFrameworkCore;

namespace Academy.Web.Access;

/// <summary>The sign-ins of people: one for each person of a salon, made when she chooses a name and a password.</summary>
public sealed class Accounts(
    UserManager<Account> accounts,
    Sessions sessions,
    Invitations invitations,
    CalendarAddresses calendars,
    Ids ids,
    TimeProvider clock
)
{
    public Task<Account?> FindAsync(SalonId salon, PersonId person, CancellationToken stop = default) =>
        accounts.Users.SingleOrDefaultAsync(one => one.SalonId == salon.Value && one.PersonId == person.Value, stop);

    public async Task<Account> FindAsync(Guid account) =>
        await accounts.FindByIdAsync(account.ToString())
        ?? throw new InvalidOperationException("A session outlived its account.");

    /// <summary>Whether somebody else signs in by this name.</summary>
    public async Task<bool> IsTakenAsync(string name, Account? own) =>
        await accounts.FindByNameAsync(name) is { } other && other.Id != own?.Id;

    /// <summary>Makes a sign-in, or gives the person a new name and password; whatever was open for her ends.</summary>
    public async Task<Account> OpenAsync(SalonId salon, PersonId person, string name, string password)
    {
        if (await FindAsync(salon, person) is { } there)
            return await RenewAsync(there, name, password);

        var account = New(salon, person, name);
        Require(await accounts.CreateAsync(account, password));
        return account;
    }

    /// <summary>A new password ends every session but none of the person's work; the page opens a fresh one.</summary>
    public Task<Account> ChangePasswordAsync(Account account, string password) =>
        RenewAsync(account, account.UserName!, password);

    /// <summary>Nobody signs in with it any more, what is open ends, and a link that waits and a calendar's address are void.</summary>
    public async Task CloseAsync(SalonId salon, PersonId person)
    {
        await invitations.VoidAsync(salon.Value, person.Value);
        await calendars.EndAsync(salon.Value, person.Value);
        if (await FindAsync(salon, person) is not { } account)
            return;
        account.LockedFrom = clock.GetUtcNow();
        Require(await accounts.UpdateAsync(account));
        await sessions.EndAllOfAsync(account.Id);
    }

    /// <summary>A sign-in without a password, which opens only where somebody is led in by hand: in the demo.</summary>
    public async Task<Account> OpenWithoutPasswordAsync(SalonId salon, PersonId person)
    {
        if (await FindAsync(salon, person) is { } there)
            return there;
        var account = New(salon, person, person.Value.ToString());
        Require(await accounts.CreateAsync(account));
        return account;
    }

    private async Task<Account> RenewAsync(Account account, string name, string password)
    {
        account.UserName = name;
        account.PasswordHash = accounts.PasswordHasher.HashPassword(account, password);
        account.SecurityStamp = ids.New().ToString("N");
        account.LockedFrom = null;
        Require(await accounts.UpdateAsync(account));
        await sessions.EndAllOfAsync(account.Id);
        return account;
    }

    private Account New(SalonId salon, PersonId person, string name) =>
        new()
        {
            Id = ids.New(),
            UserName = name,
            SalonId = salon.Value,
            PersonId = person.Value,
            OpenedAt = clock.GetUtcNow(),
        };

    // What can be wrong with a name or a password is said by the page before; anything else is ours.
    private static void Require(IdentityResult result)
    {
        if (!result.Succeeded)
            throw new InvalidOperationException($"An account could not be kept: {result}");
    }
}
