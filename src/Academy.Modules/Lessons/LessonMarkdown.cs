using Markdig;
using Markdig.Renderers;
using Markdig.Syntax;

namespace Academy.Modules.Lessons;

/// <summary>The one form of Markdown that lessons and explanations are written in.</summary>
internal static class LessonMarkdown
{
    private static readonly MarkdownPipeline Pipeline = new MarkdownPipelineBuilder()
        .UsePreciseSourceLocation()
        .DisableHtml()
        .UseAlertBlocks()
        .UsePipeTables()
        .Use<LessonExtension>()
        .Build();

    // Reads HTML as HTML, only to say where somebody wrote some.
    private static readonly MarkdownPipeline WithHtml = new MarkdownPipelineBuilder().UsePreciseSourceLocation().Build();

    public static MarkdownDocument Parse(string text) => Markdown.Parse(text, Pipeline);

    public static MarkdownDocument ParseWithHtml(string text) => Markdown.Parse(text, WithHtml);

    public static string Html(MarkdownDocument document)
    {
        using StringWriter page = new();
        HtmlRenderer renderer = new(page);
        Pipeline.Setup(renderer);
        renderer.Render(document);
        return page.ToString();
    }
}
