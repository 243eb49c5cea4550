using System.Globalization;
using System.Text.RegularExpressions;

namespace Academy.Modules.Parcels;

/// <summary>Writes the numbers of an edition into the front matter of a text: whoever publishes knows them, whoever writes need not.</summary>
public static partial class EditionNumbers
{
    /// <summary>The text with these numbers; as it is where it has no front matter.</summary>
    public static string Write(string text, int edition, int safetyCriticalSince)
    {
        var lines = text.Split('\n').ToList();
        var end = lines[0].TrimEnd() == "---" ? lines.FindIndex(1, line => line.TrimEnd() == "---") : -1;
        if (end < 0)
            return text;
        Put(lines, end, "safety-critical-since", safetyCriticalSince);
        Put(lines, end, "edition", edition);
        return string.Join('\n', lines);
    }

    private static void Put(List<string> lines, int end, string key, int number)
    {
        var line = string.Create(CultureInfo.InvariantCulture, $"{key}: {number}");
        var at = lines.FindIndex(
            1,
            end - 1,
            said => Key().Match(said) is { Success: true } found && found.ValueSpan.SequenceEqual(key)
        );
        if (at < 0)
            lines.Insert(end, line);
        else if (lines[at].TrimEnd() != line)
            lines[at] = line;
    }

    [GeneratedRegex("^(edition|safety-critical-since)(?=\\s*:)", RegexOptions.ExplicitCapture, Patience.Milliseconds)]
    private static partial Regex Key();
}
