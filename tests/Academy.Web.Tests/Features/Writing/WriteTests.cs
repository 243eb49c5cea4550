using System.Net;
using Academy.Web.Tests.Hosting;

namespace Academy.Web.Tests.Features.Writing;

/// <summary>Beginning a module, writing it, and losing nothing.</summary>
public sealed class WriteTests
{
    [Fact]
    public async Task Those_who_write_see_what_can_be_changed_and_others_are_kept_out()
    {
        await using var desk = await Desk.OpenAsync(rosaWrites: false);
        using var ines = await desk.AsAsync(desk.Cast.Owner);
        using var rosa = await desk.AsAsync(desk.Cast.Senior);
        using var pim = await desk.AsAsync(desk.Cast.Junior);

        Assert.Equal("No module is being written", (await ines.GetAsync("/modules")).Heading);
        Assert.Contains("Edition 2, from the library.", (await ines.GetAsync("/modules")).Words, StringComparison.Ordinal);
        Assert.Equal(HttpStatusCode.Forbidden, (await rosa.GetAsync("/modules")).Status);
        Assert.Equal(HttpStatusCode.Forbidden, (await pim.GetAsync("/modules")).Status);
        Assert.DoesNotContain("Write and change modules", (await rosa.GetAsync("/study")).Words, StringComparison.Ordinal);

        await desk.LetWriteAsync(desk.Cast.Senior);

        Assert.Equal(HttpStatusCode.OK, (await rosa.GetAsync("/modules")).Status);
        Assert.Contains("Write and change modules", (await rosa.GetAsync("/study")).Words, StringComparison.Ordinal);
        Assert.NotNull(
            (await rosa.GetAsync($"/study/{Desk.Module}")).Page.QuerySelector($"a[href='/modules#change-{Desk.Module}']")
        );
    }

    [Fact]
    public async Task A_new_module_begins_with_a_text_that_explains_itself()
    {
        await using var desk = await Desk.OpenAsync(hasModule: false);
        using var rosa = await desk.AsAsync(desk.Cast.Senior);

        var form = (await rosa.GetAsync("/modules/new")).Form().With(("Title", "Nails: \"short\" & safe"));
        var begun = await form.SendAsync();
        var twice = await form.SendAsync();
        var page = await begun.FollowAsync();

        Assert.Equal("/modules/nails-short-safe/write", begun.Location);
        Assert.Equal(begun.Location, twice.Location);
        Assert.Equal("Nails: \"short\" & safe", page.Heading);
        Assert.Contains("2 things have to be put right", page.Words, StringComparison.Ordinal);
        Assert.Equal(["Line 45", "Line 45"], page.Page.QuerySelectorAll("#found [data-line]").Select(line => line.TextContent));
        Assert.Contains("stop and phone one", page.Page.QuerySelector("#shown .caution")!.TextContent, StringComparison.Ordinal);
        Assert.Contains("The quiz: 6 questions", page.Words, StringComparison.Ordinal);
        Assert.Contains("Rosa saved it just now.", (await rosa.GetAsync("/modules")).Words, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("", "", "Title: write what it is called")]
    [InlineData("!!!", "", "Name: write small letters a to z, digits and single hyphens, such as heat-stroke")]
    [InlineData("Nails", "Nail Care", "Name: write small letters a to z, digits and single hyphens, such as heat-stroke")]
    [InlineData("Nails", Desk.Module, $"Name: a module is called {Desk.Module} already. Choose another name, or change that one")]
    [InlineData("Nails", "taken", "Name: somebody is writing a module called taken already. Choose another name")]
    public async Task A_title_or_name_that_cannot_be_comes_back_as_it_was_typed(string title, string name, string problem)
    {
        await using var desk = await Desk.OpenAsync();
        using var rosa = await desk.AsAsync(desk.Cast.Senior);
        await rosa.SendAsync("/modules/new", ("Title", "Something else"), ("Name", "taken"));

        var again = await rosa.SendAsync("/modules/new", ("Title", title), ("Name", name));

        Assert.Equal(HttpStatusCode.UnprocessableEntity, again.Status);
        Assert.Equal([problem], again.Problems);
        Assert.Equal((title, name), (again.Form()["Title"], again.Form()["Name"]));
    }

    [Fact]
    public async Task Changing_a_module_begins_with_its_text_its_pictures_and_the_next_number()
    {
        await using var desk = await Desk.OpenAsync();
        using var rosa = await desk.AsAsync(desk.Cast.Senior);
        using var ines = await desk.AsAsync(desk.Cast.Owner);

        var page = await (await Desk.BeginAsync(rosa)).FollowAsync();

        Assert.Equal(TestModules.Title, page.Heading);
        Assert.Contains("edition: 3\nsafety-critical-since: 1\n", await Desk.TextAsync(rosa), StringComparison.Ordinal);
        Assert.Contains("Nothing has to be put right", page.Words, StringComparison.Ordinal);
        Assert.Equal(
            ["![What is to be seen](back.svg)", "![What is to be seen](press.svg)"],
            page.Page.QuerySelectorAll(".written details code").Select(line => line.TextContent)
        );
        var picture = page.Page.QuerySelector("#shown .lesson img")!.GetAttribute("src")!;
        Assert.Equal($"{Desk.Pictures}?handler=Picture&file=press.svg", picture);
        Assert.Equal(HttpStatusCode.OK, (await rosa.GetAsync(picture)).Status);

        // Whoever comes second goes on with the same draft.
        var list = await ines.GetAsync("/modules");
        Assert.Equal("1 module is being written", list.Heading);
        Assert.Null(list.Page.QuerySelector($"#change-{Desk.Module} form"));
        Assert.Equal(HttpStatusCode.NotFound, (await rosa.GetAsync("/modules/nothing-here/write")).Status);
    }

    [Fact]
    public async Task What_is_typed_is_shown_and_found_without_being_saved_and_saved_when_it_is()
    {
        await using var desk = await Desk.OpenAsync();
        using var rosa = await desk.AsAsync(desk.Cast.Senior);
        await Desk.BeginAsync(rosa);
        var text = await Desk.TextAsync(
            rosa,
            ("Begin at the neck.", "Begin at the **tail**. See [9]."),
            ("| wool | 3 |", "| wool | 4 |")
        );
        var form = (await rosa.GetAsync(Desk.Write)).Form(Desk.Writing).With(("Form.Text", text));

        var looked = await form.PressAsync("[data-look]");
        var preview = await form.SendToAsync("?handler=Preview");

        Assert.Equal((HttpStatusCode.OK, HttpStatusCode.OK), (looked.Status, preview.Status));
        Assert.Equal(text, looked.Form(Desk.Writing)["Form.Text"]!.ReplaceLineEndings("\n"));
        foreach (var shown in (Answer[])[looked, preview])
        {
            Assert.Equal("tail", shown.Page.QuerySelector("#shown .lesson strong")!.TextContent);
            Assert.Equal("1 thing has to be put right", shown.Page.QuerySelector("#found h2")!.TextContent);
            Assert.Equal("1. Begin at the **tail**. See [9].", shown.Page.QuerySelector("#found code")!.TextContent);
        }
        Assert.Null(preview.Page.QuerySelector("textarea"));
        Assert.Contains("Begin at the neck.", (await desk.DraftAsync())!.Text, StringComparison.Ordinal);

        var saved = await form.SendAsync();
        var twice = await form.SendAsync();

        Assert.Equal((Desk.Write, Desk.Write), (saved.Location, twice.Location));
        Assert.Equal("It is saved.", (await saved.FollowAsync()).Said);
        Assert.Equal((text, 2L), ((await desk.DraftAsync())!.Text, (await desk.DraftAsync())!.Version));
    }

    [Fact]
    public async Task A_broken_text_is_kept_and_says_where_it_breaks()
    {
        await using var desk = await Desk.OpenAsync();
        using var rosa = await desk.AsAsync(desk.Cast.Senior);
        await Desk.BeginAsync(rosa);

        await Desk.SaveAsync(rosa, await Desk.TextAsync(rosa, ("minutes: 6", "minutes: [6")));
        var page = await rosa.GetAsync(Desk.Write);

        Assert.Contains("minutes: [6", await Desk.TextAsync(rosa), StringComparison.Ordinal);
        Assert.Contains("It cannot be shown until what is broken is put right.", page.Words, StringComparison.Ordinal);
        Assert.Equal("broken: it cannot be shown", page.Page.QuerySelector("#found .when")!.TextContent);
        Assert.Empty(page.Page.QuerySelector("#shown")!.Children);
    }

    [Fact]
    public async Task When_two_write_at_once_both_texts_are_there_and_either_is_gone_on_from()
    {
        await using var desk = await Desk.OpenAsync();
        using var rosa = await desk.AsAsync(desk.Cast.Senior);
        using var ines = await desk.AsAsync(desk.Cast.Owner);
        await Desk.BeginAsync(rosa);
        var mine = (await rosa.GetAsync(Desk.Write)).Form(Desk.Writing).With(("Form.Text", "what Rosa typed"));
        await Desk.SaveAsync(ines, "what Ines typed");

        var moved = await mine.SendAsync();

        Assert.Equal(HttpStatusCode.Conflict, moved.Status);
        Assert.StartsWith("Ines saved this just now, after you began.", Assert.Single(moved.Problems), StringComparison.Ordinal);
        Assert.Equal("what Rosa typed", moved.Form(Desk.Writing)["Form.Text"]);
        Assert.Equal("what Ines typed", moved.Page.QuerySelector("#other")!.TextContent.Trim());

        var theirs = await moved.Form(Desk.Writing).PressAsync("[formaction*=Theirs]");
        Assert.Equal("what Ines typed", theirs.Form(Desk.Writing)["Form.Text"]);
        Assert.Equal("what Rosa typed", theirs.Page.QuerySelector("#other")!.TextContent.Trim());

        var saved = await moved.Form(Desk.Writing).SendAsync();
        Assert.Equal(HttpStatusCode.Redirect, saved.Status);
        Assert.Equal(
            ("what Rosa typed", desk.Cast.Senior.Id),
            ((await desk.DraftAsync())!.Text, (await desk.DraftAsync())!.Author)
        );
    }

    [Fact]
    public async Task A_text_whose_draft_is_gone_meanwhile_is_still_there_and_begins_anew()
    {
        await using var desk = await Desk.OpenAsync();
        using var rosa = await desk.AsAsync(desk.Cast.Senior);
        using var ines = await desk.AsAsync(desk.Cast.Owner);
        await Desk.BeginAsync(rosa);
        var text = await Desk.TextAsync(rosa, ("Begin at the neck.", "Begin at the tail."));
        var form = (await rosa.GetAsync(Desk.Write)).Form(Desk.Writing).With(("Form.Text", text));
        var ended = await ines.SendAsync(Desk.Write, "form[action*=End]");
        Assert.Equal("/modules", ended.Location);

        var moved = await form.SendAsync();

        Assert.Equal(HttpStatusCode.Conflict, moved.Status);
        Assert.Equal(text, moved.Form(Desk.Writing)["Form.Text"]!.ReplaceLineEndings("\n"));
        Assert.Null(await desk.DraftAsync());
        Assert.Equal(HttpStatusCode.Redirect, (await moved.Form(Desk.Writing).SendAsync()).Status);
        Assert.Equal(text, (await desk.DraftAsync())!.Text);
        Assert.Contains("Nothing has to be put right", (await rosa.GetAsync(Desk.Write)).Words, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_draft_that_somebody_saved_meanwhile_is_not_thrown_away()
    {
        await using var desk = await Desk.OpenAsync();
        using var rosa = await desk.AsAsync(desk.Cast.Senior);
        using var ines = await desk.AsAsync(desk.Cast.Owner);
        await Desk.BeginAsync(rosa);
        var end = (await ines.GetAsync(Desk.Write)).Form("form[action*=End]");
        await Desk.SaveAsync(rosa, "newer");

        var moved = await end.SendAsync();

        Assert.Equal(HttpStatusCode.Conflict, moved.Status);
        Assert.Equal("newer", (await desk.DraftAsync())!.Text);
    }

    [Fact]
    public async Task A_text_too_large_is_not_saved_and_comes_back_whole()
    {
        await using var desk = await Desk.OpenAsync();
        using var rosa = await desk.AsAsync(desk.Cast.Senior);
        await Desk.BeginAsync(rosa);
        var large = new string('a', 200 * 1024);

        var again = await Desk.SaveAsync(rosa, large);

        Assert.Equal(HttpStatusCode.UnprocessableEntity, again.Status);
        Assert.Equal(["The text: it has 200 KB, and 128 KB are the most. Make it shorter"], again.Problems);
        Assert.Equal(large, again.Form(Desk.Writing)["Form.Text"]);
        Assert.Equal(1, (await desk.DraftAsync())!.Version);
    }

    [Fact]
    public async Task Saving_what_somebody_else_wrote_unchanged_leaves_it_hers()
    {
        await using var desk = await Desk.OpenAsync();
        using var rosa = await desk.AsAsync(desk.Cast.Senior);
        using var ines = await desk.AsAsync(desk.Cast.Owner);
        await Desk.BeginAsync(rosa);

        var page = await ines.GetAsync(Desk.Write);
        await page.Form(Desk.Writing).SendAsync();

        Assert.Contains("Rosa wrote this last. If you save a change, it is yours", page.Words, StringComparison.Ordinal);
        Assert.Equal((desk.Cast.Senior.Id, 1L), ((await desk.DraftAsync())!.Author, (await desk.DraftAsync())!.Version));
    }

    [Fact]
    public async Task Another_salon_sees_nothing_of_a_draft()
    {
        await using var desk = await Desk.OpenAsync();
        var other = await desk.Portal.OpenSalonAsync("The Dry Nose");
        using var rosa = await desk.AsAsync(desk.Cast.Senior);
        using var stranger = await desk.Portal.AsAsync(other, other.Owner);
        await rosa.SendAsync("/modules/new", ("Title", "Zephyrine"));

        Assert.DoesNotContain("zephyrine", (await stranger.GetAsync("/modules")).Words, StringComparison.OrdinalIgnoreCase);
        foreach (var page in (string[])["write", "pictures", "pictures?handler=Picture&file=a.svg", "ask", "read-over"])
            Assert.Equal(HttpStatusCode.NotFound, (await stranger.GetAsync($"/modules/zephyrine/{page}")).Status);
    }

    [Fact]
    public async Task The_pages_ask_the_database_the_same_few_things_however_much_is_written()
    {
        await using var desk = await Desk.OpenAsync();
        using var rosa = await desk.AsAsync(desk.Cast.Senior);
        await Desk.BeginAsync(rosa);
        foreach (var number in Enumerable.Range(1, 5))
            await rosa.SendAsync("/modules/new", ("Title", $"Module {number}"));
        await rosa.GetAsync(Desk.Write);

        Assert.Equal(
            (4, 5, 5),
            (
                await desk.Portal.Sql.OfAsync(() => rosa.GetAsync("/modules")),
                await desk.Portal.Sql.OfAsync(() => rosa.GetAsync(Desk.Write)),
                await desk.Portal.Sql.OfAsync(() => rosa.GetAsync(Desk.Pictures))
            )
        );
    }
}
