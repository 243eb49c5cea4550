using System.Text.Json;

namespace Academy.Competence.Tests;

/// <summary>The check values under data/ that are not tables.</summary>
internal static class CheckFigures
{
    public static JsonElement Read(string file) =>
        JsonDocument.Parse(File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "data", file))).RootElement;

    public static double Number(this JsonElement set, string name) => set.GetProperty(name).GetDouble();

    public static double[] Numbers(this JsonElement set, string name) => set.GetProperty(name).Numbers();

    public static double[] Numbers(this JsonElement list) => [.. list.EnumerateArray().Select(one => one.GetDouble())];

    public static double[][] Rows(this JsonElement set, string name) =>
        [.. set.GetProperty(name).EnumerateArray().Select(row => row.Numbers())];
}
