using Microsoft.AspNetCore.Mvc.Rendering;
using Microsoft.AspNetCore.Mvc.ViewFeatures;
using Microsoft.AspNetCore.Razor.TagHelpers;

namespace Academy.Web.Shell.Tags;

/// <summary>A link to a path of the portal, wherever the portal is mounted: <c>&lt;a to="@cell.Href"&gt;</c>.</summary>
[HtmlTargetElement("a", Attributes = "to")]
public sealed class ToTag : TagHelper
{
    public string To { get; set; } = "";

    [ViewContext, HtmlAttributeNotBound]
    public ViewContext View { get; set; } = null!;

    public override void Process(TagHelperContext context, TagHelperOutput output) =>
        output.Attributes.SetAttribute("href", View.HttpContext.Request.PathBase + To);
}
