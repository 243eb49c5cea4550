namespace Academy;

/// <summary>The project's own folder, for tests that read its files. Linked into each test project that does.</summary>
internal static class Repository
{
    public static string Root { get; } = Find();

    /// <summary>A folder of the project, by its path from the root.</summary>
    public static string Folder(string path) => Path.Combine(Root, path);

    private static string Find()
    {
        var at = new DirectoryInfo(AppContext.BaseDirectory);
        while (!File.Exists(Path.Combine(at.FullName, "Academy.sln")))
            at = at.Parent ?? throw new DirectoryNotFoundException("Academy.sln stands in no folder above the tests.");
        return at.FullName;
    }
}
