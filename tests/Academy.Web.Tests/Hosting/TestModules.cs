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
        foreach (var (from, to) in changes.Prepend(("name: towels", $"name: {name}")))
        {
            Assert.Contains(from, text, StringComparison.Ordinal);
            text = text.Replace(from, to, StringComparison.Ordinal);
        }
        Write(name, "module.md", text);
        foreach (var picture in (string[])["press.svg", "back.svg"])
            File.Copy(Sample(picture), Path.Combine(Root, name, picture), overwrite: true);
        return this;
    }

    /// <summary>
    /// The lesson with one question of each kind and no others, so that each is drawn: one right (towel-03), several right (towel-04)
    /// and those from towel-25 on.
    /// </summary>
    public TestModules WithOneOfEachKind(string name, params IEnumerable<(string From, string To)> changes)
    {
        var text = File.ReadAllText(Sample("module.md"));
        var (begin, end) = (
            text.IndexOf("\n## towel-01", StringComparison.Ordinal),
            text.IndexOf("\n## towel-03", StringComparison.Ordinal)
        );
        var (then, last) = (
            text.IndexOf("\n## towel-05", StringComparison.Ordinal),
            text.IndexOf("\n## towel-25", StringComparison.Ordinal)
        );
        return With(name, [(text[begin..end], ""), (text[then..last], ""), .. changes]);
    }

    /// <summary>The lesson with no other questions than those with options.</summary>
    public TestModules WithOptionsOnly(string name)
    {
        var text = File.ReadAllText(Sample("module.md"));
        return With(name, (text[text.IndexOf("\n## towel-25", StringComparison.Ordinal)..], ""));
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
