using System.Security.Cryptography;
using System.Text;
using Academy.Competence;
using Academy.Storage.Accounts;
using Academy.Storage.Rows;
using Academy.Web.Shell;
using Microsoft.AspNetCore.WebUtilities;

namespace Academy.Web.Access;

/// <summary>One-time links with which a person chooses how she signs in. The token is shown once; only its hash is kept.</summary>
public sealed class Links(Invitations invitations, Accounts accounts, Ids ids, TimeProvider clock)
{
    public static readonly TimeSpan OpensFor = TimeSpan.FromDays(7);
    private const int TokenBytes = 32;

    /// <summary>A new link for this person, as the path that she opens; the one before it is void.</summary>
    public async Task<string> MakeAsync(SalonId salon, PersonId person)
    {
        var token = WebEncoders.Base64UrlEncode(RandomNumberGenerator.GetBytes(TokenBytes));
        await invitations.MakeAsync(
            new InvitationRow
            {
                SalonId = salon.Value,
                Id = ids.New(),
                Person = person.Value,
                TokenHash = HashOf(token),
                MadeAt = clock.GetUtcNow(),
                ExpiresAt = clock.GetUtcNow() + OpensFor,
            }
        );
        return "/join/" + token;
    }

    /// <summary>Until when a link of this person waits to be used; null if none does.</summary>
    public async Task<DateTimeOffset?> WaitsUntilAsync(SalonId salon, PersonId person, CancellationToken stop) =>
        (await invitations.WaitingAsync(salon.Value, person.Value, clock.GetUtcNow(), stop))?.ExpiresAt;

    /// <summary>Whose link this is; null when it does not open (any more).</summary>
    public async Task<(SalonId Salon, PersonId Person)?> FindAsync(string token, CancellationToken stop) =>
        await invitations.FindAsync(HashOf(token), clock.GetUtcNow(), stop) is { } found
            ? (new SalonId(found.SalonId), new PersonId(found.Person))
            : null;

    /// <summary>Uses the link up and makes the sign-in; null when somebody else was faster.</summary>
    public async Task<Account?> UseAsync(string token, string name, string password)
    {
        Account? account = null;
        await invitations.RedeemAsync(
            HashOf(token),
            clock.GetUtcNow(),
            async link => account = await accounts.OpenAsync(new SalonId(link.SalonId), new PersonId(link.Person), name, password)
        );
        return account;
    }

    private static byte[] HashOf(string token) => SHA256.HashData(Encoding.UTF8.GetBytes(token));
}
