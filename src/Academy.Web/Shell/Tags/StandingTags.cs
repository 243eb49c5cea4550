using System.Collections.Frozen;
using Academy.Web.Features.Shared;
using Microsoft.AspNetCore.Html;
using Microsoft.AspNetCore.Mvc.Rendering;
using Microsoft.AspNetCore.Razor.TagHelpers;

namespace Academy.Web.Shell.Tags;

/// <summary>A standing: shape and word, never one without the other. <c>boxed</c> frames it, <c>large</c> is for a page's answer.</summary>
[HtmlTargetElement("standing-mark", TagStructure = TagStructure.NormalOrSelfClosing)]
public sealed class StandingMarkTag : TagHelper
{
    private static readonly FrozenDictionary<string, IHtmlContent> Inside = new Dictionary<string, string>
    {
        ["learning"] = "learning",
        ["ready"] = "ready",
        ["alone"] = "alone",
        ["check-again"] = "check again",
        ["lapsed"] = "lapsed",
        ["stood-down"] = "stood down",
    }.ToFrozenDictionary(
        one => one.Key,
        one => Drawn.Write(Drawn.Svg($"#st-{one.Key}", "shape"), Drawn.Element("span", null, one.Value)),
        StringComparer.Ordinal
    );

    /// <summary>What stands inside a mark, for tables that write hundreds of them.</summary>
    public static IHtmlContent Of(string standing) =>
        Inside.TryGetValue(standing, out var mark)
            ? mark
            : throw new InvalidOperationException($"There is no shape for the standing '{standing}'.");

    public string Standing { get; set; } = "";

    public bool Boxed { get; set; }

    public bool Large { get; set; }

    public override void Process(TagHelperContext context, TagHelperOutput output)
    {
        output.TagName = "span";
        output.TagMode = TagMode.StartTagAndEndTag;
        output.AddShape($"st st-{Standing}{(Boxed ? " boxed" : "")}{(Large ? " st-xl" : "")}");
        output.Content.SetHtmlContent(Of(Standing));
    }
}

/// <summary>Whether a rule holds: <c>holds</c>, <c>not-yet</c> or <c>fails</c>. "Not yet" is ink, never the colour of risk.</summary>
[HtmlTargetElement("rule-mark", TagStructure = TagStructure.NormalOrSelfClosing)]
public sealed class RuleMarkTag : TagHelper
{
    private static readonly Dictionary<string, string> Words = new(StringComparer.Ordinal)
    {
        ["holds"] = "holds",
        ["not-yet"] = "not yet",
        ["fails"] = "does not hold",
    };

    public string Found { get; set; } = "";

    /// <summary>Other words beside the mark, where the sentence needs them.</summary>
    public string? Word { get; set; }

    /// <summary>The mark alone at the head of a line that says it in words.</summary>
    public bool Bare { get; set; }

    public override void Process(TagHelperContext context, TagHelperOutput output)
    {
        if (!Words.TryGetValue(Found, out var word))
        {
            throw new InvalidOperationException($"A rule is found to be holds, not-yet or fails, never '{Found}'.");
        }

        output.TagName = "span";
        output.TagMode = TagMode.StartTagAndEndTag;
        output.AddShape($"mark mark-{Found}");
        output.Content.SetHtmlContent(Drawn.Svg($"#mk-{Found}", "shape"));
        output.Content.AppendHtml(Bare ? Drawn.Unseen(Word ?? word) : Drawn.Element("span", null, Word ?? word));
    }
}

/// <summary>
/// The row: one stitch a point, with its words below. <c>add</c> shows what a suitable groom would bring, <c>take</c> what an
/// unsuitable one would cost. <c>bare</c> keeps the words for readers only, where the page says them itself.
/// </summary>
[HtmlTargetElement("stitches", TagStructure = TagStructure.NormalOrSelfClosing)]
public sealed class StitchesTag : TagHelper
{
    public int Have { get; set; }

    public int Of { get; set; }

    public int Add { get; set; }

    public int Take { get; set; }

    public bool Large { get; set; }

    public bool Bare { get; set; }

    public override void Process(TagHelperContext context, TagHelperOutput output)
    {
        output.TagName = "span";
        output.TagMode = TagMode.StartTagAndEndTag;
        output.AddShape("row");
        output.Content.SetHtmlContent(Row());
        output.Content.AppendHtml(Drawn.Element("span", Bare ? "vh" : "row-words", Words()));
    }

    private TagBuilder Row()
    {
        var row = Drawn.Element("span", $"pts{(Large ? " large" : "")}{(Have >= Of ? " full" : "")}");
        row.Attributes["aria-hidden"] = "true";
        for (var at = 1; at <= Of; at++)
        {
            row.Holding(Drawn.Element("i", Stitch(at)));
        }

        return row;
    }

    private string? Stitch(int at) =>
        at <= Have ? (at > Have - Take ? "lost" : "on")
        : at <= Have + Add ? "new"
        : null;

    private string Words()
    {
        var words = $"{Have} of {Of}";
        if (Add > 0)
        {
            words += $", {Math.Min(Have + Add, Of)} if this groom suits";
        }

        if (Take > 0)
        {
            words += $", {Math.Max(Have - Take, 0)} if it needs fixing";
        }

        return words;
    }
}

/// <summary>The last rated grooms, oldest first: each dot a link to its groom with its date below, and the count in words.</summary>
[HtmlTargetElement("dots", TagStructure = TagStructure.NormalOrSelfClosing)]
public sealed class DotsTag : TagHelper
{
    public IReadOnlyList<Dot> Of { get; set; } = [];

    public override void Process(TagHelperContext context, TagHelperOutput output)
    {
        output.TagName = "div";
        output.TagMode = TagMode.StartTagAndEndTag;
        if (Of.Count == 0)
        {
            output.AddShape("empty");
            output.Content.SetContent("No rated groom yet. The first one that a senior signs appears here.");
            return;
        }

        output.AddShape("rated");
        var list = Drawn.Element("ol", "dots");
        foreach (var dot in Of)
        {
            list.Holding(Drawn.Element("li", null).Holding(Link(dot)));
        }

        output.Content.SetHtmlContent(list);
        output.Content.AppendHtml(Key());
    }

    private static TagBuilder Link(Dot dot)
    {
        var link = Drawn.Element("a", dot.Verdict.Shape());
        link.Attributes["href"] = dot.Href;
        return link.Holding(Drawn.Svg(dot.Verdict.Drawing(), "shape"))
            .Holding(Drawn.Unseen(dot.Verdict.Words() + ", "))
            .Holding(Drawn.Element("span", null, dot.Date));
    }

    private TagBuilder Key()
    {
        var key = Drawn.Element("p", "key");
        foreach (var verdict in Enum.GetValues<DotVerdict>().Where(verdict => Of.Any(dot => dot.Verdict == verdict)))
        {
            var words = $"{Of.Count(dot => dot.Verdict == verdict)} {verdict.Words()}";
            key.Holding(
                Drawn
                    .Element("span", verdict.Shape())
                    .Holding(Drawn.Svg(verdict.Drawing(), "shape"))
                    .Holding(Drawn.Element("span", null, words))
            );
        }

        return key;
    }
}
