using System.Text.RegularExpressions;

namespace Academy.Competence.Tests;

public partial class ReasonsTests
{
    private static readonly Type[] Reasons =
    [
        .. typeof(Reason).Assembly.GetTypes().Where(type => type.IsSubclassOf(typeof(Reason)) && !type.IsAbstract),
    ];

    [Fact]
    public void Every_reason_stands_once_in_the_table_with_what_it_says()
    {
        var rows = Rows(File.ReadAllText(Path.Combine(Trade(), "README.md")));

        Assert.Equal(Reasons.Select(type => type.Name).Order(), rows.Select(row => row.Name).Order());
        Assert.All(rows, row => Assert.EndsWith(".", row.Says, StringComparison.Ordinal));
    }

    [Fact]
    public void Every_reason_is_given_somewhere_by_the_trade()
    {
        var given = Directory
            .EnumerateFiles(Trade(), "*.cs", SearchOption.AllDirectories)
            .Where(file =>
                !file.Contains($"{Path.DirectorySeparatorChar}obj{Path.DirectorySeparatorChar}", StringComparison.Ordinal)
            )
            .SelectMany(file => Made().Matches(File.ReadAllText(file)).Select(match => match.Groups["name"].Value))
            .ToHashSet(StringComparer.Ordinal);

        Assert.True(Reasons.Length > 50);
        Assert.All(Reasons, type => Assert.Contains(type.Name, given));
    }

    // A record that holds an ordinary list is equal only to itself.
    [Fact]
    public void Reasons_are_equal_by_what_they_say() =>
        Assert.All(
            Reasons.SelectMany(type => type.GetProperties()).Select(property => property.PropertyType),
            type =>
                Assert.False(
                    type != typeof(string) && type.IsAssignableTo(typeof(System.Collections.IEnumerable)) && !type.IsValueType
                )
        );

    [GeneratedRegex(@"\bnew (?<name>[A-Z]\w+)\(")]
    private static partial Regex Made();

    [GeneratedRegex(@"^\| (?<name>\w+) \| (?<says>.+) \|$", RegexOptions.Multiline)]
    private static partial Regex Row();

    private static List<(string Name, string Says)> Rows(string readme) =>
        [
            .. Row()
                .Matches(readme[readme.IndexOf("## Reasons", StringComparison.Ordinal)..])
                .Select(match => (match.Groups["name"].Value, match.Groups["says"].Value))
                .Where(row => row.Item1 != "name"),
        ];

    /// <summary>The folder of the trade's source, found from the folder of the tests' own.</summary>
    private static string Trade() => Repository.Folder("src/Academy.Competence");
}
