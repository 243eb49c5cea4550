using System.Net;
using Academy.Storage;
using Academy.Web.Access;
using Academy.Web.Tests.Hosting;
using AngleSharp;
using Microsoft.EntityFrameworkCore;

namespace Academy.Web.Tests.Features.SignIn;

/// <summary>
/// Name and password, and what too many wrong ones cost. Against guessing: NIST SP 800-63B-4 (3.2.2) and OWASP ASVS 5.0.0, V6.3.1;
/// against telling who is there: V6.3.8.
/// </summary>
public sealed class SignInTests
{
    private const string Wrong = "Name and password do not fit together: write both once more";

    [Theory]
    [InlineData("Rosa")]
    [InlineData("  rosa ")] // capitals and spaces are slips, not another person
    public async Task Name_and_password_sign_in_and_lead_back_to_the_page_that_was_asked_for(string name)
    {
        await using var portal = new PortalHost();
        using var rosa = await KnownAsync(portal);
        var asked = await rosa.GetAsync("/in-today");
        var signedIn = await rosa.SignInAsync(name, path: asked.Location!);

        Assert.Equal("/sign-in?back=%2Fin-today", asked.Location);
        Assert.Equal("/in-today", signedIn.Location);
        Assert.Equal("Nobody is ticked in yet", (await signedIn.FollowAsync()).Heading);
    }

    [Theory]
    [InlineData("https://elsewhere.example/")]
    [InlineData("//elsewhere.example/")]
    [InlineData("/\\elsewhere.example")]
    [InlineData("javascript:alert(1)")]
    public async Task Nobody_is_led_away_from_the_portal(string back)
    {
        await using var portal = new PortalHost();
        using var rosa = await KnownAsync(portal);

        Assert.Equal("/", (await rosa.SignInAsync("Rosa", path: "/sign-in?back=" + Uri.EscapeDataString(back))).Location);
    }

    [Theory]
    [InlineData("Rosa", "not seven kettles at all")]
    [InlineData("Nobody", Joining.Password)]
    [InlineData("Rosa", "Seven kettles sing quietly")] // case counts
    [InlineData("Rosa", "seven kettles sing quietly ")] // and so does every space
    [InlineData("<b>Rosa</b>", "' or 1=1 --")]
    public async Task A_wrong_password_and_an_unknown_name_get_the_same_answer(string name, string password)
    {
        await using var portal = new PortalHost();
        using var visitor = await KnownAsync(portal);
        var refused = await visitor.SignInAsync(name, password);

        Assert.Equal(HttpStatusCode.UnprocessableEntity, refused.Status);
        Assert.Equal([Wrong], refused.Problems);
        Assert.Equal(name, refused.Form()["Name"]);
        Assert.Equal("", refused.Form()["Password"]);
        Assert.Empty(refused.Page.QuerySelectorAll("b:contains('Rosa')"));
    }

    [Fact]
    public async Task An_empty_form_says_what_to_write()
    {
        await using var portal = new PortalHost();
        using var visitor = await KnownAsync(portal);

        Assert.Equal(
            ["Name: write the name that you sign in with", "Password: write your password"],
            (await visitor.SignInAsync("", "")).Problems
        );
    }

    [Fact]
    public async Task Five_wrong_passwords_are_free_and_then_the_wait_doubles()
    {
        await using var portal = new PortalHost();
        using var visitor = await KnownAsync(portal);
        await FailAsync(visitor, "Rosa", times: 5);

        foreach (var (seconds, words) in new[] { (30, "30 seconds"), (60, "60 seconds"), (120, "2 minutes") })
        {
            var waits = await visitor.SignInAsync("Rosa");
            Assert.Equal(HttpStatusCode.TooManyRequests, waits.Status);
            Assert.Equal([$"Too many tries: wait {words}, then try once more"], waits.Problems);
            Assert.Equal($"{seconds}", waits.Message.Headers.RetryAfter!.ToString());

            portal.Clock.Advance(TimeSpan.FromSeconds(seconds));
            Assert.Equal([Wrong], (await visitor.SignInAsync("Rosa", "a wrong one once more")).Problems);
        }
    }

    [Fact]
    public async Task A_right_password_during_the_wait_is_not_looked_at_and_after_it_wipes_the_slate()
    {
        await using var portal = new PortalHost();
        using var visitor = await KnownAsync(portal);
        await FailAsync(visitor, "Rosa", times: 5);

        Assert.Equal(HttpStatusCode.TooManyRequests, (await visitor.SignInAsync("Rosa")).Status);
        portal.Clock.Advance(TimeSpan.FromSeconds(30));
        Assert.Equal(HttpStatusCode.Redirect, (await visitor.SignInAsync("Rosa")).Status);

        using var later = portal.Anyone();
        await FailAsync(later, "Rosa", times: 5);
    }

    [Fact]
    public async Task An_unknown_name_waits_like_a_known_one()
    {
        await using var portal = new PortalHost();
        using var visitor = await KnownAsync(portal);
        await FailAsync(visitor, "Nobody", times: 5);

        Assert.Equal(["Too many tries: wait 30 seconds, then try once more"], (await visitor.SignInAsync("Nobody")).Problems);
    }

    [Fact]
    public async Task One_source_that_tries_many_names_waits_too_and_another_does_not()
    {
        await using var portal = new PortalHost();
        using var rosa = await KnownAsync(portal);
        for (var name = 0; name < 5; name++)
            await portal.DoAsync<Door, Entrance>(door => door.TryAsync($"name {name}", "a wrong one for each", "192.0.2.7"));

        Assert.IsType<Entrance.Waits>(
            await portal.DoAsync<Door, Entrance>(door => door.TryAsync("Rosa", Joining.Password, "192.0.2.7"))
        );
        Assert.IsType<Entrance.Open>(
            await portal.DoAsync<Door, Entrance>(door => door.TryAsync("Rosa", Joining.Password, "192.0.2.8"))
        );
    }

    [Fact]
    public async Task Her_own_slips_are_forgiven_to_the_house_she_comes_from_and_those_of_others_are_not()
    {
        await using var portal = new PortalHost();
        using var rosa = await KnownAsync(portal);
        await FailAsync(rosa, "Nobody", times: 2);
        await FailAsync(rosa, "Rosa", times: 2);
        Assert.Equal(HttpStatusCode.Redirect, (await rosa.SignInAsync("Rosa")).Status);

        using var next = portal.Anyone();
        await FailAsync(next, "Somebody", times: 3);

        Assert.Equal(HttpStatusCode.TooManyRequests, (await next.SignInAsync("Somebody else")).Status);
    }

    [Fact]
    public async Task An_hour_without_a_failure_makes_a_source_new_again()
    {
        await using var portal = new PortalHost();
        using var visitor = await KnownAsync(portal);
        foreach (var name in new[] { "a", "bb", "cc", "dd", "ee", "ff" }[1..])
            await FailAsync(visitor, name, times: 1);
        Assert.Equal(HttpStatusCode.TooManyRequests, (await visitor.SignInAsync("gg")).Status);

        portal.Clock.Advance(TimeSpan.FromHours(1));

        await FailAsync(visitor, "gg", times: 5);
    }

    [Fact]
    public async Task A_hundred_tries_at_once_are_a_hundred_tries()
    {
        await using var portal = new PortalHost();
        using var rosa = await KnownAsync(portal);
        var tries = await Task.WhenAll(
            Enumerable
                .Range(0, 100)
                .Select(at =>
                    portal.DoAsync<Door, Entrance>(door => door.TryAsync("Rosa", $"one of a hundred guesses {at}", "192.0.2.7"))
                )
        );

        Assert.Equal(5, tries.Count(entrance => entrance is Entrance.NotFitting));
        Assert.Equal(95, tries.Count(entrance => entrance is Entrance.Waits));
    }

    [Fact]
    public async Task At_fifty_nothing_is_tried_any_more_until_the_owner_says_so()
    {
        await using var portal = new PortalHost();
        using var rosa = await KnownAsync(portal, out var cast);
        for (var failures = 0; failures < 50; failures++)
        {
            var entrance = await portal.DoAsync<Door, Entrance>(door =>
                door.TryAsync("Rosa", "wrong again and again", $"192.0.2.{failures}")
            );
            Assert.IsType<Entrance.NotFitting>(entrance);
            portal.Clock.Advance(TimeSpan.FromMinutes(15));
        }
        portal.Clock.Advance(TimeSpan.FromDays(60));

        var stopped = await rosa.SignInAsync("Rosa");
        Assert.Equal(HttpStatusCode.TooManyRequests, stopped.Status);
        Assert.Equal(["Too many tries: the owner has to let this name in again, on the page of the person"], stopped.Problems);

        using var ines = await portal.AsAsync((await cast), (await cast).Owner);
        var page = await ines.GetAsync($"/people/{(await cast).Senior.Id.Value}");
        Assert.Contains(
            "50 wrong passwords in a row: nothing more is tried until you say so.",
            page.Words,
            StringComparison.Ordinal
        );
        await page.Form("form[action*=LetTry]").SendAsync();

        Assert.Equal(HttpStatusCode.Redirect, (await rosa.SignInAsync("Rosa")).Status);
    }

    [Fact]
    public async Task What_was_typed_as_a_name_is_never_kept_or_logged()
    {
        await using var portal = new PortalHost();
        using var visitor = await KnownAsync(portal);
        await visitor.SignInAsync("my password in the wrong box", "typed too early");

        var keys = await portal.DoAsync<AcademyDb, List<string>>(db => db.SignInFailures.Select(row => row.Key).ToListAsync());
        Assert.All(keys, key => Assert.DoesNotContain("wrong box", key, StringComparison.OrdinalIgnoreCase));
        Assert.All(portal.Log.Lines, line => Assert.DoesNotContain("wrong box", line, StringComparison.OrdinalIgnoreCase));
        Assert.Contains(portal.Log.Lines, line => line.StartsWith("A sign-in from ", StringComparison.Ordinal));
    }

    [Fact]
    public async Task Whoever_has_left_or_is_past_her_last_day_does_not_get_in()
    {
        await using var portal = new PortalHost();
        using var rosa = await KnownAsync(portal, out var opened);
        var cast = await opened;
        var ending = cast.Senior with { EndsOn = portal.Today };
        await portal.KeepAsync(
            cast.Salon,
            Academy.Competence.People.Staffing.Describe(ending, cast.Senior, cast.Owner, owners: 1),
            cast.Owner
        );

        Assert.Equal(HttpStatusCode.Redirect, (await rosa.SignInAsync("Rosa")).Status);
        portal.Clock.Advance(TimeSpan.FromHours(14)); // midnight in the salon's zone
        Assert.StartsWith("/sign-in", (await rosa.GetAsync("/in-today")).Location, StringComparison.Ordinal);
        using var again = portal.Anyone();
        Assert.Equal([Wrong], (await again.SignInAsync("Rosa")).Problems);
    }

    [Fact]
    public async Task Whoever_is_signed_in_is_led_past_the_cover()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        using var pim = await portal.AsAsync(cast, cast.Junior);

        Assert.Equal("/in-today", (await pim.GetAsync("/sign-in?back=/in-today")).Location);
    }

    [Fact]
    public async Task The_cover_warns_of_the_shared_tablet_and_lists_nobody()
    {
        var (portal, _) = await PortalHost.OpenAsync();
        await using var __ = portal;
        using var visitor = portal.Anyone();
        var cover = await visitor.GetAsync("/sign-in");

        Assert.Contains("Not on the salon’s shared tablet yet", cover.Words, StringComparison.Ordinal);
        Assert.DoesNotContain("Rosa", cover.Page.ToHtml(), StringComparison.Ordinal);
        Assert.Equal("current-password", cover.Page.QuerySelector("#Password")!.GetAttribute("autocomplete"));
        Assert.Equal("username", cover.Page.QuerySelector("#Name")!.GetAttribute("autocomplete"));
    }

    [Fact]
    public async Task A_link_to_sign_out_signs_nobody_out()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        using var pim = await portal.AsAsync(cast, cast.Junior);

        await pim.GetAsync("/sign-out");

        Assert.Equal(HttpStatusCode.OK, (await pim.GetAsync("/in-today")).Status);
    }

    private static async Task FailAsync(Visitor visitor, string name, int times)
    {
        for (var time = 0; time < times; time++)
            Assert.Equal([Wrong], (await visitor.SignInAsync(name, "a wrong one once more")).Problems);
    }

    private static Task<Visitor> KnownAsync(PortalHost portal) => KnownAsync(portal, out _);

    // Rosa has chosen her password on some other day; the visitor is signed out again.
    private static Task<Visitor> KnownAsync(PortalHost portal, out Task<Cast> cast)
    {
        var opened = portal.OpenSalonAsync();
        cast = opened;
        return Known();

        async Task<Visitor> Known()
        {
            using var first = portal.Anyone();
            await first.JoinAsync(portal, await opened, (await opened).Senior);
            return portal.Anyone();
        }
    }
}
