using System.Net;
using Academy.Web.Tests.Hosting;

namespace Academy.Web.Tests.Features.OwnAccount;

/// <summary>Changing one's password and ending one's sessions: OWASP ASVS 5.0.0, V6.2.2, V6.2.3, V7.4.3 and V7.5.2.</summary>
public sealed class AccountTests
{
    private const string Next = "nine kettles sing louder";

    [Fact]
    public async Task A_new_password_holds_at_once_and_ends_what_was_open_elsewhere()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        using var here = portal.Anyone();
        await here.JoinAsync(portal, cast, cast.Junior);
        using var elsewhere = await portal.AsAsync(cast, cast.Junior);
        var before = here.Cookies["academy-session"];

        var changed = await ChangeAsync(here, Joining.Password, Next);

        Assert.Equal("The new password holds. What was open elsewhere has ended.", (await changed.FollowAsync()).Said);
        Assert.NotEqual(before, here.Cookies["academy-session"]);
        Assert.StartsWith("/sign-in", (await elsewhere.GetAsync("/in-today")).Location, StringComparison.Ordinal);
        Assert.Equal(HttpStatusCode.UnprocessableEntity, (await elsewhere.SignInAsync("Pim")).Status);
        Assert.Equal(HttpStatusCode.Redirect, (await elsewhere.SignInAsync("Pim", Next)).Status);
    }

    [Fact]
    public async Task It_asks_for_the_password_now_and_counts_wrong_ones()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        using var pim = portal.Anyone();
        await pim.JoinAsync(portal, cast, cast.Junior);
        for (var time = 0; time < 5; time++)
            Assert.Equal(
                ["Password: this is not yours. Write it once more"],
                (await ChangeAsync(pim, "not my password at all", Next)).Problems
            );

        Assert.Equal(
            ["Too many tries: wait 30 seconds, then try once more"],
            (await ChangeAsync(pim, Joining.Password, Next)).Problems
        );
        using var elsewhere = portal.Anyone();
        Assert.Equal(HttpStatusCode.TooManyRequests, (await elsewhere.SignInAsync("Pim")).Status);
    }

    [Theory]
    [InlineData("too short", "Password: at least 15 characters, this one has 9. A few words in a row do well")]
    [InlineData(
        "pim-the-wet-nose-2026",
        "Password: this one is made of names, words or rows of keys that anybody would try first. Add words of your own"
    )]
    [InlineData("", "New password: write the one that you want")]
    public async Task A_password_that_anybody_would_try_is_not_taken(string password, string problem)
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        using var pim = portal.Anyone();
        await pim.JoinAsync(portal, cast, cast.Junior);
        var refused = await ChangeAsync(pim, Joining.Password, password);

        Assert.Equal(HttpStatusCode.UnprocessableEntity, refused.Status);
        Assert.Equal([problem], refused.Problems);
        Assert.All(refused.Page.QuerySelectorAll("input[type=password]"), box => Assert.Null(box.GetAttribute("value")));
    }

    [Fact]
    public async Task One_ends_ones_own_sessions_and_nobody_elses()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        using var phone = await portal.AsAsync(cast, cast.Junior);
        portal.Clock.Advance(TimeSpan.FromMinutes(3));
        using var desk = await portal.AsAsync(cast, cast.Junior);
        using var rosa = await portal.AsAsync(cast, cast.Senior);
        var page = await desk.GetAsync("/me/account");
        var other = page.Form("form:has(input[name=session]):not(li:first-child form)");
        var roses = (await rosa.GetAsync("/me/account")).Form("form:has(input[name=session])")["session"]!;

        Assert.Equal(2, page.Page.QuerySelectorAll("form:has(input[name=session])").Length);
        Assert.Contains("Firefox on Android, this one", page.Words, StringComparison.Ordinal);
        Assert.Equal(HttpStatusCode.NotFound, (await other.With(("session", roses)).SendAsync()).Status);
        Assert.Equal(HttpStatusCode.OK, (await rosa.GetAsync("/in-today")).Status);
        await (await desk.GetAsync("/me/account")).Form("li:last-child form").SendAsync();
        Assert.StartsWith("/sign-in", (await phone.GetAsync("/in-today")).Location, StringComparison.Ordinal);
        Assert.Equal(HttpStatusCode.OK, (await desk.GetAsync("/in-today")).Status);
    }

    private static Task<Answer> ChangeAsync(Visitor visitor, string old, string password) =>
        visitor.SendAsync("/me/account", "form[action*=Password]", ("Form.Old", old), ("Form.New", password));
}
