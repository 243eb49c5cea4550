using System.Security.Cryptography;
using System.Text;
using Academy.Competence;
using Academy.Competence.Salons;
using Academy.Storage;
using Academy.Storage.Accounts;
using Academy.Storage.Rows;
using Microsoft.AspNetCore.Identity;

namespace Academy.Web.Access;

/// <summary>Looks at a name and a password, and at how often that went wrong before.</summary>
/// <remarks>
/// A try is counted before the password is looked at, and taken back when it fits: a hundred tries at once are a hundred tries.
/// An unknown name takes the same time and is counted like a known one.
/// </remarks>
public sealed class Door(
    UserManager<Account> accounts,
    SignInFailures failures,
    RecordBook records,
    TimeProvider clock,
    ILogger<Door> log
)
{
    private static readonly Account Nobody = new();
    private static string? _nobodysHash;

    /// <summary>Tries to sign in. The source is where the visitor comes from.</summary>
    public async Task<Entrance> TryAsync(string name, string password, string source) =>
        await TryAsync(await accounts.FindByNameAsync(name), name, password, source);

    /// <summary>Asks the password of somebody who is signed in once more.</summary>
    public async Task<Entrance> ConfirmAsync(Guid account, string password, string source)
    {
        var own = await accounts.FindByIdAsync(account.ToString());
        return await TryAsync(own, own?.UserName ?? "", password, source);
    }

    /// <summary>Lets a name be tried again that was tried too often.</summary>
    public Task LetTryAgainAsync(string name) => failures.ChangeAsync([KeyOfName(name)], rows => rows[0].Count = 0);

    /// <summary>How often in a row this name was got wrong.</summary>
    public Task<int> FailuresOfAsync(string name, CancellationToken stop) => failures.CountAsync(KeyOfName(name), stop);

    private async Task<Entrance> TryAsync(Account? account, string name, string password, string source)
    {
        string[] keys = [KeyOfName(name), KeyOfSource(source)];
        if (await failures.ChangeAsync(keys, rows => Count(rows[0], rows[1])) is { } not)
            return Noted(not, source);

        if (!await FitsAsync(account, password) || !await WorksHereAsync(account!))
            return Noted(new Entrance.NotFitting(), source);

        await failures.ChangeAsync(keys, rows => TakeBack(rows[0], rows[1]));
        log.LogInformation("Account {Account} gave its password from {Source}", account!.Id, source);
        return new Entrance.Open(account.Id);
    }

    // A name that somebody typed may be her password in the wrong box: only its hash is kept.
    private string KeyOfName(string name) =>
        "name:" + Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(accounts.NormalizeName(name) ?? "")));

    private static string KeyOfSource(string source) => "from:" + source;

    private Entrance? Count(SignInFailureRow name, SignInFailureRow source)
    {
        var now = clock.GetUtcNow();
        Forget(name, Patience.NameForgottenAfter, now);
        Forget(source, Patience.SourceForgottenAfter, now);
        if (name.Count >= Patience.StopsAt)
            return new Entrance.Stopped();
        var left = new[] { name, source }.Max(row => Patience.Left(row.Count, row.LastAt, now));
        if (left > TimeSpan.Zero)
            return new Entrance.Waits(left);

        foreach (var row in new[] { name, source })
            (row.Count, row.LastAt) = (row.Count + 1, now);
        return null;
    }

    private static void Forget(SignInFailureRow row, TimeSpan after, DateTimeOffset now)
    {
        if (row.Count < Patience.StopsAt && row.LastAt + after <= now)
            row.Count = 0;
    }

    // Her own slips are forgiven to the house she comes from; those of others under its roof are not.
    private static int TakeBack(SignInFailureRow name, SignInFailureRow source)
    {
        source.Count = Math.Max(0, source.Count - name.Count);
        return name.Count = 0;
    }

    private async Task<bool> FitsAsync(Account? account, string password)
    {
        if (account?.PasswordHash is null || !account.MayOpen(clock.GetUtcNow()) || password.Length > Passwords.Longest)
        {
            _nobodysHash ??= accounts.PasswordHasher.HashPassword(Nobody, "");
            accounts.PasswordHasher.VerifyHashedPassword(Nobody, _nobodysHash, "as long as for somebody");
            return false;
        }
        return await accounts.CheckPasswordAsync(account, password);
    }

    private async Task<bool> WorksHereAsync(Account account)
    {
        var book = await records.SalonAsync(new SalonId(account.SalonId), CancellationToken.None);
        var today = SalonDay.Of(clock.GetUtcNow(), book.Zone);
        return book.Find(new PersonId(account.PersonId)) is { } person && person.WorksOn(today);
    }

    private Entrance Noted(Entrance not, string source)
    {
        log.LogWarning("A sign-in from {Source} came to {Entrance}", source, not.GetType().Name);
        return not;
    }
}
