namespace Academy.Web.Shell;

/// <summary>Switches that stand alone on the command line, spelled out as the settings they mean.</summary>
public static class Arguments
{
    public static string[] Spelled(string[] args) => [.. args.Select(arg => arg == "--demo" ? "--Demo=true" : arg)];

    /// <summary>The settings among what a command was called with: a path of it that begins with a slash must not be taken for one.</summary>
    public static string[] Settings(string[] args) => [.. args.Where(arg => arg.StartsWith("--", StringComparison.Ordinal))];
}
