using Academy.Competence;
using Academy.Competence.Grooms;
using Academy.Competence.Salons;
using Academy.Web.Tests.Hosting;

namespace Academy.Web.Tests.Features.Readings;

/// <summary>The room's quiet line on the first page and on the dog check. Limits: the salon's own numbers, product paper "Heat".</summary>
public sealed class ReadingLineTests
{
    [Theory]
    [InlineData(239, "23.9 °C, 50 %", "Under the salon’s limits", false)]
    [InlineData(240, "24.0 °C, 50 %", "Hot day for dogs at risk in heat", true)]
    [InlineData(260, "26.0 °C, 50 %", "Hot day", true)]
    [InlineData(280, "28.0 °C, 50 %", "Hot day, and the stop line for dogs at risk in heat: re-book them", true)]
    [InlineData(300, "30.0 °C, 50 %", "Stop line: nobody grooms, re-book", true)]
    public async Task What_was_read_its_age_and_what_it_means_stand_on_both_pages(int tenths, string room, string means, bool hot)
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        await portal.KeepAsync(
            cast.Salon,
            Keeping.ReadRoom(new RoomReading(portal.Now, tenths, 50), "table room", portal.Now),
            cast.Senior
        );
        portal.Clock.Advance(TimeSpan.FromMinutes(25));
        using var pim = await portal.AsAsync(cast, cast.Junior);

        foreach (var path in new[] { "/", "/dog-check" })
        {
            var line = (await pim.GetAsync(path)).Page.QuerySelector(".reading-line")!;
            Assert.Equal(room, line.QuerySelector("b")!.TextContent);
            Assert.Equal("10:00 today, 25 minutes ago", line.QuerySelector(".quiet")!.TextContent);
            Assert.Equal(means, line.QuerySelector(".means")!.TextContent);
            Assert.Equal(hot, line.ClassList.Contains("hot"));
            Assert.Equal("/readings/new", line.QuerySelector("a")!.GetAttribute("href"));
        }
    }

    [Fact]
    public async Task A_reading_of_four_hours_ago_says_nothing_any_more_in_the_season()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        await portal.KeepAsync(cast.Salon, Keeping.ReadRoom(new RoomReading(portal.Now, 210, null), "", portal.Now), cast.Senior);
        portal.Clock.Advance(TimeSpan.FromHours(4));
        using var pim = await portal.AsAsync(cast, cast.Junior);
        var line = (await pim.GetAsync("/")).Page.QuerySelector(".reading-line")!;

        Assert.Equal("21.0 °C", line.QuerySelector("b")!.TextContent);
        Assert.Equal(
            "No reading in the last 4 hours: dogs at risk in heat wait for one",
            line.QuerySelector(".means")!.TextContent
        );
    }

    [Fact]
    public async Task A_room_with_too_long_a_name_is_not_kept()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        using var pim = await portal.AsAsync(cast, cast.Junior);

        var answer = await pim.SendAsync("/readings/new", ("Temperature", "21"), ("Room", new string('x', 61)));

        Assert.Equal(["Room: at most 60 letters."], answer.Problems);
    }
}
