namespace Academy.Modules.Tests;

/// <summary>The repository that these tests were built in.</summary>
internal static class Repository
{
    public static string Folder(string name)
    {
        var at = new DirectoryInfo(AppContext.BaseDirectory);
        while (!File.Exists(Path.Combine(at.FullName, "Academy.sln")))
            at = at.Parent ?? throw new DirectoryNotFoundException("Academy.sln stands in no folder above the tests.");
        return Path.Combine(at.FullName, name);
    }
}
