using Academy.Web.Tests.Hosting;
using Microsoft.AspNetCore.Hosting;
using Microsoft.Playwright;

[assembly: AssemblyFixture(typeof(Academy.Browser.Tests.DemoPortal))]

namespace Academy.Browser.Tests;

/// <summary>
/// The demo salon behind a real port, and a real Chromium. Started once for all tests: each steps in anew, in a browser context of
/// its own. The clock stands at a morning in June.
/// </summary>
public sealed class DemoPortal : IAsyncLifetime
{
    private readonly PortalHost _portal = new PortalHost()
        .With("Demo", "true")
        .With("Site:FillDemo", "true")
        .With("Modules:Folder", Path.Combine(Root(), "modules"));
    private IPlaywright? _playwright;
    private IBrowser? _browser;

    public string Address { get; private set; } = "";

    public async ValueTask InitializeAsync()
    {
        _portal.UseKestrel(0);
        _portal.StartServer();
        Address = _portal.ClientOptions.BaseAddress.ToString().TrimEnd('/');
        _playwright = await Playwright.CreateAsync();
        _browser = await _playwright.Chromium.LaunchAsync(
            new()
            {
                ExecutablePath = Environment.GetEnvironmentVariable("ACADEMY_CHROMIUM") ?? "/usr/bin/chromium",
                Args =
                [
                    "--disable-background-networking",
                    "--disable-component-update",
                    "--disable-sync",
                    "--no-first-run",
                    "--disable-gpu",
                    "--disable-dev-shm-usage",
                ],
            }
        );
    }

    public async ValueTask DisposeAsync()
    {
        if (_browser is not null)
            await _browser.DisposeAsync();
        _playwright?.Dispose();
        await _portal.DisposeAsync();
    }

    private static string Root()
    {
        var folder = AppContext.BaseDirectory;
        while (!File.Exists(Path.Combine(folder, "Academy.sln")))
            folder = Path.GetDirectoryName(folder)!;
        return folder;
    }

    /// <summary>A browser of its own.</summary>
    public async Task<IPage> OpenAsync(int width = 1280, ColorScheme scheme = ColorScheme.Light, bool scripts = true)
    {
        var context = await _browser!.NewContextAsync(
            new()
            {
                BaseURL = Address,
                ViewportSize = new() { Width = width, Height = 844 },
                ColorScheme = scheme,
                JavaScriptEnabled = scripts,
            }
        );
        return await context.NewPageAsync();
    }

    /// <summary>Steps in as somebody of the demo salon.</summary>
    public async Task<IPage> AsAsync(string person, int width = 1280, ColorScheme scheme = ColorScheme.Light, bool scripts = true)
    {
        var page = await OpenAsync(width, scheme, scripts);
        await page.GotoAsync("/sign-in");
        await page.GetByRole(AriaRole.Button, new() { Name = person }).ClickAsync();
        return page;
    }
}
