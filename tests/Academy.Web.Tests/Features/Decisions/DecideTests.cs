using System.Net;
using Academy.Competence;
using Academy.Competence.Incidents;
using Academy.Competence.Salons;
using Academy.Competence.SignOffs;
using Academy.Competence.Statistics;
using Academy.Competence.Thresholds;
using Academy.Web.Tests.Hosting;

namespace Academy.Web.Tests.Features.Decisions;

/// <summary>What waits for the owner.</summary>
public sealed class DecideTests
{
    [Fact]
    public async Task A_new_salon_has_nobody_who_waits()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        using var ines = await portal.AsAsync(cast, cast.Owner);
        var decide = await ines.GetAsync("/decide");

        Assert.Equal((HttpStatusCode.OK, "Nobody waits for your decision"), (decide.Status, decide.Heading));
        Assert.Contains("Nobody is ready.", decide.Words, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Whoever_is_ready_is_named_with_her_record_and_leads_to_the_decision()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        await portal.WoolAsync(cast, cast.Junior, marks: 17);
        using var ines = await portal.AsAsync(cast, cast.Owner);
        var decide = await ines.GetAsync("/decide");

        Assert.Equal("1 person waits for your decision", decide.Heading);
        var pim = decide.Page.QuerySelector("section:has(#ready) li")!;
        Assert.Equal("Pim", pim.QuerySelector("h3")!.TextContent);
        Assert.Contains(
            "wool 17 of the last 17 suited; 3 breeds; Rosa 9, Dora 8",
            Fold(pim.TextContent),
            StringComparison.Ordinal
        );
        Assert.Equal($"/decide/{cast.Junior.Id.Value}", pim.QuerySelector("a")!.GetAttribute("href"));
    }

    [Fact]
    public async Task What_soon_runs_out_is_named_two_weeks_before_with_why()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        await portal.WithoutModulesAsync(cast, "wool");
        await portal.DeclareAsync(cast, cast.Senior, "wool");
        portal.Clock.Advance(TimeSpan.FromDays(104));
        Assert.DoesNotContain("About to lapse", await WordsAsync(), StringComparison.Ordinal);
        portal.Clock.Advance(TimeSpan.FromDays(1));
        Assert.Contains(
            "14 days left, until 7 October: too few grooms after that.",
            await WordsAsync(),
            StringComparison.Ordinal
        );

        async Task<string> WordsAsync()
        {
            using var ines = await portal.AsAsync(cast, cast.Owner);
            return (await ines.GetAsync("/decide")).Words;
        }
    }

    [Fact]
    public async Task Incidents_disputes_stops_exceptions_and_grooms_done_alone_are_named()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        var grooms = await portal.WoolAsync(cast, cast.Junior, marks: 2);
        var dog = await portal.MeetAsync(cast, "Pilchard", "Cockapoo", "wool");
        var groom = await portal.LogAsync(cast, cast.SecondJunior, cast.Senior, dog);
        var signed = await portal.SignAsync(cast, cast.Senior, groom, suits: false);
        await portal.DisputeAsync(cast, groom, signed, "Pelted.");
        await portal.ClearAsync(cast, cast.Junior, "wool", against: "I watched him twice.");
        await portal.ClearAsync(cast, cast.Junior, "silky", against: "I watched him twice.");
        var incident = await portal.CutAsync(cast, grooms[^1], cast.Senior);
        var alone = await portal.LogAsync(cast, cast.SecondJunior, watcher: null, dog);
        using var ines = await portal.AsAsync(cast, cast.Owner);
        var decide = await ines.GetAsync("/decide");

        Assert.Equal("1 incident waits for review and 1 dispute waits for an answer", decide.Heading);
        var links = decide.Page.QuerySelectorAll("main a").Select(link => link.GetAttribute("href")).ToList();
        Assert.Contains($"/reviews/{incident.Value}", links);
        Assert.Contains($"/disputes/{signed.Id.Value}", links);
        Assert.Contains($"/flags/{alone.Id.Value}/{cast.SecondJunior.Id.Value}", links);
        Assert.Contains(
            "Pim silky",
            Fold(decide.Page.QuerySelector("section:has(#exceptions)")!.TextContent),
            StringComparison.Ordinal
        );
        Assert.Contains(
            "Pim wool",
            Fold(decide.Page.QuerySelector("section:has(#stopped)")!.TextContent),
            StringComparison.Ordinal
        );
    }

    [Fact]
    public async Task Whose_row_is_not_full_after_fifty_rated_grooms_is_due_for_a_talk()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        await portal.WoolAsync(cast, cast.Junior, marks: 0);
        var dog = await portal.MeetAsync(cast, "Pilchard", "Cockapoo", "wool");
        for (var at = 1; at <= 50; at++)
            await portal.RatedAsync(cast, cast.Junior, cast.Senior, dog, suits: at % 2 == 0);
        using var ines = await portal.AsAsync(cast, cast.Owner);

        Assert.Contains(
            "1 of 17 marks after 50 rated grooms: time to talk it over.",
            (await ines.GetAsync("/decide")).Words,
            StringComparison.Ordinal
        );
    }

    [Fact]
    public async Task Only_the_owner_opens_it()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        using var rosa = await portal.AsAsync(cast, cast.Senior);
        using var pim = await portal.AsAsync(cast, cast.Junior);

        Assert.Equal(HttpStatusCode.Forbidden, (await rosa.GetAsync("/decide")).Status);
        Assert.Equal(HttpStatusCode.Forbidden, (await pim.GetAsync($"/decide/{cast.Junior.Id.Value}")).Status);
    }

    [Fact]
    public async Task The_page_costs_the_same_however_much_waits()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        using var ines = await portal.AsAsync(cast, cast.Owner);
        await ines.GetAsync("/board");

        // Session and book; book, tallies and quizzes; flagged grooms; incidents; disputes; the reading of the frame.
        Assert.Equal(7, await portal.Sql.OfAsync(() => ines.GetAsync("/decide")));
    }

    private static string Fold(string text) => string.Join(' ', text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
}
