using System.Text;
using System.Text.RegularExpressions;
using Microsoft.Playwright;

namespace Academy.Browser.Tests;

/// <summary>What hangs on the wall: the board and the heat card on paper.</summary>
public sealed partial class PrintTests(Stage stage)
{
    // A4 without the margins that the style sheet asks for, at 96 pixels an inch.
    private const int AcrossPx = (297 - 20) * 96 * 10 / 254;
    private const int UprightPx = (210 - 24) * 96 * 10 / 254;

    [Fact]
    public async Task The_heat_card_fits_on_one_sheet() => Assert.Equal((1, 0), await PrintAsync(null, "/heat", UprightPx));

    // One sheet for each table at most; a strip that the day brings may push a table onto the next one.
    [Fact]
    public async Task The_board_fits_across_at_most_three_sheets()
    {
        var (sheets, tooWide) = await PrintAsync(Addresses.Owner, "/board", AcrossPx);

        Assert.InRange(sheets, 1, 3);
        Assert.Equal(0, tooWide);
    }

    /// <summary>How many sheets it takes, and by how many pixels it is too wide for them. On paper it must hold for axe too.</summary>
    private async Task<(int Sheets, int TooWide)> PrintAsync(string? person, string path, int width)
    {
        var demo = await stage.DemoAsync();
        var page = person is null ? await demo.OpenAsync() : await demo.AsAsync(person);
        await page.GotoAsync(path);
        var pdf = await page.PdfAsync(new() { PreferCSSPageSize = true });
        var sheets = Sheet().Count(Encoding.Latin1.GetString(pdf));
        await page.SetViewportSizeAsync(width, 800);
        await page.EmulateMediaAsync(new() { Media = Media.Print });
        var tooWide = await page.EvaluateAsync<int>("document.documentElement.scrollWidth - window.innerWidth");
        var wrong = await Axe.AskAsync(page);
        Assert.Empty(wrong);
        await page.Context.CloseAsync();
        return (sheets, Math.Max(0, tooWide));
    }

    [GeneratedRegex(@"/Type\s*/Page\b")]
    private static partial Regex Sheet();
}
