using System.Net;
using Academy.Competence;
using Academy.Competence.Quizzes;
using Academy.Modules;
using Academy.Storage;
using Academy.Web.Tests.Hosting;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;

namespace Academy.Web.Tests.Features.Quizzes;

/// <summary>Taking a quiz: drawn, answered as given, handed in once, read afterwards in the edition that was seen.</summary>
public sealed class QuizTests
{
    private const string Blades = "blades-and-scissors";

    [Fact]
    public async Task A_quiz_answered_right_is_passed_and_no_page_before_tells_what_is_right()
    {
        using var modules = new TestModules().With(Blades);
        await using var portal = new PortalHost().With("Modules:Folder", modules.Root);
        var cast = await portal.OpenSalonAsync();
        using var pim = await portal.AsAsync(cast, cast.Junior);

        var question = await (await pim.SendAsync($"/study/{Blades}")).FollowAsync();
        question = question.Status == HttpStatusCode.OK ? question : await question.FollowAsync();
        Assert.Equal("Question 1 of 20", question.Heading);
        Assert.DoesNotContain("minutes of air", question.Page.DocumentElement.OuterHtml, StringComparison.Ordinal);

        var attempt = await AnswerAllAsync(portal, cast, pim);
        var end = await pim.GetAsync($"/study/{Blades}/quiz/{attempt}/hand-in");
        Assert.Equal("All 20 questions are answered", end.Heading);
        Assert.DoesNotContain("minutes of air", end.Page.DocumentElement.OuterHtml, StringComparison.Ordinal);
        var form = end.Form();
        var first = await form.SendAsync();
        var second = await form.SendAsync();

        Assert.Equal($"/attempts/{attempt}", first.Location);
        Assert.Equal($"/attempts/{attempt}", second.Location);
        Assert.Equal(1, await AttemptsAsync(portal, cast));
        var result = await first.FollowAsync();
        Assert.Equal("20 of 20. Passed.", result.Heading);
        Assert.Contains("20 right", result.Words, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_quiz_handed_in_empty_is_not_passed_shows_every_reason_and_opens_again_after_ten_minutes()
    {
        using var modules = new TestModules().With(Blades);
        await using var portal = new PortalHost().With("Modules:Folder", modules.Root);
        var cast = await portal.OpenSalonAsync();
        using var pim = await portal.AsAsync(cast, cast.Junior);
        var attempt = await BeginAsync(pim);

        var result = await (await pim.SendAsync($"/study/{Blades}/quiz/{attempt}/hand-in")).FollowAsync();

        Assert.StartsWith("0 of 20, and ", result.Heading, StringComparison.Ordinal);
        Assert.Equal(20, result.Page.QuerySelectorAll(".ans.wrong").Length);
        Assert.Contains("It may be taken again from 10:10 today on.", result.Words, StringComparison.Ordinal);
        var waits = await pim.GetAsync($"/study/{Blades}");
        Assert.Contains("The quiz may be taken again from 10:10 today on.", waits.Words, StringComparison.Ordinal);
        Assert.Empty(waits.Page.QuerySelectorAll("#take form"));

        portal.Clock.Advance(TimeSpan.FromMinutes(10));
        Assert.NotEmpty((await pim.GetAsync($"/study/{Blades}")).Page.QuerySelectorAll("#take form"));
    }

    [Fact]
    public async Task An_answer_that_was_not_offered_is_refused_and_nothing_is_kept()
    {
        using var modules = new TestModules().WithOptionsOnly(Blades);
        await using var portal = new PortalHost().With("Modules:Folder", modules.Root);
        var cast = await portal.OpenSalonAsync();
        using var pim = await portal.AsAsync(cast, cast.Junior);
        var attempt = await BeginAsync(pim);

        var sent = await pim.SendAsync($"/study/{Blades}/quiz/{attempt}?q=3", ("Picked", "9"), ("To", "4"));

        Assert.Equal(HttpStatusCode.UnprocessableEntity, sent.Status);
        Assert.Equal(["Your answer: choose among the answers below"], sent.Problems);
        Assert.Empty((await UnderWayAsync(portal, cast, attempt)).Answers);
    }

    [Fact]
    public async Task A_quiz_goes_on_in_its_own_edition_after_the_module_was_changed()
    {
        using var modules = new TestModules().With(Blades);
        var portal = new PortalHost().With("Modules:Folder", modules.Root);
        var cast = await portal.OpenSalonAsync();
        Guid attempt;
        using (var before = await portal.AsAsync(cast, cast.Junior))
            attempt = await BeginAsync(before);
        modules.With(Blades, ("edition: 2", "edition: 3"), ("Press and lift", "Press, then lift"));
        await using var changed = (await portal.AgainAsync()).With("Modules:Folder", modules.Root);
        using var pim = await changed.AsAsync(cast, cast.Junior);

        await AnswerAllAsync(changed, cast, pim);
        var result = await (await pim.SendAsync($"/study/{Blades}/quiz/{attempt}/hand-in")).FollowAsync();

        Assert.Equal("20 of 20. Passed.", result.Heading);
        Assert.Contains("as they were in edition 2. The newest edition is 3.", result.Words, StringComparison.Ordinal);
    }

    [Fact]
    public async Task After_a_safety_change_the_quiz_says_so_and_begins_again()
    {
        using var modules = new TestModules().With(Blades);
        var portal = new PortalHost().With("Modules:Folder", modules.Root);
        var cast = await portal.OpenSalonAsync();
        Guid attempt;
        using (var before = await portal.AsAsync(cast, cast.Junior))
            attempt = await BeginAsync(before);
        modules.With(Blades, ("edition: 2", "edition: 3"), ("since: 1", "since: 3"));
        await using var changed = (await portal.AgainAsync()).With("Modules:Folder", modules.Root);
        using var pim = await changed.AsAsync(cast, cast.Junior);

        var page = await (await pim.GetAsync($"/study/{Blades}/quiz/{attempt}/hand-in")).FollowAsync();

        Assert.Equal("The module has changed: begin again", page.Heading);
        Assert.Equal(0, await AttemptsAsync(changed, cast));
    }

    [Fact]
    public async Task A_quiz_and_its_result_are_the_persons_own_and_her_seniors()
    {
        using var modules = new TestModules().With(Blades);
        await using var portal = new PortalHost().With("Modules:Folder", modules.Root);
        var cast = await portal.OpenSalonAsync();
        var elsewhere = await portal.OpenSalonAsync("Another");
        using var pim = await portal.AsAsync(cast, cast.Junior);
        using var juno = await portal.AsAsync(cast, cast.SecondJunior);
        using var rosa = await portal.AsAsync(cast, cast.Senior);
        using var stranger = await portal.AsAsync(elsewhere, elsewhere.Owner);
        var attempt = await BeginAsync(pim);

        foreach (var other in (Visitor[])[juno, rosa, stranger])
            Assert.Equal(HttpStatusCode.NotFound, (await other.GetAsync($"/study/{Blades}/quiz/{attempt}?q=1")).Status);
        await pim.SendAsync($"/study/{Blades}/quiz/{attempt}/hand-in");
        Assert.Equal(HttpStatusCode.OK, (await rosa.GetAsync($"/attempts/{attempt}")).Status);
        foreach (var other in (Visitor[])[juno, stranger])
            Assert.Equal(HttpStatusCode.NotFound, (await other.GetAsync($"/attempts/{attempt}")).Status);
    }

    [Fact]
    public async Task Whoever_passed_before_a_safety_change_has_two_weeks_and_a_short_quiz_on_what_changed()
    {
        using var modules = new TestModules().With(Blades);
        var portal = new PortalHost().With("Modules:Folder", modules.Root);
        var cast = await portal.OpenSalonAsync();
        using (var before = await portal.AsAsync(cast, cast.Junior))
        {
            var whole = await BeginAsync(before);
            await AnswerAllAsync(portal, cast, before);
            await before.SendAsync($"/study/{Blades}/quiz/{whole}/hand-in");
        }
        modules.With(
            Blades,
            ("edition: 2", "edition: 3"),
            ("since: 1", "since: 3"),
            ("What does a towel save?", "What does a dry towel save?")
        );
        await using var changed = (await portal.AgainAsync()).With("Modules:Folder", modules.Root);
        using var pim = await changed.AsAsync(cast, cast.Junior);

        var page = await pim.GetAsync($"/study/{Blades}");
        Assert.Contains("Changed for safety: catch up by Wednesday 24 June", page.Words, StringComparison.Ordinal);
        Assert.Contains("Take the quiz on what changed", page.Words, StringComparison.Ordinal);
        var attempt = await BeginAsync(pim);
        var drawn = (await UnderWayAsync(changed, cast, attempt)).Sitting;
        Assert.Equal((true, false, 4), (drawn.IsCatchUp, drawn.IsRefresher, drawn.Drawn!.Value.Count));
        Assert.Contains("towel-01", drawn.Drawn.Value);

        await AnswerAllAsync(changed, cast, pim);
        var result = await (await pim.SendAsync($"/study/{Blades}/quiz/{attempt}/hand-in")).FollowAsync();

        Assert.Equal("4 of 4. Passed.", result.Heading);
        Assert.Contains("quiz on what changed of edition 3", result.Words, StringComparison.Ordinal);
        Assert.DoesNotContain("catch up", (await pim.GetAsync($"/study/{Blades}")).Words, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_retake_asks_first_what_was_not_asked_before()
    {
        using var modules = new TestModules().With(Blades);
        await using var portal = new PortalHost().With("Modules:Folder", modules.Root);
        var cast = await portal.OpenSalonAsync();
        using var pim = await portal.AsAsync(cast, cast.Junior);
        var first = await BeginAsync(pim);
        var asked = (await UnderWayAsync(portal, cast, first)).Sitting.Drawn!.Value;
        await pim.SendAsync($"/study/{Blades}/quiz/{first}/hand-in");
        portal.Clock.Advance(TimeSpan.FromMinutes(10));

        var second = (await UnderWayAsync(portal, cast, await BeginAsync(pim))).Sitting.Drawn!.Value;

        // what was left out of 20 comes now, and every question has been asked by then
        var all = portal.Services.GetRequiredService<ModuleLibrary>().Find(Blades)!.Module.Questions;
        Assert.Equal((20, 20), (asked.Count, second.Count));
        Assert.Equal(all.Select(question => question.Id).Order(), asked.Union(second).Order());
    }

    [Fact]
    public async Task A_quiz_read_out_belongs_to_the_junior_and_says_who_read_it()
    {
        using var modules = new TestModules().With(Blades);
        await using var portal = new PortalHost().With("Modules:Folder", modules.Root);
        var cast = await portal.OpenSalonAsync();
        using var rosa = await portal.AsAsync(cast, cast.Senior);

        var begun = await rosa.SendAsync(
            $"/study/{Blades}",
            "form[action*=ReadOut]",
            ("ReadTo", cast.Junior.Id.Value.ToString())
        );
        var attempt = Guid.Parse(begun.Location!.Split('/')[^1]);
        var result = await (await rosa.SendAsync($"/study/{Blades}/quiz/{attempt}/hand-in")).FollowAsync();

        Assert.Contains("read out by Rosa", result.Words, StringComparison.Ordinal);
        Assert.Contains("Pim said", result.Words, StringComparison.Ordinal);
    }

    private static async Task<Guid> BeginAsync(Visitor visitor) =>
        Guid.Parse((await visitor.SendAsync($"/study/{Blades}")).Location!.Split('/')[^1]);

    private static Task<UnderWay> UnderWayAsync(PortalHost portal, Cast cast, Guid attempt) =>
        portal.DoAsync<QuizBook, UnderWay>(async book =>
            (await book.FindAsync(cast.Salon, new AttemptId(attempt), TestContext.Current.CancellationToken))!
        );

    // By the pages: each question is opened, its right options are picked, and the form is sent.
    private static async Task<Guid> AnswerAllAsync(PortalHost portal, Cast cast, Visitor visitor)
    {
        var underWay = Assert.Single(
            await portal.DoAsync<QuizBook, IReadOnlyList<UnderWay>>(book =>
                book.UnderWayAsync(cast.Salon, cast.Junior.Id, TestContext.Current.CancellationToken)
            )
        );
        var sitting = underWay.Sitting;
        var lesson = await portal.DoAsync<Academy.Web.Library.Editions, Lesson?>(editions =>
            editions.FindAsync(sitting.Module, sitting.ContentHash, TestContext.Current.CancellationToken).AsTask()
        );
        foreach (var (place, question) in sitting.Draw(lesson!.Module).Index())
        {
            var sent = await visitor.SendAsync(
                $"/study/{Blades}/quiz/{sitting.Id.Value}?q={place + 1}",
                [.. Typing.Of(question.Kind, question.Kind.Right), ("To", "end")]
            );
            Assert.Equal(HttpStatusCode.Redirect, sent.Status);
        }
        return sitting.Id.Value;
    }

    private static Task<int> AttemptsAsync(PortalHost portal, Cast cast) =>
        portal.DoAsync<AcademyDb, int>(db =>
            db.Attempts.CountAsync(row => row.SalonId == cast.Salon.Value, TestContext.Current.CancellationToken)
        );
}
