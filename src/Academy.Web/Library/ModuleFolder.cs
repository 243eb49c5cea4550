namespace Academy.Web.Library;

/// <summary>Where the modules lie: where <c>Modules:Folder</c> says, otherwise a folder <c>modules</c> beside the program.</summary>
public static class ModuleFolder
{
    public const string Setting = "Modules:Folder";

    public static string Of(IConfiguration settings, string contentRoot) =>
        settings[Setting] is { Length: > 0 } named
            ? Path.GetFullPath(named, contentRoot)
            : Places(contentRoot).FirstOrDefault(Directory.Exists) ?? Path.Combine(contentRoot, "modules");

    // Published, they lie in the program's own folder, from wherever it was started; in the repository, beside the solution.
    private static IEnumerable<string> Places(string contentRoot) =>
        new[] { contentRoot, AppContext.BaseDirectory }
            .Concat(new[] { contentRoot, AppContext.BaseDirectory }.Select(Repository).OfType<string>())
            .Select(folder => Path.Combine(folder, "modules"));

    private static string? Repository(string from)
    {
        var at = new DirectoryInfo(from);
        while (at is not null && !File.Exists(Path.Combine(at.FullName, "Academy.sln")))
            at = at.Parent;
        return at?.FullName;
    }
}
