using System.Net;
using Academy.Competence.Grooms;
using Academy.Competence.Skills;
using Academy.Web.Tests.Hosting;
using AngleSharp.Dom;

namespace Academy.Web.Tests.Features.Grooms;

/// <summary>Welfare checks without a script: one press writes the time, and everything tapped and typed is still there.</summary>
public sealed class StampTests
{
    [Fact]
    public async Task One_press_writes_the_time_and_keeps_the_rest_of_the_form()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        var dog = await portal.MeetAsync(cast);
        using var junior = await portal.AsAsync(cast, cast.Junior);
        var form = LogTests.Usual((await junior.GetAsync(LogTests.Straight(portal, dog.Id))).Form(), cast);
        var page = await form.With(("Form.Notes", "Calm."), ("Form.Temperature", "warm"), ("Form.Signs", "Panting"))
            .PressAsync("[name=stamp][value=ArrivalPads]");

        Assert.Equal(HttpStatusCode.OK, page.Status);
        Assert.Empty(page.Problems);
        Assert.Equal(["ArrivalPads"], page.Form().All("Form.StampedWhat"));
        Assert.Equal(["10:00"], page.Form().All("Form.StampedAt"));
        Assert.True(page.Page.QuerySelector("[name=stamp][value=ArrivalPads]")!.HasAttribute("hidden"));
        Assert.Equal(
            ("Calm.", "warm", "Panting", "bath", "60"),
            (
                page.Form()["Form.Notes"]!.Trim(),
                page.Form()["Form.Temperature"],
                page.Form()["Form.Signs"],
                page.Form()["Form.Techniques"],
                page.Form()["Form.Minutes"]
            )
        );
    }

    [Fact]
    public async Task Stamps_are_undone_one_by_one_and_kept_with_their_times()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        var dog = await portal.MeetAsync(cast);
        using var junior = await portal.AsAsync(cast, cast.Junior);
        var page = await junior.GetAsync(LogTests.Straight(portal, dog.Id));
        page = await page.Form().PressAsync("[name=stamp][value=ArrivalPads]");
        portal.Clock.Advance(TimeSpan.FromMinutes(5));
        page = await page.Form().PressAsync("[name=stamp][value=WaterBeforeBath]");
        portal.Clock.Advance(TimeSpan.FromMinutes(40));
        page = await page.Form().PressAsync("[name=stamp][value=WaterAfterBath]");
        page = await page.Form().PressAsync("[name=unstamp][value='0']");
        Assert.Equal(["10:05", "10:45"], page.Form().All("Form.StampedAt"));

        // A time that was not right is written over.
        var sent = await LogTests
            .Usual(page.Form(), cast)
            .With(("Form.StampedAt", "1002"), ("Form.StampedAt", "10:40"))
            .SendAsync();
        var told = await LogTests.GroomAsync(portal, cast, LogTests.IdOf(sent));
        Assert.Equal(
            [
                new CheckMade(WelfareCheck.WaterBeforeBath, PortalHost.Start.AddMinutes(2)),
                new CheckMade(WelfareCheck.WaterAfterBath, PortalHost.Start.AddMinutes(40)),
            ],
            told.Checks.AsEnumerable()
        );
    }

    [Fact]
    public async Task A_muzzle_goes_on_has_breaks_and_comes_off()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        var dog = await portal.MeetAsync(cast, dog => dog with { Hazards = [SkillBook.Muzzled] });
        using var junior = await portal.AsAsync(cast, cast.Junior);
        var page = await junior.GetAsync(LogTests.Straight(portal, dog.Id));
        Assert.Equal(["MuzzleOn"], Offered(page));

        page = await page.Form().PressAsync("[name=stamp][value=MuzzleOn]");
        Assert.Equal(["MuzzleBreak", "MuzzleOff"], Offered(page));
        page = await page.Form().PressAsync("[name=stamp][value=MuzzleBreak]");
        var onStill = await LogTests.Usual(page.Form(), cast).SendAsync();
        Assert.Equal(["The muzzle went on and never came off: write when it came off."], onStill.Problems);

        page = await onStill.Form().PressAsync("[name=stamp][value=MuzzleOff]");
        Assert.Equal(["MuzzleOn"], Offered(page));
        Assert.Equal(HttpStatusCode.Redirect, (await page.Form().SendAsync()).Status);
    }

    [Fact]
    public async Task A_time_that_is_none_is_said()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        var dog = await portal.MeetAsync(cast);
        using var junior = await portal.AsAsync(cast, cast.Junior);
        var page = await (await junior.GetAsync(LogTests.Straight(portal, dog.Id)))
            .Form()
            .PressAsync("[name=stamp][value=ArrivalPads]");
        var answer = await LogTests.Usual(page.Form(), cast).With(("Form.StampedAt", "soon")).SendAsync();

        Assert.Equal(["Welfare checks: write each time like 9:02, or undo the check"], answer.Problems);
        Assert.Equal("soon", answer.Form()["Form.StampedAt"]);
    }

    private static IEnumerable<string> Offered(Answer page) =>
        page.Page.QuerySelectorAll("[data-muzzle=true] [name=stamp]:not([hidden])").Select(tap => tap.GetAttribute("value")!);
}
