[assembly: AssemblyFixture(typeof(Academy.Browser.Tests.Stage))]

namespace Academy.Browser.Tests;

/// <summary>What all tests of the project share: the Chromium, and the demo salon, which nobody writes into.</summary>
public sealed class Stage : IAsyncLifetime
{
    private readonly SemaphoreSlim _turn = new(1, 1);
    private Chrome? _chrome;
    private DemoPortal? _demo;

    public Chrome Chrome => _chrome!;

    public async ValueTask InitializeAsync()
    {
        _chrome = await Chrome.StartAsync();
        Microsoft.Playwright.Assertions.SetDefaultExpectTimeout(30_000);
    }

    /// <summary>The demo salon, told once when it is first asked for.</summary>
    public async Task<DemoPortal> DemoAsync()
    {
        await _turn.WaitAsync();
        try
        {
            return _demo ??= await DemoPortal.StartAsync(Chrome);
        }
        finally
        {
            _turn.Release();
        }
    }

    public async ValueTask DisposeAsync()
    {
        if (_demo is not null)
            await _demo.DisposeAsync();
        if (_chrome is not null)
            await _chrome.DisposeAsync();
        _turn.Dispose();
    }
}
