using Academy.Modules;
using Academy.Web.Tests.Hosting;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Playwright;

namespace Academy.Browser.Tests;

/// <summary>The demo salon behind a real port. The clock stands at an afternoon in June: the day's grooms wait for their sign-offs.</summary>
public sealed class DemoPortal : IAsyncDisposable
{
    private readonly Chrome _chrome;
    private readonly string _address;

    private DemoPortal(Chrome chrome, PortalHost portal, string address) =>
        (_chrome, Portal, _address) = (chrome, portal, address);

    /// <summary>The portal itself, for what a test must look up.</summary>
    public PortalHost Portal { get; }

    public static async Task<DemoPortal> StartAsync(Chrome chrome)
    {
        var portal = new PortalHost().With("Demo", "true").With("Site:FillDemo", "true").With("Modules:Folder", Ports.Modules);
        portal.Clock.Advance(TimeSpan.FromHours(6));
        return new DemoPortal(chrome, portal, await Task.Run(portal.Listen));
    }

    /// <summary>A module as it is studied here.</summary>
    public IReadOnlyList<Lesson> Lessons => [.. Portal.Services.GetRequiredService<ModuleLibrary>().Lessons];

    public Lesson Lesson(string module) => Portal.Services.GetRequiredService<ModuleLibrary>().Find(module)!;

    public Task<IPage> OpenAsync(Device? device = null) => _chrome.OpenAsync(_address, device ?? Device.Desk);

    /// <summary>Steps in as somebody of the demo salon.</summary>
    public async Task<IPage> AsAsync(string person, Device? device = null)
    {
        var page = await OpenAsync(device);
        await page.GotoAsync("/sign-in");
        await page.GetByRole(AriaRole.Button, new() { Name = person }).ClickAsync();
        return page;
    }

    public ValueTask DisposeAsync() => Portal.DisposeAsync();
}
