using AngleSharp.Dom;
using AngleSharp.Html.Dom;

namespace Academy.Web.Tests.Shell;

/// <summary>What the content policy would refuse must not be written at all; and each page can be walked without eyes.</summary>
public sealed class CleanHtmlTests
{
    public static TheoryData<string> Pages =>
        [
            "/heat",
            "/swatches",
            "/swatches?as=junior",
            "/swatches?as=senior",
            "/swatches?as=owner&shape=wide",
            "/no-such-page",
            "/error",
        ];

    [Theory]
    [MemberData(nameof(Pages))]
    public async Task No_page_carries_inline_styles_scripts_or_handlers(string path)
    {
        var page = await OpenAsync(path);

        Assert.Empty(page.QuerySelectorAll("[style], style"));
        var marks = page.All.SelectMany(part => part.Attributes).ToList();
        Assert.DoesNotContain(marks, mark => mark.Name.StartsWith("on", StringComparison.Ordinal));
        Assert.DoesNotContain(marks, mark => mark.Value.StartsWith("javascript:", StringComparison.OrdinalIgnoreCase));
        Assert.All(page.Scripts, script => Assert.True(string.IsNullOrWhiteSpace(script.TextContent)));
    }

    [Theory]
    [MemberData(nameof(Pages))]
    public async Task Each_page_has_one_main_heading_a_way_past_the_cover_and_the_heat_card(string path)
    {
        var page = await OpenAsync(path);

        Assert.Single(page.QuerySelectorAll("h1"));
        Assert.Single(page.QuerySelectorAll("main#main"));
        Assert.Equal("#main", page.QuerySelector("a.skip")!.GetAttribute("href"));
        Assert.EndsWith("Academy", page.Title, StringComparison.Ordinal);
        Assert.Equal("/heat", page.QuerySelector(".index li:last-child a")!.GetAttribute("href"));
        Assert.Equal("Dog too hot?", page.QuerySelector(".index li:last-child a")!.TextContent.Trim());
    }

    [Theory]
    [MemberData(nameof(Pages))]
    public async Task Names_on_a_page_are_given_once_and_every_drawing_exists(string path)
    {
        var page = await OpenAsync(path);
        var names = page.QuerySelectorAll("[id]").Select(part => part.Id!).ToList();

        Assert.Equal(names.Distinct(StringComparer.Ordinal), names);
        var drawings = page.QuerySelectorAll("use").Select(use => use.GetAttribute("href")!).ToList();
        Assert.NotEmpty(drawings);
        Assert.All(drawings.Where(drawing => drawing.StartsWith('#')), drawing => Assert.Contains(drawing[1..], names));
        Assert.All(page.QuerySelectorAll("svg"), svg => Assert.Equal("true", svg.GetAttribute("aria-hidden")));
    }

    [Theory]
    [MemberData(nameof(Pages))]
    public async Task Every_control_has_a_name_and_every_form_its_token(string path)
    {
        var page = await OpenAsync(path);

        Assert.All(
            page.QuerySelectorAll("input:not([type=hidden]), select, textarea"),
            control =>
                Assert.True(
                    control.Closest("label") is not null || page.QuerySelector($"label[for='{control.Id}']") is not null,
                    control.OuterHtml
                )
        );
        Assert.All(page.QuerySelectorAll("a, button"), way => Assert.NotEqual("", way.TextContent.Trim()));
        Assert.All(
            page.Forms.Where(form => form.Method == "post"),
            form => Assert.NotNull(form.QuerySelector("input[name=__RequestVerificationToken]"))
        );
    }

    [Theory]
    [InlineData("junior", "Today,Study,Log a groom,My skills,Dog too hot?", "Log a groom")]
    [InlineData("senior", "Today,Board,Sign off,Dog check,Dog too hot?", "Sign off")]
    [InlineData("owner", "Today,Board,Decide,Dog check,People,Dog too hot?", "Decide")]
    public async Task The_index_has_the_one_job_of_each_role_in_the_middle_and_the_heat_card_last(
        string seat,
        string ways,
        string job
    )
    {
        var page = await OpenAsync($"/swatches?as={seat}");

        Assert.Equal(ways.Split(','), page.QuerySelectorAll(".index a").Select(way => way.TextContent.Trim()));
        Assert.Equal(job, Assert.Single(page.QuerySelectorAll(".index .job")).TextContent.Trim());
        Assert.Contains(seat, page.QuerySelector(".where")!.TextContent, StringComparison.Ordinal);
        Assert.Contains("25.5 °C", page.QuerySelector(".reading-line")!.TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Someone_who_is_not_signed_in_sees_only_the_way_in_and_the_heat_card()
    {
        var page = await OpenAsync("/swatches");

        Assert.Equal(["/heat"], page.QuerySelectorAll(".index a").Select(way => way.GetAttribute("href")));
        Assert.Equal(["/sign-in"], page.QuerySelectorAll(".where a").Select(way => way.GetAttribute("href")));
        Assert.Empty(page.QuerySelectorAll(".further, .reading-line"));
    }

    private static async Task<IHtmlDocument> OpenAsync(string path)
    {
        await using var portal = new Portal();
        using var answer = await portal.Visitor().GetAsync(path, TestContext.Current.CancellationToken);
        return await Portal.ReadAsync(answer);
    }
}
