using System.Net;
using Academy.Competence.Skills;
using Academy.Web.Tests.Hosting;

namespace Academy.Web.Tests.Features.Dogs;

public sealed class DescribeTests
{
    [Fact]
    public async Task A_dog_shows_what_it_asks_for_and_who_lifts_it()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        var dog = await portal.MeetAsync(
            cast,
            dog =>
                dog with
                {
                    Name = "Moose",
                    Breed = "Newfoundland",
                    Coat = SkillBook.Double,
                    BornOn = portal.Today.AddYears(-9),
                    WeightKg = 58,
                    Hazards = [SkillBook.HeavyCoat],
                }
        );
        using var junior = await portal.AsAsync(cast, cast.Junior);
        var page = await junior.GetAsync($"/dogs/{dog.Id.Value}");

        Assert.Equal(
            ["double", "heavy coat", "elderly", "50 kg or more"],
            page.Page.QuerySelectorAll(".tag").Select(tag => tag.TextContent)
        );
        Assert.Contains("58 kg: two lift it together.", page.Words, StringComparison.Ordinal);
        Assert.Contains("At risk in heat", page.Words, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_dog_is_described_anew_with_what_was_known_filled_in()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        var dog = await portal.MeetAsync(cast);
        using var senior = await portal.AsAsync(cast, cast.Senior);
        var path = $"/dogs/{dog.Id.Value}";
        var form = (await senior.GetAsync(path)).Form();
        Assert.Equal(
            ("Biscuit", "Border Terrier", "wire", "9"),
            (form["Form.Name"], form["Form.Breed"], form["Form.Coat"], form["Form.Weight"])
        );

        var sent = await form.With(("Form.Weight", "10"), ("Form.Hazards", "bite-history")).SendAsync();
        var page = await sent.FollowAsync();
        Assert.Equal("Biscuit is described anew.", page.Said);
        Assert.Contains("Border Terrier, 10 kg", page.Words, StringComparison.Ordinal);
        Assert.Contains("bite history", page.Words, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Somebody_who_wrote_in_between_is_seen_and_what_was_typed_is_kept()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        var dog = await portal.MeetAsync(cast);
        using var junior = await portal.AsAsync(cast, cast.Junior);
        using var senior = await portal.AsAsync(cast, cast.Senior);
        var path = $"/dogs/{dog.Id.Value}";
        var stale = (await junior.GetAsync(path)).Form().With(("Form.Weight", "12"));
        await (await senior.GetAsync(path)).Form().With(("Form.Weight", "10")).SendAsync();

        var answer = await stale.SendAsync();
        Assert.Equal(HttpStatusCode.Conflict, answer.Status);
        Assert.Contains("Border Terrier; wire; 10 kg", Assert.Single(answer.Problems), StringComparison.Ordinal);
        Assert.Equal("12", answer.Form()["Form.Weight"]);

        Assert.Equal("Biscuit is described anew.", (await (await answer.Form().SendAsync()).FollowAsync()).Said);
    }

    [Fact]
    public async Task A_dog_that_no_longer_comes_may_come_back()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        var dog = await portal.MeetAsync(cast);
        using var senior = await portal.AsAsync(cast, cast.Senior);
        var path = $"/dogs/{dog.Id.Value}";

        var gone = await (await senior.GetAsync(path)).Form("form[action*=Gone]").SendAsync();
        var page = await gone.FollowAsync();
        Assert.Equal("Biscuit no longer comes.", page.Said);
        Assert.Null(page.Page.QuerySelector("main a[href*='/log']"));

        var back = await page.Form("form[action*=Gone]").SendAsync();
        Assert.Equal("Biscuit is back.", (await back.FollowAsync()).Said);
    }

    [Fact]
    public async Task Its_grooms_stand_newest_first_and_a_junior_sees_her_own()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        var dog = await portal.MeetAsync(cast);
        await portal.GroomAsync(cast, dog, cast.Junior, cast.Senior);
        portal.Clock.Advance(TimeSpan.FromDays(30));
        await portal.GroomAsync(cast, dog, cast.SecondJunior, cast.SecondSenior);
        var path = $"/dogs/{dog.Id.Value}";

        using var senior = await portal.AsAsync(cast, cast.Senior);
        var all = await senior.GetAsync(path);
        Assert.Equal(
            ["Friday 10 July", "Wednesday 10 June"],
            all.Page.QuerySelectorAll(".rows h3").Select(day => day.TextContent)
        );
        Assert.Contains("Juno, Dora watched", all.Words, StringComparison.Ordinal);

        using var junior = await portal.AsAsync(cast, cast.Junior);
        var own = await junior.GetAsync(path);
        Assert.Equal(["Wednesday 10 June"], own.Page.QuerySelectorAll(".rows h3").Select(day => day.TextContent));
        Assert.Contains("And 1 groom by others.", own.Words, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_dogs_page_takes_the_same_few_commands_however_many_grooms_it_had()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        var dog = await portal.MeetAsync(cast);
        using var junior = await portal.AsAsync(cast, cast.Junior);
        var path = $"/dogs/{dog.Id.Value}";
        await junior.GetAsync(path);
        var before = await portal.Sql.OfAsync(() => junior.GetAsync(path));
        for (var day = 0; day < 5; day++)
        {
            portal.Clock.Advance(TimeSpan.FromHours(2));
            await portal.GroomAsync(cast, dog, cast.Junior, cast.Senior);
        }

        // The first page after a while also notes that the session was seen.
        await junior.GetAsync(path);
        Assert.Equal(before, await portal.Sql.OfAsync(() => junior.GetAsync(path)));
        Assert.InRange(before, 1, 12);
    }

    [Theory]
    [InlineData("/dogs/00000000-0000-7000-8000-000000000000")]
    [InlineData("/dogs/biscuit")]
    public async Task A_dog_that_is_not_there_is_not_found(string path)
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        using var owner = await portal.AsAsync(cast, cast.Owner);

        Assert.Equal(HttpStatusCode.NotFound, (await owner.GetAsync(path)).Status);
    }
}
