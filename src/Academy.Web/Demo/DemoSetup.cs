using Academy.Modules;
using Academy.Storage;
using Academy.Storage.Ledgers;
using Academy.Web.Shell;

namespace Academy.Web.Demo;

/// <summary>Fills the demo's own database when it is empty, unless the setting <c>Site:FillDemo</c> says that it stays so.</summary>
public static class DemoSetup
{
    public static async Task FillDemoAsync(this WebApplication app)
    {
        if (!app.Services.GetRequiredService<Site>().Demo || !app.Configuration.GetValue("Site:FillDemo", defaultValue: true))
            return;
        await using var scope = app.Services.CreateAsyncScope();
        var stop = app.Lifetime.ApplicationStopping;
        if (await scope.ServiceProvider.GetRequiredService<RecordBook>().OnlySalonAsync(stop) is not null)
            return;

        var now = app.Services.GetRequiredService<TimeProvider>().GetUtcNow();
        await DemoWriter.WriteAsync(
            scope.ServiceProvider.GetRequiredService<Ledger>(),
            app.Services.GetRequiredService<ModuleLibrary>().Modules,
            now
        );
    }
}
