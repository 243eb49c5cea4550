using System.Net;
using AngleSharp.Dom;
using AngleSharp.Html.Dom;

namespace Academy.Web.Tests.Shell;

/// <summary>
/// How a form comes back, after the open error-message pattern of GOV.UK (title prefixed, summary on top with a line to each
/// field, the same words beside it, everything typed kept) and WCAG 2.2, 3.3.1 and 3.3.7.
/// </summary>
public sealed class FormTests
{
    [Fact]
    public async Task A_form_that_comes_back_says_the_same_number_and_words_on_top_and_beside_the_field()
    {
        var page = await SendAsync([new("Weight", "400"), new("Words", "Comb <first>")]);
        var lines = page.QuerySelectorAll(".mend li a").ToList();

        Assert.Equal("There is a problem", page.QuerySelector(".mend h2")!.TextContent);
        Assert.StartsWith("Error: ", page.Title, StringComparison.Ordinal);
        Assert.Equal(3, lines.Count);
        Assert.All(
            lines,
            line =>
            {
                var control = page.QuerySelector(line.GetAttribute("href")!)!;
                var field = control.Closest(".field.err")!;
                var number = line.QuerySelector(".no-tag")!.TextContent;
                var words = line.LastElementChild!.TextContent;
                Assert.Equal(number, field.QuerySelector(".no-tag")!.TextContent);
                Assert.Equal(words, field.QuerySelector(".msg")!.TextContent);
            }
        );
    }

    [Fact]
    public async Task The_lines_on_top_stand_in_the_order_of_the_page_and_are_counted_from_one()
    {
        var page = await SendAsync([new("Weight", "400"), new("Words", "Comb <first>")]);
        var lines = page.QuerySelectorAll(".mend li a").ToList();
        var fields = page.QuerySelectorAll(".field.err").Select(field => field.QuerySelector(".no-tag")!.TextContent).ToList();

        Assert.Equal(["1", "2", "3"], lines.Select(line => line.QuerySelector(".no-tag")!.TextContent));
        Assert.Equal(["1", "2", "3"], fields);
    }

    [Fact]
    public async Task What_was_typed_is_kept_and_is_only_text()
    {
        var page = await SendAsync([
            new("Weight", "4o"),
            new("Words", "<b>Comb</b> first"),
            new("Hazards", "elderly"),
            new("Hazards", "matted"),
            new("Level", "4"),
        ]);

        Assert.Equal("4o", page.QuerySelector<IHtmlInputElement>("#Weight")!.Value);
        Assert.Equal("<b>Comb</b> first", page.QuerySelector<IHtmlTextAreaElement>("#Words")!.Value.Trim());
        Assert.Equal(["4", "elderly", "matted"], page.QuerySelectorAll<IHtmlInputElement>(":checked").Select(pick => pick.Value));
    }

    [Fact]
    public async Task Hint_and_error_are_read_out_with_their_control()
    {
        var page = await SendAsync([]);
        var name = page.QuerySelector("#Dog")!;

        Assert.Equal("Dog-hint Dog-wrong", name.GetAttribute("aria-describedby"));
        Assert.Equal("true", name.GetAttribute("aria-invalid"));
        Assert.Equal("As its owner calls it.", page.QuerySelector("#Dog-hint")!.TextContent);
        Assert.Equal("Name: write what the dog is called", page.QuerySelector("#Dog-wrong")!.TextContent);
        Assert.Equal("Coat-wrong", page.QuerySelector("#Coat")!.Closest("fieldset")!.GetAttribute("aria-describedby"));
        Assert.True(page.QuerySelector(".mend")!.HasAttribute("autofocus"));
    }

    [Fact]
    public async Task A_form_that_is_in_order_leads_on_and_says_what_was_done()
    {
        await using var portal = new Portal();
        using var visitor = portal.Visitor();
        using var sent = await PostAsync(visitor, [new("Dog", "Biscuit"), new("Coat", "wool")]);
        using var next = await visitor.GetAsync(sent.Headers.Location, TestContext.Current.CancellationToken);
        using var after = await visitor.GetAsync(sent.Headers.Location, TestContext.Current.CancellationToken);

        Assert.Equal(HttpStatusCode.Redirect, sent.StatusCode);
        var said = (await Portal.ReadAsync(next)).QuerySelector(".said")!;
        Assert.Equal("Biscuit would be kept. This page keeps nothing.", said.TextContent);
        Assert.Null((await Portal.ReadAsync(after)).QuerySelector(".said"));
    }

    [Fact]
    public async Task Choices_are_real_controls_in_a_named_group()
    {
        await using var portal = new Portal();
        using var answer = await portal.Visitor().GetAsync("/swatches", TestContext.Current.CancellationToken);
        var page = await Portal.ReadAsync(answer);

        Assert.Equal(5, page.QuerySelectorAll("input[type=radio][name=Level]").Length);
        Assert.Equal(6, page.QuerySelectorAll("input[type=checkbox][name=Hazards]").Length);
        Assert.Empty(page.QuerySelectorAll(":checked"));
        Assert.All(page.QuerySelectorAll("fieldset"), group => Assert.NotEqual("", group.QuerySelector("legend")!.TextContent));
        Assert.All(page.QuerySelectorAll(".swpicks label"), pick => Assert.NotEqual("", pick.TextContent.Trim()));
    }

    private static async Task<IHtmlDocument> SendAsync(IEnumerable<KeyValuePair<string, string>> typed)
    {
        await using var portal = new Portal();
        using var answer = await PostAsync(portal.Visitor(), typed);
        Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.StatusCode);
        return await Portal.ReadAsync(answer);
    }

    private static async Task<HttpResponseMessage> PostAsync(HttpClient visitor, IEnumerable<KeyValuePair<string, string>> typed)
    {
        using var open = await visitor.GetAsync("/swatches", TestContext.Current.CancellationToken);
        var token = (await Portal.ReadAsync(open))
            .QuerySelector<IHtmlInputElement>("input[name=__RequestVerificationToken]")!
            .Value;
        using var form = new FormUrlEncodedContent([.. typed, new("__RequestVerificationToken", token)]);
        return await visitor.PostAsync("/swatches", form, TestContext.Current.CancellationToken);
    }
}
