using Markdig.Extensions.Alerts;
using Markdig.Renderers;
using Markdig.Renderers.Html;

namespace Academy.Modules.Lessons;

/// <summary>Writes "&gt; [!CAUTION]" as a box that says so in words; "&gt; [!NOTE]" as a softer one.</summary>
internal sealed class CautionRenderer : HtmlObjectRenderer<AlertBlock>
{
    /// <summary>The kinds of box, and the word above each.</summary>
    public static IReadOnlyDictionary<string, (string Class, string Word)> Kinds { get; } =
        new Dictionary<string, (string, string)>(StringComparer.Ordinal)
        {
            ["CAUTION"] = ("caution", "Caution"),
            ["NOTE"] = ("caution soft", "Note"),
        };

    /// <summary>Where the drawn sign goes. No author can write this, because HTML does nothing in a lesson.</summary>
    public const string Sign = """<span class="caution-sign"></span>""";

    protected override void Write(HtmlRenderer renderer, AlertBlock block)
    {
        var (style, word) = Kinds.TryGetValue(block.Kind.ToString(), out var kind) ? kind : Kinds["CAUTION"];
        renderer.EnsureLine();
        renderer.Write($"""<div class="{style}" role="note">{Sign}<div><p class="says">{word}</p>""").WriteLine();
        renderer.WriteChildren(block);
        renderer.Write("</div></div>").WriteLine();
    }
}
