using Microsoft.AspNetCore.Mvc.Rendering;
using Microsoft.AspNetCore.Mvc.ViewFeatures;
using Microsoft.AspNetCore.Razor.TagHelpers;

namespace Academy.Web.Shell.Tags;

/// <summary>
/// An action: a woven label stitched at both ends, one a view. With <c>href</c> it is a link, without one a button that sends
/// its form. <c>second</c> outlines it, <c>risk</c> is for stopping and standing down only, <c>big</c> is for damp hands.
/// </summary>
[HtmlTargetElement("act")]
public sealed class ActTag : TagHelper
{
    public string? Href { get; set; }

    public bool Second { get; set; }

    public bool Risk { get; set; }

    public bool Big { get; set; }

    public string? Icon { get; set; }

    [ViewContext, HtmlAttributeNotBound]
    public ViewContext View { get; set; } = null!;

    public override async Task ProcessAsync(TagHelperContext context, TagHelperOutput output)
    {
        var words = await output.GetChildContentAsync();
        output.TagName = Href is null ? "button" : "a";
        output.TagMode = TagMode.StartTagAndEndTag;
        output.AddShape((Second || Risk ? "act2" : "act") + (Risk ? " risk" : "") + (Big ? " big" : ""));
        Address(output);
        if (Icon is not null)
        {
            output.Content.AppendHtml(Drawn.Svg($"#ic-{Icon}", "ic"));
        }

        output.Content.AppendHtml(Drawn.Element("span", null).Holding(words));
    }

    private void Address(TagHelperOutput output)
    {
        if (Href is not null)
        {
            var here = Href.StartsWith('~') ? View.HttpContext.Request.PathBase + Href[1..] : Href;
            output.Attributes.SetAttribute("href", here);
        }
        else if (!output.Attributes.ContainsName("type"))
        {
            output.Attributes.SetAttribute("type", "submit");
        }
    }
}

/// <summary>A caution at the point of risk. It ends in the heat card unless <c>heat="false"</c>; <c>soft</c> draws it quieter.</summary>
[HtmlTargetElement("caution")]
public sealed class CautionTag : TagHelper
{
    public string Title { get; set; } = "";

    public bool Soft { get; set; }

    public bool Heat { get; set; } = true;

    [ViewContext, HtmlAttributeNotBound]
    public ViewContext View { get; set; } = null!;

    public override async Task ProcessAsync(TagHelperContext context, TagHelperOutput output)
    {
        var words = await output.GetChildContentAsync();
        output.TagName = "div";
        output.TagMode = TagMode.StartTagAndEndTag;
        output.AddShape(Soft ? "caution soft" : "caution");
        output.Attributes.SetAttribute("role", "note");
        var inside = Drawn.Element("div", null).Holding(Drawn.Element("p", "says", Title)).Holding(words);
        output.Content.SetHtmlContent(Drawn.Svg("#ic-caution", "ic"));
        output.Content.AppendHtml(Heat ? inside.Holding(ToHeat()) : inside);
    }

    private TagBuilder ToHeat()
    {
        var link = Drawn.Element("a", null, "Dog too hot? The heat card");
        link.Attributes["href"] = View.HttpContext.Request.PathBase + Features.Shared.Paths.Heat;
        return Drawn.Element("p", "to-heat").Holding(link);
    }
}
