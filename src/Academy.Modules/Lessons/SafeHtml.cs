using Academy.Modules.Reading;
using Ganss.Xss;

namespace Academy.Modules.Lessons;

/// <summary>The last gate before a page: lets through only what a lesson is made of.</summary>
/// <remarks>Nothing should ever be stopped here, because the writer before it cannot write such things. If something is, the author hears of it.</remarks>
internal static class SafeHtml
{
    private static readonly string[] Tags =
    [
        "h2",
        "h3",
        "h4",
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

    private static readonly string[] Attributes =
    [
        "class",
        "id",
        "href",
        "src",
        "alt",
        "width",
        "height",
        "loading",
        "start",
        "value",
        "scope",
        "role",
        "tabindex",
        "aria-label",
    ];

    // The portal's own drawing of a caution, put in behind the gate, which lets no drawings through.
    private const string DrawnSign =
        """<svg class="ic" aria-hidden="true" focusable="false"><use href="#ic-caution"></use></svg>""";

    public static string Of(string html, Findings findings)
    {
        HtmlSanitizer gate = new(
            new HtmlSanitizerOptions
            {
                AllowedTags = new HashSet<string>(Tags, StringComparer.OrdinalIgnoreCase),
                AllowedAttributes = new HashSet<string>(Attributes, StringComparer.OrdinalIgnoreCase),
                AllowedSchemes = new HashSet<string>(["http", "https", "tel"], StringComparer.OrdinalIgnoreCase),
                UriAttributes = new HashSet<string>(["href", "src"], StringComparer.OrdinalIgnoreCase),
            }
        );
        gate.RemovingTag += (_, stopped) => findings.Fault(0, $"<{stopped.Tag.LocalName}> was taken out of the page.");
        gate.RemovingAttribute += (_, stopped) => findings.Fault(0, $"{stopped.Attribute.Name} was taken out of the page.");
        return gate.Sanitize(html).Replace(CautionRenderer.Sign, DrawnSign, StringComparison.Ordinal);
    }
}
