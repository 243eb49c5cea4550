using System.Security.Cryptography;
using System.Text;
using Academy.Competence;
using Academy.Storage.Accounts;
using Academy.Storage.Rows;
using Microsoft.AspNetCore.WebUtilities;

namespace Academy.Web.Access;

/// <summary>
/// A person's private address for a calendar. A calendar cannot sign in, so whoever has the address may read; the token in it has 256
/// bits by chance, is shown once, and only its hash is kept.
/// </summary>
public sealed class CalendarLinks(CalendarAddresses addresses, TimeProvider clock)
{
    private const int TokenBytes = 32;

    /// <summary>A new address for this person, as a path; the one before it opens no more.</summary>
    public async Task<string> MakeAsync(SalonId salon, PersonId person)
    {
        var token = WebEncoders.Base64UrlEncode(RandomNumberGenerator.GetBytes(TokenBytes));
        await addresses.MakeAsync(
            new CalendarAddressRow
            {
                SalonId = salon.Value,
                Person = person.Value,
                TokenHash = HashOf(token),
                MadeAt = clock.GetUtcNow(),
            }
        );
        return $"/calendar/{token}.ics";
    }

    public Task EndAsync(SalonId salon, PersonId person) => addresses.EndAsync(salon.Value, person.Value);

    /// <summary>Since when a person has an address; null where she has none.</summary>
    public Task<DateTimeOffset?> MadeAtAsync(SalonId salon, PersonId person, CancellationToken stop) =>
        addresses.MadeAtAsync(salon.Value, person.Value, stop);

    /// <summary>Whose address this is; null where it opens nothing (any more).</summary>
    public async Task<(SalonId Salon, PersonId Person)?> FindAsync(string token, CancellationToken stop) =>
        await addresses.FindAsync(HashOf(token), stop) is { } found
            ? (new SalonId(found.SalonId), new PersonId(found.Person))
            : null;

    private static byte[] HashOf(string token) => SHA256.HashData(Encoding.UTF8.GetBytes(token));
}
