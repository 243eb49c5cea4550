using Academy.Web.Tests.Hosting;

namespace Academy.Browser.Tests;

/// <summary>A portal that a browser can reach.</summary>
public static class Ports
{
    public static readonly string Modules = Path.Combine(Root(), "modules");

    /// <summary>Opens a port of its own for the portal and says its address.</summary>
    public static string Listen(this PortalHost portal)
    {
        portal.UseKestrel(0);
        portal.StartServer();
        return portal.ClientOptions.BaseAddress.ToString().TrimEnd('/');
    }

    private static string Root()
    {
        var folder = AppContext.BaseDirectory;
        while (!File.Exists(Path.Combine(folder, "Academy.sln")))
            folder = Path.GetDirectoryName(folder)!;
        return folder;
    }
}
