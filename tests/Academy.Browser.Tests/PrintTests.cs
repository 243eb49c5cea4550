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

    // A lesson is taken home or put up at the table: four leaves on both sides, with its pictures and sources, at the most.
    private const int MostSheets = 8;

    // Upright without its margins: what is higher is cut in two.
    private const int DownPx = (297 - 28) * 96 * 10 / 254;

    [Fact]
    public async Task Every_lesson_prints_whole_on_paper_with_no_table_or_picture_cut()
    {
        var demo = await stage.DemoAsync();
        var page = await demo.AsAsync(Addresses.Owner);
        List<string> wrong = [];
        foreach (var lesson in demo.Lessons)
        {
            var name = lesson.Module.Name.Value;
            await page.SetViewportSizeAsync(UprightPx, 800);
            await page.EmulateMediaAsync(new() { Media = Media.Print });
            await page.GotoAsync($"/study/{name}");
            await page.EvaluateAsync(Drawn);
            wrong.AddRange((await page.EvaluateAsync<string[]>(Cut, DownPx)).Select(part => $"{name}: {part}"));
            await page.EmulateMediaAsync(new() { Media = Media.Null });
            var sheets = Sheet().Count(Encoding.Latin1.GetString(await page.PdfAsync(new() { PreferCSSPageSize = true })));
            if (sheets is 0 or > MostSheets)
                wrong.Add($"{name}: {sheets} sheets");
        }
        await page.Context.CloseAsync();
        Assert.True(demo.Lessons.Count >= 20, $"{demo.Lessons.Count} lessons");
        Assert.True(wrong.Count == 0, string.Join(Environment.NewLine, wrong));
    }

    private const string Drawn = """
        () => Promise.all([...document.querySelectorAll(".lesson img")].map((picture) =>
          picture.complete || new Promise((done) => picture.addEventListener("load", done, { once: true }))))
        """;

    private const string Cut = """
        (down) => [...document.querySelectorAll(".lesson :is(table, img, svg, .picture, .caution, pre)")].flatMap((part) => {
          const box = part.getBoundingClientRect();
          const name = `${part.tagName.toLowerCase()} “${(part.textContent || part.alt || "").trim().slice(0, 40)}”`;
          return [
            ...(part.scrollWidth > part.clientWidth + 1 && part.tagName !== "IMG" ? [`${name} is ${part.scrollWidth - part.clientWidth} px wider than its place`] : []),
            ...(box.right > innerWidth + 1 ? [`${name} goes over the edge`] : []),
            ...(part.tagName !== "TABLE" && box.height > down ? [`${name} is higher than a sheet`] : []),
            ...(part.tagName === "IMG" && (!part.complete || part.naturalWidth === 0) ? [`${name} is not drawn`] : []),
          ];
        })
        """;

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
