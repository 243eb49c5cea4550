using System.Globalization;
using Markdig;
using Markdig.Helpers;
using Markdig.Parsers;
using Markdig.Renderers;
using Markdig.Renderers.Html;
using Markdig.Syntax.Inlines;

namespace Academy.Modules.Lessons;

/// <summary>A mark in a text that says where something comes from.</summary>
internal abstract class Mark : LeafInline;

/// <summary>"[3]": from the source with that number.</summary>
internal sealed class SourceMark(int source) : Mark
{
    public int Source => source;
}

/// <summary>"[common practice]": custom of the trade, without a published source.</summary>
internal sealed class PracticeMark : Mark;

/// <summary>Reads "[3]", "[1, 4]" and "[common practice]".</summary>
internal sealed class MarkParser : InlineParser
{
    private const string Practice = "[common practice]";

    public MarkParser() => OpeningCharacters = ['['];

    public override bool Match(InlineProcessor processor, ref StringSlice slice)
    {
        var text = slice.AsSpan();
        var end = text.IndexOf(']');
        // "[1](https://...)" is a link whose words are a number.
        if (end < 0 || (end + 1 < text.Length && text[end + 1] == '('))
            return false;
        if (Read(text[..(end + 1)]) is not { Length: > 0 } marks)
            return false;
        foreach (var mark in marks)
            Add(mark, processor, slice.Start);
        slice.Start += end + 1;
        return true;
    }

    private static Mark[] Read(ReadOnlySpan<char> bracketed)
    {
        if (bracketed.SequenceEqual(Practice))
            return [new PracticeMark()];
        var numbers = bracketed[1..^1].ToString().Split(',', StringSplitOptions.TrimEntries);
        return Array.TrueForAll(numbers, IsNumber)
            ? [.. numbers.Select(number => new SourceMark(int.Parse(number, CultureInfo.InvariantCulture)))]
            : [];
    }

    private static bool IsNumber(string text) => text.Length is > 0 and < 4 && text.All(char.IsAsciiDigit);

    private static void Add(Mark mark, InlineProcessor processor, int start)
    {
        mark.Span.Start = processor.GetSourcePosition(start, out var line, out var column);
        mark.Line = line;
        mark.Column = column;
        (processor.Inline as ContainerInline ?? processor.Root!).AppendChild(mark);
        processor.Inline = mark;
    }
}

/// <summary>Writes a source mark as a link into the numbered list of sources; nothing where only words may stand.</summary>
internal sealed class SourceMarkRenderer : HtmlObjectRenderer<SourceMark>
{
    protected override void Write(HtmlRenderer renderer, SourceMark mark)
    {
        if (renderer.EnableHtmlForInline)
            renderer.Write(
                $"""<a class="cite" href="#{SourceList.IdOf(mark.Source)}"><span class="vh">source </span>{mark.Source}</a>"""
            );
    }
}

/// <summary>Writes a common-practice mark as words that can be told from the text.</summary>
internal sealed class PracticeMarkRenderer : HtmlObjectRenderer<PracticeMark>
{
    protected override void Write(HtmlRenderer renderer, PracticeMark mark)
    {
        if (renderer.EnableHtmlForInline)
            renderer.Write("""<span class="practice">common practice</span>""");
    }
}

/// <summary>Puts the marks and the cautions into a pipeline.</summary>
internal sealed class LessonExtension : IMarkdownExtension
{
    public void Setup(MarkdownPipelineBuilder pipeline) => pipeline.InlineParsers.Insert(0, new MarkParser());

    public void Setup(MarkdownPipeline pipeline, IMarkdownRenderer renderer)
    {
        renderer.ObjectRenderers.Add(new SourceMarkRenderer());
        renderer.ObjectRenderers.Add(new PracticeMarkRenderer());
        renderer.ObjectRenderers.Insert(0, new CautionRenderer());
    }
}
