using System.Text.RegularExpressions;
using Academy.Modules.Measures;
using Academy.Modules.Reading;
using Markdig.Extensions.Tables;
using Markdig.Syntax;
using Markdig.Syntax.Inlines;

namespace Academy.Modules.Lessons;

/// <summary>What every lesson has to hold to.</summary>
internal static partial class LessonCheck
{
    public const int MostWords = 1200;
    public const double HardestGrade = 8.0;

    public static void Of(MarkdownDocument lesson, Findings findings)
    {
        var words = lesson.Descendants<LeafBlock>().Sum(block => ReadingGrade.WordsOf(PlainText.Of(block.Inline)).Count);
        if (words > MostWords)
            findings.Fault(0, $"The lesson has {words} words; {MostWords} are the most. Shorten it or make two modules of it.");
        var grade = ReadingGrade.Of(
            lesson.Descendants<ParagraphBlock>().Where(IsProse).Select(block => PlainText.Of(block.Inline))
        );
        if (Math.Round(grade.Grade, 1) > HardestGrade)
            findings.Fault(
                0,
                $"The lesson reads at grade {grade}; {HardestGrade:0.0} is the hardest. It has {grade.Words} words in {grade.Sentences} sentences: "
                    + "write shorter sentences and shorter words."
            );
        foreach (var block in lesson.Descendants<LeafBlock>().Where(block => HasFigure(block) && !IsMarked(block)))
            findings.Hint(
                block.Line + 1,
                $"\"{Figure().Match(PlainText.Of(block.Inline)).Value}\" stands here without a source. Add [1] or [common practice]."
            );
    }

    /// <summary>Every place where raw HTML is written; it is shown as it is typed and does nothing.</summary>
    public static void Html(string lesson, Findings findings)
    {
        if (!lesson.Contains('<'))
            return;
        var nodes = LessonMarkdown.ParseWithHtml(lesson, findings)?.Descendants() ?? [];
        foreach (var written in nodes.Where(node => node is HtmlBlock or HtmlInline))
            findings.Fault(written.Line + 1, "HTML does nothing in a lesson. Use Markdown.");
    }

    private static bool IsProse(ParagraphBlock block) => block.Parent is not TableCell;

    private static bool HasFigure(LeafBlock block) => block is ParagraphBlock && Figure().IsMatch(PlainText.Of(block.Inline));

    // A table is one statement, and a list belongs to the paragraph that leads to it.
    private static bool IsMarked(LeafBlock block)
    {
        var table = Ancestors(block).OfType<Table>().FirstOrDefault();
        if (table is not null)
            return HasMark(table) || HasMark(Before(table));
        return HasMark(block) || Ancestors(block).OfType<ListBlock>().Any(list => HasMark(Before(list)));
    }

    private static IEnumerable<Block> Ancestors(Block block)
    {
        for (Block? at = block.Parent; at is not null; at = at.Parent)
            yield return at;
    }

    private static Block? Before(Block block) =>
        block.Parent is { } parent && parent.IndexOf(block) is > 0 and var place ? parent[place - 1] : null;

    private static bool HasMark(Block? block) =>
        block switch
        {
            LeafBlock leaf => leaf.Inline?.Descendants<Mark>().Any() is true,
            ContainerBlock container => container.Any(HasMark),
            _ => false,
        };

    [GeneratedRegex(
        @"(?<![\p{L}\d#.])\d+([.,]\d+)?\s*(%|°\s?[CF]\b|(mm|cm|m|km|g|kg|ml|l|dB|Hz|inch(es)?|hours?|h|minutes?|min|seconds?|s|days?|weeks?|months?|years?|degrees|percent|per cent)\b)",
        RegexOptions.ExplicitCapture,
        Patience.Milliseconds
    )]
    private static partial Regex Figure();
}
