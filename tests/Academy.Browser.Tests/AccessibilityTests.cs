using Deque.AxeCore.Commons;
using Deque.AxeCore.Playwright;
using Microsoft.Playwright;

namespace Academy.Browser.Tests;

/// <summary>
/// axe-core 4.14 finds nothing on any page (WCAG 2.0 to 2.2, A and AA, best practice, target size switched on), nothing scrolls
/// sideways, and the browser has nothing to complain of.
/// </summary>
public sealed class AccessibilityTests(DemoPortal portal)
{
    private static readonly AxeRunOptions Everything = new()
    {
        RunOnly = new RunOnlyOptions
        {
            Type = "tag",
            Values = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"],
        },
        Rules = new Dictionary<string, RuleOptions> { ["target-size"] = new() { Enabled = true } },
    };

    private static readonly (int Width, ColorScheme Scheme)[] Looks =
    [
        (320, ColorScheme.Light),
        (820, ColorScheme.Dark),
        (1280, ColorScheme.Light),
    ];

    public static TheoryData<string, string> Pages()
    {
        var pages = new TheoryData<string, string>();
        foreach (var path in (string[])["/sign-in", "/heat", "/nothing-here"])
            pages.Add("", path);
        foreach (
            var path in (string[])
                ["/", "/me", "/dog-check", "/readings/new", "/log", "/study", "/study/heat-stroke", "/me/account"]
        )
            pages.Add("Tamsin", path);
        foreach (var path in (string[])["/", "/board", "/in-today", "/sign-offs", "/dogs/new"])
            pages.Add("Bettina", path);
        foreach (
            var path in (string[])
                [
                    "/",
                    "/board",
                    "/people",
                    "/people/new",
                    "/decide",
                    "/thresholds",
                    "/thresholds/wool",
                    "/skills",
                    "/house",
                    "/reviews",
                    "/disputes",
                    "/study/findings",
                    "/dog-check?Form.Dog=00000d06-0000-7000-8000-00000000000a&Form.IsAsked=true&Form.Techniques=bath",
                ]
        )
            pages.Add("Wilhelmina", path);
        return pages;
    }

    [Theory]
    [MemberData(nameof(Pages))]
    public async Task A_page_is_for_everybody(string person, string path)
    {
        foreach (var (width, scheme) in Looks)
        {
            var page = person.Length == 0 ? await portal.OpenAsync(width, scheme) : await portal.AsAsync(person, width, scheme);
            List<string> complaints = [];
            page.Console += (_, said) =>
                complaints.AddRange(
                    said.Type == "error" && !said.Text.Contains("404", StringComparison.Ordinal) ? [said.Text] : []
                );

            await page.GotoAsync(path);
            var found = await page.RunAxe(Everything);
            var sideways = await page.EvaluateAsync<int>("document.documentElement.scrollWidth - window.innerWidth");

            Assert.Equal(
                [],
                found.Violations.SelectMany(wrong => wrong.Nodes.Select(node => $"{width} {scheme} {wrong.Id}: {node.Html}"))
            );
            Assert.True(sideways <= 0, $"{path} scrolls {sideways} px sideways at {width}.");
            Assert.Equal([], complaints);
            await page.Context.CloseAsync();
        }
    }
}
