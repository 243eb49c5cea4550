using Academy.Competence.Standings;
using Academy.Web.Tests.Hosting;

namespace Academy.Web.Tests.Features.ModuleEditions;

/// <summary>A safety change is told from the day it comes, and bites on the day after the last one to catch up.</summary>
public sealed class CatchUpTests
{
    private const string Blades = "blades-and-scissors";

    [Fact]
    public async Task Everybody_is_told_by_which_day_to_catch_up_and_after_it_the_clearance_rests()
    {
        using var modules = new TestModules().Titled(Blades, "Blades");
        await using var portal = new PortalHost().With("Modules:Folder", modules.Root);
        var cast = await portal.OpenSalonAsync();
        await portal.TellEditionsAsync();
        await portal.OnlyModuleAsync(cast, "smooth", Blades);
        await portal.DeclareAsync(cast, cast.Senior, "smooth");
        // The days that a declaration gives for its modules are over.
        portal.Clock.Advance(TimeSpan.FromDays(35));
        await portal.PassAsync(cast, cast.Senior, Blades);
        await portal.PublishAsync(
            cast,
            Blades,
            "Hold it two hands away.",
            catchUpDays: 20,
            ("What does a towel save?", "What else?")
        );
        var pages = await PagesAsync(portal, cast);

        // 20 days are more than the two weeks in which anything else is told beforehand.
        Assert.Equal(StandingKind.Alone, (await portal.StandingAsync(cast, cast.Senior, "smooth")).Kind);
        Assert.Contains("catch up by 4 Aug", pages.Board, StringComparison.Ordinal);
        Assert.Contains("Rosa, smooth", pages.Today, StringComparison.Ordinal);
        Assert.Contains(
            "Catch up with “Blades” by Tuesday 4 August: it changed for safety.",
            pages.Today,
            StringComparison.Ordinal
        );
        Assert.Contains(
            "Catch up with “Blades” by Tuesday 4 August: it changed for safety.",
            pages.Person,
            StringComparison.Ordinal
        );
        Assert.Contains("Catch up with “Blades” by Tuesday 4 August: it changed for safety.", pages.Me, StringComparison.Ordinal);
        Assert.Contains("changed for safety, catch up by 4 August", pages.Me, StringComparison.Ordinal);
        Assert.Contains(
            "Catch up with “Blades” by Tuesday 4 August: it changed for safety.",
            pages.Why,
            StringComparison.Ordinal
        );
        Assert.Contains("“Blades” changed for safety, catch up by 4 August", pages.Why, StringComparison.Ordinal);
        Assert.Contains("It holds until 4 August", pages.Why, StringComparison.Ordinal);
        Assert.Contains("Changed for safety: catch up by Tuesday 4 August", pages.Study, StringComparison.Ordinal);
        Assert.Contains("A short quiz on what changed keeps these yours alone: smooth.", pages.Study, StringComparison.Ordinal);

        // The last day itself.
        portal.Clock.Advance(TimeSpan.FromDays(20));
        Assert.Equal(StandingKind.Alone, (await portal.StandingAsync(cast, cast.Senior, "smooth")).Kind);

        portal.Clock.Advance(TimeSpan.FromDays(1));
        pages = await PagesAsync(portal, cast);
        Assert.Equal(StandingKind.Lapsed, (await portal.StandingAsync(cast, cast.Senior, "smooth")).Kind);
        Assert.DoesNotContain("catch up by", pages.Board, StringComparison.Ordinal);
        Assert.Contains("module due", pages.Board, StringComparison.Ordinal);
        Assert.DoesNotContain("Catch up with", pages.Today + pages.Person + pages.Me + pages.Why, StringComparison.Ordinal);
        Assert.Contains("before its last safety change", pages.Study, StringComparison.Ordinal);
        Assert.Contains("Until it is passed you may not groom alone: smooth.", pages.Study, StringComparison.Ordinal);
    }

    [Fact]
    public async Task One_changed_module_is_one_line_of_the_morning_however_many_skills_rest_on_it()
    {
        using var modules = new TestModules().Titled(Blades, "Blades");
        await using var portal = new PortalHost().With("Modules:Folder", modules.Root);
        var cast = await portal.OpenSalonAsync();
        await portal.TellEditionsAsync();
        string[] skills = ["smooth", "double", "wire", "silky", "wool"];
        foreach (var skill in skills)
            await portal.OnlyModuleAsync(cast, skill, Blades);
        await portal.PassAsync(cast, cast.Senior, Blades);
        await portal.DeclareAsync(cast, cast.Senior, skills);
        await portal.PublishAsync(
            cast,
            Blades,
            "Hold it two hands away.",
            catchUpDays: 7,
            ("What does a towel save?", "What else?")
        );
        using var ines = await portal.AsAsync(cast, cast.Owner);

        var today = await ines.GetAsync("/");

        var line = Assert.Single(today.Page.QuerySelectorAll("[aria-labelledby=mind] li"));
        Assert.Contains("Rosa, smooth, double, ", line.TextContent, StringComparison.Ordinal);
        Assert.Contains("and 2 more", line.TextContent, StringComparison.Ordinal);
    }

    private sealed record Pages(string Board, string Today, string Person, string Me, string Why, string Study);

    private static async Task<Pages> PagesAsync(PortalHost portal, Cast cast)
    {
        using var ines = await portal.AsAsync(cast, cast.Owner);
        using var rosa = await portal.AsAsync(cast, cast.Senior);
        return new(
            (await ines.GetAsync("/board")).Words,
            (await ines.GetAsync("/")).Words,
            (await ines.GetAsync($"/people/{cast.Senior.Id.Value}/skills")).Words,
            (await rosa.GetAsync("/me")).Words,
            (await ines.GetAsync($"/board/{cast.Senior.Id.Value}/smooth")).Words,
            (await rosa.GetAsync("/study")).Words
        );
    }
}
