using System.Net;
using Academy.Competence;
using Academy.Competence.Standings;
using Academy.Web.Tests.Hosting;

namespace Academy.Web.Tests.Features.Thresholds;

/// <summary>What the library suggests that skills ask for: seen, chosen, kept, and what becomes of whoever is alone.</summary>
public sealed class SuggestedTests
{
    private const string Page = "/skills/suggested";

    [Fact]
    public async Task What_a_module_was_written_for_is_ticked_and_kept_at_once()
    {
        using var modules = new TestModules().With("towels");
        await using var portal = new PortalHost().With("Modules:Folder", modules.Root);
        var cast = await portal.OpenSalonAsync();
        using var ines = await portal.AsAsync(cast, cast.Owner);
        Assert.Contains("Choose them", (await ines.GetAsync("/welcome")).Words, StringComparison.Ordinal);

        var page = await ines.GetAsync(Page);
        Assert.Equal("1 module could be asked for", page.Heading);
        var ticked = page.Form("#suggested").All("Ask.Chosen");
        Assert.NotEmpty(ticked);
        var kept = await page.Form("#suggested").SendAsync();

        Assert.Contains("for more from today.", (await kept.FollowAsync()).Said, StringComparison.Ordinal);
        var book = await portal.BookAsync(cast);
        Assert.All(
            ticked,
            key => Assert.Contains(new ModuleName("towels"), book.Find(new SkillCode(key.Split(':')[0]))!.Modules)
        );
        Assert.Equal("Your skills ask for all that is suggested", (await ines.GetAsync(Page)).Heading);
    }

    [Fact]
    public async Task Whoever_is_alone_has_the_days_of_the_house_for_what_is_new()
    {
        using var modules = new TestModules().With("towels", ("opens: [bath, drying-by-hand]", "opens: [nails]"));
        await using var portal = new PortalHost().With("Modules:Folder", modules.Root);
        var cast = await portal.OpenSalonAsync();
        await portal.DeclareAsync(cast, cast.Senior, "nails");
        portal.Clock.Advance(TimeSpan.FromDays(60));
        using var ines = await portal.AsAsync(cast, cast.Owner);

        await (await ines.GetAsync(Page)).Form("#suggested").SendAsync();

        Assert.Equal(StandingKind.Alone, (await portal.StandingAsync(cast, cast.Senior, "nails")).Kind);
        portal.Clock.Advance(TimeSpan.FromDays(30));
        Assert.Equal(StandingKind.Alone, (await portal.StandingAsync(cast, cast.Senior, "nails")).Kind);
        portal.Clock.Advance(TimeSpan.FromDays(1));
        Assert.Equal(StandingKind.Lapsed, (await portal.StandingAsync(cast, cast.Senior, "nails")).Kind);
    }

    [Fact]
    public async Task Nothing_ticked_and_what_nobody_suggests_is_said_and_kept_as_it_was()
    {
        using var modules = new TestModules().With("towels");
        await using var portal = new PortalHost().With("Modules:Folder", modules.Root);
        var cast = await portal.OpenSalonAsync();
        using var ines = await portal.AsAsync(cast, cast.Owner);

        var none = await (await ines.GetAsync(Page)).Form("#suggested").With(("Ask.Chosen", "wool:heat-stroke")).SendAsync();

        Assert.Equal(HttpStatusCode.UnprocessableEntity, none.Status);
        Assert.Contains("Tick at least one module", none.Words, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_salon_without_modules_has_nothing_to_be_suggested_and_it_is_the_owners_page()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        using var ines = await portal.AsAsync(cast, cast.Owner);
        using var rosa = await portal.AsAsync(cast, cast.Senior);

        Assert.Contains("Nothing is left to suggest.", (await ines.GetAsync(Page)).Words, StringComparison.Ordinal);
        Assert.Equal(HttpStatusCode.Forbidden, (await rosa.GetAsync(Page)).Status);
    }
}
