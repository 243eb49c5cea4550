using System.Net;
using Academy.Web.Tests.Hosting;

namespace Academy.Web.Tests.Features.Forecasts;

/// <summary>When somebody's rows may be full. The figures are checked where they are reckoned.</summary>
public sealed class AheadTests
{
    [Fact]
    public async Task A_junior_reads_by_when_her_row_may_be_full()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        await portal.WoolAsync(cast, cast.Junior, marks: 11);
        using var pim = await portal.AsAsync(cast, cast.Junior);

        var me = await pim.GetAsync("/me");
        var link = me.Page.QuerySelectorAll("main a").Single(one => one.TextContent == "When the rows may be full");
        var ahead = await pim.GetAsync(link.GetAttribute("href")!);

        Assert.Equal("What lies ahead for you", ahead.Heading);
        var wool = ahead.Page.QuerySelector("section[aria-labelledby=ahead-wool]")!;
        Assert.Contains("0 of 11 rated grooms needed fixing.", wool.TextContent, StringComparison.Ordinal);
        var rows = wool.QuerySelectorAll("tbody tr");
        Assert.Equal(2, rows.Length);
        Assert.All(rows, row => Assert.Matches(@"\d{1,2} \w+", row.QuerySelectorAll("td")[0].TextContent));
    }

    [Fact]
    public async Task Too_few_grooms_name_no_day()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        await portal.WoolAsync(cast, cast.Junior, marks: 4);
        using var rosa = await portal.AsAsync(cast, cast.Senior);

        var ahead = await rosa.GetAsync($"/people/{cast.Junior.Id.Value}/ahead");

        Assert.Contains("After 5 rated grooms a day can be named. So far there are 4.", ahead.Words, StringComparison.Ordinal);
        var wool = ahead.Page.QuerySelector("section[aria-labelledby=ahead-wool]")!;
        Assert.Null(wool.QuerySelector("table"));
    }

    [Fact]
    public async Task Somebody_new_is_told_that_nothing_is_begun_and_nobody_looks_at_others()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        using var pim = await portal.AsAsync(cast, cast.Junior);

        Assert.Contains(
            "No row of yours is begun",
            (await pim.GetAsync($"/people/{cast.Junior.Id.Value}/ahead")).Words,
            StringComparison.Ordinal
        );
        Assert.Equal(HttpStatusCode.NotFound, (await pim.GetAsync($"/people/{cast.Senior.Id.Value}/ahead")).Status);
    }
}
