using System.Text;
using Markdig.Syntax;
using Markdig.Syntax.Inlines;

namespace Academy.Modules.Lessons;

/// <summary>The words of a lesson as a reader hears them: no marks, no addresses, no descriptions of pictures.</summary>
internal static class PlainText
{
    public static string Of(ContainerInline? inlines)
    {
        StringBuilder words = new();
        Append(inlines, words);
        return words.ToString();
    }

    private static void Append(ContainerInline? inlines, StringBuilder words)
    {
        foreach (var inline in inlines ?? [])
            _ = inline switch
            {
                LiteralInline literal => words.Append(literal.Content.AsSpan()),
                CodeInline code => words.Append(code.Content),
                HtmlEntityInline entity => words.Append(entity.Transcoded.AsSpan()),
                LineBreakInline => words.Append(' '),
                LinkInline { IsImage: true } => words,
                ContainerInline container => Inside(container, words),
                _ => words,
            };
    }

    private static StringBuilder Inside(ContainerInline container, StringBuilder words)
    {
        Append(container, words);
        return words;
    }
}
