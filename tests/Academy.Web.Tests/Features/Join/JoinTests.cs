using System.Net;
using Academy.Competence.People;
using Academy.Storage;
using Academy.Web.Access;
using Academy.Web.Tests.Hosting;
using Microsoft.EntityFrameworkCore;

namespace Academy.Web.Tests.Features.Join;

/// <summary>One-time links after OWASP ASVS 5.0.0, V6.4.1 (random, short-lived, first use ends it, never a lasting password).</summary>
public sealed class JoinTests
{
    private static readonly (string, string)[] Filled = [("Own.Name", "rosa"), ("Own.Password", Joining.Password)];

    [Fact]
    public async Task A_link_lets_its_person_choose_a_name_and_a_password_and_signs_her_in()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        using var rosa = portal.Anyone();
        var page = await rosa.GetAsync(await LinkAsync(portal, cast, cast.Senior));
        var joined = await page.Form().With(Filled).SendAsync();

        Assert.Equal("Rosa, choose how you sign in", page.Heading);
        Assert.Equal("/", joined.Location);
        Assert.Contains(
            "Rosa",
            (await rosa.GetAsync("/in-today")).Page.QuerySelector(".where")!.TextContent,
            StringComparison.Ordinal
        );
    }

    [Fact]
    public async Task It_opens_once()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        using var rosa = portal.Anyone();
        using var thief = portal.Anyone();
        var link = await LinkAsync(portal, cast, cast.Senior);
        var open = await thief.GetAsync(link);
        await rosa.SendAsync(link, Filled);

        AssertDoesNotOpen(await thief.GetAsync(link));
        AssertDoesNotOpen(await open.Form().With(("Own.Name", "thief"), ("Own.Password", Joining.Password)).SendAsync());
        Assert.Equal([HttpStatusCode.Redirect], [(await thief.SignInAsync("rosa")).Status]);
    }

    [Fact]
    public async Task Two_who_use_it_at_once_do_not_both_get_in()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        var link = await LinkAsync(portal, cast, cast.Senior);
        var forms = new List<Form>();
        for (var at = 0; at < 4; at++)
            forms.Add(
                (await portal.Anyone().GetAsync(link)).Form().With(("Own.Name", $"rosa {at}"), ("Own.Password", Joining.Password))
            );

        var answers = await Task.WhenAll(forms.Select(form => form.SendAsync()));

        Assert.Equal(1, answers.Count(answer => answer.Status == HttpStatusCode.Redirect));
        Assert.Equal(3, answers.Count(answer => answer.Status == HttpStatusCode.NotFound));
    }

    [Theory]
    [InlineData(7 * 24 * 60 - 1, HttpStatusCode.OK)]
    [InlineData(7 * 24 * 60, HttpStatusCode.NotFound)] // half-open: seven days and not a moment more
    public async Task It_opens_for_seven_days(int minutes, HttpStatusCode status)
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        var link = await LinkAsync(portal, cast, cast.Senior);

        portal.Clock.Advance(TimeSpan.FromMinutes(minutes));

        Assert.Equal(status, (await portal.Anyone().GetAsync(link)).Status);
    }

    [Fact]
    public async Task A_new_link_makes_the_one_before_it_void()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        var first = await LinkAsync(portal, cast, cast.Senior);
        var others = await LinkAsync(portal, cast, cast.Junior);
        var second = await LinkAsync(portal, cast, cast.Senior);

        AssertDoesNotOpen(await portal.Anyone().GetAsync(first));
        Assert.Equal("Rosa, choose how you sign in", (await portal.Anyone().GetAsync(second)).Heading);
        Assert.Equal("Pim, choose how you sign in", (await portal.Anyone().GetAsync(others)).Heading);
    }

    [Fact]
    public async Task A_made_up_link_does_not_open_and_says_nothing_of_anybody()
    {
        var (portal, _) = await PortalHost.OpenAsync();
        await using var __ = portal;

        AssertDoesNotOpen(await portal.Anyone().GetAsync("/join/AAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAA"));
    }

    [Fact]
    public async Task The_database_holds_only_the_hash_of_the_token()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        var token = (await LinkAsync(portal, cast, cast.Senior))["/join/".Length..];

        var kept = await portal.DoAsync<AcademyDb, byte[]>(db => db.Invitations.Select(row => row.TokenHash).SingleAsync());
        Assert.Equal(43, token.Length); // 256 bits in base 64
        Assert.Equal(System.Security.Cryptography.SHA256.HashData(System.Text.Encoding.UTF8.GetBytes(token)), kept);
    }

    [Fact]
    public async Task A_name_that_somebody_else_signs_in_with_is_not_taken_twice()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        using var rosa = portal.Anyone();
        await rosa.SendAsync(await LinkAsync(portal, cast, cast.Senior), Filled);
        var refused = await portal
            .Anyone()
            .SendAsync(await LinkAsync(portal, cast, cast.Junior), ("Own.Name", "ROSA"), ("Own.Password", Joining.Password));

        Assert.Equal(HttpStatusCode.UnprocessableEntity, refused.Status);
        Assert.Equal(["Name to sign in with: somebody has this one. Choose another"], refused.Problems);
        Assert.Equal(
            "/",
            (await refused.Form().With(("Own.Name", "pim"), ("Own.Password", Joining.Password)).SendAsync()).Location
        );
    }

    [Theory]
    [InlineData("too short", "Password: at least 15 characters, this one has 9. A few words in a row do well")]
    [InlineData(
        "rosa-the-wet-nose-2026",
        "Password: this one is made of names, words or rows of keys that anybody would try first. Add words of your own"
    )]
    public async Task A_password_that_anybody_would_try_is_not_taken_and_the_link_still_opens(string password, string problem)
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        using var rosa = portal.Anyone();
        var refused = await rosa.SendAsync(
            await LinkAsync(portal, cast, cast.Senior),
            ("Own.Name", "rosa"),
            ("Own.Password", password)
        );

        Assert.Equal([problem], refused.Problems);
        Assert.Equal("rosa", refused.Form()["Own.Name"]);
        Assert.Equal("", refused.Form()["Own.Password"]);
        Assert.Equal("/", (await refused.Form().With(Filled).SendAsync()).Location);
    }

    [Fact]
    public async Task A_second_link_gives_the_same_person_a_new_password_and_ends_what_was_open()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        using var before = portal.Anyone();
        await before.SendAsync(await LinkAsync(portal, cast, cast.Senior), Filled);
        using var after = portal.Anyone();
        await after.SendAsync(
            await LinkAsync(portal, cast, cast.Senior),
            ("Own.Name", "rosa"),
            ("Own.Password", "nine kettles sing louder")
        );

        Assert.StartsWith("/sign-in", (await before.GetAsync("/in-today")).Location, StringComparison.Ordinal);
        Assert.Equal(HttpStatusCode.UnprocessableEntity, (await portal.Anyone().SignInAsync("rosa")).Status);
        Assert.Equal(HttpStatusCode.Redirect, (await portal.Anyone().SignInAsync("rosa", "nine kettles sing louder")).Status);
    }

    [Fact]
    public async Task Whoever_cannot_get_in_gets_a_link_from_the_console_of_whoever_starts_the_portal()
    {
        var (portal, _) = await PortalHost.OpenAsync();
        await using var restarted = (await portal.AgainAsync()).With("link-for", "ines");
        using var ines = restarted.Anyone();
        var link = restarted
            .Console.ToString()
            .Split(' ', '\n')
            .Single(word => word.StartsWith("/join/", StringComparison.Ordinal));

        Assert.Equal("Ines, choose how you sign in", (await ines.GetAsync(link)).Heading);
    }

    [Fact]
    public async Task For_a_name_that_nobody_has_no_link_is_made()
    {
        var (portal, _) = await PortalHost.OpenAsync();
        await using var restarted = (await portal.AgainAsync()).With("link-for", "nobody");
        _ = restarted.Services;

        Assert.Equal("Nobody who works here is called nobody: no link was made.", restarted.Console.ToString().Trim());
    }

    private static Task<string> LinkAsync(PortalHost portal, Cast cast, Person person) =>
        portal.DoAsync<Links, string>(links => links.MakeAsync(cast.Salon, person.Id));

    private static void AssertDoesNotOpen(Answer answer)
    {
        Assert.Equal(HttpStatusCode.NotFound, answer.Status);
        Assert.Equal("This link does not open", answer.Heading);
        Assert.DoesNotContain("Rosa", answer.Words, StringComparison.Ordinal);
    }
}
