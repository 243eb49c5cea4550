using System.Security.Claims;
using System.Security.Cryptography;
using System.Text;
using System.Text.Encodings.Web;
using Academy.Storage.Accounts;
using Academy.Web.Features.Shared;
using Academy.Web.Shell;
using Microsoft.AspNetCore.Authentication;
using Microsoft.AspNetCore.Authorization;
using Microsoft.AspNetCore.Http.Extensions;
using Microsoft.AspNetCore.Mvc.RazorPages;
using Microsoft.AspNetCore.WebUtilities;
using Microsoft.Extensions.Options;

namespace Academy.Web.Access;

/// <summary>
/// Sign-ins are kept in the database, so that ending one ends it with the next request. The cookie carries a key of 256 random
/// bits and nothing else; the database knows only its hash, so that a copy of the database opens nothing.
/// </summary>
/// <remarks>
/// The framework's own cookie scheme keeps the old key when somebody signs in over an open session; here each sign-in gets a new
/// key and ends the session before it (OWASP ASVS 5.0.0, V7.2.4).
/// </remarks>
public sealed class SessionScheme(
    IOptionsMonitor<AuthenticationSchemeOptions> options,
    ILoggerFactory log,
    UrlEncoder encoder,
    Site site,
    Sessions sessions
) : SignInAuthenticationHandler<AuthenticationSchemeOptions>(options, log, encoder)
{
    public const string Name = "session";
    private const int KeyBytes = 32;

    public static string NameOf(string key) => Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(key)));

    // Files cost no look into the database, and what stands when all else is down must not ask it either.
    private bool AsksNobody =>
        Context.GetEndpoint()?.Metadata is { } said
        && said.GetMetadata<IAllowAnonymous>() is not null
        && (said.GetMetadata<NoFrameAttribute>() is not null || said.GetMetadata<PageActionDescriptor>() is null);

    private string? Key => Request.Cookies[site.CookieName(Name)];

    private DateTimeOffset Now => TimeProvider.GetUtcNow();

    protected override async Task<AuthenticateResult> HandleAuthenticateAsync()
    {
        if (AsksNobody || Key is not { Length: > 0 } key)
            return AuthenticateResult.NoResult();
        if (await sessions.FindAsync(NameOf(key), Now, Context.RequestAborted) is not { } session)
            return AuthenticateResult.Fail("This session has ended.");

        await SeeAsync(session);
        return AuthenticateResult.Success(new AuthenticationTicket(Badge.Of(session).Principal(), Name));
    }

    protected override async Task HandleSignInAsync(ClaimsPrincipal user, AuthenticationProperties? properties)
    {
        await EndAsync();
        var badge = Badge.Of(user) ?? throw new InvalidOperationException("A session is opened for somebody.");
        var key = WebEncoders.Base64UrlEncode(RandomNumberGenerator.GetBytes(KeyBytes));
        await sessions.OpenAsync(Open(badge, key));
        Response.Cookies.Append(site.CookieName(Name), key, CookieFor(badge));
    }

    protected override async Task HandleSignOutAsync(AuthenticationProperties? properties)
    {
        await EndAsync();
        Response.Cookies.Delete(site.CookieName(Name), Dressed());
    }

    protected override Task HandleChallengeAsync(AuthenticationProperties properties)
    {
        var back = HttpMethods.IsGet(Request.Method) ? Request.GetEncodedPathAndQuery() : "/";
        Response.Redirect(Request.PathBase + Paths.SignIn + QueryString.Create("back", back));
        return Task.CompletedTask;
    }

    private Session Open(Badge badge, string key) =>
        new()
        {
            Key = NameOf(key),
            AccountId = badge.Account,
            Device = badge.Device,
            OpenedAt = Now,
            LastSeenAt = Now,
            ExpiresAt = SessionLengths.Of(badge.IsOwnDevice).EndOf(Now, Now),
            Value = badge.Written(),
        };

    private async Task SeeAsync(Session session)
    {
        if (Now - session.LastSeenAt < SessionLengths.SeenAgainAfter)
            return;
        var ends = SessionLengths.Of(Badge.Of(session).IsOwnDevice).EndOf(session.OpenedAt, Now);
        await sessions.RenewAsync(session.Key, session.Value, Now, ends);
    }

    private Task EndAsync() => Key is { Length: > 0 } key ? sessions.EndAsync(NameOf(key)) : Task.CompletedTask;

    // The server knows when a session ends; the browser only needs to know whether to keep the cookie when it is closed.
    private CookieOptions CookieFor(Badge badge)
    {
        var dressed = Dressed();
        dressed.Expires = badge.IsOwnDevice ? Now + SessionLengths.OwnDevice.Whole : null;
        return dressed;
    }

    private CookieOptions Dressed()
    {
        var cookie = new CookieBuilder();
        site.Dress(cookie, Name);
        return cookie.Build(Context);
    }
}
