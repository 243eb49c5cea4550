using System.Globalization;
using CsvHelper;
using CsvHelper.Configuration;

namespace Academy.Competence.Tests;

/// <summary>The check values under data/, whose sources are named in data/README.md.</summary>
internal static class CheckValues
{
    private static readonly CsvConfiguration s_form = new(CultureInfo.InvariantCulture) { AllowComments = true };

    /// <summary>All rows of one file, which must be as many as expected: a check that reads nothing would pass.</summary>
    public static IReadOnlyList<CheckRow> Read(string file, int rows)
    {
        using var text = new StreamReader(Path.Combine(AppContext.BaseDirectory, "data", file));
        using var csv = new CsvReader(text, s_form);
        CheckRow[] read = [.. csv.GetRecords<dynamic>().Select(row => new CheckRow((IDictionary<string, object>)row))];
        Assert.Equal(rows, read.Length);
        return read;
    }
}

internal sealed class CheckRow(IDictionary<string, object> cells)
{
    public string Text(string column) => (string)cells[column];

    public double Number(string column) => double.Parse(Text(column), CultureInfo.InvariantCulture);

    public int Whole(string column) => int.Parse(Text(column), CultureInfo.InvariantCulture);

    public bool Has(string column) => Text(column).Length > 0;

    public override string ToString() => string.Join(", ", cells.Select(cell => $"{cell.Key} {cell.Value}"));
}
