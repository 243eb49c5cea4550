using System.Net;
using Academy.Competence;
using Academy.Competence.Dogs;
using Academy.Competence.Facts;
using Academy.Storage;
using Academy.Storage.Ledgers;
using Academy.Web.Tests.Hosting;
using AngleSharp.Dom;

namespace Academy.Web.Tests.Features.Dogs;

public sealed class FindTests
{
    [Fact]
    public async Task A_salon_without_dogs_says_how_they_come_in()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        using var junior = await portal.AsAsync(cast, cast.Junior);
        var page = await junior.GetAsync("/dogs");

        Assert.Equal("No dogs yet", page.Heading);
        Assert.Contains("Dogs are added here", page.Words, StringComparison.Ordinal);
        Assert.NotNull(page.Page.QuerySelector("a[href='/dogs/new']"));
    }

    [Theory]
    [InlineData("bis", "Biscuit")]
    [InlineData("terrier", "Biscuit")] // by breed
    [InlineData("ODUYA", "Måns")] // by surname, whatever the case
    [InlineData("mans", "Måns")] // without its accent
    [InlineData("poodle oduya", "Måns")] // several words, anywhere
    public async Task A_dog_is_found_by_name_breed_and_surname(string words, string found)
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        await portal.MeetAsync(cast);
        await portal.MeetAsync(cast, dog => dog with { Name = "Måns", Breed = "Poodle (Toy)", Client = "Oduya" });
        using var senior = await portal.AsAsync(cast, cast.Senior);
        var page = await senior.SendAsync("/dogs", ("Words", words));

        Assert.Equal([found], Names(page));
        Assert.Equal("1 dog found", page.Heading);
    }

    [Fact]
    public async Task A_search_leaves_no_name_in_the_address()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        await portal.MeetAsync(cast);
        using var senior = await portal.AsAsync(cast, cast.Senior);
        var page = await senior.SendAsync("/dogs", ("Words", "biscuit"));

        Assert.Equal("/dogs", page.Message.RequestMessage!.RequestUri!.PathAndQuery);
    }

    [Fact]
    public async Task Nothing_found_says_what_to_try_and_hostile_words_stay_words()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        await portal.MeetAsync(cast);
        using var junior = await portal.AsAsync(cast, cast.Junior);
        var page = await junior.SendAsync("/dogs", ("Words", "%' or 1=1 -- <script>"));

        Assert.Equal("No dog like that", page.Heading);
        Assert.Equal("%' or 1=1 -- <script>", page.Form()["Words"]);
    }

    [Fact]
    public async Task A_dog_that_no_longer_comes_is_found_only_when_asked_for()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        await portal.MeetAsync(cast, dog => dog with { IsGone = true });
        using var senior = await portal.AsAsync(cast, cast.Senior);

        Assert.Equal("No dog like that", (await senior.SendAsync("/dogs", ("Words", "biscuit"))).Heading);
        var page = await senior.SendAsync("/dogs", ("Words", "biscuit"), ("Gone", "true"));
        Assert.Contains("no longer comes", page.Words, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Another_salons_dogs_are_not_there()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        var other = await portal.OpenSalonAsync("The Dry Nose");
        var theirs = await portal.MeetAsync(other);
        using var owner = await portal.AsAsync(cast, cast.Owner);

        Assert.Equal("No dogs yet", (await owner.GetAsync("/dogs")).Heading);
        Assert.Equal(HttpStatusCode.NotFound, (await owner.GetAsync($"/dogs/{theirs.Id.Value}")).Status);
    }

    [Fact]
    public async Task A_hundred_and_thirty_dogs_come_page_by_page_each_once_with_the_same_few_commands()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        await MeetManyAsync(portal, cast, 130);
        using var senior = await portal.AsAsync(cast, cast.Senior);

        var first = await senior.GetAsync("/dogs");
        var second = await NextAsync(first);
        var third = await NextAsync(second);
        List<string> all = [.. Names(first), .. Names(second), .. Names(third)];
        Assert.Equal("130 dogs", first.Heading);
        Assert.Equal([50, 50, 30], [Names(first).Count, Names(second).Count, Names(third).Count]);
        Assert.Equal(all.Order(StringComparer.Ordinal), all);
        Assert.Null(third.Page.QuerySelector("a[href*=after]"));

        var one = await portal.Sql.OfAsync(() => senior.GetAsync("/dogs"));
        var next = await portal.Sql.OfAsync(() => NextAsync(first));
        Assert.Equal(one, next);
        Assert.InRange(one, 1, 8);
    }

    [Fact]
    public async Task A_search_goes_on_page_by_page_as_well()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        await MeetManyAsync(portal, cast, 60);
        using var senior = await portal.AsAsync(cast, cast.Senior);
        var first = await senior.SendAsync("/dogs", ("Words", "dog"));
        var second = await first.Form("main form.acts").SendAsync();

        Assert.Equal([50, 10], [Names(first).Count, Names(second).Count]);
        Assert.Empty(Names(first).Intersect(Names(second)));
    }

    private static Task<Answer> NextAsync(Answer page) =>
        page.Visitor.GetAsync(page.Page.QuerySelector("a[href*=after]")!.GetAttribute("href")!);

    private static List<string> Names(Answer page) =>
        [.. page.Page.QuerySelectorAll("main .rows h2").Select(name => name.TextContent)];

    private static Task<int> MeetManyAsync(PortalHost portal, Cast cast, int dogs) =>
        portal.DoAsync<Ledger, int>(async ledger =>
        {
            var grants = Enumerable
                .Range(0, dogs)
                .Select(at => new Dog(
                    new DogId(portal.New()),
                    $"Dog {at % 40:00}-{at:000}",
                    "Pug",
                    null,
                    null,
                    [],
                    null,
                    AgeByLook.Grown,
                    null
                ))
                .Select(dog => (Granted)DogKeeping.Describe(dog, portal.Today))
                .Select(granted => (granted, new Hand(cast.Owner.Id, "a test", portal.Now)));
            await ledger.KeepAllAsync(cast.Salon, [.. grants]);
            return dogs;
        });
}
