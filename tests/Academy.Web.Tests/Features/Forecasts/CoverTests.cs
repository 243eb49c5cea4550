using System.Net;
using Academy.Web.Tests.Hosting;

namespace Academy.Web.Tests.Features.Forecasts;

/// <summary>Who covers which skill, today and later, and without somebody.</summary>
public sealed class CoverTests
{
    [Fact]
    public async Task What_rests_on_one_person_is_said_and_what_would_be_left_without_her()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        await portal.DeclareAsync(cast, cast.Senior, "bath", "nails");
        await portal.DeclareAsync(cast, cast.Owner, "nails");
        using var ines = await portal.AsAsync(cast, cast.Owner);

        var cover = await ines.GetAsync("/coverage");
        Assert.Equal("1 skill rests on one person, 33 skills on nobody", cover.Heading);
        Assert.Equal(["Bath", "Rosa, nobody else", "1"], Line(cover, "Bath")[..3]);
        // Nothing is done: declared grooms fall out of the window of 120 days, so in 90 days it still holds.
        Assert.Equal("1", Line(cover, "Bath")[^1]);

        var without = await ines.GetAsync($"/coverage?Without={cast.Senior.Id.Value}");
        Assert.Equal("Without Rosa: 1 skill rests on one person, 34 skills on nobody", without.Heading);
        Assert.Equal("Ines, nobody else", Line(without, "Nails")[1]);
        Assert.Equal("nobody", Line(without, "Bath")[1]);
        Assert.True(without.Page.QuerySelector($"input[value='{cast.Senior.Id.Value}']")!.HasAttribute("checked"));
    }

    [Fact]
    public async Task Somebody_who_is_not_there_and_nonsense_take_nobody_away()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        await portal.DeclareAsync(cast, cast.Senior, "bath");
        using var ines = await portal.AsAsync(cast, cast.Owner);

        var cover = await ines.GetAsync($"/coverage?Without={Guid.Empty}&Without=%3Cscript%3E");

        Assert.Equal((HttpStatusCode.OK, "1 skill rests on one person, 34 skills on nobody"), (cover.Status, cover.Heading));
    }

    private static string[] Line(Answer answer, string skill) =>
        [
            .. answer
                .Page.QuerySelectorAll("tbody tr")
                .Single(row => row.QuerySelector("th")!.TextContent == skill)
                .Children.Select(cell => cell.TextContent.Trim()),
        ];
}
