using System.Text.RegularExpressions;
using Academy.Architecture.Tests.Planted.Competence;

namespace Academy.Architecture.Tests;

/// <summary>Time, identity and chance come in as arguments.</summary>
public partial class ClocksTests
{
    private static readonly string[] s_banned =
    [
        "System.DateTime::get_Now",
        "System.DateTime::get_UtcNow",
        "System.DateTime::get_Today",
        "System.DateTimeOffset::get_Now",
        "System.DateTimeOffset::get_UtcNow",
        "System.TimeProvider::get_System",
        "System.Guid::NewGuid",
        "System.Guid::CreateVersion7",
        "System.Random::",
    ];

    // The edges, where somebody has to ask the world.
    private static readonly Dictionary<string, string> s_edges = new(StringComparer.Ordinal)
    {
        ["src/Academy.Web/Program.cs"] = "names the system clock",
        ["src/Academy.Web/Shell/Ids.cs"] = "makes ids and draws seeds",
    };

    private static readonly Border<Part> s_nobodyLooksAtTheClock = new(
        part => part.IsWritten && part.Name is not ("Program" or "Ids"),
        part =>
            part.Uses.Where(use => s_banned.Any(call => use.Member.Contains(" " + call, StringComparison.Ordinal)))
                .Select(use => $"{part} calls {use.Member}")
    );

    private static readonly Border<Source> s_banIsLiftedAtTheEdges = new(
        source => Lifted().IsMatch(source.Text),
        source => s_edges.ContainsKey(source.Path) ? [] : [$"{source.Path} lifts the ban on clocks, ids and chance"]
    );

    [Fact]
    public void Nobody_asks_the_clock_makes_an_id_or_rolls_dice()
    {
        s_nobodyLooksAtTheClock.Holds(House.Parts, atLeast: 400);
        s_nobodyLooksAtTheClock.Catches(House.Planted<AsksTheClock>());
        s_nobodyLooksAtTheClock.Catches(House.Planted<RollsDice>());
    }

    [Fact]
    public void The_ban_is_lifted_only_at_the_edges()
    {
        s_banIsLiftedAtTheEdges.Holds(Text.Files(".cs"), atLeast: 2);
        s_banIsLiftedAtTheEdges.Catches(new("src/Academy.Web/Features/Petting/Pet.cshtml.cs", "#pragma warning disable RS0030"));
    }

    [Fact]
    public void The_compiler_bans_the_same_calls_in_every_room()
    {
        var list = Text.One("src/BannedSymbols.txt").Text;
        Assert.All(s_banned, call => Assert.Contains(AsListed(call), list, StringComparison.Ordinal));

        var props = Text.One("Directory.Build.props").Text;
        Assert.Contains("BannedApiAnalyzers", props, StringComparison.Ordinal);
        Assert.Contains("src/BannedSymbols.txt", props, StringComparison.Ordinal);
    }

    private static string AsListed(string call)
    {
        var (type, member) = (call.Split("::")[0], call.Split("::")[1].Replace("get_", "", StringComparison.Ordinal));
        return member.Length == 0 ? $":{type};" : $":{type}.{member}";
    }

    [GeneratedRegex(@"#pragma warning disable[^\n]*\bRS0030\b|SuppressMessage[^\n]*RS0030", RegexOptions.CultureInvariant)]
    private static partial Regex Lifted();
}
