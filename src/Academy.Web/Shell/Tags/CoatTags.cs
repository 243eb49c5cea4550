using Academy.Web.Features.Shared;
using Microsoft.AspNetCore.Mvc.Rendering;
using Microsoft.AspNetCore.Mvc.ViewFeatures;
using Microsoft.AspNetCore.Razor.TagHelpers;

namespace Academy.Web.Shell.Tags;

/// <summary>
/// A coat: its swatch and its word. <c>bare</c> leaves out the word where the page has it beside the swatch already;
/// <c>large</c> takes the large cut, for 72 pixels and more.
/// </summary>
[HtmlTargetElement("swatch", TagStructure = TagStructure.NormalOrSelfClosing)]
public sealed class SwatchTag : TagHelper
{
    public string Coat { get; set; } = "";

    public int Size { get; set; }

    public bool Large { get; set; }

    public bool Bare { get; set; }

    /// <summary>The coat as the page would say it, where that is not the coat's own word.</summary>
    public string? Word { get; set; }

    [ViewContext, HtmlAttributeNotBound]
    public ViewContext View { get; set; } = null!;

    public override void Process(TagHelperContext context, TagHelperOutput output)
    {
        if (!Drawn.Coats.Contains(Coat, StringComparer.Ordinal))
        {
            throw new InvalidOperationException($"There is no swatch for the coat '{Coat}'.");
        }

        var drawing = Drawn.Svg(Cut(), $"sw s{Width()}");
        output.TagMode = TagMode.StartTagAndEndTag;
        output.TagName = Bare ? null : "span";
        output.Content.SetHtmlContent(drawing);
        if (!Bare)
        {
            output.AddShape(Large ? "coat coat-l" : "coat");
            output.Content.AppendHtml(Drawn.Element("span", null, Word ?? Coat));
        }
    }

    private string Cut() => Large ? $"{View.HttpContext.Request.PathBase}/swatches.svg#{Coat}" : $"#sw-{Coat}";

    private int Width() =>
        (Size, Large) switch
        {
            (0, true) => 96,
            (0, false) => 32,
            _ => Size,
        };
}

/// <summary>The eight swatches on the spine: the one place where they stand without their words, unseen by readers.</summary>
[HtmlTargetElement("all-swatches", TagStructure = TagStructure.NormalOrSelfClosing)]
public sealed class AllSwatchesTag : TagHelper
{
    public override void Process(TagHelperContext context, TagHelperOutput output)
    {
        output.TagName = null;
        foreach (var coat in Drawn.Coats)
        {
            output.Content.AppendHtml(Drawn.Svg($"#sw-{coat}", "sw"));
        }
    }
}

/// <summary>A sign from the sprite. Words stand beside it, always.</summary>
[HtmlTargetElement("icon", TagStructure = TagStructure.NormalOrSelfClosing)]
public sealed class IconTag : TagHelper
{
    public string Name { get; set; } = "";

    public override void Process(TagHelperContext context, TagHelperOutput output)
    {
        output.TagName = null;
        output.Content.SetHtmlContent(Drawn.Svg($"#ic-{Name}", "ic"));
    }
}

/// <summary>The sign in front of the name: the salon's own picture where it has one.</summary>
[HtmlTargetElement("own-logo", TagStructure = TagStructure.NormalOrSelfClosing)]
public sealed class OwnLogoTag(OwnLook look) : TagHelper
{
    [ViewContext, HtmlAttributeNotBound]
    public ViewContext View { get; set; } = null!;

    public override void Process(TagHelperContext context, TagHelperOutput output)
    {
        output.TagName = null;
        if (look.Logo is null)
        {
            output.Content.SetHtmlContent(Drawn.Svg("#ic-sign", "logo"));
            return;
        }

        var picture = new TagBuilder("img") { TagRenderMode = TagRenderMode.SelfClosing };
        picture.AddCssClass("logo");
        picture.Attributes["src"] = View.HttpContext.Request.PathBase + OwnLookRoutes.Logo;
        picture.Attributes["alt"] = "";
        output.Content.SetHtmlContent(picture);
    }
}

/// <summary>The salon's own colours, after ours, so that they win.</summary>
[HtmlTargetElement("own-colours", TagStructure = TagStructure.NormalOrSelfClosing)]
public sealed class OwnColoursTag(OwnLook look) : TagHelper
{
    [ViewContext, HtmlAttributeNotBound]
    public ViewContext View { get; set; } = null!;

    public override void Process(TagHelperContext context, TagHelperOutput output)
    {
        output.TagName = look.Colours is null ? null : "link";
        output.TagMode = TagMode.StartTagOnly;
        if (look.Colours is not null)
        {
            output.Attributes.SetAttribute("rel", "stylesheet");
            output.Attributes.SetAttribute("href", View.HttpContext.Request.PathBase + OwnLookRoutes.Colours);
        }
    }
}

/// <summary>Lets a script of ours run: its tag carries the word that the answer's policy names.</summary>
[HtmlTargetElement("script")]
public sealed class NonceTag(Nonce nonce) : TagHelper
{
    public override void Process(TagHelperContext context, TagHelperOutput output) =>
        output.Attributes.SetAttribute("nonce", nonce.Word);
}
