using System.Text.Json.Nodes;

namespace Academy.Storage.Tests;

internal static class TestFiles
{
    public static string Path(string name) => System.IO.Path.Combine(AppContext.BaseDirectory, "data", name);

    public static JsonNode Json(string name) => JsonNode.Parse(File.ReadAllText(Path(name)))!;
}
