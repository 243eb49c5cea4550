using System.Globalization;
using System.Text.RegularExpressions;

namespace Academy.Competence.Dogs;

/// <summary>Reads the breed table that is built into the program.</summary>
internal static partial class BreedTable
{
    private const string Place = "Academy.Competence.Dogs.breeds.csv";

    /// <summary>All rows in their order.</summary>
    public static IReadOnlyList<Breed> Read()
    {
        using var table = typeof(BreedTable).Assembly.GetManifestResourceStream(Place);
        using var lines = new StreamReader(
            table ?? throw new InvalidOperationException($"The program was built without {Place}.")
        );
        return [.. Rows(lines.ReadToEnd()).Select(row => BreedOf(Cells(row)))];
    }

    // The first line that is no remark names the columns.
    private static IEnumerable<string> Rows(string table) =>
        table
            .Split('\n', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries)
            .Where(line => line[0] != '#')
            .Skip(1);

    // A name in quotes may hold commas.
    private static string[] Cells(string line) => [.. Cell().Matches(line).Select(cell => cell.Groups["text"].Value)];

    private static Breed BreedOf(string[] cells) =>
        cells is [var name, var number, var group, var coat, "yes" or "no", var weight]
            ? new(name, Number(number), Number(group), coat, FlatFaced: cells[4] == "yes", WeightClassOf(weight))
            : throw new FormatException($"Not a row of the breed table: {string.Join(" | ", cells)}");

    private static int? Number(string text) => text.Length == 0 ? null : int.Parse(text, CultureInfo.InvariantCulture);

    private static WeightClass WeightClassOf(string code) =>
        code switch
        {
            "lt10" => WeightClass.Under10,
            "10to20" => WeightClass.From10,
            "20to30" => WeightClass.From20,
            "30to40" => WeightClass.From30,
            "40to50" => WeightClass.From40,
            "ge50" => WeightClass.From50,
            _ => throw new FormatException($"Not a weight class: {code}"),
        };

    [GeneratedRegex(
        """(?:^|,)(?:"(?<text>[^"]*)"|(?<text>[^,"]*))""",
        RegexOptions.ExplicitCapture,
        matchTimeoutMilliseconds: 1000
    )]
    private static partial Regex Cell();
}
