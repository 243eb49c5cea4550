using Deque.AxeCore.Commons;
using Microsoft.Playwright;

namespace Academy.Browser.Tests;

/// <summary>
/// What is wrong with a page for somebody: axe-core 4.14 (WCAG 2.0 to 2.2, A and AA, best practice, target size switched on), and
/// whether it scrolls sideways.
/// </summary>
internal static class Axe
{
    private const string Ask = """
        async () => {
          const found = await axe.run({ exclude: [".sprite"] }, {
            resultTypes: ["violations"],
            runOnly: ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"],
            rules: { "target-size": { enabled: true } },
          });
          const wide = document.documentElement.scrollWidth - window.innerWidth;
          return [
            ...found.violations.flatMap((rule) => rule.nodes.map((node) => `${rule.id}: ${node.html}`)),
            ...(wide > 0 ? [`scrolls ${wide} px sideways`] : []),
          ];
        }
        """;

    private static readonly string Script = new BundledAxeScriptProvider().GetScript();

    private static readonly (int Width, ColorScheme Scheme)[] Looks =
    [
        .. from width in (int[])[320, 820, 1280]
        from scheme in (ColorScheme[])[ColorScheme.Light, ColorScheme.Dark]
        select (width, scheme),
    ];

    /// <summary>Looks at the page as it stands at three widths, light and dark.</summary>
    public static async Task<IReadOnlyList<string>> LookAsync(IPage page)
    {
        List<string> found = [];
        foreach (var (width, scheme) in Looks)
        {
            await page.SetViewportSizeAsync(width, 844);
            await page.EmulateMediaAsync(new() { ColorScheme = scheme });
            found.AddRange((await AskAsync(page)).Select(wrong => $"{width} {scheme}: {wrong}"));
        }
        return found;
    }

    /// <summary>Looks at a page of a walk. It needs scripts itself: the same walk without them has nothing to find.</summary>
    public static async Task<IReadOnlyList<string>> WalkAsync(IPage page, string way) =>
        Device.Of(way).RunsScripts ? await LookAsync(page) : [];

    /// <summary>Looks at the page once, as it is.</summary>
    public static async Task<string[]> AskAsync(IPage page)
    {
        if (!await page.EvaluateAsync<bool>("'axe' in globalThis"))
            await page.EvaluateAsync(Script);
        return await page.EvaluateAsync<string[]>(Ask);
    }
}
