using Microsoft.Playwright;

namespace Academy.Browser.Tests;

/// <summary>One Chromium for all tests; each person who steps in gets a browser context of her own.</summary>
public sealed class Chrome : IAsyncDisposable
{
    private readonly IPlaywright _playwright;
    private readonly IBrowser _browser;

    private Chrome(IPlaywright playwright, IBrowser browser) => (_playwright, _browser) = (playwright, browser);

    public static async Task<Chrome> StartAsync()
    {
        var playwright = await Playwright.CreateAsync();
        var browser = await playwright.Chromium.LaunchAsync(
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
        return new Chrome(playwright, browser);
    }

    /// <summary>An empty page that knows the portal's address.</summary>
    public async Task<IPage> OpenAsync(string address, Device device)
    {
        var context = await _browser.NewContextAsync(
            new()
            {
                BaseURL = address,
                ViewportSize = new() { Width = device.Width, Height = device.Height },
                HasTouch = device.IsTouched,
                IsMobile = device.IsTouched,
                JavaScriptEnabled = device.RunsScripts,
            }
        );
        // Generous, because the machine may be busy: an expectation that holds does not wait.
        context.SetDefaultTimeout(30_000);
        return await context.NewPageAsync();
    }

    public async ValueTask DisposeAsync()
    {
        await _browser.DisposeAsync();
        _playwright.Dispose();
    }
}

/// <summary>What somebody holds in her hands.</summary>
public sealed record Device(int Width, int Height, bool IsTouched = false, bool RunsScripts = true)
{
    public static readonly Device Desk = new(1280, 844);

    public static readonly Device Phone = new(390, 844, IsTouched: true);

    public static readonly Device Scriptless = new(390, 844, RunsScripts: false);

    /// <summary>What each way of walking is walked on: "finger", "keyboard", "no script".</summary>
    public static Device Of(string way) =>
        way switch
        {
            "finger" => Phone,
            "keyboard" => Desk,
            "no script" => Scriptless,
            _ => throw new ArgumentOutOfRangeException(nameof(way), way, "There is no such way."),
        };
}
