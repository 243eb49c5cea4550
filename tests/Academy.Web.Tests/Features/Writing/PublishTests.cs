using System.Net;
using System.Text.Json.Nodes;
using Academy.Competence;
using Academy.Competence.Evidence;
using Academy.Competence.People;
using Academy.Competence.Salons;
using Academy.Competence.Standings;
using Academy.Storage;
using Academy.Web.Tests.Hosting;
using Microsoft.EntityFrameworkCore;

namespace Academy.Web.Tests.Features.Writing;

/// <summary>From a finished draft to the edition that everybody studies: asking, reading over, giving back, publishing.</summary>
public sealed class PublishTests
{
    private static (string From, string To) Better => ("Begin at the neck.", "Begin at the tail.");

    [Fact]
    public async Task A_senior_asks_the_owner_gives_back_the_senior_mends_and_the_owner_publishes()
    {
        await using var desk = await Desk.OpenAsync();
        using var rosa = await desk.AsAsync(desk.Cast.Senior);
        using var ines = await desk.AsAsync(desk.Cast.Owner);
        using var pim = await desk.AsAsync(desk.Cast.Junior);
        await Desk.BeginAsync(rosa);
        await Desk.SaveAsync(rosa, await Desk.TextAsync(rosa, Better));
        Assert.Contains(
            "Ines reads it over, and publishes it or gives it back.",
            (await rosa.GetAsync(Desk.Ask)).Words,
            StringComparison.Ordinal
        );

        var asked = await Desk.AskAsync(rosa);
        Assert.Equal("Ines can read it now, and is told so on the first page.", (await asked.FollowAsync()).Said);
        Assert.Contains("It waits to be read by Ines.", (await rosa.GetAsync(Desk.ReadOver)).Words, StringComparison.Ordinal);
        Assert.Contains("1 module waits for you to read over", (await ines.GetAsync("/")).Words, StringComparison.Ordinal);
        Assert.DoesNotContain("read over", (await rosa.GetAsync("/")).Words, StringComparison.Ordinal);

        var read = await ines.GetAsync(Desk.ReadOver);
        Assert.Contains("Edition 3, written by Rosa", read.Words, StringComparison.Ordinal);
        Assert.Contains("What changed, in Rosa’s words Three towels, not two.", read.Words, StringComparison.Ordinal);
        Assert.Contains("Begin at the tail.", read.Page.QuerySelector("#shown .lesson")!.TextContent, StringComparison.Ordinal);
        Assert.Contains(
            "Press and lift",
            read.Page.QuerySelector("#shown .ans")!.ParentElement!.TextContent,
            StringComparison.Ordinal
        );

        var given = read.Form(Desk.GivingBack).With(("Says", "Say how wet."));
        var back = await given.SendAsync();
        Assert.Equal("/modules", (await given.SendAsync()).Location);
        Assert.Equal("It is back with Rosa, with what you wrote.", (await back.FollowAsync()).Said);
        Assert.Contains("1 module of yours came back to mend", (await rosa.GetAsync("/")).Words, StringComparison.Ordinal);
        Assert.Contains("Ines gave it back: Say how wet.", (await rosa.GetAsync(Desk.Write)).Words, StringComparison.Ordinal);

        await Desk.SaveAsync(rosa, await Desk.TextAsync(rosa, ("Begin at the tail.", "Begin at the tail while it drips.")));
        await Desk.AskAsync(rosa);
        Assert.DoesNotContain("came back", (await rosa.GetAsync("/")).Words, StringComparison.Ordinal);
        var published = await ines.SendAsync(Desk.ReadOver, Desk.Publishing);

        Assert.Equal($"/study/{Desk.Module}", published.Location);
        Assert.Equal("It is published, and studied from now on.", (await published.FollowAsync()).Said);
        Assert.Null(await desk.DraftAsync());
        var lesson = await pim.GetAsync($"/study/{Desk.Module}");
        Assert.Contains("Begin at the tail while it drips.", lesson.Words, StringComparison.Ordinal);
        Assert.Contains("edition 3", lesson.Words, StringComparison.Ordinal);
        Assert.Equal(
            HttpStatusCode.OK,
            (await pim.GetAsync(lesson.Page.QuerySelector(".lesson img")!.GetAttribute("src")!)).Status
        );
        Assert.Contains("Edition 3, written here.", (await ines.GetAsync("/modules")).Words, StringComparison.Ordinal);
        Assert.Equal(new Told(3, IsSafetyCritical: false, desk.Cast.Senior.Id, desk.Cast.Owner.Id), await PublishedAsync(desk));
    }

    [Fact]
    public async Task Whoever_writes_alone_reads_over_herself_and_publishes()
    {
        await using var desk = await Desk.OpenAsync(rosaWrites: false);
        using var ines = await desk.AsAsync(desk.Cast.Owner);
        await Desk.BeginAsync(ines);
        Assert.Contains("Nobody else here writes modules", (await ines.GetAsync(Desk.Ask)).Words, StringComparison.Ordinal);

        var asked = await Desk.AskAsync(ines);
        Assert.Equal(Desk.ReadOver, asked.Location);
        Assert.Null((await asked.FollowAsync()).Page.QuerySelector(Desk.GivingBack));
        var published = await ines.SendAsync(Desk.ReadOver, Desk.Publishing);
        Assert.Equal([], published.Problems);
        Assert.Equal($"/study/{Desk.Module}", published.Location);
        Assert.Null((await PublishedAsync(desk)).ReviewedBy);
    }

    [Fact]
    public async Task A_wholly_new_module_is_published_without_words_on_what_changed()
    {
        await using var desk = await Desk.OpenAsync(rosaWrites: false);
        using var ines = await desk.AsAsync(desk.Cast.Owner);
        await Desk.BeginAsync(ines);
        var text = await Desk.TextAsync(ines, ($"name: {Desk.Module}", "name: towels-here"));
        await ines.SendAsync("/modules/new", ("Title", "Towels here"));
        foreach (var file in (string[])["press.svg", "back.svg"])
            await ines.SendFileAsync(
                "/modules/towels-here/pictures",
                "section[aria-labelledby=another] form",
                (
                    "Sent",
                    file,
                    await ines.Client.GetByteArrayAsync(
                        $"{Desk.Pictures}?handler=Picture&file={file}",
                        TestContext.Current.CancellationToken
                    )
                )
            );
        await (await ines.GetAsync("/modules/towels-here/write")).Form(Desk.Writing).With(("Form.Text", text)).SendAsync();

        var ask = await ines.GetAsync("/modules/towels-here/ask");
        Assert.Contains("A first edition is a change for nobody", ask.Words, StringComparison.Ordinal);
        Assert.Equal("/modules/towels-here/read-over", (await ask.Form().SendAsync()).Location);
        var published = await ines.SendAsync("/modules/towels-here/read-over", Desk.Publishing);

        Assert.Equal("/study/towels-here", published.Location);
        Assert.StartsWith(
            "It is published. No skill asks for it yet",
            (await published.FollowAsync()).Said,
            StringComparison.Ordinal
        );
        Assert.Contains("edition 1", (await ines.GetAsync(published.Location!)).Words, StringComparison.Ordinal);
        Assert.Equal((1, true), ((await PublishedAsync(desk)).Edition, (await PublishedAsync(desk)).IsSafetyCritical));
    }

    [Fact]
    public async Task Everything_that_stands_against_asking_is_said_beside_its_field()
    {
        await using var desk = await Desk.OpenAsync();
        using var rosa = await desk.AsAsync(desk.Cast.Senior);
        await Desk.BeginAsync(rosa);
        await Desk.SaveAsync(rosa, await Desk.TextAsync(rosa, ("Begin at the neck.", "Begin at the neck [9].")));

        var nothing = await Desk.AskAsync(rosa, change: " ", kind: "", by: "");
        var late = await Desk.AskAsync(rosa, change: "Safer.", kind: "safety", by: "2027-06-10");

        Assert.Equal(HttpStatusCode.UnprocessableEntity, nothing.Status);
        Assert.Equal(
            [
                "One thing in it has to be put right first: it is listed with its line.",
                "Write what changed, for those who passed the edition before.",
                "What kind of change: choose one",
            ],
            nothing.Problems
        );
        Assert.Equal(
            [
                "One thing in it has to be put right first: it is listed with its line.",
                "Choose by which day everybody catches up: from 11 June to 9 August.",
            ],
            late.Problems
        );
        Assert.Equal("Safer.", late.Form()["Form.Change"]!.Trim());
        Assert.Contains("Line 34: Source [9] is not in the front matter.", late.Words, StringComparison.Ordinal);

        await Desk.SaveAsync(rosa, "broken");
        Assert.Equal(
            ["The text is broken and cannot be shown. What to put right stands beside it, with its lines"],
            (await Desk.AskAsync(rosa)).Problems
        );
        Assert.Null((await desk.DraftAsync())!.AskedAt);
    }

    [Fact]
    public async Task Whoever_wrote_it_does_not_publish_it_where_somebody_else_could_read_it()
    {
        await using var desk = await Desk.OpenAsync();
        using var rosa = await desk.AsAsync(desk.Cast.Senior);
        using var ines = await desk.AsAsync(desk.Cast.Owner);
        await Desk.BeginAsync(rosa);
        await Desk.AskAsync(rosa);
        Assert.Null((await rosa.GetAsync(Desk.ReadOver)).Page.QuerySelector(Desk.Publishing));

        // The form that the owner is shown, sent by the author.
        var form = (await ines.GetAsync(Desk.ReadOver)).Form(Desk.Publishing);
        var own = (await rosa.GetAsync(Desk.ReadOver)).Form("form[action*=TakeBack]");
        var refused = await own.With([
                ("Operation", form["Operation"]!),
                ("Seen", form["Seen"]!),
                ("Form.Version", form["Form.Version"]!),
                ("Form.Change", "x"),
                ("Form.Kind", "words"),
            ])
            .SendToAsync(Desk.ReadOver);

        Assert.Equal(HttpStatusCode.UnprocessableEntity, refused.Status);
        Assert.Equal(["Somebody else reads it first: Ines could. Ask for it to be read."], refused.Problems);
    }

    [Fact]
    public async Task What_asks_to_be_read_is_taken_back_by_its_author_to_go_on_writing()
    {
        await using var desk = await Desk.OpenAsync();
        using var rosa = await desk.AsAsync(desk.Cast.Senior);
        using var ines = await desk.AsAsync(desk.Cast.Owner);
        await Desk.BeginAsync(rosa);
        await Desk.AskAsync(rosa);
        var form = (await ines.GetAsync(Desk.ReadOver)).Form(Desk.Publishing);

        Assert.Equal(Desk.Write, (await rosa.SendAsync(Desk.ReadOver, "form[action*=TakeBack]")).Location);

        Assert.Contains("Rosa is still writing it.", (await ines.GetAsync(Desk.ReadOver)).Words, StringComparison.Ordinal);
        Assert.Equal("/modules", (await form.SendAsync()).Location);
        Assert.Empty((await BookAsync(desk)).OwnModules);
    }

    [Fact]
    public async Task What_was_read_is_what_is_published_and_a_change_meanwhile_is_shown_first()
    {
        await using var desk = await Desk.OpenAsync();
        using var rosa = await desk.AsAsync(desk.Cast.Senior);
        using var ines = await desk.AsAsync(desk.Cast.Owner);
        await Desk.BeginAsync(rosa);
        await Desk.AskAsync(rosa);
        var first = (await ines.GetAsync(Desk.ReadOver)).Form(Desk.Publishing);
        await rosa.SendAsync(Desk.ReadOver, "form[action*=TakeBack]");
        await Desk.SaveAsync(rosa, await Desk.TextAsync(rosa, Better));
        await Desk.AskAsync(rosa, change: "From the tail.");

        var saved = await first.SendAsync();
        Assert.Equal(HttpStatusCode.Conflict, saved.Status);
        Assert.StartsWith("Rosa saved it just now, while you read.", Assert.Single(saved.Problems), StringComparison.Ordinal);
        Assert.Equal("From the tail.", saved.Form(Desk.Publishing)["Form.Change"]!.Trim());

        // A picture that takes another's place changes no word of the text.
        await rosa.SendFileAsync(
            Desk.Pictures,
            "form[action*='file=press.svg'][action*=Replace]",
            ("with", "x.svg", "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 600 300\"/>"u8.ToArray())
        );
        var drawn = await saved.Form(Desk.Publishing).SendAsync();
        Assert.Equal(HttpStatusCode.Conflict, drawn.Status);
        Assert.StartsWith("Something of it, or of the salon, changed", Assert.Single(drawn.Problems), StringComparison.Ordinal);
        Assert.Empty((await BookAsync(desk)).OwnModules);

        Assert.Equal($"/study/{Desk.Module}", (await drawn.Form(Desk.Publishing).SendAsync()).Location);
    }

    [Fact]
    public async Task Sent_twice_it_is_one_edition_and_two_who_publish_at_once_publish_one()
    {
        await using var desk = await Desk.OpenAsync();
        await desk.LetWriteAsync(desk.Cast.SecondSenior);
        using var rosa = await desk.AsAsync(desk.Cast.Senior);
        using var ines = await desk.AsAsync(desk.Cast.Owner);
        using var dora = await desk.AsAsync(desk.Cast.SecondSenior);
        await Desk.BeginAsync(rosa);
        await Desk.AskAsync(rosa);
        var form = (await ines.GetAsync(Desk.ReadOver)).Form(Desk.Publishing);
        var other = (await dora.GetAsync(Desk.ReadOver)).Form(Desk.Publishing);

        var answers = await Task.WhenAll(form.SendAsync(), other.SendAsync(), form.SendAsync());
        await form.SendAsync();

        Assert.All(
            answers,
            answer => Assert.True(answer.Status is HttpStatusCode.Redirect or HttpStatusCode.Conflict, $"{answer.Status}")
        );
        Assert.Equal(3, Assert.Single((await BookAsync(desk)).OwnModules).Edition);
        Assert.Single(await AllPublishedAsync(desk));
    }

    [Fact]
    public async Task A_safety_change_gives_time_until_the_day_and_then_asks_everybody()
    {
        await using var desk = await Desk.OpenAsync();
        using var rosa = await desk.AsAsync(desk.Cast.Senior);
        using var ines = await desk.AsAsync(desk.Cast.Owner);
        await Desk.BeginAsync(rosa);
        await Desk.SaveAsync(rosa, await Desk.TextAsync(rosa, Better));
        await Desk.AskAsync(rosa, change: "A dog was hurt.", kind: "safety", by: "2026-06-20");

        var read = await ines.GetAsync(Desk.ReadOver);
        Assert.Equal("2026-06-20", read.Form(Desk.Publishing)["Form.CatchUpBy"]);
        var later = await ines.SendAsync(Desk.ReadOver, Desk.Publishing, ("Form.CatchUpBy", "2026-06-24"));

        Assert.Equal($"/study/{Desk.Module}", later.Location);
        var asked = (await BookAsync(desk)).Library.Single(one => one.Module.Value == Desk.Module);
        Assert.Equal((3, 3), (asked.Edition, asked.SafetyCriticalSince));
        Assert.Equal([new SafetyChange(3, new DateOnly(2026, 6, 24))], asked.Changes);
        Assert.True((await PublishedAsync(desk)).IsSafetyCritical);
    }

    [Fact]
    public async Task Words_are_asked_for_where_a_draft_is_given_back_and_what_was_typed_stays()
    {
        await using var desk = await Desk.OpenAsync();
        using var rosa = await desk.AsAsync(desk.Cast.Senior);
        using var ines = await desk.AsAsync(desk.Cast.Owner);
        await Desk.BeginAsync(rosa);
        await Desk.AskAsync(rosa);

        var nothing = await ines.SendAsync(Desk.ReadOver, Desk.GivingBack, ("Says", " "));
        var much = await ines.SendAsync(Desk.ReadOver, Desk.GivingBack, ("Says", new string('x', 2001)));

        Assert.Equal(["What to change: write it, so that it can be mended"], nothing.Problems);
        Assert.Equal(["What to change: at most 2,000 letters"], much.Problems);
        Assert.Equal(2001, much.Form(Desk.GivingBack)["Says"]!.Trim().Length);
        Assert.NotNull((await desk.DraftAsync())!.AskedAt);

        // And from the page that came back it can still be published.
        var published = await much.Form(Desk.Publishing).SendAsync();
        Assert.Equal([], published.Problems);
        Assert.Equal($"/study/{Desk.Module}", published.Location);
    }

    [Fact]
    public async Task Whoever_gave_it_back_and_mends_it_herself_has_nothing_given_back_to_her()
    {
        await using var desk = await Desk.OpenAsync();
        using var rosa = await desk.AsAsync(desk.Cast.Senior);
        using var ines = await desk.AsAsync(desk.Cast.Owner);
        await Desk.BeginAsync(rosa);
        await Desk.AskAsync(rosa);
        await ines.SendAsync(Desk.ReadOver, Desk.GivingBack, ("Says", "Say how wet."));

        await Desk.SaveAsync(ines, await Desk.TextAsync(ines, Better));

        Assert.Null((await desk.DraftAsync())!.Returned);
        Assert.DoesNotContain("came back", (await ines.GetAsync("/")).Words, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Once_she_may_not_write_any_more_her_draft_is_taken_over()
    {
        await using var desk = await Desk.OpenAsync();
        using var rosa = await desk.AsAsync(desk.Cast.Senior);
        using var ines = await desk.AsAsync(desk.Cast.Owner);
        await Desk.BeginAsync(rosa);
        await desk.Portal.KeepAsync(
            desk.Cast.Salon,
            Staffing.Leave(desk.Cast.Senior, desk.Portal.Today, desk.Cast.Owner, owners: 1),
            desk.Cast.Owner
        );

        await Desk.AskAsync(ines);
        var published = await ines.SendAsync(Desk.ReadOver, Desk.Publishing);

        Assert.Equal($"/study/{Desk.Module}", published.Location);
        Assert.Equal(
            (desk.Cast.Owner.Id, null),
            ((await PublishedAsync(desk)).WrittenBy, (await PublishedAsync(desk)).ReviewedBy)
        );
    }

    [Fact]
    public async Task Board_and_study_follow_what_was_published_and_an_old_attempt_keeps_its_words()
    {
        await using var desk = await Desk.OpenAsync();
        var portal = desk.Portal;
        await portal.TellEditionsAsync();
        await portal.OnlyModuleAsync(desk.Cast, "smooth", Desk.Module);
        await portal.DeclareAsync(desk.Cast, desk.Cast.Senior, "smooth");
        // The days that a declaration gives for its modules are over.
        portal.Clock.Advance(TimeSpan.FromDays(35));
        await portal.PassAsync(desk.Cast, desk.Cast.Senior, Desk.Module);
        using var again = await desk.AsAsync(desk.Cast.Senior);
        using var owner = await desk.AsAsync(desk.Cast.Owner);

        await Desk.BeginAsync(again);
        await Desk.SaveAsync(again, await Desk.TextAsync(again, ("What does a towel save?", "What does a dry towel save?")));
        await Desk.AskAsync(again, change: "Dry ones.", kind: "safety", by: "2026-07-25");
        var published = await owner.SendAsync(Desk.ReadOver, Desk.Publishing);
        Assert.Equal("It is published, and studied from now on.", (await published.FollowAsync()).Said);

        Assert.Contains("catch up by 25 Jul", (await owner.GetAsync("/board")).Words, StringComparison.Ordinal);
        Assert.Contains("catch up by Saturday 25 July", (await again.GetAsync("/study")).Words, StringComparison.Ordinal);
        var attempt = await portal.DoAsync<AcademyDb, Guid>(db => db.Attempts.Select(row => row.Id).SingleAsync());
        var words = (await again.GetAsync($"/attempts/{attempt}")).Words;
        Assert.Contains("as they were in edition 2. The newest edition is 3.", words, StringComparison.Ordinal);
        Assert.DoesNotContain("What does a dry towel save?", words, StringComparison.Ordinal);

        portal.Clock.Advance(TimeSpan.FromDays(11));
        Assert.Equal(StandingKind.Lapsed, (await portal.StandingAsync(desk.Cast, desk.Cast.Senior, "smooth")).Kind);
    }

    private static Task<SalonBook> BookAsync(Desk desk) => desk.Portal.BookAsync(desk.Cast);

    private static async Task<Told> PublishedAsync(Desk desk) => (await AllPublishedAsync(desk))[^1];

    /// <summary>What the ledger says of each edition that was published, oldest first.</summary>
    private static async Task<List<Told>> AllPublishedAsync(Desk desk)
    {
        var entries = await desk.Portal.DoAsync<AcademyDb, List<string>>(db =>
            db.Ledger.Where(row => row.SalonId == desk.Cast.Salon.Value && row.Kind == "module.published")
                .OrderBy(row => row.Seq)
                .Select(row => row.Canonical)
                .ToListAsync()
        );
        return [.. entries.Select(entry => Told.Of(JsonNode.Parse(entry)!["data"]!))];
    }

    private sealed record Told(int Edition, bool IsSafetyCritical, PersonId WrittenBy, PersonId? ReviewedBy)
    {
        public static Told Of(JsonNode data) =>
            new(
                data["edition"]!.GetValue<int>(),
                data["isSafetyCritical"]!.GetValue<bool>(),
                new(Guid.Parse(data["writtenBy"]!.GetValue<string>())),
                data["reviewedBy"] is { } by ? new PersonId(Guid.Parse(by.GetValue<string>())) : null
            );
    }
}
