using AngleSharp.Dom;
using AngleSharp.Html.Parser;

namespace Academy.Modules.Tests;

/// <summary>Looks through a page as a browser would read it.</summary>
internal static class SafePage
{
    private static readonly string[] Elements =
    [
        "h2",
        "h3",
        "p",
        "ul",
        "ol",
        "li",
        "strong",
        "em",
        "code",
        "pre",
        "blockquote",
        "hr",
        "br",
        "a",
        "img",
        "div",
        "span",
        "cite",
        "table",
        "thead",
        "tbody",
        "tr",
        "th",
        "td",
    ];

    public static IElement Body(string html) => new HtmlParser().ParseDocument($"<body>{html}").Body!;

    /// <summary>Only elements of a lesson, no handlers or styles, no address that runs or fetches anything.</summary>
    public static void Assert(string html)
    {
        foreach (var element in Body(html).QuerySelectorAll("*").Where(element => !IsSign(element)))
        {
            Xunit.Assert.Contains(element.LocalName, Elements);
            Xunit.Assert.DoesNotContain(
                element.Attributes,
                attribute => attribute.Name.StartsWith("on", StringComparison.OrdinalIgnoreCase)
            );
            Xunit.Assert.Null(element.GetAttribute("style"));
            if (element.GetAttribute("href") is { } link)
                Xunit.Assert.Matches("^(https?://[^/]|#|tel:\\+|/(?![/\\\\]))", link);
            if (element.GetAttribute("src") is { } picture)
                Xunit.Assert.Matches("^/modules/[a-z0-9-]+/[a-z0-9-]+\\.(svg|png|jpg|webp)$", picture);
        }
    }

    // The one drawing that the portal itself puts in.
    private static bool IsSign(IElement element) =>
        (element.LocalName == "svg" ? element : element.ParentElement)?.OuterHtml
        == """<svg class="ic" aria-hidden="true" focusable="false"><use href="#ic-caution"></use></svg>""";
}
