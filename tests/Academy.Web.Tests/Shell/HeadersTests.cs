using System.Net;
using System.Security.Claims;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Hosting;
using Microsoft.AspNetCore.Routing;
using Microsoft.Extensions.DependencyInjection;

namespace Academy.Web.Tests.Shell;

/// <summary>
/// The headers of OWASP ASVS 5.0.0, V3.4 (HSTS of at least a year with subdomains, a content policy, nosniff, a referrer policy,
/// no framing, an opener policy) and of W3C Content Security Policy Level 3, on every route there is.
/// </summary>
public sealed class HeadersTests
{
    [Fact]
    public async Task Every_route_answers_with_every_header()
    {
        await using var portal = new Portal();
        using var visitor = portal.Visitor();
        var routes = Routes(portal);

        foreach (var route in routes)
        {
            using var answer = await visitor.GetAsync(route, TestContext.Current.CancellationToken);
            AssertHeaders(answer);
        }

        Assert.Superset(new HashSet<string>(["/heat", "/swatches", "/error", "/healthz/live", "/academy.css"]), routes);
    }

    [Theory]
    [InlineData("/there-is-no-such-page")]
    [InlineData("/status/403")]
    [InlineData("/own/logo")]
    [InlineData("/%2e%2e/%2e%2e/etc/passwd")]
    public async Task A_refusal_answers_with_every_header(string path)
    {
        await using var portal = new Portal();
        using var answer = await portal.Visitor().GetAsync(path, TestContext.Current.CancellationToken);

        AssertHeaders(answer);
    }

    [Fact]
    public async Task A_form_without_its_token_is_refused_with_every_header()
    {
        await using var portal = new Portal();
        using var form = new FormUrlEncodedContent([new("Dog", "Biscuit")]);
        using var answer = await portal.Visitor().PostAsync("/swatches", form, TestContext.Current.CancellationToken);

        Assert.Equal(HttpStatusCode.BadRequest, answer.StatusCode);
        AssertHeaders(answer);
    }

    [Fact]
    public async Task The_policy_lets_only_scripts_with_this_answers_word_run()
    {
        await using var portal = new Portal();
        using var visitor = portal.Visitor();
        using var first = await visitor.GetAsync("/heat", TestContext.Current.CancellationToken);
        using var second = await visitor.GetAsync("/heat", TestContext.Current.CancellationToken);

        Assert.NotEqual(Policy(first), Policy(second));
        Assert.Matches("script-src 'nonce-[A-Za-z0-9+/]{24}' 'strict-dynamic';", Policy(first));
        Assert.DoesNotContain("unsafe-inline", Policy(first), StringComparison.Ordinal);
        var page = await Portal.ReadAsync(first);
        Assert.NotEmpty(page.Scripts);
        Assert.All(
            page.Scripts,
            script => Assert.Contains($"'nonce-{script.GetAttribute("nonce")}'", Policy(first), StringComparison.Ordinal)
        );
    }

    [Fact]
    public async Task Strict_transport_is_asked_for_under_https_only()
    {
        await using var portal = new Portal().With("Site:Https", "true");
        using var safe = await portal.Visitor(https: true).GetAsync("/heat", TestContext.Current.CancellationToken);
        using var plain = await portal.Visitor().GetAsync("/heat", TestContext.Current.CancellationToken);

        Assert.Equal(["max-age=31536000; includeSubDomains"], safe.Headers.GetValues("Strict-Transport-Security"));
        Assert.False(plain.Headers.Contains("Strict-Transport-Security"));
    }

    [Theory]
    [InlineData(true, "__Host-form=", "secure")]
    [InlineData(false, "academy-form=", "samesite=strict")]
    public async Task One_switch_chooses_the_names_of_the_cookies(bool https, string name, string mark)
    {
        await using var portal = new Portal().With("Site:Https", https.ToString());
        using var answer = await portal.Visitor(https).GetAsync("/swatches", TestContext.Current.CancellationToken);

        var cookie = Assert.Single(answer.Headers.GetValues("Set-Cookie"));
        Assert.StartsWith(name, cookie, StringComparison.Ordinal);
        Assert.Contains(mark, cookie, StringComparison.Ordinal);
        Assert.Contains("httponly", cookie, StringComparison.Ordinal);
        Assert.Contains("path=/", cookie, StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_heat_card_leaves_no_cookie()
    {
        await using var portal = new Portal();
        using var answer = await portal.Visitor().GetAsync("/heat", TestContext.Current.CancellationToken);

        Assert.False(answer.Headers.Contains("Set-Cookie"));
    }

    // ASVS 5.0.0, V14.3.2: what a signed-in person saw is not kept by the browser. The looks of the portal may be.
    [Theory]
    [InlineData("/heat", true)]
    [InlineData("/status/404", true)]
    [InlineData("/academy.css", false)]
    public async Task What_a_signed_in_person_saw_is_not_kept(string path, bool noStore)
    {
        await using var portal = new Portal().With<IStartupFilter>(new SomebodySignedIn());
        using var answer = await portal.Visitor().GetAsync(path, TestContext.Current.CancellationToken);

        Assert.Equal(noStore, answer.Headers.CacheControl!.NoStore);
    }

    private sealed class SomebodySignedIn : IStartupFilter
    {
        public Action<IApplicationBuilder> Configure(Action<IApplicationBuilder> next) =>
            app =>
            {
                app.Use(
                    (http, rest) =>
                    {
                        http.User = new ClaimsPrincipal(new ClaimsIdentity("test"));
                        return rest(http);
                    }
                );
                next(app);
            };
    }

    private static string Policy(HttpResponseMessage answer) =>
        Assert.Single(answer.Headers.GetValues("Content-Security-Policy"));

    private static HashSet<string> Routes(Portal portal) =>
        [
            .. portal
                .Services.GetRequiredService<IEnumerable<EndpointDataSource>>()
                .SelectMany(source => source.Endpoints)
                .OfType<RouteEndpoint>()
                .Where(route => route.RoutePattern.Parameters.Count == 0)
                .Select(route => "/" + route.RoutePattern.RawText!.TrimStart('/')),
        ];

    internal static void AssertHeaders(HttpResponseMessage answer)
    {
        var policy = Policy(answer);
        Assert.Contains("default-src 'none'", policy, StringComparison.Ordinal);
        Assert.Contains("style-src 'self';", policy, StringComparison.Ordinal);
        Assert.Contains("frame-ancestors 'none'", policy, StringComparison.Ordinal);
        Assert.Contains("base-uri 'none'", policy, StringComparison.Ordinal);
        Assert.Contains("form-action 'self'", policy, StringComparison.Ordinal);
        Assert.Contains("require-trusted-types-for 'script'", policy, StringComparison.Ordinal);
        Assert.Equal(["nosniff"], answer.Headers.GetValues("X-Content-Type-Options"));
        Assert.Equal(["same-origin"], answer.Headers.GetValues("Referrer-Policy"));
        Assert.Equal(["same-origin"], answer.Headers.GetValues("Cross-Origin-Opener-Policy"));
        Assert.Equal(["same-origin"], answer.Headers.GetValues("Cross-Origin-Resource-Policy"));
        Assert.Contains("camera=()", Assert.Single(answer.Headers.GetValues("Permissions-Policy")), StringComparison.Ordinal);
        Assert.NotNull(answer.Headers.CacheControl);
        Assert.False(answer.Headers.Contains("Server"));
    }
}
