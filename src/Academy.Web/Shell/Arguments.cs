namespace Academy.Web.Shell;

/// <summary>Switches that stand alone on the command line, spelled out as the settings they mean.</summary>
public static class Arguments
{
    public static string[] Spelled(string[] args) => [.. args.Select(arg => arg == "--demo" ? "--Demo=true" : arg)];
}
