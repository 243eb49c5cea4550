using Microsoft.Net.Http.Headers;

namespace Academy.Web.Shell;

/// <summary>The headers that every answer carries: pages, files, errors, redirects.</summary>
public sealed class Headers(RequestDelegate next, Site site)
{
    private static readonly (string Name, string Value)[] Fixed =
    [
        ("X-Content-Type-Options", "nosniff"),
        ("Referrer-Policy", "same-origin"),
        ("Cross-Origin-Opener-Policy", "same-origin"),
        ("Cross-Origin-Resource-Policy", "same-origin"),
        (
            "Permissions-Policy",
            "accelerometer=(), camera=(), display-capture=(), geolocation=(), gyroscope=(), microphone=(), midi=(), payment=(), usb=()"
        ),
    ];

    public Task InvokeAsync(HttpContext http)
    {
        http.Response.OnStarting(() =>
        {
            Write(http);
            return Task.CompletedTask;
        });
        return next(http);
    }

    private void Write(HttpContext http)
    {
        var headers = http.Response.Headers;
        foreach (var (name, value) in Fixed)
        {
            headers[name] = value;
        }

        // A file that runs nothing may say a stricter one. "Not changed" sends no page: the policy that came with the page is the
        // one that names its scripts' nonce.
        if (
            !headers.ContainsKey(HeaderNames.ContentSecurityPolicy)
            && http.Response.StatusCode != StatusCodes.Status304NotModified
        )
        {
            headers.ContentSecurityPolicy = Policy(http.RequestServices.GetRequiredService<Nonce>());
        }

        if (site.Https && http.Request.IsHttps)
        {
            headers.StrictTransportSecurity = "max-age=31536000; includeSubDomains";
        }

        // A page or a file that has said how it may be kept knows better.
        if (!headers.ContainsKey(HeaderNames.CacheControl))
        {
            headers.CacheControl = http.User.Identity is { IsAuthenticated: true } ? "no-store" : "no-cache";
        }
    }

    private static string Policy(Nonce nonce) =>
        $"default-src 'none'; script-src 'nonce-{nonce.Word}' 'strict-dynamic'; style-src 'self'; img-src 'self' data:; "
        + "font-src 'self'; connect-src 'self'; manifest-src 'self'; worker-src 'self'; media-src 'self'; form-action 'self'; "
        + "base-uri 'none'; frame-ancestors 'none'; object-src 'none'; require-trusted-types-for 'script'; trusted-types salon";
}
