using Academy.Web.Tests.Hosting;

namespace Academy.Web.Tests.Features.Forecasts;

/// <summary>What runs out soon, and on which dogs it could be kept fresh.</summary>
public sealed class LapsingTests
{
    [Fact]
    public async Task A_coat_that_runs_out_for_want_of_grooms_names_its_dogs_the_longest_away_first()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        await portal.WithoutModulesAsync(cast, "wool");
        await portal.DeclareAsync(cast, cast.Senior, "wool");
        await portal.MeetAsync(cast, "Teasel", "Poodle (Miniature)", "wool");
        await portal.MeetAsync(cast, "Winkle", "Beagle", "smooth");
        portal.Clock.Advance(TimeSpan.FromDays(80));
        using (var early = await portal.AsAsync(cast, cast.Owner))
            Assert.Equal("Nothing runs out in 30 days", (await early.GetAsync("/lapsing")).Heading);

        portal.Clock.Advance(TimeSpan.FromDays(15));
        using var ines = await portal.AsAsync(cast, cast.Owner);
        var lapsing = await ines.GetAsync("/lapsing");

        Assert.Equal("1 standing runs out in 30 days", lapsing.Heading);
        var line = lapsing.Page.QuerySelector("main .rows > li")!;
        Assert.Contains("Rosa, wool", line.TextContent, StringComparison.Ordinal);
        Assert.Contains("too few grooms after that", line.TextContent, StringComparison.Ordinal);
        Assert.Equal(
            ["Teasel, Poodle (Miniature), not groomed here yet"],
            line.QuerySelectorAll(".ticks li").Select(dog => dog.TextContent)
        );
    }

    [Fact]
    public async Task What_ends_by_the_owners_limit_is_kept_by_no_dog()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        await portal.WithoutModulesAsync(cast, "wool");
        await portal.WoolAsync(cast, cast.Junior, marks: 17);
        await portal.MeetAsync(cast, "Teasel", "Poodle (Miniature)", "wool");
        await portal.ClearAsync(
            cast,
            cast.Junior,
            "wool",
            limits: Competence.Decisions.Limits.None with
            {
                Until = portal.Today.AddDays(9),
            }
        );
        using var ines = await portal.AsAsync(cast, cast.Owner);

        var line = (await ines.GetAsync("/lapsing")).Page.QuerySelector("main .rows > li")!;

        Assert.Contains("your limit", line.TextContent, StringComparison.Ordinal);
        Assert.Empty(line.QuerySelectorAll(".ticks li"));
    }
}
