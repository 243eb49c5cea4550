using System.Net;
using Academy.Competence.Skills;
using Academy.Web.Tests.Hosting;
using AngleSharp.Dom;

namespace Academy.Web.Tests.Features.Grooms;

public sealed class ChooseTests
{
    [Fact]
    public async Task An_empty_floor_offers_a_search_and_a_new_dog()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        using var junior = await portal.AsAsync(cast, cast.Junior);
        var page = await junior.GetAsync("/log");

        Assert.Equal("Which dog is on the table?", page.Heading);
        Assert.Empty(page.Page.QuerySelectorAll(".rows li"));
        Assert.NotNull(page.Page.QuerySelector("a[href='/dogs/new?to=log']"));
    }

    [Fact]
    public async Task What_is_on_the_table_stands_first_then_who_was_here_today()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        var mine = await portal.MeetAsync(cast);
        var hers = await portal.MeetAsync(cast, dog => dog with { Name = "Moss" });
        var done = await portal.MeetAsync(cast, dog => dog with { Name = "Tansy" });
        var groom = await portal.StartAsync(cast, mine, cast.Junior, cast.Senior);
        await portal.StartAsync(cast, hers, cast.SecondJunior, cast.Senior);
        var told = await portal.GroomAsync(cast, done, cast.Junior, cast.Senior);
        using var junior = await portal.AsAsync(cast, cast.Junior);
        var page = await junior.GetAsync("/log");

        Assert.Equal(
            [("Biscuit", $"/log/{groom.Value}"), ("Moss", $"/log?dog={hers.Id.Value}"), ("Tansy", $"/grooms/{told.Id.Value}")],
            page.Page.QuerySelectorAll(".rows h3 a").Select(link => (link.TextContent, link.GetAttribute("href")!))
        );
        Assert.Contains("Rosa watches", page.Words, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Yesterdays_grooms_are_not_todays()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        await portal.GroomAsync(cast, await portal.MeetAsync(cast), cast.Junior, cast.Senior);
        portal.Clock.Advance(TimeSpan.FromHours(24));
        using var junior = await portal.AsAsync(cast, cast.Junior);

        Assert.Empty((await junior.GetAsync("/log")).Page.QuerySelectorAll(".rows li"));
    }

    [Fact]
    public async Task A_dog_is_found_and_chosen_without_its_name_in_an_address()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        var dog = await portal.MeetAsync(cast);
        using var junior = await portal.AsAsync(cast, cast.Junior);
        var found = await junior.SendAsync("/log", ("Words", "bisc"));
        Assert.Equal("/log", found.Message.RequestMessage!.RequestUri!.PathAndQuery);
        Assert.Equal($"/log?dog={dog.Id.Value}", found.Page.QuerySelector(".rows h3 a")!.GetAttribute("href"));

        Assert.Contains("No dog like that", (await junior.SendAsync("/log", ("Words", "zz"))).Words, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_dog_that_was_chosen_shows_what_it_asks_for_and_who_may_watch_those_in_first()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        await portal.KeepAsync(
            cast.Salon,
            Competence.People.Staffing.Tick(cast.SecondSenior, portal.Today, isIn: true, cast.Owner),
            cast.Owner
        );
        var dog = await portal.MeetAsync(cast, dog => dog with { WeightKg = 31, Hazards = [SkillBook.BiteHistory] });
        using var junior = await portal.AsAsync(cast, cast.Junior);
        var page = await junior.GetAsync($"/log?dog={dog.Id.Value}");

        Assert.Equal("Biscuit", page.Heading);
        Assert.Equal(["wire", "bite history"], page.Page.QuerySelectorAll(".tag").Select(tag => tag.TextContent));
        Assert.Equal("Only with a senior beside you", page.Page.QuerySelector("#answer")!.TextContent);
        Assert.Contains("31 kg: two lift together", page.Words, StringComparison.Ordinal);
        Assert.Contains("Bite history: two people, one of them a senior.", page.Words, StringComparison.Ordinal);
        Assert.Equal(
            ["Dora", "Ines not ticked in today", "Rosa not ticked in today", "nobody"],
            page.Page.QuerySelectorAll("label.pick .words")
                .Select(pick => string.Join(' ', pick.Children.Select(part => part.TextContent)))
        );
    }

    [Fact]
    public async Task Start_puts_the_dog_on_the_table_and_opens_the_page_to_tell_it_once()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        var dog = await portal.MeetAsync(cast);
        using var junior = await portal.AsAsync(cast, cast.Junior);
        var form = (await junior.GetAsync($"/log?dog={dog.Id.Value}")).Form().With(("Watcher", cast.Senior.Id.Value.ToString()));
        var first = await form.SendAsync();
        var second = await form.SendAsync();

        Assert.Equal(first.Location, second.Location);
        var page = await first.FollowAsync();
        Assert.Equal("Biscuit is on the table.", page.Said);
        Assert.Contains("Started 10:00 today. It ends when you save.", page.Words, StringComparison.Ordinal);
        Assert.Single((await junior.GetAsync("/log")).Page.QuerySelectorAll(".rows li"));
    }

    [Fact]
    public async Task The_list_takes_the_same_few_commands_on_a_full_day()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        using var junior = await portal.AsAsync(cast, cast.Junior);
        await junior.GetAsync("/log");
        var before = await portal.Sql.OfAsync(() => junior.GetAsync("/log"));
        for (var dog = 0; dog < 8; dog++)
            await portal.StartAsync(cast, await portal.MeetAsync(cast), cast.Junior, cast.Senior);

        Assert.Equal(before, await portal.Sql.OfAsync(() => junior.GetAsync("/log")));
        Assert.InRange(before, 1, 8);
    }

    [Fact]
    public async Task Nobody_who_is_not_signed_in_logs()
    {
        var (portal, _) = await PortalHost.OpenAsync();
        await using var __ = portal;
        using var anyone = portal.Anyone();

        Assert.Equal(HttpStatusCode.Redirect, (await anyone.GetAsync("/log")).Status);
    }
}
