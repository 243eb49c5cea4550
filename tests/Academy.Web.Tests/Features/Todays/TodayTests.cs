using System.Net;
using Academy.Competence.Dogs;
using Academy.Competence.People;
using Academy.Competence.Skills;
using Academy.Web.Tests.Features.DogChecks;
using Academy.Web.Tests.Hosting;

namespace Academy.Web.Tests.Features.Todays;

public sealed class TodayTests
{
    private static readonly Dog Winkle = new(
        default,
        "Winkle",
        "Beagle",
        SkillBook.Smooth,
        null,
        [],
        new DateOnly(2022, 5, 1),
        AgeByLook.NotSaid,
        13
    );

    [Fact]
    public async Task An_empty_day_says_so_to_everybody()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await portal.DeclareAsync(cast, cast.Senior, "bath");
        foreach (var person in cast.Everybody)
        {
            using var visitor = await portal.AsAsync(cast, person);
            var answer = await visitor.GetAsync("/");

            Assert.Equal(HttpStatusCode.OK, answer.Status);
            Assert.Equal("Nothing waits for you", answer.Heading);
            Assert.Contains("Nobody is ticked in yet.", answer.Words, StringComparison.Ordinal);
        }
        portal.Dispose();
    }

    [Fact]
    public async Task While_nobody_may_groom_alone_the_owner_is_led_to_the_first_things()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var open = portal;
        using var ines = await portal.AsAsync(cast, cast.Owner);
        using var rosa = await portal.AsAsync(cast, cast.Senior);

        var first = await ines.GetAsync("/");
        Assert.Equal("Nobody may groom alone here yet", first.Heading);
        Assert.Equal("/welcome", first.Page.QuerySelector(".first-act a")!.GetAttribute("href"));
        Assert.Equal("Nothing waits for you", (await rosa.GetAsync("/")).Heading);

        await portal.DeclareAsync(cast, cast.Senior, "bath");
        Assert.Equal("Nothing waits for you", (await ines.GetAsync("/")).Heading);
    }

    [Fact]
    public async Task The_owner_is_told_first_what_may_have_hurt_a_dog()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await portal.KeepAsync(cast.Salon, Staffing.Tick(cast.Senior, portal.Today, isIn: true, cast.Owner), cast.Owner);
        await portal.DeclareAsync(cast, cast.Senior, "smooth", "bath");
        var groom = await portal.GroomAloneAsync(cast, cast.Senior, await portal.MeetAsync(cast, Winkle));
        await portal.HurtAsync(cast, groom);
        using var ines = await portal.AsAsync(cast, cast.Owner);

        var answer = await ines.GetAsync("/");

        Assert.Equal("1 incident waits for your review", answer.Heading);
        Assert.Contains("Rosa with Winkle", answer.Words, StringComparison.Ordinal);
        Assert.Contains("Rosa, smooth", answer.Words, StringComparison.Ordinal);
        portal.Dispose();
    }

    [Fact]
    public async Task A_junior_sees_only_her_own_dogs_of_the_day()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await portal.GroomAloneAsync(cast, cast.Senior, await portal.MeetAsync(cast, Winkle));
        await portal.GroomAloneAsync(cast, cast.Junior, await portal.MeetAsync(cast, Winkle with { Name = "Kelp" }));
        using var pim = await portal.AsAsync(cast, cast.Junior);

        var answer = await pim.GetAsync("/");

        Assert.Contains("Kelp", answer.Words, StringComparison.Ordinal);
        Assert.DoesNotContain("Winkle", answer.Words, StringComparison.Ordinal);
        portal.Dispose();
    }
}
