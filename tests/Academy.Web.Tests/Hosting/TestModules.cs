namespace Academy.Web.Tests.Hosting;

/// <summary>A folder of modules for one test: the invented lesson about towels under whatever names the skills ask for.</summary>
internal sealed class TestModules : IDisposable
{
    public const string Title = "Towels: dry first, blow later";

    public string Root { get; } = Directory.CreateTempSubdirectory("academy-modules-").FullName;

    /// <summary>The lesson under another name, each piece of its text replaced; again with the same name, it is written over.</summary>
    public TestModules With(string name, params IEnumerable<(string From, string To)> changes)
    {
        var text = File.ReadAllText(Sample("module.md"));
        text = text[..text.IndexOf("\n## towel-25", StringComparison.Ordinal)];
        foreach (var (from, to) in changes.Prepend(("name: towels", $"name: {name}")))
        {
            Assert.Contains(from, text, StringComparison.Ordinal);
            text = text.Replace(from, to, StringComparison.Ordinal);
        }
        Write(name, "module.md", text);
        File.Copy(Sample("press.svg"), Path.Combine(Root, name, "press.svg"), overwrite: true);
        return this;
    }

    /// <summary>The lesson under another name and title.</summary>
    public TestModules Titled(string name, string title, params IEnumerable<(string From, string To)> changes) =>
        With(name, [.. changes, ($"\"{Title}\"", $"\"{title}\""), ($"# {Title}", $"# {title}")]);

    public TestModules Write(string name, string file, string text)
    {
        Directory.CreateDirectory(Path.Combine(Root, name));
        File.WriteAllText(Path.Combine(Root, name, file), text);
        return this;
    }

    public void Dispose() => Directory.Delete(Root, recursive: true);

    private static string Sample(string file) => Path.Combine(AppContext.BaseDirectory, "data", "towels", file);
}
