using AngleSharp.Dom;
using AngleSharp.Html.Dom;

namespace Academy.Web.Tests.Shell;

public sealed class PartsTests
{
    [Fact]
    public async Task Every_coat_has_its_swatch_and_its_word_beside_it()
    {
        var page = await GalleryAsync();

        Assert.Equal(
            ["smooth", "double", "wire", "silky", "wool", "combination", "hairless", "corded"],
            page.QuerySelectorAll(".coat-l").Select(coat => coat.TextContent)
        );
        Assert.All(page.QuerySelectorAll(".coat"), coat => Assert.NotNull(coat.QuerySelector("svg use")));
    }

    [Fact]
    public async Task Every_standing_is_a_word_and_a_shape_of_its_own()
    {
        var marks = (await GalleryAsync()).QuerySelectorAll("[aria-labelledby=standings] .st:not(.boxed)").ToList();

        Assert.Equal(
            ["learning", "ready", "alone", "check again", "lapsed", "stood down"],
            marks.Select(mark => mark.TextContent)
        );
        Assert.Equal(
            6,
            marks.Select(mark => mark.QuerySelector("use")!.GetAttribute("href")).Distinct(StringComparer.Ordinal).Count()
        );
    }

    [Fact]
    public async Task The_row_shows_a_stitch_a_point_and_says_it_in_words()
    {
        var rows = (await GalleryAsync()).QuerySelectorAll("[aria-labelledby=row] .row").ToList();

        Assert.Equal(
            ["12 of 15", "12 of 15, 13 if this groom suits", "12 of 15, 8 if it needs fixing", "15 of 15", "0 of 17"],
            rows.Select(row => row.QuerySelector(".row-words")!.TextContent)
        );
        Assert.Equal([15, 15, 15, 15, 17], rows.Select(row => row.QuerySelectorAll("i").Length));
        Assert.Equal([12, 12, 8, 15, 0], rows.Select(row => row.QuerySelectorAll("i.on").Length));
        Assert.Equal([0, 1, 0, 0, 0], rows.Select(row => row.QuerySelectorAll("i.new").Length));
        Assert.Equal([0, 0, 4, 0, 0], rows.Select(row => row.QuerySelectorAll("i.lost").Length));
    }

    [Fact]
    public async Task The_last_rated_grooms_are_links_with_words_and_counts()
    {
        var page = await GalleryAsync();

        Assert.Equal(20, page.QuerySelectorAll(".dots a").Length);
        Assert.Equal("needed fixing, 4 Apr", page.QuerySelectorAll(".dots a")[3].TextContent);
        Assert.Equal(
            ["18 suited", "2 needed fixing"],
            page.QuerySelectorAll(".rated .key > span").Select(count => count.TextContent)
        );
        Assert.Contains("No rated groom yet", page.QuerySelector(".empty")!.TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_caution_ends_in_the_heat_card() =>
        Assert.All(
            (await GalleryAsync()).QuerySelectorAll(".caution"),
            caution => Assert.Equal("/heat", caution.QuerySelector("a:last-of-type")!.GetAttribute("href"))
        );

    [Theory]
    [InlineData("true", System.Net.HttpStatusCode.OK)]
    [InlineData("false", System.Net.HttpStatusCode.NotFound)]
    public async Task The_gallery_is_shown_in_the_demo_only(string demo, System.Net.HttpStatusCode status)
    {
        await using var portal = new Portal().With("Demo", demo);
        using var answer = await portal.Visitor().GetAsync("/swatches", TestContext.Current.CancellationToken);

        Assert.Equal(status, answer.StatusCode);
    }

    private static async Task<IHtmlDocument> GalleryAsync()
    {
        await using var portal = new Portal();
        using var answer = await portal.Visitor().GetAsync("/swatches", TestContext.Current.CancellationToken);
        return await Portal.ReadAsync(answer);
    }
}
