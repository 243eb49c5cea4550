using System.Net;
using Academy.Competence;
using Academy.Competence.People;
using Academy.Storage;
using Academy.Web.Tests.Hosting;

namespace Academy.Web.Tests.Features.ModuleEditions;

/// <summary>The history of a module, two editions side by side, who is affected, and the way back to the library's.</summary>
public sealed class EditionsTests
{
    private const string Blades = "blades-and-scissors";
    private const string Hostile = "<img src=x onerror=alert(1)> \"&'";

    [Fact]
    public async Task The_history_says_when_by_whom_and_what_changed()
    {
        using var modules = new TestModules().Titled(Blades, "Blades");
        await using var portal = new PortalHost().With("Modules:Folder", modules.Root);
        var cast = await OpenAsync(portal);
        await portal.PublishAsync(
            cast,
            Blades,
            $"Two hands away. {Hostile}",
            catchUpDays: 14,
            ("What does a towel save?", "What else?")
        );
        using var ines = await portal.AsAsync(cast, cast.Owner);

        var page = await ines.GetAsync($"/study/{Blades}/editions");

        Assert.Equal("Blades: edition 3", page.Heading);
        Assert.Contains("The salon’s own. 2 editions so far.", page.Words, StringComparison.Ordinal);
        var lines = page.Page.QuerySelectorAll(".history li");
        Assert.Equal(["Edition 3, in force", "Edition 2"], lines.Select(line => line.QuerySelector("h3")!.TextContent));
        Assert.Contains(
            "since today, written by Ines; nobody else here could read it over",
            page.Words,
            StringComparison.Ordinal
        );
        Assert.Contains("came with the library", page.Words, StringComparison.Ordinal);
        Assert.Contains($"“Two hands away. {Hostile}”", page.Words, StringComparison.Ordinal);
        Assert.Contains("Changed for safety: older passes count until Wednesday 24 June.", page.Words, StringComparison.Ordinal);
        Assert.Contains("It is the one that was there when the salon wrote its own.", page.Words, StringComparison.Ordinal);
        Assert.Empty(page.Page.QuerySelectorAll("main img"));
    }

    [Fact]
    public async Task Two_editions_stand_side_by_side_with_words_for_what_was_added_and_removed()
    {
        using var modules = new TestModules().Titled(Blades, "Blades");
        await using var portal = new PortalHost().With("Modules:Folder", modules.Root);
        var cast = await OpenAsync(portal);
        await portal.PublishAsync(
            cast,
            Blades,
            "Words.",
            catchUpDays: null,
            ("Begin at the neck.", "Begin at the tail with <b onclick=x>care</b>."),
            ("What does a towel save?", "What else?")
        );
        using var ines = await portal.AsAsync(cast, cast.Owner);

        var page = await ines.GetAsync(
            (await ines.GetAsync($"/study/{Blades}/editions")).Page.QuerySelector(".history li a")!.GetAttribute("href")!
        );

        Assert.Equal("What changed in Blades", page.Heading);
        var changed = page.Page.QuerySelector("[aria-labelledby=lesson] tr.changed")!;
        Assert.Equal("before", changed.QuerySelector(".was .mark")!.TextContent);
        Assert.Equal("now", changed.QuerySelector(".is .mark")!.TextContent);
        Assert.StartsWith("removed: neck", changed.QuerySelector("del")!.TextContent, StringComparison.Ordinal);
        Assert.StartsWith("added: tail", changed.QuerySelector("ins")!.TextContent, StringComparison.Ordinal);
        Assert.Contains("<b onclick=x>care</b>", changed.QuerySelector(".is")!.TextContent, StringComparison.Ordinal);
        Assert.Null(page.Page.QuerySelector("main b"));
        Assert.Equal(
            ["towel-01: changed"],
            page.Page.QuerySelectorAll("[aria-labelledby=questions] h3").Select(one => one.TextContent)
        );
        Assert.Contains("questions are the same.", page.Words, StringComparison.Ordinal);
        Assert.Contains("before edition: removed: 2", page.Words, StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_draft_stands_beside_the_edition_in_force_for_the_second_reader()
    {
        using var modules = new TestModules().Titled(Blades, "Blades");
        await using var portal = new PortalHost().With("Modules:Folder", modules.Root);
        var cast = await OpenAsync(portal);
        var lesson = portal.LibraryLesson(Blades);
        await BeginAsync(portal, cast, lesson.Text.Replace("Begin at the neck.", "Begin at the tail.", StringComparison.Ordinal));
        using var ines = await portal.AsAsync(cast, cast.Owner);

        var editions = await ines.GetAsync($"/study/{Blades}/editions");
        Assert.Contains("Rosa is writing the next edition, saved just now.", editions.Words, StringComparison.Ordinal);
        var page = await ines.GetAsync($"/study/{Blades}/editions/compare?from={lesson.Module.Hash}&to=draft");

        Assert.Contains("Edition 2, and beside it the draft.", page.Words, StringComparison.Ordinal);
        Assert.Contains("tail", page.Page.QuerySelector("ins")!.TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_fingerprint_opens_no_text_of_another_salon_and_no_other_address_does()
    {
        using var modules = new TestModules().Titled(Blades, "Blades");
        await using var portal = new PortalHost().With("Modules:Folder", modules.Root);
        var cast = await OpenAsync(portal);
        var other = await portal.OpenSalonAsync("Elsewhere");
        var own = await portal.PublishAsync(other, Blades, "Theirs.", catchUpDays: null, ("What does a towel save?", "Secret?"));
        var librarys = portal.LibraryLesson(Blades).Module.Hash;
        using var ines = await portal.AsAsync(cast, cast.Owner);

        foreach (
            var path in (string[])
                [
                    $"compare?from={librarys}&to={own}",
                    $"compare?from={own}&to={librarys}",
                    $"compare?from={librarys}&to=draft",
                    "compare",
                    $"compare?from={librarys}",
                    "compare?from=x&to=%27%3B--",
                    "library",
                ]
        )
            Assert.Equal(HttpStatusCode.NotFound, (await ines.GetAsync($"/study/{Blades}/editions/{path}")).Status);
        Assert.Equal(HttpStatusCode.NotFound, (await ines.GetAsync("/study/nowhere/editions")).Status);
        Assert.Equal(HttpStatusCode.NotFound, (await ines.GetAsync("/study/nowhere/editions/affected")).Status);
    }

    [Fact]
    public async Task Seniors_whom_the_owner_lets_look_at_editions_and_others_do_not()
    {
        using var modules = new TestModules().Titled(Blades, "Blades");
        await using var portal = new PortalHost().With("Modules:Folder", modules.Root);
        var cast = await OpenAsync(portal);
        using var rosa = await portal.AsAsync(cast, cast.Senior);
        using var pim = await portal.AsAsync(cast, cast.Junior);
        Assert.Equal(HttpStatusCode.Forbidden, (await rosa.GetAsync($"/study/{Blades}/editions")).Status);
        Assert.Equal(HttpStatusCode.Forbidden, (await pim.GetAsync($"/study/{Blades}/editions")).Status);

        await LetWriteAsync(portal, cast);

        Assert.Equal(HttpStatusCode.OK, (await rosa.GetAsync($"/study/{Blades}/editions")).Status);
        Assert.Contains("who is affected", (await rosa.GetAsync($"/study/{Blades}")).Words, StringComparison.Ordinal);
        Assert.DoesNotContain("who is affected", (await pim.GetAsync($"/study/{Blades}")).Words, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Everybody_whose_clearance_rests_on_a_module_is_listed_with_what_to_do_and_by_when()
    {
        using var modules = new TestModules().Titled(Blades, "Blades");
        await using var portal = new PortalHost().With("Modules:Folder", modules.Root);
        var cast = await OpenAsync(portal);
        await portal.OnlyModuleAsync(cast, "smooth", Blades);
        await portal.OnlyModuleAsync(cast, "wool", Blades);
        await portal.DeclareAsync(cast, cast.Senior, "smooth", "wool");
        await portal.DeclareAsync(cast, cast.SecondSenior, "smooth");
        portal.Clock.Advance(TimeSpan.FromDays(35));
        await portal.PassAsync(cast, cast.Senior, Blades);
        await portal.PublishAsync(cast, Blades, "Two hands away.", catchUpDays: 20, ("What does a towel save?", "What else?"));
        using var ines = await portal.AsAsync(cast, cast.Owner);

        var before = await ines.GetAsync($"/study/{Blades}/editions/affected");
        Assert.Equal("2 people have something to do", before.Heading);
        var lines = before.Page.QuerySelectorAll("[aria-labelledby=to-do] li").Select(line => Answer.Folded(line)).ToList();
        Assert.Equal(2, lines.Count);
        Assert.Contains("Doralapsed smooth Not passed yet.", lines[0], StringComparison.Ordinal);
        Assert.Contains("Takes the quiz, 20 questions, now", lines[0], StringComparison.Ordinal);
        Assert.Contains(
            "Rosaalone smooth and wool Changed for safety: catch up by Tuesday 4 August.",
            lines[1],
            StringComparison.Ordinal
        );
        Assert.Contains("Answers at most", lines[1], StringComparison.Ordinal);
        Assert.Contains(", by Tuesday 4 August.", lines[1], StringComparison.Ordinal);
        Assert.Contains(
            "3 other people here may do none of the skills alone that ask for it",
            before.Words,
            StringComparison.Ordinal
        );

        portal.Clock.Advance(TimeSpan.FromDays(21));
        using var again = await portal.AsAsync(cast, cast.Owner);
        var after = await again.GetAsync($"/study/{Blades}/editions/affected");
        Assert.Contains("Rosalapsed smooth and wool", after.Words, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Going_back_publishes_the_librarys_text_as_the_next_edition_once()
    {
        using var modules = new TestModules().Titled(Blades, "Blades");
        await using var portal = new PortalHost().With("Modules:Folder", modules.Root);
        var cast = await OpenAsync(portal);
        await portal.PublishAsync(cast, Blades, "Ours.", catchUpDays: null, ("Begin at the neck.", "Begin at the tail."));
        using var ines = await portal.AsAsync(cast, cast.Owner);
        var form = (await ines.GetAsync($"/study/{Blades}/editions/library")).Form();

        var first = await form.SendAsync();
        var second = await form.SendAsync();

        Assert.Equal($"/study/{Blades}/editions", first.Location);
        Assert.Equal($"/study/{Blades}/editions", second.Location);
        var page = await first.FollowAsync();
        Assert.Equal("Edition 4 is the library’s, and in force.", page.Said);
        Assert.Equal("Blades: edition 4", page.Heading);
        Assert.Equal(3, page.Page.QuerySelectorAll(".history li").Length);
        Assert.Contains("The salon’s edition has the words of the library’s edition 2.", page.Words, StringComparison.Ordinal);
        Assert.Contains("“The library’s edition 2, in place of our own.”", page.Words, StringComparison.Ordinal);
        Assert.Contains("Begin at the neck.", (await ines.GetAsync($"/study/{Blades}")).Words, StringComparison.Ordinal);
    }

    [Fact]
    public async Task What_was_published_in_between_is_shown_before_the_librarys_is_taken()
    {
        using var modules = new TestModules().Titled(Blades, "Blades");
        await using var portal = new PortalHost().With("Modules:Folder", modules.Root);
        var cast = await OpenAsync(portal);
        await portal.PublishAsync(cast, Blades, "Ours.", catchUpDays: null, ("Begin at the neck.", "Begin at the tail."));
        using var ines = await portal.AsAsync(cast, cast.Owner);
        var form = (await ines.GetAsync($"/study/{Blades}/editions/library")).Form();
        await portal.PublishAsync(cast, Blades, "Ours again.", catchUpDays: null, ("Begin at the tail.", "Begin at the paws."));

        var stale = await form.SendAsync();

        Assert.Equal(HttpStatusCode.Conflict, stale.Status);
        Assert.Contains("Another edition was published in between", stale.Problems[0], StringComparison.Ordinal);
        Assert.Equal("5", stale.Form()["Form.Next"]);
        Assert.Equal(HttpStatusCode.Found, (await stale.Form().SendAsync()).Status);
    }

    [Fact]
    public async Task A_safety_change_taken_from_the_library_needs_words_and_its_day()
    {
        using var modules = new TestModules().Titled(Blades, "Blades");
        await using var portal = new PortalHost().With("Modules:Folder", modules.Root);
        var cast = await OpenAsync(portal);
        await portal.PublishAsync(cast, Blades, "Ours.", catchUpDays: null, ("Begin at the neck.", "Begin at the tail."));
        using var ines = await portal.AsAsync(cast, cast.Owner);

        var refused = await ines.SendAsync(
            $"/study/{Blades}/editions/library",
            ("Form.Change", " "),
            ("Form.IsSafety", "true"),
            ("Form.CatchUpBy", "2026-06-10")
        );

        Assert.Equal(HttpStatusCode.UnprocessableEntity, refused.Status);
        Assert.Equal(2, refused.Problems.Count);
    }

    [Fact]
    public async Task The_library_has_changed_since_is_said_until_its_edition_is_taken()
    {
        using var modules = new TestModules().Titled(Blades, "Blades");
        var portal = new PortalHost().With("Modules:Folder", modules.Root);
        var cast = await OpenAsync(portal);
        await portal.PublishAsync(cast, Blades, "Ours.", catchUpDays: null, ("Begin at the neck.", "Begin at the tail."));
        modules.Titled(Blades, "Blades", ("edition: 2", "edition: 3"), ("Begin at the neck.", "Begin at the back."));
        await using var again = (await portal.AgainAsync()).With("Modules:Folder", modules.Root);
        using var ines = await again.AsAsync(cast, cast.Owner);

        var page = await ines.GetAsync($"/study/{Blades}/editions");
        Assert.Contains("The library has changed since", page.Words, StringComparison.Ordinal);
        Assert.Contains("Begin at the tail.", (await ines.GetAsync($"/study/{Blades}")).Words, StringComparison.Ordinal);
        var compared = await ines.GetAsync(page.Page.QuerySelector("[aria-labelledby=library] a")!.GetAttribute("href")!);
        Assert.Contains("Edition 3, and beside it the library’s edition.", compared.Words, StringComparison.Ordinal);

        var taking = await ines.GetAsync($"/study/{Blades}/editions/library");
        Assert.Equal("The library has changed since", taking.Heading);
        await taking.Form().SendAsync();

        Assert.DoesNotContain(
            "The library has changed since",
            (await ines.GetAsync($"/study/{Blades}/editions")).Words,
            StringComparison.Ordinal
        );
        Assert.Contains("Begin at the back.", (await ines.GetAsync($"/study/{Blades}")).Words, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Where_somebody_else_could_read_it_the_librarys_edition_waits_for_her()
    {
        using var modules = new TestModules().Titled(Blades, "Blades");
        await using var portal = new PortalHost().With("Modules:Folder", modules.Root);
        var cast = await OpenAsync(portal);
        await portal.PublishAsync(cast, Blades, "Ours.", catchUpDays: null, ("Begin at the neck.", "Begin at the tail."));
        await LetWriteAsync(portal, cast);
        using var ines = await portal.AsAsync(cast, cast.Owner);
        var form = (await ines.GetAsync($"/study/{Blades}/editions/library")).Form();

        var asked = await form.SendAsync();
        var twice = await form.SendAsync();

        Assert.Equal("The library’s edition waits for a second reader: Rosa.", (await asked.FollowAsync()).Said);
        Assert.Equal(asked.Location, twice.Location);
        var draft = (await DraftAsync(portal, cast))!;
        Assert.Equal((cast.Owner.Id, portal.Now), (draft.Author, draft.AskedAt));
        Assert.Contains("edition: 4", draft.Text, StringComparison.Ordinal);
        Assert.Contains("Begin at the neck.", draft.Text, StringComparison.Ordinal);
        Assert.Contains("Begin at the tail.", (await ines.GetAsync($"/study/{Blades}")).Words, StringComparison.Ordinal);

        using var rosa = await portal.AsAsync(cast, cast.Senior);
        await rosa.SendAsync($"/modules/{Blades}/read-over", "form[action$=read-over]");
        var page = await ines.GetAsync($"/study/{Blades}/editions");
        Assert.Equal("Blades: edition 4", page.Heading);
        Assert.Contains("written by Ines, read over by Rosa", page.Words, StringComparison.Ordinal);
        Assert.Contains("has the words of the library’s edition 2.", page.Words, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_draft_that_is_being_written_is_not_thrown_away_for_the_librarys()
    {
        using var modules = new TestModules().Titled(Blades, "Blades");
        await using var portal = new PortalHost().With("Modules:Folder", modules.Root);
        var cast = await OpenAsync(portal);
        await portal.PublishAsync(cast, Blades, "Ours.", catchUpDays: null, ("Begin at the neck.", "Begin at the tail."));
        await LetWriteAsync(portal, cast);
        await BeginAsync(portal, cast, "my words");
        using var ines = await portal.AsAsync(cast, cast.Owner);

        var answer = await ines.SendAsync($"/study/{Blades}/editions/library");

        Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.Status);
        Assert.Equal("my words", (await DraftAsync(portal, cast))!.Text);
    }

    [Fact]
    public async Task The_pages_send_as_many_commands_for_many_editions_as_for_few()
    {
        using var modules = new TestModules().Titled(Blades, "Blades");
        await using var portal = new PortalHost().With("Modules:Folder", modules.Root);
        var cast = await OpenAsync(portal);
        await portal.PublishAsync(cast, Blades, "Words.", catchUpDays: null);
        using var ines = await portal.AsAsync(cast, cast.Owner);
        await ines.GetAsync($"/study/{Blades}/editions");
        var one = await portal.Sql.OfAsync(() => ines.GetAsync($"/study/{Blades}/editions"));
        for (var edition = 0; edition < 9; edition++)
            await portal.PublishAsync(cast, Blades, $"Words {edition}.", catchUpDays: null);
        await ines.GetAsync($"/study/{Blades}/editions");

        Assert.Equal(one, await portal.Sql.OfAsync(() => ines.GetAsync($"/study/{Blades}/editions")));
    }

    private static async Task<Cast> OpenAsync(PortalHost portal)
    {
        var cast = await portal.OpenSalonAsync();
        await portal.TellEditionsAsync();
        return cast;
    }

    private static Task<Kept> LetWriteAsync(PortalHost portal, Cast cast) =>
        portal.KeepAsync(
            cast.Salon,
            Staffing.Describe(cast.Senior with { WritesModules = true }, cast.Senior, cast.Owner, owners: 1),
            cast.Owner
        );

    private static Task<bool> BeginAsync(PortalHost portal, Cast cast, string text) =>
        portal.DoAsync<DraftBook, bool>(drafts =>
            drafts.BeginAsync(
                cast.Salon,
                new Draft(new(Blades), text, cast.Senior.Id, portal.Now, AskedAt: null, "", CatchUpBy: null, Returned: null, 0),
                new Dictionary<string, ReadOnlyMemory<byte>>(StringComparer.Ordinal)
            )
        );

    private static Task<Draft?> DraftAsync(PortalHost portal, Cast cast) =>
        portal.DoAsync<DraftBook, Draft?>(drafts => drafts.FindAsync(cast.Salon, new(Blades), default));
}
