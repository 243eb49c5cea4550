using Academy.Competence.Standings;
using Academy.Web.Tests.Hosting;

namespace Academy.Web.Tests.Features.Forecasts;

/// <summary>How far the clearances in force can be trusted. The figures are checked where they are reckoned.</summary>
public sealed class TrustTests
{
    [Fact]
    public async Task Before_anybody_is_rated_nothing_is_reckoned_and_declarations_are_named()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        await portal.DeclareAsync(cast, cast.Senior, "bath", "nails");
        using var ines = await portal.AsAsync(cast, cast.Owner);

        var trust = await ines.GetAsync("/trust");

        Assert.Equal("No rated groom speaks of a clearance in force", trust.Heading);
        Assert.Contains("Of 2 more clearances no rated groom speaks", trust.Words, StringComparison.Ordinal);
        Assert.Null(trust.Page.QuerySelector("main table"));
    }

    [Fact]
    public async Task A_clearance_by_the_rules_is_the_example_and_leads_to_its_reasons()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        await portal.WithoutModulesAsync(cast, "wool");
        await portal.WoolAsync(cast, cast.Junior, marks: 17);
        await portal.ClearAsync(cast, cast.Junior, "wool");
        Assert.Equal(StandingKind.Alone, (await portal.StandingAsync(cast, cast.Junior, "wool")).Kind);
        using var ines = await portal.AsAsync(cast, cast.Owner);

        var trust = await ines.GetAsync("/trust");

        Assert.StartsWith("Of 1 clearance that rated grooms speak of, about ", trust.Heading, StringComparison.Ordinal);
        Assert.Contains("Pim in wool: 0 of 17 needed fixing.", trust.Words, StringComparison.Ordinal);
        Assert.Equal($"/board/{cast.Junior.Id.Value}/wool", trust.Page.QuerySelector("main tbody a")!.GetAttribute("href"));
    }
}
