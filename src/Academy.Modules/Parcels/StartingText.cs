using System.Globalization;
using System.Reflection;
using Academy.Modules.Reading;

namespace Academy.Modules.Parcels;

/// <summary>What a new module begins with: a text that shows each part of the form by an example, to be written over.</summary>
public static class StartingText
{
    private static readonly string Text = Read();

    /// <summary>A module of this name and title, compared with its sources today.</summary>
    public static string For(string name, string title, DateOnly today) =>
        Text.Replace("{name}", name, StringComparison.Ordinal)
            .Replace("{quoted}", Quoted(title), StringComparison.Ordinal)
            .Replace("{title}", title, StringComparison.Ordinal)
            .Replace("{today}", Day(today), StringComparison.Ordinal)
            .Replace("{next-year}", Day(today.AddYears(1)), StringComparison.Ordinal);

    /// <summary>Whether a module may be called so, and how it has to be.</summary>
    public static (bool MayBe, string How) IsName(string name) => (Slug.Is(name), Slug.Words);

    /// <summary>A name made of the words of a title; empty where none can be.</summary>
    public static string NameFrom(string title) =>
        Slug.Of(title) is { Length: <= 60 } name ? name : Slug.Of(title)[..60].TrimEnd('-');

    private static string Quoted(string title) =>
        title.Replace("\\", "\\\\", StringComparison.Ordinal).Replace("\"", "\\\"", StringComparison.Ordinal);

    private static string Day(DateOnly day) => day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);

    private static string Read()
    {
        using var file = Assembly.GetExecutingAssembly().GetManifestResourceStream("starting-text.md")!;
        using StreamReader reader = new(file);
        return reader.ReadToEnd().ReplaceLineEndings("\n");
    }
}
