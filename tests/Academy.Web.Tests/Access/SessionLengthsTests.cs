using System.Net;
using Academy.Web.Tests.Hosting;

namespace Academy.Web.Tests.Access;

/// <summary>
/// How long a sign-in lasts, and that ending it ends it at once: OWASP ASVS 5.0.0, V7.2.4, V7.3.1, V7.3.2, V7.4.1, V7.4.2 and
/// V7.5.2; 30 days at most after NIST SP 800-63B-4, first level.
/// </summary>
public sealed class SessionLengthsTests
{
    [Theory]
    [InlineData(11 * 60 + 59, true)]
    [InlineData(12 * 60, false)] // half-open: twelve hours without a page are too many
    public async Task On_ones_own_device_a_session_stands_twelve_hours_without_a_page(int minutes, bool stands)
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        using var pim = await portal.AsAsync(cast, cast.Junior);

        portal.Clock.Advance(TimeSpan.FromMinutes(minutes));

        Assert.Equal(stands, await StandsAsync(pim));
    }

    [Fact]
    public async Task Each_page_begins_the_twelve_hours_anew_but_never_past_thirty_days()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        using var pim = await portal.AsAsync(cast, cast.Junior);

        for (var hours = 11; hours < 30 * 24; hours += 11)
        {
            portal.Clock.Advance(TimeSpan.FromHours(11));
            Assert.True(await StandsAsync(pim), $"after {hours} hours");
        }
        portal.Clock.Advance(PortalHost.Start.AddDays(30) - portal.Now);

        Assert.False(await StandsAsync(pim));
    }

    [Theory]
    [InlineData(59, true)]
    [InlineData(60, false)]
    public async Task On_any_other_device_an_hour_without_a_page_ends_it(int minutes, bool stands)
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        using var visitor = portal.Anyone();
        await visitor.JoinAsync(portal, cast, cast.Junior, ownDevice: false);

        portal.Clock.Advance(TimeSpan.FromMinutes(minutes));

        Assert.Equal(stands, await StandsAsync(visitor));
    }

    [Fact]
    public async Task Signing_out_ends_the_session_in_the_database_so_that_a_kept_cookie_opens_nothing()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        using var pim = await portal.AsAsync(cast, cast.Junior);
        var cookie = pim.Cookies["academy-session"];

        var signedOut = await (await pim.GetAsync("/in-today")).Form(".where form").SendAsync();
        using var thief = portal.Anyone();
        thief.Cookies["academy-session"] = cookie;

        Assert.Equal("/sign-in", signedOut.Location);
        Assert.False(pim.Cookies.ContainsKey("academy-session"));
        Assert.False(await StandsAsync(thief));
    }

    [Fact]
    public async Task Signing_in_over_an_open_session_gives_a_new_key_and_ends_the_old_one()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        using var rosa = portal.Anyone();
        await rosa.JoinAsync(portal, cast, cast.Senior);
        var first = rosa.Cookies["academy-session"];

        await rosa.JoinAsync(portal, cast, cast.Junior);
        using var old = portal.Anyone();
        old.Cookies["academy-session"] = first;

        Assert.NotEqual(first, rosa.Cookies["academy-session"]);
        Assert.False(await StandsAsync(old));
        Assert.Contains(
            "Pim",
            (await rosa.GetAsync("/in-today")).Page.QuerySelector(".where")!.TextContent,
            StringComparison.Ordinal
        );
    }

    [Theory]
    [InlineData(true, "__Host-session", "max-age|expires")]
    [InlineData(false, "academy-session", "max-age|expires")]
    public async Task The_cookie_is_closed_and_is_a_key_of_256_bits(bool https, string name, string lasting)
    {
        await using var portal = new PortalHost().With("Site:Https", https.ToString());
        var cast = await portal.OpenSalonAsync();
        using var visitor = portal.Anyone(https);
        var joined = await visitor.JoinAsync(portal, cast, cast.Junior, ownDevice: true);

        var cookie = joined
            .Message.Headers.GetValues("Set-Cookie")
            .Single(set => set.StartsWith(name + "=", StringComparison.Ordinal));
        Assert.Matches($"^{name}=[A-Za-z0-9_-]{{43}}; ", cookie); // 43 letters of base 64 carry 256 bits
        Assert.Contains("httponly", cookie, StringComparison.Ordinal);
        Assert.Contains("samesite=strict", cookie, StringComparison.Ordinal);
        Assert.Contains("path=/", cookie, StringComparison.Ordinal);
        Assert.Equal(https, cookie.Contains("secure", StringComparison.Ordinal));
        Assert.Matches(lasting, cookie);
    }

    [Fact]
    public async Task On_another_device_the_cookie_goes_when_the_browser_is_closed()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        using var visitor = portal.Anyone();
        var joined = await visitor.JoinAsync(portal, cast, cast.Junior, ownDevice: false);

        var cookie = joined
            .Message.Headers.GetValues("Set-Cookie")
            .Single(set => set.StartsWith("academy-session=", StringComparison.Ordinal));
        Assert.DoesNotMatch("max-age|expires", cookie);
    }

    [Fact]
    public async Task A_made_up_key_opens_nothing()
    {
        var (portal, _) = await PortalHost.OpenAsync();
        await using var __ = portal;
        using var visitor = portal.Anyone();
        visitor.Cookies["academy-session"] = "<not a key>";

        Assert.Equal("/sign-in?back=%2Fin-today", (await visitor.GetAsync("/in-today")).Location);
    }

    private static async Task<bool> StandsAsync(Visitor visitor)
    {
        var answer = await visitor.GetAsync("/in-today");
        Assert.Contains(answer.Status, new[] { HttpStatusCode.OK, HttpStatusCode.Redirect });
        return answer.Status == HttpStatusCode.OK;
    }
}
