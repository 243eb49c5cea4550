using System.Collections.Concurrent;
using System.Globalization;
using System.Text.Encodings.Web;
using Microsoft.AspNetCore.Html;
using Microsoft.AspNetCore.Mvc.Rendering;
using Microsoft.AspNetCore.Razor.TagHelpers;

namespace Academy.Web.Shell.Tags;

/// <summary>The drawings of the sprite, by name, and the small pieces of HTML that the tags share.</summary>
internal static class Drawn
{
    public static readonly string[] Coats = ["smooth", "double", "wire", "silky", "wool", "combination", "hairless", "corded"];

    // A few dozen drawings, asked for hundreds of times on one page: each is written once.
    private static readonly ConcurrentDictionary<(string Use, string Shape), IHtmlContent> Written = new();

    public static IHtmlContent Svg(string use, string shape) =>
        Written.GetOrAdd((use, shape), drawing => Write(SvgOf(drawing.Use, drawing.Shape)));

    /// <summary>The same content as text that only has to be copied onto the page.</summary>
    public static IHtmlContent Write(params ReadOnlySpan<IHtmlContent> parts)
    {
        using var text = new StringWriter(CultureInfo.InvariantCulture);
        foreach (var part in parts)
            part.WriteTo(text, HtmlEncoder.Default);
        return new HtmlString(text.ToString());
    }

    private static TagBuilder SvgOf(string use, string shape)
    {
        var svg = new TagBuilder("svg");
        svg.AddCssClass(shape);
        svg.Attributes["aria-hidden"] = "true";
        svg.Attributes["focusable"] = "false";
        var drawing = new TagBuilder("use");
        drawing.Attributes["href"] = use;
        svg.InnerHtml.AppendHtml(drawing);
        return svg;
    }

    public static TagBuilder Element(string name, string? shape, string? text = null)
    {
        var element = new TagBuilder(name);
        if (!string.IsNullOrEmpty(shape))
        {
            element.AddCssClass(shape);
        }

        if (text is not null)
        {
            element.InnerHtml.Append(text);
        }

        return element;
    }

    public static TagBuilder Holding(this TagBuilder element, IHtmlContent content)
    {
        element.InnerHtml.AppendHtml(content);
        return element;
    }

    /// <summary>Adds our classes to those that the page wrote itself.</summary>
    public static void AddShape(this TagHelperOutput output, string shape)
    {
        var own = output.Attributes["class"]?.Value?.ToString();
        output.Attributes.SetAttribute("class", string.IsNullOrEmpty(own) ? shape : $"{shape} {own}");
    }

    /// <summary>Text for readers that do not see the drawing.</summary>
    public static TagBuilder Unseen(string text) => Element("span", "vh", text);
}
