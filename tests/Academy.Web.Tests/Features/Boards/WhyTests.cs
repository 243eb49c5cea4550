using System.Net;
using Academy.Competence;
using Academy.Competence.Decisions;
using Academy.Competence.People;
using Academy.Web.Tests.Hosting;
using AngleSharp.Dom;

namespace Academy.Web.Tests.Features.Boards;

/// <summary>Why somebody stands where she stands.</summary>
public sealed class WhyTests
{
    [Fact]
    public async Task A_learner_reads_her_row_every_rule_and_what_would_change_it()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        await portal.WoolAsync(cast, cast.Junior, marks: 11);
        using var pim = await portal.AsAsync(cast, cast.Junior);
        var why = await pim.GetAsync(Path(cast.Junior, "wool"));

        Assert.Equal((HttpStatusCode.OK, "Pim, wool: learning, 11 of 17"), (why.Status, why.Heading));
        Assert.Equal(11, why.Page.QuerySelectorAll(".pts .on").Length);
        Assert.Equal(
            ["Knowledge", "Points", "Breadth", "Safety", "Recency", "Decision"],
            why.Page.QuerySelectorAll("table.rules:not(.grooms) tbody th").Select(rule => rule.TextContent)
        );
        Assert.Contains("6 more grooms that suit would fill the row", why.Words, StringComparison.Ordinal);
        Assert.Contains("Someone who needs fixing 1 groom in 3", why.Words, StringComparison.Ordinal);
        Assert.Null(why.Page.QuerySelector("a[href^='/decide']"));
    }

    [Fact]
    public async Task Each_of_the_last_rated_grooms_is_a_dot_that_leads_to_it()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        var grooms = await portal.WoolAsync(cast, cast.Junior, marks: 6);
        var dog = await portal.MeetAsync(cast, "Pilchard", "Cockapoo", "wool");
        var last = await portal.RatedAsync(cast, cast.Junior, cast.Senior, dog, suits: false);
        using var rosa = await portal.AsAsync(cast, cast.Senior);
        var why = await rosa.GetAsync(Path(cast.Junior, "wool"));

        var dots = why.Page.QuerySelectorAll(".dots a");
        Assert.Equal(
            grooms.Append(last).Select(groom => $"/grooms/{groom.Id.Value}"),
            dots.Select(dot => dot.GetAttribute("href"))
        );
        Assert.Equal("needed fixing, 16 Jun", dots[^1].TextContent);
        Assert.Contains(
            "1 of the last 7 needed fixing. Groomers with such a record typically need fixing between",
            why.Words,
            StringComparison.Ordinal
        );
        Assert.DoesNotContain("%", why.Words, StringComparison.Ordinal);
        var newest = why.Page.QuerySelector("table.grooms tbody tr")!;
        Assert.Equal($"/grooms/{last.Id.Value}", newest.QuerySelector("a")!.GetAttribute("href"));
        Assert.Contains("Pilchard, Cockapoo", newest.TextContent, StringComparison.Ordinal);
        Assert.Contains("by Rosa", newest.TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Decisions_and_stops_are_told_newest_first_with_their_words()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        var grooms = await portal.WoolAsync(cast, cast.Junior, marks: 3);
        await portal.ClearAsync(cast, cast.Junior, "wool", new Limits(UpToKg: 12), against: "<b>I watched</b> him myself.");
        portal.Clock.Advance(TimeSpan.FromDays(1));
        await portal.CutAsync(cast, grooms[^1], cast.Senior);
        using var ines = await portal.AsAsync(cast, cast.Owner);
        var why = await ines.GetAsync(Path(cast.Junior, "wool"));

        Assert.Equal("stood-down", why.Page.QuerySelector("h1 + p .st")!.ClassList.Single(name => name is "st-stood-down")[3..]);
        var lines = why.Page.QuerySelectorAll(".history li");
        Assert.Equal(2, lines.Length);
        Assert.Contains(
            "Stopped by rule after an incident: skin opened through. It waits for its review.",
            lines[0].TextContent,
            StringComparison.Ordinal
        );
        Assert.Contains(
            "Cleared to do it alone, under version 1, against the rules; up to 12 kg.",
            lines[1].TextContent,
            StringComparison.Ordinal
        );
        Assert.Contains("“<b>I watched</b> him myself.”", lines[1].TextContent, StringComparison.Ordinal);
        Assert.Contains("not even with somebody beside", why.Page.QuerySelector(".lead")!.TextContent, StringComparison.Ordinal);
        Assert.NotNull(why.Page.QuerySelector($"main a[href='/decide/{cast.Junior.Id.Value}']"));
    }

    [Fact]
    public async Task A_past_moment_says_what_was_known_then()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        await portal.WoolAsync(cast, cast.Junior, marks: 5);
        using var ines = await portal.AsAsync(cast, cast.Owner);
        var past = await ines.GetAsync(Path(cast.Junior, "wool") + "?at=2026-06-12T09:00");

        Assert.Equal("Pim, wool: learning, 2 of 17", past.Heading);
        Assert.Contains(
            "This is the past. As of 9:00 on Friday 12 June 2026, under version 1 of the rules",
            past.Words,
            StringComparison.Ordinal
        );
        Assert.Equal(2, past.Page.QuerySelectorAll(".dots a").Length);
        Assert.Equal(2, past.Page.QuerySelectorAll("table.grooms tbody tr").Length);
        Assert.Null(past.Page.QuerySelector("main a[href^='/decide']"));
    }

    [Fact]
    public async Task Whoever_is_alone_is_told_until_when_and_not_that_her_row_must_be_filled()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        await portal.WithoutModulesAsync(cast, "wool");
        await portal.DeclareAsync(cast, cast.Senior, "wool");
        using var rosa = await portal.AsAsync(cast, cast.Senior);
        var why = await rosa.GetAsync(Path(cast.Senior, "wool"));

        Assert.Equal("Rosa, wool: alone since today", why.Heading);
        Assert.Contains("It holds until 7 October if nothing more happens.", why.Words, StringComparison.Ordinal);
        Assert.Contains("Nothing is missing.", why.Words, StringComparison.Ordinal);
        Assert.Equal("not asked now", Rule(why, "Points"));
        Assert.Equal("holds", Rule(why, "Decision"));
    }

    [Fact]
    public async Task Older_grooms_follow_on_a_next_page_each_once()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        await portal.WoolAsync(cast, cast.Junior, marks: 1);
        var dog = await portal.MeetAsync(cast, "Pilchard", "Cockapoo", "wool");
        // All of one moment: the order must still be one.
        for (var at = 0; at < 33; at++)
            await portal.LogAsync(cast, cast.Junior, cast.Senior, dog);
        using var ines = await portal.AsAsync(cast, cast.Owner);
        var first = await ines.GetAsync(Path(cast.Junior, "wool"));
        var second = await ines.GetAsync(first.Page.QuerySelector("a[href*='after=']")!.GetAttribute("href")!);

        var shown = first.Page.QuerySelectorAll("table.grooms a").Concat(second.Page.QuerySelectorAll("table.grooms a"));
        Assert.Equal(30, first.Page.QuerySelectorAll("table.grooms tbody tr").Length);
        Assert.Equal(34, shown.Select(link => link.GetAttribute("href")).Distinct(StringComparer.Ordinal).Count());
        Assert.Null(second.Page.QuerySelector("a[href*='after=']"));
        Assert.Equal(HttpStatusCode.OK, (await ines.GetAsync(Path(cast.Junior, "wool") + "?after=nonsense")).Status);
    }

    [Fact]
    public async Task Juniors_see_their_own_seniors_those_of_juniors_and_their_own_and_the_owner_all()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        using var pim = await portal.AsAsync(cast, cast.Junior);
        using var rosa = await portal.AsAsync(cast, cast.Senior);
        using var ines = await portal.AsAsync(cast, cast.Owner);

        Assert.Equal(HttpStatusCode.OK, await StatusAsync(pim, cast.Junior));
        Assert.Equal(HttpStatusCode.NotFound, await StatusAsync(pim, cast.SecondJunior));
        Assert.Equal(HttpStatusCode.NotFound, await StatusAsync(pim, cast.Senior));
        Assert.Equal(HttpStatusCode.OK, await StatusAsync(rosa, cast.Junior));
        Assert.Equal(HttpStatusCode.OK, await StatusAsync(rosa, cast.Senior));
        Assert.Equal(HttpStatusCode.NotFound, await StatusAsync(rosa, cast.SecondSenior));
        Assert.Equal(HttpStatusCode.NotFound, await StatusAsync(rosa, cast.Owner));
        foreach (var person in cast.Everybody)
            Assert.Equal(HttpStatusCode.OK, await StatusAsync(ines, person));

        static async Task<HttpStatusCode> StatusAsync(Visitor visitor, Person of) =>
            (await visitor.GetAsync(Path(of, "wool"))).Status;
    }

    [Fact]
    public async Task What_is_not_there_or_another_salons_is_not_found()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        var other = await portal.OpenSalonAsync("The Dry Nose");
        using var ines = await portal.AsAsync(cast, cast.Owner);

        Assert.Equal(HttpStatusCode.NotFound, (await ines.GetAsync(Path(other.Junior, "wool"))).Status);
        Assert.Equal(HttpStatusCode.NotFound, (await ines.GetAsync(Path(cast.Junior, "no-such-skill"))).Status);
        Assert.Equal(HttpStatusCode.NotFound, (await ines.GetAsync("/board/no-id/wool")).Status);
        Assert.Equal(HttpStatusCode.NotFound, (await ines.GetAsync(Path(cast.Junior, "wool") + "?at=2019-01-01T09:00")).Status);
    }

    [Fact]
    public async Task The_page_costs_the_same_however_long_the_path_is()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        await portal.WoolAsync(cast, cast.Junior, marks: 1);
        var dog = await portal.MeetAsync(cast, "Pilchard", "Cockapoo", "wool");
        var few = await CommandsAsync();
        for (var at = 0; at < 8; at++)
            await portal.RatedAsync(cast, cast.Junior, cast.Senior, dog);
        var many = await CommandsAsync();

        Assert.Equal(few, many);
        // Session and book; book, tallies and quizzes; facts and words; grooms; stops; the reading of the frame.
        Assert.Equal(8, many);

        async Task<int> CommandsAsync()
        {
            using var ines = await portal.AsAsync(cast, cast.Owner);
            await ines.GetAsync(Path(cast.Senior, "wool"));
            return await portal.Sql.OfAsync(() => ines.GetAsync(Path(cast.Junior, "wool")));
        }
    }

    private static string Path(Person person, string skill) => $"/board/{person.Id.Value}/{skill}";

    private static string Rule(Answer why, string rule) =>
        why
            .Page.QuerySelectorAll("table.rules:not(.grooms) tbody tr")
            .Single(row => row.QuerySelector("th")!.TextContent == rule)
            .QuerySelector(".hold")!
            .TextContent.Trim();
}
