using Academy.Competence;
using Academy.Storage.Accounts;
using Microsoft.AspNetCore.Authentication;

namespace Academy.Web.Access;

/// <summary>Opens and ends the session of the browser that asks.</summary>
public static class SigningIn
{
    /// <summary>A new session under a new key; the one that this browser had ends.</summary>
    public static Task SignInAsync(this HttpContext http, Account account, bool ownDevice)
    {
        var device = DeviceWords.Of(http.Request.Headers.UserAgent);
        var badge = new Badge(account.Id, new SalonId(account.SalonId), new PersonId(account.PersonId), device, ownDevice);
        return http.SignInAsync(SessionScheme.Name, badge.Principal());
    }

    /// <summary>The session ends here and in the database.</summary>
    public static Task SignOutAsync(this HttpContext http) => http.SignOutAsync(SessionScheme.Name);
}
