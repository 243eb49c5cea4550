using System.Text.Json;
using System.Text.RegularExpressions;
using Markdig;

namespace Academy.Modules.Tests;

/// <summary>data/commonmark/examples.json: every example of the CommonMark specification, version 0.31.2.</summary>
public partial class CommonMarkTests
{
    private const string Examples = "examples.json";

    private static readonly MarkdownPipeline Plain = new MarkdownPipelineBuilder().Build();

    [Fact]
    public void The_reader_of_Markdown_follows_the_specification()
    {
        var examples = Read();
        Assert.Equal(652, examples.Length);
        var others = examples.Where(example => Loosely(Markdown.ToHtml(example.Markdown, Plain)) != Loosely(example.Html));

        Assert.Empty(others.Select(example => example.Number));
    }

    private static Example[] Read() =>
        [
            .. JsonDocument
                .Parse(File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "data", "commonmark", Examples)))
                .RootElement.EnumerateArray()
                .Select(one => new Example(
                    one.GetProperty("example").GetInt32(),
                    one.GetProperty("markdown").GetString()!,
                    one.GetProperty("html").GetString()!
                )),
        ];

    // White space between blocks says nothing.
    private static string Loosely(string html) => BetweenBlocks().Replace(html.Trim(), "${tag}");

    [GeneratedRegex(
        @"\s*(?<tag></?(?:p|ul|ol|li|blockquote|h[1-6]|hr|pre|table|div)\b[^>]*>)\s*",
        RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture,
        1000
    )]
    private static partial Regex BetweenBlocks();

    private sealed record Example(int Number, string Markdown, string Html);
}
