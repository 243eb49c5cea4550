using System.Globalization;
using System.Net;
using Academy.Competence.People;
using Academy.Competence.Quizzes;
using Academy.Competence.Salons;
using Academy.Modules;
using Academy.Storage;
using Academy.Web.Tests.Hosting;
using Microsoft.Extensions.DependencyInjection;

namespace Academy.Web.Tests.Features.Judgements;

/// <summary>
/// Seniors judge the questions of a module by Angoff's modified method (Shulruf and others 2016, doi 10.1186/s12909-016-0656-7):
/// each alone at first, then with what the others said.
/// </summary>
public sealed class JudgementTests
{
    private const string Blades = "blades-and-scissors";
    private const string Page = $"/judging/{Blades}";

    [Fact]
    public async Task A_judge_goes_from_question_to_question_each_kept_and_gives_the_whole_at_the_end()
    {
        using var modules = new TestModules().WithOneOfEachKind(Blades);
        await using var portal = new PortalHost().With("Modules:Folder", modules.Root);
        var cast = await portal.OpenSalonAsync();
        using var rosa = await portal.AsAsync(cast, cast.Senior);
        var module = ModuleOf(portal);

        var first = await rosa.GetAsync(Page);
        Assert.Equal($"Question 1 of {module.Questions.Count}", first.Heading);
        Assert.Contains(module.Questions[0].Text, first.Words, StringComparison.Ordinal);
        Assert.NotEmpty(first.Page.QuerySelector(".because")!.TextContent);
        var sent = await first.Form().With([("OfTen", "7")]).SendAsync();
        Assert.Equal($"{Page}?q=2", sent.Location);

        // Another device goes on where this one stopped.
        using var again = await portal.AsAsync(cast, cast.Senior);
        Assert.Equal($"Question 2 of {module.Questions.Count}", (await again.GetAsync(Page)).Heading);
        await JudgeAllAsync(again, module, "8");

        var end = await again.GetAsync($"{Page}/give");
        Assert.Equal($"All {module.Questions.Count} questions are judged", end.Heading);
        var form = end.Form();
        Assert.Equal($"{Page}/panel", (await form.SendAsync()).Location);
        Assert.Equal($"{Page}/panel", (await form.SendAsync()).Location);
        Assert.Single((await BookAsync(portal, cast)).Judgements);
        Assert.Contains("You gave yours.", (await rosa.GetAsync("/judging")).Words, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Nobody_sees_the_numbers_of_others_before_giving_hers()
    {
        using var modules = new TestModules().WithOneOfEachKind(Blades);
        await using var portal = new PortalHost().With("Modules:Folder", modules.Root);
        var cast = await portal.OpenSalonAsync();
        using var rosa = await portal.AsAsync(cast, cast.Senior);
        using var dora = await portal.AsAsync(cast, cast.SecondSenior);
        using var ines = await portal.AsAsync(cast, cast.Owner);
        await GiveAsync(rosa, ModuleOf(portal), "3");

        Assert.Equal(Page, (await dora.GetAsync($"{Page}/panel")).Location);
        var list = await dora.GetAsync("/judging");
        Assert.DoesNotContain($"{Page}/panel", list.Page.DocumentElement.OuterHtml, StringComparison.Ordinal);
        Assert.Contains("1 judge so far. From 3 on they set the pass mark.", list.Words, StringComparison.Ordinal);
        Assert.Empty((await dora.GetAsync(Page)).Page.QuerySelectorAll("input[checked]"));

        var asked = await ines.GetAsync($"{Page}/panel");
        Assert.Equal("Judge first, or look without judging?", asked.Heading);
        Assert.Empty(asked.Page.QuerySelectorAll("main .rows"));
        var looked = await ines.GetAsync($"{Page}/panel?look=true");
        Assert.Equal("Fewer than 3 judges: no pass mark of theirs yet", looked.Heading);
        Assert.Contains("Rosa judged edition 2.", looked.Words, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Three_judges_show_the_cut_with_its_error_and_where_they_lie_apart()
    {
        using var modules = new TestModules().WithOneOfEachKind(Blades);
        await using var portal = new PortalHost().With("Modules:Folder", modules.Root);
        var cast = await portal.OpenSalonAsync();
        var module = ModuleOf(portal);
        foreach (var (person, ofTen) in new[] { (cast.Senior, "8"), (cast.SecondSenior, "9"), (cast.Owner, "10") })
        {
            using var judge = await portal.AsAsync(cast, person);
            await JudgeAllAsync(judge, module, ofTen);
            // Two of them think of another dog at the last question.
            if (person != cast.Owner)
                await judge.SendAsync($"{Page}?q={module.Questions.Count}", ("OfTen", "5"));
            await judge.SendAsync($"{Page}/give");
        }
        using var ines = await portal.AsAsync(cast, cast.Owner);

        Hosting.Answer panel = null!;
        Assert.InRange(await portal.Sql.OfAsync(async () => panel = await ines.GetAsync($"{Page}/panel")), 1, 5);

        // By hand, for n questions: the judges' cuts are .8 (n - 1) + .5, .9 (n - 1) + .5 and n; their mean and its error follow.
        var n = module.Questions.Count;
        double[] cuts = [(.8 * (n - 1)) + .5, (.9 * (n - 1)) + .5, n];
        var mean = cuts.Average();
        var error = Math.Sqrt(cuts.Sum(cut => (cut - mean) * (cut - mean)) / 2 / 3);
        Assert.Equal(
            [Invariant($"{mean:0.0} of {n}"), Invariant($"± {error:0.0}")],
            panel.Page.QuerySelectorAll(".figures dd b").Take(2).Select(value => value.TextContent)
        );
        var apart = panel.Page.QuerySelectorAll("main .rows li");
        Assert.Equal(n, apart.Length);
        Assert.Contains("5, 5, 10", apart[0].TextContent, StringComparison.Ordinal);
        Assert.Contains("5 apart", apart[0].TextContent, StringComparison.Ordinal);
        Assert.Contains("yours 10", apart[0].TextContent, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("11")]
    [InlineData("-1")]
    [InlineData("most of them")]
    [InlineData("")]
    public async Task A_number_that_is_none_of_ten_is_asked_again_and_nothing_is_kept(string typed)
    {
        using var modules = new TestModules().WithOneOfEachKind(Blades);
        await using var portal = new PortalHost().With("Modules:Folder", modules.Root);
        var cast = await portal.OpenSalonAsync();
        using var rosa = await portal.AsAsync(cast, cast.Senior);

        var again = await rosa.SendAsync(Page, ("OfTen", typed));

        Assert.Equal(HttpStatusCode.UnprocessableEntity, again.Status);
        Assert.Equal(["How many of ten: choose a number from 0 to 10"], again.Problems);
        Assert.Contains("0 judged.", (await rosa.GetAsync(Page)).Words, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Half_a_judgement_is_not_given()
    {
        using var modules = new TestModules().WithOneOfEachKind(Blades);
        await using var portal = new PortalHost().With("Modules:Folder", modules.Root);
        var cast = await portal.OpenSalonAsync();
        using var rosa = await portal.AsAsync(cast, cast.Senior);
        await JudgeAllAsync(rosa, ModuleOf(portal), "8");
        var whole = (await rosa.GetAsync($"{Page}/give")).Form();
        using var dora = await portal.AsAsync(cast, cast.SecondSenior);
        await dora.SendAsync(Page, ("OfTen", "8"));
        var open = await dora.GetAsync($"{Page}/give");
        Assert.Empty(open.Page.QuerySelectorAll("main form"));

        // The form of somebody whose whole judgement is there, sent by somebody whose is not.
        var bare = await dora.GetAsync(Page);
        var sent = await dora.PostBareAsync(
            $"{Page}/give",
            ("Edition", whole["Edition"]!),
            ("Operation", portal.New().ToString()),
            ("__RequestVerificationToken", bare.Form()["__RequestVerificationToken"]!)
        );

        Assert.Equal(HttpStatusCode.UnprocessableEntity, sent.Status);
        Assert.Empty((await BookAsync(portal, cast)).Judgements);
    }

    [Fact]
    public async Task A_form_of_an_older_edition_is_answered_with_the_newest_one()
    {
        using var modules = new TestModules().WithOneOfEachKind(Blades);
        await using var portal = new PortalHost().With("Modules:Folder", modules.Root);
        var cast = await portal.OpenSalonAsync();
        using var rosa = await portal.AsAsync(cast, cast.Senior);

        var stale = await rosa.SendAsync(Page, ("OfTen", "7"), ("Edition", new string('0', 64)));

        Assert.Equal(HttpStatusCode.Conflict, stale.Status);
        Assert.Contains("0 judged.", (await rosa.GetAsync(Page)).Words, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Whoever_goes_through_it_again_starts_from_what_was_given()
    {
        using var modules = new TestModules().WithOneOfEachKind(Blades);
        await using var portal = new PortalHost().With("Modules:Folder", modules.Root);
        var cast = await portal.OpenSalonAsync();
        using var rosa = await portal.AsAsync(cast, cast.Senior);
        var module = ModuleOf(portal);
        await GiveAsync(rosa, module, "6");

        await rosa.SendAsync($"{Page}?q=2", ("OfTen", "9"));
        await rosa.SendAsync($"{Page}/give");

        var judged = Assert.Single((await BookAsync(portal, cast)).Judgements);
        Assert.Equal(
            module.Questions.Select((question, place) => $"{question.Id}:{(place == 1 ? 90 : 60)}").Order(StringComparer.Ordinal),
            judged.Chances.Order(StringComparer.Ordinal)
        );
    }

    [Fact]
    public async Task Judges_who_ask_for_more_than_the_salon_raise_the_mark_of_the_next_quiz_handed_in()
    {
        using var modules = new TestModules().WithOptionsOnly(Blades);
        await using var portal = new PortalHost().With("Modules:Folder", modules.Root);
        var cast = await portal.OpenSalonAsync();
        foreach (var person in (Person[])[cast.Senior, cast.SecondSenior, cast.Owner])
        {
            using var judge = await portal.AsAsync(cast, person);
            await GiveAsync(judge, ModuleOf(portal), "10");
        }
        using var pim = await portal.AsAsync(cast, cast.Junior);

        var begun = await pim.SendAsync($"/study/{Blades}");
        var result = await (await pim.SendAsync($"{begun.Location!.Split('?')[0]}/hand-in")).FollowAsync();

        Assert.Contains("20 of 20 pass", result.Words, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_junior_judges_nothing_and_there_is_nothing_to_judge_in_a_module_that_is_not_there()
    {
        using var modules = new TestModules().WithOneOfEachKind(Blades);
        await using var portal = new PortalHost().With("Modules:Folder", modules.Root);
        var cast = await portal.OpenSalonAsync();
        using var pim = await portal.AsAsync(cast, cast.Junior);
        using var rosa = await portal.AsAsync(cast, cast.Senior);

        foreach (var page in (string[])["/judging", Page, $"{Page}/give", $"{Page}/panel"])
            Assert.Equal(HttpStatusCode.Forbidden, (await pim.GetAsync(page)).Status);
        Assert.DoesNotContain(
            "/judging",
            (await pim.GetAsync("/study")).Page.DocumentElement.OuterHtml,
            StringComparison.Ordinal
        );
        Assert.Equal(HttpStatusCode.NotFound, (await rosa.GetAsync("/judging/nothing-here")).Status);
        Assert.Equal(HttpStatusCode.NotFound, (await rosa.GetAsync($"{Page}?q=99")).Status);
    }

    internal static async Task GiveAsync(Visitor judge, Module module, string ofTen)
    {
        await JudgeAllAsync(judge, module, ofTen);
        await judge.SendAsync($"/judging/{module.Name.Value}/give");
    }

    private static async Task JudgeAllAsync(Visitor judge, Module module, string ofTen)
    {
        for (var number = 1; number <= module.Questions.Count; number++)
            await judge.SendAsync(Invariant($"/judging/{module.Name.Value}?q={number}"), ("OfTen", ofTen));
    }

    private static Module ModuleOf(PortalHost portal) => portal.Services.GetRequiredService<ModuleLibrary>().Find(Blades)!.Module;

    private static Task<SalonBook> BookAsync(PortalHost portal, Cast cast) =>
        portal.DoAsync<RecordBook, SalonBook>(book => book.SalonAsync(cast.Salon, TestContext.Current.CancellationToken));

    private static string Invariant(FormattableString words) => words.ToString(CultureInfo.InvariantCulture);
}
