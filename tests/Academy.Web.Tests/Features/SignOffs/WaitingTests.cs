using System.Net;
using Academy.Competence.People;
using Academy.Web.Tests.Hosting;
using AngleSharp.Dom;

namespace Academy.Web.Tests.Features.SignOffs;

/// <summary>What waits: those that name me first, oldest first, then others that I may judge, grooms alone, late ones.</summary>
public sealed class WaitingTests
{
    [Fact]
    public async Task Where_nothing_waits_the_page_says_what_would_fill_it()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        using var rosa = await portal.AsAsync(cast, cast.Senior);

        var waiting = await rosa.GetAsync("/sign-offs");

        Assert.Equal("Nothing waits for your sign-off", waiting.Heading);
        Assert.Contains(
            "A groom appears here as soon as",
            waiting.Page.QuerySelector(".empty")!.TextContent,
            StringComparison.Ordinal
        );
    }

    [Fact]
    public async Task The_oldest_that_names_me_is_offered_first_and_those_of_others_come_after_mine()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        await portal.WoolAsync(cast, cast.Junior, marks: 0);
        await LogAsync(portal, cast, cast.SecondSenior, "Oldest");
        await LogAsync(portal, cast, cast.Senior, "Mine");
        await LogAsync(portal, cast, cast.Senior, "Younger");
        using var rosa = await portal.AsAsync(cast, cast.Senior);

        var waiting = await rosa.GetAsync("/sign-offs");

        Assert.Equal("2 grooms wait for your sign-off", waiting.Heading);
        Assert.Equal("Next: Pim with Mine", waiting.Page.QuerySelector(".next h2")!.TextContent);
        Assert.Equal(["Pim with Younger"], Titles(waiting, "You were named as watching"));
        Assert.Equal(["Pim with Oldest"], Titles(waiting, "Others that you may judge"));
        Assert.Contains("Dora was named.", waiting.Words, StringComparison.Ordinal);
    }

    [Fact]
    public async Task After_saving_the_next_one_is_offered()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        await portal.WoolAsync(cast, cast.Junior, marks: 0);
        await LogAsync(portal, cast, cast.Senior, "First");
        await LogAsync(portal, cast, cast.Senior, "Second");
        using var rosa = await portal.AsAsync(cast, cast.Senior);
        var waiting = await rosa.GetAsync("/sign-offs");

        var form = await rosa.GetAsync(waiting.Page.QuerySelector(".next a.act")!.GetAttribute("href")!);
        var allMet = await form.Form().With(("Form.Level", "NotNeeded"), ("Form.Watched", "True")).PressAsync("[data-all-met]");
        var then = await (await allMet.Form().SendAsync()).FollowAsync();

        Assert.Equal("Pim with First is signed off. Pim sees it at once.", then.Said);
        Assert.Equal("1 groom waits for your sign-off", then.Heading);
        Assert.Equal("Next: Pim with Second", then.Page.QuerySelector(".next h2")!.TextContent);
    }

    [Fact]
    public async Task My_own_work_and_grooms_of_skills_in_which_I_am_not_alone_are_not_offered()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        await portal.WoolAsync(cast, cast.Junior, marks: 0);
        await portal.LogAsync(
            cast,
            cast.Senior,
            cast.SecondSenior,
            await portal.MeetAsync(cast, "Own", "Poodle (Miniature)", "wool")
        );
        await portal.LogAsync(
            cast,
            cast.Junior,
            cast.SecondSenior,
            await portal.MeetAsync(cast, "Wire", "Border Terrier", "wire")
        );
        using var rosa = await portal.AsAsync(cast, cast.Senior);
        using var ines = await portal.AsAsync(cast, cast.Owner);

        Assert.Equal("Nothing waits for your sign-off", (await rosa.GetAsync("/sign-offs")).Heading);
        Assert.Equal("Nothing waits for your sign-off", (await ines.GetAsync("/sign-offs")).Heading);
    }

    [Fact]
    public async Task A_junior_alone_is_inspected_on_the_finished_dog()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        await portal.WoolAsync(cast, cast.Junior, marks: 0);
        await portal.ClearAsync(cast, cast.Junior, "wool", against: "Groomed wool for years elsewhere.");
        portal.Clock.Advance(TimeSpan.FromHours(2));
        var groom = await LogAsync(portal, cast, watcher: null, "Solo");
        using var rosa = await portal.AsAsync(cast, cast.Senior);

        var waiting = await rosa.GetAsync("/sign-offs");
        var inspect = await rosa.GetAsync($"/sign-offs/{groom}?person={cast.Junior.Id.Value}");

        Assert.Equal(["Pim with Solo"], Titles(waiting, "Done alone, the finished dog to inspect"));
        Assert.Contains("I inspected the finished dog", inspect.Words, StringComparison.Ordinal);
        Assert.Contains("Pim did this one alone: you judge the finished dog.", inspect.Words, StringComparison.Ordinal);
    }

    [Fact]
    public async Task What_is_more_than_a_week_old_is_listed_as_late()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        await portal.WoolAsync(cast, cast.Junior, marks: 0);
        await LogAsync(portal, cast, cast.Senior, "Forgotten");
        portal.Clock.Advance(TimeSpan.FromDays(8));
        using var rosa = await portal.AsAsync(cast, cast.Senior);

        var waiting = await rosa.GetAsync("/sign-offs");

        Assert.Equal("No groom waits for you by name", waiting.Heading);
        Assert.Equal(["Pim with Forgotten"], Titles(waiting, "Late"));
        Assert.Contains("Closed at 10:00 yesterday", waiting.Words, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_long_list_goes_on_where_it_stopped_and_the_page_stays_as_cheap()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        await portal.WoolAsync(cast, cast.Junior, marks: 0);
        for (var at = 1; at <= 23; at++)
            await LogAsync(portal, cast, cast.Senior, $"Dog {at:00}");
        using var rosa = await portal.AsAsync(cast, cast.Senior);
        await rosa.GetAsync("/sign-offs");

        Answer? first = null;
        var commands = await portal.Sql.OfAsync(async () => first = await rosa.GetAsync("/sign-offs"));
        var second = await rosa.GetAsync(first!.Page.QuerySelector("main .acts a[href*=after]")!.GetAttribute("href")!);

        Assert.Equal("More than 20 grooms wait for your sign-off", first.Heading);
        Assert.Equal(19, Titles(first, "You were named as watching").Count);
        Assert.Equal(["Pim with Dog 21", "Pim with Dog 22", "Pim with Dog 23"], Titles(second, "You were named as watching"));
        Assert.InRange(commands, 1, 13);
    }

    [Theory]
    [InlineData("/sign-offs?list=named&after=nonsense")]
    [InlineData("/sign-offs?list=named&after=999999999999999999_0_0")]
    [InlineData("/sign-offs?list=of-another-kind")]
    public async Task An_address_that_was_tampered_with_is_a_page_all_the_same(string path)
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        using var rosa = await portal.AsAsync(cast, cast.Senior);

        Assert.Equal(HttpStatusCode.OK, (await rosa.GetAsync(path)).Status);
    }

    [Fact]
    public async Task It_opens_for_seniors_and_owners_and_shows_nothing_of_another_salon()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        await portal.WoolAsync(cast, cast.Junior, marks: 0);
        await LogAsync(portal, cast, cast.Senior, "Ours");
        var other = await portal.OpenSalonAsync("The Dry Towel");
        await portal.DeclareAsync(other, other.Senior, "wool");
        using var pim = await portal.AsAsync(cast, cast.Junior);
        using var stranger = await portal.AsAsync(other, other.Senior);

        Assert.Equal(HttpStatusCode.Forbidden, (await pim.GetAsync("/sign-offs")).Status);
        Assert.Equal("Nothing waits for your sign-off", (await stranger.GetAsync("/sign-offs")).Heading);
    }

    private static async Task<Guid> LogAsync(PortalHost portal, Cast cast, Person? watcher, string dog)
    {
        var groom = await portal.LogAsync(
            cast,
            cast.Junior,
            watcher,
            await portal.MeetAsync(cast, dog, "Poodle (Miniature)", "wool")
        );
        portal.Clock.Advance(TimeSpan.FromMinutes(5));
        return groom.Id.Value;
    }

    private static IReadOnlyList<string> Titles(Answer answer, string heading) =>
        answer.Page.QuerySelectorAll("main section.sec").FirstOrDefault(list => list.QuerySelector("h2")!.TextContent == heading)
            is { } found
            ? [.. found.QuerySelectorAll("h3").Select(title => title.TextContent)]
            : [];
}
