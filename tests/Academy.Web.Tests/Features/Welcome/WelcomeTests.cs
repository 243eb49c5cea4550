using System.Net;
using Academy.Competence;
using Academy.Competence.Salons;
using Academy.Web.Tests.Hosting;

namespace Academy.Web.Tests.Features.Welcome;

/// <summary>The first things of a new salon, and how far each is.</summary>
public sealed class WelcomeTests
{
    [Fact]
    public async Task Each_first_thing_says_how_far_it_is_and_leads_to_its_page()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        using var ines = await portal.AsAsync(cast, cast.Owner);

        var before = await ines.GetAsync("/welcome");

        Assert.Equal("The Wet Nose is open; 4 things can still be filled in", before.Heading);
        Assert.Equal(["5 people", "not yet", "not yet", "not yet", "not yet"], Whens(before));
        Assert.Equal(
            ["/people", $"/people/{cast.Owner.Id.Value}/experience", "/thresholds", "/dogs", "/house"],
            before.Page.QuerySelectorAll("main .wait a").Select(link => link.GetAttribute("href"))
        );
        foreach (var link in before.Page.QuerySelectorAll("main .wait a"))
            Assert.Equal(HttpStatusCode.OK, (await ines.GetAsync(link.GetAttribute("href")!)).Status);
    }

    [Fact]
    public async Task What_was_done_is_said_and_the_last_open_thing_opens_the_salon_for_its_dogs()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        await portal.DeclareAsync(cast, cast.Owner, "wool", "bath");
        await portal.MeetAsync(cast);
        await portal.KeepAsync(
            cast.Salon,
            Keeping.Describe(new Words(cast.Name), new Words("Harbour Vets"), new Words("+44 20 7946 0991"), cast.Owner),
            cast.Owner
        );
        using var ines = await portal.AsAsync(cast, cast.Owner);
        Assert.Equal(["5 people", "2 declared", "not yet", "1 dog", "+44 20 7946 0991"], Whens(await ines.GetAsync("/welcome")));

        var wool = (await portal.BookAsync(cast)).ThresholdOn(new SkillCode("wool"), portal.Today);
        var own = wool with { Version = wool.Version + 1, FromDay = portal.Today, Breeds = 4 };
        await portal.KeepAsync(cast.Salon, Keeping.SetThreshold(own, cast.Owner, portal.Today), cast.Owner);

        var done = await ines.GetAsync("/welcome");
        Assert.Equal("The Wet Nose is ready for its dogs", done.Heading);
        Assert.Contains("1 of your own", Whens(done));
    }

    [Fact]
    public async Task It_is_the_owners_alone()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        using var rosa = await portal.AsAsync(cast, cast.Senior);

        Assert.Equal(HttpStatusCode.Forbidden, (await rosa.GetAsync("/welcome")).Status);
    }

    private static List<string> Whens(Answer page) =>
        [.. page.Page.QuerySelectorAll("main .wait .when").Select(when => when.TextContent.Trim())];
}
