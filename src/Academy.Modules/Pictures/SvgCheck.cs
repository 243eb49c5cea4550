using System.Buffers;
using System.Collections.Frozen;
using System.Globalization;
using System.Text.RegularExpressions;
using System.Xml;
using System.Xml.Linq;
using Academy.Modules.Reading;

namespace Academy.Modules.Pictures;

/// <summary>Lets an SVG through only if everything in it is a drawing.</summary>
/// <remarks>
/// A list of what is allowed, not of what is forbidden: elements and attributes that a drawing needs, references only to parts of
/// the same file, styles without addresses. Scripts, handlers, foreign content, animation, entities and outside addresses are not on it.
/// </remarks>
internal static partial class SvgCheck
{
    private const string SvgSpace = "http://www.w3.org/2000/svg";
    private const string XlinkSpace = "http://www.w3.org/1999/xlink";
    private const string XmlSpace = "http://www.w3.org/XML/1998/namespace";

    private const int DeepestLevel = 64;

    // Numbers, paths and colours: no address can be written with these letters, each needs a bracket, a colon, a slash or an o.
    private static readonly SearchValues<char> Shapes = SearchValues.Create(
        "0123456789 .,-+%#MLHVCSQTAZmlhvcsqtazbdefBDEF\n\t\r"
    );

    private static readonly FrozenSet<string> Elements = FrozenSet.Create(
        StringComparer.Ordinal,
        "svg",
        "g",
        "defs",
        "symbol",
        "use",
        "title",
        "desc",
        "style",
        "path",
        "rect",
        "circle",
        "ellipse",
        "line",
        "polyline",
        "polygon",
        "text",
        "tspan",
        "linearGradient",
        "radialGradient",
        "stop",
        "pattern",
        "clipPath",
        "mask",
        "marker"
    );

    private static readonly XmlReaderSettings Strict = new()
    {
        DtdProcessing = DtdProcessing.Prohibit,
        XmlResolver = null,
        MaxCharactersInDocument = PictureReader.LargestFile,
    };

    /// <summary>The size of the drawing, or null where it may not be shown.</summary>
    public static (int Width, int Height, (decimal, decimal) Origin)? Of(string text, Findings findings)
    {
        try
        {
            if (IsTooDeep(text))
            {
                findings.Fault(0, $"The picture has groups inside groups, more than {DeepestLevel} deep. Save it flatter.");
                return null;
            }
            using var reader = XmlReader.Create(new StringReader(text), Strict);
            var drawing = XDocument.Load(reader, LoadOptions.SetLineInfo);
            foreach (var (line, refused) in Refused(drawing).Take(1))
                findings.Fault(line, $"The picture holds {refused}. Save it as a plain drawing without that.");
            return findings.Any ? null : Size(drawing.Root!, findings);
        }
        catch (XmlException reason)
        {
            findings.Fault(reason.LineNumber, $"The picture cannot be read as SVG: {reason.Message}");
            return null;
        }
    }

    // Asked before any tree is built: reading takes time with the square of the depth.
    private static bool IsTooDeep(string text)
    {
        using var reader = XmlReader.Create(new StringReader(text), Strict);
        while (reader.Read())
        {
            if (reader.Depth > DeepestLevel)
                return true;
        }
        return false;
    }

    private static IEnumerable<(int Line, string What)> Refused(XDocument drawing)
    {
        foreach (var node in drawing.DescendantNodes())
        {
            if (node is XProcessingInstruction)
                yield return (Line(node), "a processing instruction");
            if (node is XElement element && RefusedPart(element) is { } what)
                yield return (Line(node), what);
        }
    }

    private static string? RefusedPart(XElement element)
    {
        if (element.Name.Namespace != SvgSpace || !Elements.Contains(element.Name.LocalName))
            return $"the element <{Shortened(element.Name.LocalName)}>";
        if ((element.Name.LocalName == "svg") != (element.Parent is null))
            return "a drawing inside another, or no drawing at all";
        if (element.Name.LocalName == "style" && !IsPlainStyle(element.Value))
            return "a style that could fetch something from outside";
        var refused = element.Attributes().FirstOrDefault(attribute => !IsAllowed(attribute));
        return refused is null ? null : $"the attribute {refused.Name.LocalName}=\"{Shortened(refused.Value)}\"";
    }

    private static bool IsAllowed(XAttribute attribute) =>
        (attribute.Name.NamespaceName, attribute.Name.LocalName) switch
        {
            _ when attribute.IsNamespaceDeclaration => attribute.Value is SvgSpace or XlinkSpace,
            (XmlSpace, var name) => name is "space" or "lang",
            (XlinkSpace or "", "href") => OwnPart().IsMatch(attribute.Value),
            ("", "style") => IsPlainStyle(attribute.Value),
            ("", var name) => !name.StartsWith("on", StringComparison.OrdinalIgnoreCase) && IsPlain(attribute.Value),
            _ => false,
        };

    private static bool IsPlainStyle(string style) =>
        IsPlain(style) && !AtRule().IsMatch(style) && !style.Contains('\\', StringComparison.Ordinal);

    // Looked at without white space and control characters, which browsers skip inside an address.
    private static bool IsPlain(string value)
    {
        if (!value.AsSpan().ContainsAnyExcept(Shapes))
            return true;
        var tight = string.Concat(value.Where(letter => letter > ' '));
        return !Address().IsMatch(OwnReference().Replace(tight, ""));
    }

    private static (int, int, (decimal, decimal))? Size(XElement svg, Findings findings)
    {
        var sides = (svg.Attribute("viewBox")?.Value ?? "").Split([' ', ','], StringSplitOptions.RemoveEmptyEntries);
        if (sides.Length == 4 && Side(sides[2]) is { } width && Side(sides[3]) is { } height)
            return (width, height, (Corner(sides[0]), Corner(sides[1])));
        findings.Fault(1, "The picture has no size. Give its <svg> a viewBox such as \"0 0 720 360\".");
        return null;
    }

    private static int? Side(string text) =>
        double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out var side) && side is >= 1 and <= 100_000
            ? (int)Math.Ceiling(side)
            : null;

    private static decimal Corner(string text) =>
        decimal.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out var corner) ? corner : 0;

    private static int Line(IXmlLineInfo node) => node.LineNumber;

    private static string Shortened(string value) => value.Length > 60 ? value[..60] + "…" : value;

    [GeneratedRegex("^#[A-Za-z][A-Za-z0-9_-]*$", RegexOptions.ExplicitCapture, Patience.Milliseconds)]
    private static partial Regex OwnPart();

    [GeneratedRegex(
        """url\((?<quote>["']?)#[A-Za-z][A-Za-z0-9_-]*\k<quote>\)""",
        RegexOptions.ExplicitCapture,
        Patience.Milliseconds
    )]
    private static partial Regex OwnReference();

    [GeneratedRegex(
        @"url\(|image\(|image-set\(|src\(|element\(|expression\(|-moz-binding|behavior:|[a-z][a-z0-9+.-]*script:|data:|file:|//",
        RegexOptions.ExplicitCapture | RegexOptions.IgnoreCase,
        Patience.Milliseconds
    )]
    private static partial Regex Address();

    [GeneratedRegex(@"@(?!media\b)", RegexOptions.ExplicitCapture | RegexOptions.IgnoreCase, Patience.Milliseconds)]
    private static partial Regex AtRule();
}
