using Academy.Storage.Accounts;
using Microsoft.AspNetCore.Identity;
using Microsoft.EntityFrameworkCore;

namespace Academy.Web.Tests.Hosting;

/// <summary>A password for somebody of the cast: what a signature asks for.</summary>
public static class Signature
{
    public const string Password = "a long walk to the shingle";

    /// <summary>Signs somebody in who can sign.</summary>
    public static async Task<Visitor> AsSignerAsync(this PortalHost portal, Cast cast, Competence.People.Person person)
    {
        var visitor = await portal.AsAsync(cast, person);
        await portal.DoAsync<UserManager<Account>, bool>(async accounts =>
        {
            var account = await accounts.Users.SingleAsync(one =>
                one.SalonId == cast.Salon.Value && one.PersonId == person.Id.Value
            );
            var added = await accounts.HasPasswordAsync(account)
                ? IdentityResult.Success
                : await accounts.AddPasswordAsync(account, Password);
            Assert.True(added.Succeeded, added.ToString());
            return true;
        });
        return visitor;
    }
}
