using System.Security.Claims;
using System.Text.Json;
using Academy.Competence;
using Academy.Storage.Accounts;

namespace Academy.Web.Access;

/// <summary>What a session says of its holder: ids only. Name and role are asked of the salon's book each time.</summary>
public sealed record Badge(Guid Account, SalonId Salon, PersonId Person, string Device, bool IsOwnDevice, string Session = "")
{
    private const string Claim = "badge";

    public ClaimsPrincipal Principal() => new(new ClaimsIdentity([new(Claim, JsonSerializer.Serialize(this))], Claim));

    public static Badge? Of(ClaimsPrincipal holder) =>
        holder.FindFirstValue(Claim) is { } written ? JsonSerializer.Deserialize<Badge>(written) : null;

    public byte[] Written() => JsonSerializer.SerializeToUtf8Bytes(this);

    public static Badge Of(Session session) =>
        JsonSerializer.Deserialize<Badge>(session.Value)! with
        {
            Account = session.AccountId,
            Session = session.Key,
        };
}
