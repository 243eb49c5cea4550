using System.Net;
using Academy.Web.Tests.Hosting;

namespace Academy.Web.Tests.Features.Study;

/// <summary>The list of modules, one lesson, and the state of the files for the owner.</summary>
public sealed class StudyTests
{
    private const string Blades = "blades-and-scissors";

    [Fact]
    public async Task A_junior_sees_what_to_study_first_and_which_skills_ask_for_it()
    {
        using var modules = new TestModules().Titled(Blades, "Blades, an invented lesson").With("towels");
        await using var portal = new PortalHost().With("Modules:Folder", modules.Root);
        var cast = await portal.OpenSalonAsync();
        using var pim = await portal.AsAsync(cast, cast.Junior);

        var page = await pim.GetAsync("/study");

        Assert.Equal("One module to study", page.Heading);
        Assert.Equal("Blades, an invented lesson", page.Page.QuerySelector(".next h2")!.TextContent);
        Assert.Contains("6 minutes to read, then 20 questions", page.Words, StringComparison.Ordinal);
        Assert.Contains("Asked for by smooth, double, wire and", page.Words, StringComparison.Ordinal);
        Assert.Contains("Asked for, and not here", page.Words, StringComparison.Ordinal);
        Assert.Equal(
            ["towels"],
            page.Page.QuerySelectorAll("[aria-labelledby=further] a").Select(link => link.GetAttribute("href")!.Split('/')[^1])
        );
    }

    [Fact]
    public async Task Where_nothing_else_lacks_it_says_that_the_owner_decides_after_it()
    {
        using var modules = new TestModules().With("cooling-clips");
        await using var portal = new PortalHost().With("Modules:Folder", modules.Root);
        var cast = await portal.OpenSalonAsync();
        using var pim = await portal.AsAsync(cast, cast.Junior);

        Assert.Contains(
            "Nothing else lacks for cooling clip: once it is passed the owner decides.",
            (await pim.GetAsync("/study")).Words,
            StringComparison.Ordinal
        );
    }

    [Fact]
    public async Task Modules_that_no_skill_asks_for_can_be_read_and_never_press()
    {
        using var modules = new TestModules().With("towels");
        await using var portal = new PortalHost().With("Modules:Folder", modules.Root);
        var cast = await portal.OpenSalonAsync();
        using var pim = await portal.AsAsync(cast, cast.Junior);

        var study = await pim.GetAsync("/study");
        var today = await pim.GetAsync("/");

        Assert.Equal("No skill asks for a module", study.Heading);
        Assert.Null(study.Page.QuerySelector(".next"));
        Assert.Contains("1 module can be read all the same.", study.Words, StringComparison.Ordinal);
        Assert.Null(today.Page.QuerySelector(".next"));
    }

    [Fact]
    public async Task A_salon_without_modules_is_told_so()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var open = portal;
        using var pim = await portal.AsAsync(cast, cast.Junior);

        Assert.Equal("There is nothing to study yet", (await pim.GetAsync("/study")).Heading);
        Assert.Equal(HttpStatusCode.NotFound, (await pim.GetAsync($"/study/{Blades}")).Status);
    }

    [Fact]
    public async Task A_lesson_is_read_with_its_caution_picture_and_sources_and_without_its_answers()
    {
        using var modules = new TestModules().With(Blades);
        await using var portal = new PortalHost().With("Modules:Folder", modules.Root);
        var cast = await portal.OpenSalonAsync();
        using var pim = await portal.AsAsync(cast, cast.Junior);

        var page = await pim.GetAsync($"/study/{Blades}");

        Assert.Equal(TestModules.Title, page.Heading);
        Assert.NotNull(page.Page.QuerySelector(".caution .ic"));
        Assert.Contains("edition 2", page.Words, StringComparison.Ordinal);
        Assert.Contains("House rules", page.Words, StringComparison.Ordinal);
        Assert.Equal(HttpStatusCode.OK, (await pim.GetAsync(page.Page.QuerySelector(".picture")!.GetAttribute("src")!)).Status);
        Assert.DoesNotContain("minutes of air", page.Page.DocumentElement.OuterHtml, StringComparison.Ordinal);
        Assert.Empty(page.Page.QuerySelectorAll("form[action*=ReadOut]"));
    }

    [Fact]
    public async Task The_owner_reads_every_finding_with_its_file_and_line_and_nobody_else_does()
    {
        using var modules = new TestModules()
            .With(
                "towels",
                ("review-due: 2027-11-25", "review-due: 2026-06-10"),
                ("reviewed: 2026-11-25", "reviewed: 2025-11-25")
            )
            .Write("a-broken", "module.md", "no front matter <b>here</b>");
        await using var portal = new PortalHost().With("Modules:Folder", modules.Root);
        var cast = await portal.OpenSalonAsync();
        using var ines = await portal.AsAsync(cast, cast.Owner);
        using var rosa = await portal.AsAsync(cast, cast.Senior);

        var page = await ines.GetAsync("/study/findings");

        Assert.Contains("a-broken/module.md, line 1 broken: not served", page.Words, StringComparison.Ordinal);
        Assert.Contains("Due since 10 June", page.Words, StringComparison.Ordinal);
        Assert.Contains("“heat-stroke”: asked for by", page.Words, StringComparison.Ordinal);
        Assert.NotEqual(HttpStatusCode.OK, (await rosa.GetAsync("/study/findings")).Status);
    }
}
