namespace Academy.Architecture.Tests;

/// <summary>A source file and what is written in it.</summary>
internal sealed record Source(string Path, string Text)
{
    public string[] Lines => Text.ReplaceLineEndings("\n").TrimEnd('\n').Split('\n');

    public override string ToString() => Path;
}

/// <summary>The house as written.</summary>
internal static class Text
{
    public static string Root { get; } = Repository.Root;

    /// <summary>Every source file of this ending below src, without what a build puts there.</summary>
    public static IReadOnlyList<Source> Files(string ending) =>
        [
            .. Directory
                .EnumerateFiles(Path.Combine(Root, "src"), "*" + ending, SearchOption.AllDirectories)
                .Select(file => Path.GetRelativePath(Root, file).Replace('\\', '/'))
                .Where(file =>
                    !file.Contains("/obj/", StringComparison.Ordinal) && !file.Contains("/bin/", StringComparison.Ordinal)
                )
                .Order(StringComparer.Ordinal)
                .Select(file => new Source(file, File.ReadAllText(Path.Combine(Root, file)))),
        ];

    public static Source One(string path) => new(path, File.ReadAllText(Path.Combine(Root, path)));

    public static bool IsOrIsBelow(string name, string room) =>
        name == room || name.StartsWith(room + ".", StringComparison.Ordinal);
}
