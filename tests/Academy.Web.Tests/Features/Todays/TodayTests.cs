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
