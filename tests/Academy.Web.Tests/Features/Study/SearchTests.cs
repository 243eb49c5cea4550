using System.Net;
using Academy.Web.Tests.Hosting;

namespace Academy.Web.Tests.Features.Study;

/// <summary>Looking for words in the modules.</summary>
public sealed class SearchTests
{
    private const string Blades = "blades-and-scissors";

    [Fact]
    public async Task Words_of_a_lesson_lead_to_the_place_where_they_stand()
    {
        using var modules = new TestModules().Titled(Blades, "Blades");
        await using var portal = new PortalHost().With("Modules:Folder", modules.Root);
        var cast = await portal.OpenSalonAsync();
        using var pim = await portal.AsAsync(cast, cast.Junior);
        var box = (await pim.GetAsync("/study")).Page.QuerySelector("form[role=search]")!;
        Assert.Equal(("/study/search", "get"), (box.GetAttribute("action"), box.GetAttribute("method")));

        var page = await pim.GetAsync("/study/search?q=begin+neck");

        Assert.Equal("Found in 1 module", page.Heading);
        Assert.Equal("Blades", page.Page.QuerySelector(".found h2 a")!.TextContent.Trim());
        Assert.Equal(["Begin", "neck"], page.Page.QuerySelectorAll(".found mark").Select(mark => mark.TextContent).Take(2));
        Assert.Contains("Begin at the neck.", page.Words, StringComparison.Ordinal);
        Assert.Equal("begin neck", page.Page.QuerySelector("#q")!.GetAttribute("value"));
        var place = page.Page.QuerySelector(".found div a")!.GetAttribute("href")!;
        Assert.StartsWith($"/study/{Blades}#part-", place, StringComparison.Ordinal);
        Assert.NotNull((await pim.GetAsync(place)).Page.GetElementById(place.Split('#')[1]));
    }

    [Fact]
    public async Task No_question_and_no_answer_is_found()
    {
        using var modules = new TestModules().Titled(Blades, "Blades");
        await using var portal = new PortalHost().With("Modules:Folder", modules.Root);
        var cast = await portal.OpenSalonAsync();
        using var pim = await portal.AsAsync(cast, cast.Junior);
        var module = portal.LibraryLesson(Blades).Module;

        foreach (var question in module.Questions)
        {
            var page = await pim.GetAsync($"/study/search?q={Uri.EscapeDataString(question.Text)}");
            Assert.DoesNotContain(
                question.Text,
                string.Concat(page.Page.QuerySelectorAll(".found").Select(one => one.TextContent)),
                StringComparison.Ordinal
            );
        }
        Assert.Equal("Nothing found", (await pim.GetAsync("/study/search?q=minutes+of+air")).Heading);
    }

    [Fact]
    public async Task The_salons_own_words_are_found_in_place_of_the_librarys_and_nowhere_else()
    {
        using var modules = new TestModules().Titled(Blades, "Blades");
        await using var portal = new PortalHost().With("Modules:Folder", modules.Root);
        var cast = await portal.OpenSalonAsync();
        var other = await portal.OpenSalonAsync("Elsewhere");
        await portal.TellEditionsAsync();
        await portal.PublishAsync(cast, Blades, "Ours.", catchUpDays: null, ("Begin at the neck.", "Begin at the zebra."));
        using var pim = await portal.AsAsync(cast, cast.Junior);
        using var theirs = await portal.AsAsync(other, other.Junior);

        Assert.Equal("Found in 1 module", (await pim.GetAsync("/study/search?q=zebra")).Heading);
        Assert.Equal("Nothing found", (await theirs.GetAsync("/study/search?q=zebra")).Heading);
        Assert.Equal("Nothing found", (await pim.GetAsync("/study/search?q=begin+neck")).Heading);
        Assert.Equal("Found in 1 module", (await theirs.GetAsync("/study/search?q=begin+neck")).Heading);
    }

    [Theory]
    [InlineData("")]
    [InlineData("?q=")]
    [InlineData("?q=%20%20")]
    public async Task Without_words_it_asks_for_some(string query)
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var open = portal;
        using var pim = await portal.AsAsync(cast, cast.Junior);

        Assert.Equal("Look for words in the modules", (await pim.GetAsync($"/study/search{query}")).Heading);
    }

    [Theory]
    [InlineData("<img src=x onerror=alert(1)>")]
    [InlineData("\" OR 1=1 --")]
    [InlineData("NEAR(")]
    [InlineData("\u0000")]
    public async Task Hostile_words_are_words(string typed)
    {
        using var modules = new TestModules().Titled(Blades, "Blades");
        await using var portal = new PortalHost().With("Modules:Folder", modules.Root);
        var cast = await portal.OpenSalonAsync();
        using var pim = await portal.AsAsync(cast, cast.Junior);

        var page = await pim.GetAsync($"/study/search?q={Uri.EscapeDataString(typed)}");

        Assert.Equal(HttpStatusCode.OK, page.Status);
        Assert.Equal("Nothing found", page.Heading);
        Assert.Contains("Try fewer of them", page.Words, StringComparison.Ordinal);
        Assert.Empty(page.Page.QuerySelectorAll("main img"));
    }
}
