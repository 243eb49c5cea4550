using System.Globalization;
using YamlDotNet.RepresentationModel;

namespace Academy.Modules.Reading;

/// <summary>Asks a block of keys for its values and says what is missing, wrong or unknown.</summary>
internal sealed class Fields(YamlMappingNode keys, Findings findings)
{
    private readonly HashSet<string> _asked = new(StringComparer.Ordinal);

    public int LineOf(string key) => Find(key) is { } value ? YamlBlock.FileLine(value.Start) : YamlBlock.FileLine(keys.Start);

    public bool Has(string key) => Find(key) is not null;

    public string Text(string key)
    {
        if (Ask(key) is not { } value)
            return "";
        if (value is YamlScalarNode { Value: { } text } && !string.IsNullOrWhiteSpace(text))
            return text.Trim();
        return Wrong(key, value, "has to be words", "");
    }

    public int Number(string key, int from, int to)
    {
        if (Ask(key) is not { } value)
            return from;
        if (
            int.TryParse((value as YamlScalarNode)?.Value, CultureInfo.InvariantCulture, out var number)
            && number >= from
            && number <= to
        )
            return number;
        return Wrong(key, value, $"has to be a whole number from {from} to {to}", from);
    }

    public int? NumberOrNone(string key, int from, int to)
    {
        _asked.Add(key);
        return Has(key) ? Number(key, from, to) : null;
    }

    public DateOnly Day(string key)
    {
        if (Ask(key) is not { } value)
            return default;
        if (
            DateOnly.TryParseExact(
                (value as YamlScalarNode)?.Value,
                "yyyy-MM-dd",
                CultureInfo.InvariantCulture,
                DateTimeStyles.None,
                out var day
            )
        )
            return day;
        return Wrong(key, value, "has to be a day such as 2027-11-25", default(DateOnly));
    }

    public bool FlagOrNo(string key)
    {
        _asked.Add(key);
        return Find(key) switch
        {
            null => false,
            YamlScalarNode { Value: "true" } => true,
            YamlScalarNode { Value: "false" } => false,
            { } value => Wrong(key, value, "has to be true or false", fallback: false),
        };
    }

    public IReadOnlyList<YamlNode> List(string key)
    {
        if (Ask(key) is not { } value)
            return [];
        if (value is YamlSequenceNode { Children: { Count: > 0 } children })
            return [.. children];
        return Wrong<IReadOnlyList<YamlNode>>(key, value, "has to be a list with at least one entry", []);
    }

    public void RefuseOthers()
    {
        foreach (var key in keys.Children.Keys.Where(key => !_asked.Contains(Name(key))))
            findings.Fault(
                YamlBlock.FileLine(key.Start),
                $"The key \"{Name(key)}\" is not known. Correct it or take it out; known are {string.Join(", ", _asked.Order(StringComparer.Ordinal))}."
            );
    }

    private static string Name(YamlNode key) => (key as YamlScalarNode)?.Value ?? "";

    private YamlNode? Find(string key) => keys.Children.TryGetValue(new YamlScalarNode(key), out var value) ? value : null;

    private YamlNode? Ask(string key)
    {
        _asked.Add(key);
        var value = Find(key);
        if (value is null)
            findings.Broken(YamlBlock.FileLine(keys.Start), $"The key \"{key}\" is missing. Add it.");
        return value;
    }

    private T Wrong<T>(string key, YamlNode value, string rule, T fallback)
    {
        findings.Broken(YamlBlock.FileLine(value.Start), $"\"{key}\" {rule}.");
        return fallback;
    }
}
