using System.Net;
using Academy.Web.Tests.Hosting;

namespace Academy.Web.Tests.Features.Study;

/// <summary>What seniors add to a module: how it is done here.</summary>
public sealed class NotesTests
{
    private const string Blades = "blades-and-scissors";
    private const string Page = $"/study/{Blades}/notes";

    [Fact]
    public async Task A_senior_s_note_stands_under_the_module_for_the_junior_and_is_escaped()
    {
        using var modules = new TestModules().With(Blades);
        await using var portal = new PortalHost().With("Modules:Folder", modules.Root);
        var cast = await portal.OpenSalonAsync();
        using var rosa = await portal.AsAsync(cast, cast.Senior);
        using var pim = await portal.AsAsync(cast, cast.Junior);
        Assert.Contains("There is no note to this module yet.", (await rosa.GetAsync(Page)).Words, StringComparison.Ordinal);

        var form = (await rosa.GetAsync(Page)).Form("main form.sec").With([("Says", "Two towels <b>first</b>.")]);
        var sent = await form.SendAsync();
        await form.SendAsync();

        Assert.Equal($"/study/{Blades}", sent.Location);
        var lesson = await pim.GetAsync($"/study/{Blades}");
        Assert.Contains(
            "Two towels <b>first</b>.",
            Assert.Single(lesson.Page.QuerySelectorAll(".quote")).TextContent,
            StringComparison.Ordinal
        );
        Assert.DoesNotContain("Add or take back", lesson.Words, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_note_without_words_is_asked_for_again()
    {
        using var modules = new TestModules().With(Blades);
        await using var portal = new PortalHost().With("Modules:Folder", modules.Root);
        var cast = await portal.OpenSalonAsync();
        using var rosa = await portal.AsAsync(cast, cast.Senior);

        var again = await rosa.SendAsync(Page, "main form.sec", ("Says", " "));

        Assert.Equal(HttpStatusCode.UnprocessableEntity, again.Status);
        Assert.Contains("Write how it is done here.", again.Words, StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_owner_takes_a_note_back_and_another_senior_does_not()
    {
        using var modules = new TestModules().With(Blades);
        await using var portal = new PortalHost().With("Modules:Folder", modules.Root);
        var cast = await portal.OpenSalonAsync();
        using var rosa = await portal.AsAsync(cast, cast.Senior);
        using var dora = await portal.AsAsync(cast, cast.SecondSenior);
        using var olga = await portal.AsAsync(cast, cast.Owner);
        await rosa.SendAsync(Page, "main form.sec", ("Says", "Two towels first."));

        Assert.Empty((await dora.GetAsync(Page)).Page.QuerySelectorAll("form[action*=TakeBack]"));
        await olga.SendAsync(Page, "form[action*=TakeBack]");

        Assert.Contains("There is no note to this module yet.", (await rosa.GetAsync(Page)).Words, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_junior_writes_no_notes_and_there_are_none_to_a_module_that_is_not_there()
    {
        using var modules = new TestModules().With(Blades);
        await using var portal = new PortalHost().With("Modules:Folder", modules.Root);
        var cast = await portal.OpenSalonAsync();
        using var rosa = await portal.AsAsync(cast, cast.Senior);
        using var pim = await portal.AsAsync(cast, cast.Junior);

        Assert.Equal(HttpStatusCode.Forbidden, (await pim.GetAsync(Page)).Status);
        Assert.Equal(HttpStatusCode.NotFound, (await rosa.GetAsync("/study/nothing-here/notes")).Status);
    }
}
