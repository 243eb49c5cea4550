using Academy.Modules.Reading;
using Markdig;
using Markdig.Renderers;
using Markdig.Syntax;
using Markdig.Syntax.Inlines;

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

    private const int MostPieces = 500;
    private const int DeepestInline = 64;
    private const string TooDeep = "Quotes, lists or brackets are nested too deeply. Write the lesson flatter.";

    public static MarkdownDocument? Parse(string text, Findings findings) => Parse(text, Pipeline, findings);

    public static MarkdownDocument? ParseWithHtml(string text, Findings findings) => Parse(text, WithHtml, findings);

    /// <summary>The page of a document, or no page where writing it would go too deep.</summary>
    public static string Html(MarkdownDocument document, Findings findings) =>
        NotTooDeep(() => Written(document), findings) ?? "";

    // Depth is measured because whoever walks the tree later uses the stack; width, because the gate takes time with its square.
    private static MarkdownDocument? Parse(string text, MarkdownPipeline pipeline, Findings findings)
    {
        if (NotTooDeep(() => Markdown.Parse(text, pipeline), findings) is not { } document)
            return null;
        if (document.Descendants<Inline>().Any(inline => IsDeep(inline)))
            findings.Broken(0, TooDeep);
        else if (document.Descendants().Append(document).FirstOrDefault(node => Pieces(node) > MostPieces) is { } wide)
            findings.Broken(wide.Line + 1, $"One paragraph, list or row has more than {MostPieces} pieces. Make it smaller.");
        else
            return document;
        return null;
    }

    private static T? NotTooDeep<T>(Func<T> work, Findings findings)
        where T : class
    {
        try
        {
            return work();
        }
        catch (ArgumentException reason) when (reason.Message.Contains("depth limit", StringComparison.OrdinalIgnoreCase))
        {
            findings.Broken(0, TooDeep);
            return null;
        }
    }

    private static bool IsDeep(Inline inline)
    {
        var level = 0;
        for (var at = inline.Parent; at is not null && level <= DeepestInline; at = at.Parent)
            level++;
        return level > DeepestInline;
    }

    private static int Pieces(MarkdownObject node) =>
        node switch
        {
            ContainerBlock block => block.Count,
            LeafBlock { Inline: { } inline } => inline.Count(),
            ContainerInline inline => inline.Count(),
            _ => 0,
        };

    private static string Written(MarkdownDocument document)
    {
        using StringWriter page = new();
        HtmlRenderer renderer = new(page);
        Pipeline.Setup(renderer);
        renderer.Render(document);
        return page.ToString();
    }
}
