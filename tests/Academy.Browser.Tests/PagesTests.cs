using System.Collections.Concurrent;
using Microsoft.Playwright;

namespace Academy.Browser.Tests;

/// <summary>
/// Every page of the portal: axe finds nothing, nothing scrolls sideways, the page has one first heading, a title of its own and a
/// language, and the browser has nothing to complain of. Shared out among classes, which run side by side.
/// </summary>
public abstract class PagesTests(Stage stage)
{
    private static readonly ConcurrentDictionary<string, string> Titles = new(StringComparer.Ordinal);

    /// <summary>One page after another in one window of its own: light and fast, and each starts from the one before.</summary>
    protected async Task LookAtAllAsync(params IEnumerable<string?> people)
    {
        var demo = await stage.DemoAsync();
        List<string> wrong = [];
        foreach (var person in people)
        {
            var page = person is null ? await demo.OpenAsync() : await demo.AsAsync(person);
            page.Console += (_, said) => wrong.AddRange(ComplaintOf(said));
            foreach (var address in Addresses.All.Where(one => one.Person == person && one.Route != "/set-up"))
                wrong.AddRange(await LookAtAsync(page, await address.Find(demo)));
            await page.Context.CloseAsync();
        }
        Assert.True(wrong.Count == 0, string.Join(Environment.NewLine, wrong));
    }

    private static async Task<IEnumerable<string>> LookAtAsync(IPage page, string path)
    {
        await page.GotoAsync(path);
        var found = await Axe.LookAsync(page);
        var headings = await page.Locator("h1").CountAsync();
        var title = await page.TitleAsync();
        var place = new Uri(page.Url).AbsolutePath;
        var first = Titles.GetOrAdd(title, place);
        return
        [
            .. found.Select(wrong => $"{path}: {wrong}"),
            .. headings == 1 ? [] : (string[])[$"{path}: {headings} first headings"],
            .. first == place ? [] : (string[])[$"{path}: has the title of {first}, {title}"],
            .. await page.Locator("html").GetAttributeAsync("lang") is { Length: > 0 } ? [] : (string[])[$"{path}: no language"],
        ];
    }

    private static IEnumerable<string> ComplaintOf(IConsoleMessage said) =>
        said.Type == "error" && !said.Text.Contains("the server responded with a status of", StringComparison.Ordinal)
            ? [$"{said.Location}: {said.Text}"]
            : [];
}

public sealed class OwnersPagesTests(Stage stage) : PagesTests(stage)
{
    [Fact]
    public Task The_owners_pages_are_for_everybody() => LookAtAllAsync(Addresses.Owner);

    [Fact]
    public void No_page_is_left_out()
    {
        var table = File.ReadAllLines(Path.Combine(AppContext.BaseDirectory, "data", "pages.txt"));
        var routes = table.Where(line => line.Length > 0 && line[0] != '#').Select(line => line[..line.LastIndexOf(' ')]);

        Assert.Equal([], routes.Except(Addresses.All.Select(one => one.Route), StringComparer.Ordinal));
    }
}

public sealed class OthersPagesTests(Stage stage) : PagesTests(stage)
{
    [Fact]
    public Task The_pages_of_everybody_else_are_for_everybody() =>
        LookAtAllAsync(null, Addresses.Junior, Addresses.Senior, Addresses.Newcomer);
}
