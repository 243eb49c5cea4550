using System.Net;
using Academy.Competence.Quizzes;
using Academy.Web.Tests.Hosting;
using AngleSharp.Html.Dom;

namespace Academy.Web.Tests.Features.Quizzes;

/// <summary>Every kind of question on its pages: asked without telling, answered, kept, handed in, explained.</summary>
public sealed class QuestionKindTests
{
    private const string OneRight = "towel-03";
    private const string SeveralRight = "towel-04";
    private const string Truth = "towel-25";
    private const string Order = "towel-26";
    private const string Hot = "towel-27";
    private const string Pairs = "towel-28";
    private const string Spot = "towel-29";

    private static readonly string[] All = [OneRight, SeveralRight, Truth, Order, Hot, Pairs, Spot];

    [Fact]
    public async Task Every_kind_answered_right_passes_and_comes_back_in_words()
    {
        using var modules = new TestModules().WithOneOfEachKind(KindsAtTheTable.Module);
        await using var quiz = await KindsAtTheTable.BeginAsync(modules);

        foreach (var id in All)
        {
            Assert.Equal(HttpStatusCode.Redirect, (await quiz.GiveAsync(id, quiz.Of(id).Kind.Right)).Status);
            Assert.Equal(quiz.Of(id).Kind.Right, await quiz.KeptAsync(id));
        }
        var over = await quiz.Pim.GetAsync($"/study/{KindsAtTheTable.Module}/quiz/{quiz.Attempt}/hand-in");
        var result = await quiz.HandInAsync();

        Assert.Equal("All 7 questions are answered", over.Heading);
        Assert.Equal("7 of 7. Passed.", result.Heading);
        foreach (var page in (Hosting.Answer[])[over, result])
            Assert.All(
                [
                    "Before the dryer",
                    "Less heat",
                    "Less noise",
                    "False",
                    "1. Squeeze the legs by hand",
                    "4. Switch on the dryer",
                    "60 °C",
                    "Double: Two towels",
                    ": the middle of the back",
                ],
                words => Assert.Contains(words, page.Words, StringComparison.Ordinal)
            );
    }

    [Fact]
    public async Task Every_kind_answered_wrong_shows_what_was_said_and_what_is_right()
    {
        using var modules = new TestModules().WithOneOfEachKind(KindsAtTheTable.Module);
        await using var quiz = await KindsAtTheTable.BeginAsync(modules);
        await quiz.GiveAsync(Truth, new Picked([TrueOrFalse.True]));
        await quiz.GiveAsync(Order, new Picked([.. ((Picked)quiz.Of(Order).Kind.Right).Places.Select(place => 3 - place)]));
        await quiz.GiveAsync(Hot, new Typed("130 °F"));
        await quiz.GiveAsync(Pairs, new Picked([0, 0, 0]));
        var wrong = ((OnPicture)quiz.Of(Spot).Kind).Spots.Index().First(spot => !spot.Item.IsRight);
        await quiz.GiveAsync(Spot, new Picked([wrong.Index]));

        var result = await quiz.HandInAsync();

        Assert.Equal("0 of 7. Not passed yet.", result.Heading);
        AssertAsked(result, "A towel that fell", "You said wrong True", "Right is False");
        AssertAsked(
            result,
            "In which order",
            "You said wrong 1. Switch on the dryer wrong 2. Press with a dry towel",
            "Right is 1. Squeeze the legs by hand 2. Press with the first towel"
        );
        AssertAsked(result, "How hot", "You said wrong 130 °F", "Right is 60 °C, or up to 2 °C off");
        AssertAsked(result, "How many towels", "You said", "Smooth: One towel");
        AssertAsked(result, "Where on the back", $"{(char)('A' + wrong.Index)}: {wrong.Item.Words}", ": the middle of the back");
    }

    [Theory]
    [InlineData(OneRight, "One answer is right.")]
    [InlineData(SeveralRight, "Several answers are right. All of them together count, and none besides.")]
    [InlineData(Truth, "Say whether this is true or false.")]
    [InlineData(Order, "Give each step its place. Only the whole order counts as right.")]
    [InlineData(Hot, "Write a number and °C or °F. Up to 2 °C off counts as right.")]
    [InlineData(Pairs, "Choose what belongs to each. Some choices fit none. Only all pairs together count as right.")]
    [InlineData(Spot, "One of the places marked with letters is right.")]
    public async Task How_each_kind_is_marked_is_said_beforehand(string id, string rule)
    {
        using var modules = new TestModules().WithOneOfEachKind(KindsAtTheTable.Module);
        await using var quiz = await KindsAtTheTable.BeginAsync(modules);

        Assert.Contains(rule, (await quiz.OpenAsync(id)).Words, StringComparison.Ordinal);
    }

    // Nothing chosen, nothing marked: what can be chosen differs in its value, its place and its words alone.
    [Fact]
    public async Task No_page_before_handing_in_tells_what_is_right()
    {
        using var modules = new TestModules().WithOneOfEachKind(KindsAtTheTable.Module);
        await using var quiz = await KindsAtTheTable.BeginAsync(modules);

        foreach (var id in All)
        {
            var page = (await quiz.OpenAsync(id)).Page;
            Assert.DoesNotContain(quiz.Of(id).Explanation[..20], page.DocumentElement.OuterHtml, StringComparison.Ordinal);
            Assert.Empty(page.QuerySelectorAll("main :checked:not(option[value=''])"));
            Assert.Single(
                page.QuerySelectorAll("main .pick input")
                    .Select(input => string.Join(' ', input.Attributes.Select(one => one.Name).Where(name => name != "id")))
                    .Append("name type value")
                    .Distinct()
            );
        }
        var order = (await quiz.OpenAsync(Order)).Page;
        Assert.NotEqual(
            ["Squeeze the legs by hand", "Press with the first towel", "Press with a dry towel", "Switch on the dryer"],
            order.QuerySelectorAll(".rows-asked label").Select(label => label.TextContent.Trim())
        );
        var rows = (await quiz.OpenAsync(Pairs)).Page.QuerySelectorAll(".rows-asked select").Cast<IHtmlSelectElement>();
        Assert.Single(rows.Select(row => string.Join('|', row.Options.Select(option => option.Text))).Distinct());
        Assert.DoesNotContain(
            "60",
            (await quiz.OpenAsync(Hot)).Page.QuerySelector("main form")!.TextContent,
            StringComparison.Ordinal
        );
    }

    [Fact]
    public async Task Two_steps_at_one_place_are_told_and_everything_stays_as_chosen()
    {
        using var modules = new TestModules().WithOneOfEachKind(KindsAtTheTable.Module);
        await using var quiz = await KindsAtTheTable.BeginAsync(modules);
        var steps = ((InOrder)quiz.Of(Order).Kind).Steps;

        var sent = await quiz.SendAsync(Order, ("Placed[0]", "1"), ("Placed[1]", "1"), ("Placed[2]", "3"), ("Placed[3]", ""));

        Assert.Equal(HttpStatusCode.UnprocessableEntity, sent.Status);
        Assert.Equal(
            [
                $"“{steps[1].Text}” shares the 2nd place: give each its own",
                $"“{steps[3].Text}” is still open: choose for each, or for none",
            ],
            sent.Problems.OrderBy(line => line.Contains("open", StringComparison.Ordinal))
        );
        Assert.Equal(["1", "1", "3", ""], Enumerable.Range(0, 4).Select(row => sent.Form()[$"Placed[{row}]"]));
        Assert.All(
            sent.Page.QuerySelectorAll(".mend a").Cast<IHtmlAnchorElement>(),
            link => Assert.NotNull(sent.Page.QuerySelector($"select{link.Hash}"))
        );
        Assert.Null(await quiz.KeptAsync(Order));
    }

    [Theory]
    [InlineData("60", "The unit is missing. Write a number and °C or °F.")]
    [InlineData("hot", "That cannot be read as a number. Write a number and °C or °F.")]
    [InlineData("60 kg", "“kg” does not fit here. Write a number and °C or °F.")]
    [InlineData("60 <script>", "“<script>” does not fit here. Write a number and °C or °F.")]
    public async Task A_number_that_cannot_be_read_is_asked_again_and_is_not_wrong(string typed, string problem)
    {
        using var modules = new TestModules().WithOneOfEachKind(KindsAtTheTable.Module);
        await using var quiz = await KindsAtTheTable.BeginAsync(modules);

        var sent = await quiz.SendAsync(Hot, ("Typed", typed));

        Assert.Equal(HttpStatusCode.UnprocessableEntity, sent.Status);
        Assert.Equal([problem], sent.Problems);
        Assert.Equal(typed, sent.Form()["Typed"]);
        Assert.Null(await quiz.KeptAsync(Hot));
    }

    [Theory]
    [InlineData("60°c", true)]
    [InlineData("140 °F", true)]
    [InlineData("61,9 °C", true)]
    [InlineData("62,1 °C", false)]
    public async Task A_number_in_another_unit_is_kept_as_typed_and_marked(string typed, bool right)
    {
        using var modules = new TestModules().WithOneOfEachKind(KindsAtTheTable.Module);
        await using var quiz = await KindsAtTheTable.BeginAsync(modules);

        await quiz.SendAsync(Hot, ("Typed", $" {typed} "));

        Assert.Equal(new Typed(typed), await quiz.KeptAsync(Hot));
        Assert.Equal(typed, (await quiz.OpenAsync(Hot)).Form()["Typed"]);
        Assert.StartsWith(right ? "1 of 7" : "0 of 7", (await quiz.HandInAsync()).Heading, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(OneRight, "Picked", "9")]
    [InlineData(OneRight, "Picked", "-1")]
    [InlineData(OneRight, "Picked", "x")]
    [InlineData(Truth, "Picked", "2")]
    [InlineData(Spot, "Picked", "3")]
    [InlineData(Order, "Placed[0]", "99")]
    [InlineData(Order, "Placed[0]", "-1")]
    [InlineData(Order, "Placed[0]", "<b>")]
    [InlineData(Pairs, "Placed[2]", "4")]
    [InlineData(Hot, "Typed", "99999999999999999999999999999999999999999999 °C")]
    public async Task What_was_not_offered_is_refused_and_nothing_is_kept(string id, string field, string value)
    {
        using var modules = new TestModules().WithOneOfEachKind(KindsAtTheTable.Module);
        await using var quiz = await KindsAtTheTable.BeginAsync(modules);

        var sent = await quiz.SendAsync(id, (field, value));

        Assert.Equal(HttpStatusCode.UnprocessableEntity, sent.Status);
        Assert.NotEmpty(sent.Problems);
        Assert.Null(await quiz.KeptAsync(id));
    }

    [Fact]
    public async Task Every_kind_can_be_left_open_and_taken_back()
    {
        using var modules = new TestModules().WithOneOfEachKind(KindsAtTheTable.Module);
        await using var quiz = await KindsAtTheTable.BeginAsync(modules);

        foreach (var id in All)
        {
            await quiz.GiveAsync(id, quiz.Of(id).Kind.Right);
            var form = (await quiz.OpenAsync(id)).Form();
            foreach (var (name, _) in Typing.Of(quiz.Of(id).Kind, quiz.Of(id).Kind.Right))
                form.Without(name);
            Assert.Equal(HttpStatusCode.Redirect, (await form.With(("To", "end")).SendAsync()).Status);
            Assert.Null(await quiz.KeptAsync(id));
        }
    }

    [Fact]
    public async Task A_picture_is_shown_with_a_letter_for_each_place_to_those_at_the_table_alone()
    {
        using var modules = new TestModules().WithOneOfEachKind(KindsAtTheTable.Module);
        await using var quiz = await KindsAtTheTable.BeginAsync(modules);
        var page = (await quiz.OpenAsync(Spot)).Page;

        Assert.Equal(["A", "B", "C"], page.QuerySelectorAll("svg.spots text").Select(letter => letter.TextContent));
        Assert.Equal(
            page.QuerySelectorAll(".pick input").Select(input => input.Id),
            page.QuerySelectorAll("svg.spots label").Select(label => label.GetAttribute("for"))
        );
        var address = page.QuerySelector("svg.spots image")!.GetAttribute("href")!;
        var picture = await quiz.Pim.Client.GetAsync(address, TestContext.Current.CancellationToken);
        Assert.Equal((HttpStatusCode.OK, "image/svg+xml"), (picture.StatusCode, picture.Content.Headers.ContentType!.MediaType));
        Assert.Contains("sandbox", picture.Headers.GetValues("Content-Security-Policy").Single(), StringComparison.Ordinal);

        using var juno = await quiz.Portal.AsAsync(quiz.Cast, quiz.Cast.SecondJunior);
        Assert.Equal(HttpStatusCode.NotFound, (await juno.GetAsync(address)).Status);
        var other = address.Replace("back.svg", "other.svg", StringComparison.Ordinal);
        Assert.Equal(HttpStatusCode.NotFound, (await quiz.Pim.GetAsync(other)).Status);
    }

    private static void AssertAsked(Hosting.Answer result, string question, params string[] words)
    {
        var asked = result
            .Page.QuerySelectorAll(".ans")
            .Single(one => one.TextContent.Contains(question, StringComparison.Ordinal));
        var text = string.Join(' ', asked.TextContent.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
        Assert.All(words, part => Assert.Contains(part, text, StringComparison.Ordinal));
    }
}
