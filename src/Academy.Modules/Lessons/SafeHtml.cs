using System.Text.RegularExpressions;
using Academy.Modules.Reading;
using Ganss.Xss;

namespace Academy.Modules.Lessons;

/// <summary>The last gate before a page: lets through only what a lesson is made of.</summary>
/// <remarks>Nothing should ever be stopped here, because the writer before it cannot write such things. If something is, the author hears of it.</remarks>
internal static partial class SafeHtml
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

    private static readonly HashSet<string> s_tags = new(Tags, StringComparer.Ordinal);
    private static readonly HashSet<string> s_attributes = new(Attributes, StringComparer.Ordinal);

    /// <summary>The part of a page as it may be shown.</summary>
    public static string Of(string html) => Drawn(Gate().Sanitize(html));

    /// <summary>Says what the gate will take out of a page that was written.</summary>
    /// <remarks>
    /// The gate takes most of the time of reading a library. What consists of nothing but known tags and attributes, each written as
    /// plainly as the writer does, passes it unchanged and need not be sent through to know that.
    /// </remarks>
    public static void Look(string html, Findings findings)
    {
        if (IsPlain(html))
            return;
        var gate = Gate();
        gate.RemovingTag += (_, stopped) => findings.Fault(0, $"<{stopped.Tag.LocalName}> was taken out of the page.");
        gate.RemovingAttribute += (_, stopped) => findings.Fault(0, $"{stopped.Attribute.Name} was taken out of the page.");
        gate.Sanitize(html);
    }

    private static string Drawn(string html) => html.Replace(CautionRenderer.Sign, DrawnSign, StringComparison.Ordinal);

    private static HtmlSanitizer Gate() =>
        new(
            new HtmlSanitizerOptions
            {
                AllowedTags = new HashSet<string>(Tags, StringComparer.OrdinalIgnoreCase),
                AllowedAttributes = new HashSet<string>(Attributes, StringComparer.OrdinalIgnoreCase),
                AllowedSchemes = new HashSet<string>(["http", "https", "tel"], StringComparer.OrdinalIgnoreCase),
                UriAttributes = new HashSet<string>(["href", "src"], StringComparer.OrdinalIgnoreCase),
            }
        );

    private static bool IsPlain(string html)
    {
        var read = 0;
        foreach (var tag in Tag().EnumerateMatches(html))
        {
            var written = html.AsSpan(tag.Index, tag.Length);
            if (html.AsSpan(read, tag.Index - read).ContainsAny('<', '>') || !IsKnown(written))
                return false;
            read = tag.Index + tag.Length;
        }
        return !html.AsSpan(read).ContainsAny('<', '>');
    }

    private static bool IsKnown(ReadOnlySpan<char> tag)
    {
        var names = s_tags.GetAlternateLookup<ReadOnlySpan<char>>();
        var name = tag.TrimStart("</");
        name = name[..name.IndexOfAny(" />")];
        if (!names.Contains(name))
            return false;
        var attributes = s_attributes.GetAlternateLookup<ReadOnlySpan<char>>();
        foreach (var one in Attribute().EnumerateMatches(tag))
        {
            var attribute = tag.Slice(one.Index, one.Length).TrimStart();
            var equals = attribute.IndexOf('=');
            if (!attributes.Contains(attribute[..equals]))
                return false;
            if (attribute[..equals] is "href" or "src" && !IsPlainAddress(attribute[(equals + 2)..^1]))
                return false;
        }
        return true;
    }

    private static bool IsPlainAddress(ReadOnlySpan<char> address) =>
        !address.ContainsAnyExceptInRange('!', '~')
        && (
            address.StartsWith("https://", StringComparison.Ordinal)
            || address is "/" or ['/', not '/', ..]
            || address.StartsWith("#", StringComparison.Ordinal)
        );

    [GeneratedRegex(@"</?[a-z][a-z0-9]*(?: [a-z-]+=""[^""<>]*"")*(?: ?/)?>", RegexOptions.None, Patience.Milliseconds)]
    private static partial Regex Tag();

    [GeneratedRegex(@" [a-z-]+=""[^""<>]*""", RegexOptions.None, Patience.Milliseconds)]
    private static partial Regex Attribute();
}
