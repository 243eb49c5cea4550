using System.Diagnostics;
using System.Text;

namespace Academy.Modules.Tests.Pictures;

public class PicturesTests
{
    private const string Svg = "http://www.w3.org/2000/svg";

    // one piece of a drawing, and what is said of it
    [Theory]
    [InlineData("<script>alert(1)</script>", "the element <script>")]
    [InlineData("<g onclick=\"alert(1)\"/>", "the attribute onclick=\"alert(1)\"")]
    [InlineData("<g ONLOAD=\"alert(1)\"/>", "the attribute ONLOAD=\"alert(1)\"")]
    [InlineData("<foreignObject><p xmlns=\"http://www.w3.org/1999/xhtml\">x</p></foreignObject>", "the element <foreignObject>")]
    [InlineData("<x:script xmlns:x=\"http://www.w3.org/1999/xhtml\">alert(1)</x:script>", "the element <script>")]
    [InlineData("<a href=\"javascript:alert(1)\"><text>x</text></a>", "the element <a>")]
    [InlineData("<image href=\"https://evil.example/x.png\"/>", "the element <image>")]
    [InlineData("<use href=\"https://evil.example/x.svg#y\"/>", "the attribute href=\"https://evil.example/x.svg#y\"")]
    [InlineData("<use xlink:href=\"data:image/svg+xml,x#y\"/>", "the attribute href=\"data:image/svg+xml,x#y\"")]
    [InlineData("<use href=\"//evil.example/#x\"/>", "the attribute href=\"//evil.example/#x\"")]
    [InlineData("<animate attributeName=\"href\" to=\"javascript:alert(1)\"/>", "the element <animate>")]
    [InlineData("<set attributeName=\"onload\" to=\"alert(1)\"/>", "the element <set>")]
    [InlineData("<rect fill=\"url(https://evil.example/#x)\"/>", "the attribute fill=\"url(https://evil.example/#x)\"")]
    [InlineData("<rect fill=\"url( 'https://evil.example/#x' )\"/>", "the attribute fill=\"url( 'https://evil.example/#x' )\"")]
    [InlineData("<rect fill=\"u&#10;rl(//evil.example)\"/>", "the attribute fill=\"u\nrl(//evil.example)\"")]
    [InlineData("<rect style=\"fill:url(//evil.example)\"/>", "the attribute style=\"fill:url(//evil.example)\"")]
    [InlineData("<rect style=\"fill:\\75 rl(x)\"/>", "the attribute style=\"fill:\\75 rl(x)\"")]
    [InlineData("<style>@import 'https://evil.example/x.css';</style>", "a style that could fetch something from outside")]
    [InlineData("<style>@imp<!-- -->ort 'x';</style>", "a style that could fetch something from outside")]
    [InlineData("<style>.a{fill:ur<![CDATA[l(x)]]>}</style>", "a style that could fetch something from outside")]
    [InlineData("<style>@font-face{font-family:x;src:local(x)}</style>", "a style that could fetch something from outside")]
    [InlineData("<style>.a{background:image-set('x' 1x)}</style>", "a style that could fetch something from outside")]
    [InlineData("<?xml-stylesheet href=\"x.css\"?>", "a processing instruction")]
    [InlineData("<g xmlns:x=\"https://tool.example\" x:label=\"layer\"/>", "the attribute x=\"https://tool.example\"")]
    [InlineData("<svg viewBox=\"0 0 1 1\"/>", "a drawing inside another, or no drawing at all")]
    [InlineData("<filter id=\"f\"/>", "the element <filter>")]
    [InlineData("<text xml:base=\"https://evil.example\">x</text>", "the attribute base=\"https://evil.example\"")]
    public void A_picture_with_anything_but_a_drawing_is_left_out(string piece, string told) =>
        AssertLeftOut(
            $"<svg xmlns=\"{Svg}\" xmlns:xlink=\"http://www.w3.org/1999/xlink\" viewBox=\"0 0 9 9\">\n{piece}\n</svg>",
            2,
            $"The picture holds {told}. Save it as a plain drawing without that."
        );

    [Theory]
    [InlineData(
        "<html xmlns=\"http://www.w3.org/1999/xhtml\"/>",
        "The picture holds the element <html>. Save it as a plain drawing without that."
    )]
    [InlineData(
        "<g xmlns=\"http://www.w3.org/2000/svg\"/>",
        "The picture holds a drawing inside another, or no drawing at all. Save it as a plain drawing without that."
    )]
    [InlineData("<svg viewBox=\"0 0 9 9\"/>", "The picture holds the element <svg>. Save it as a plain drawing without that.")] // without the name of its kind
    [InlineData(
        "<svg xmlns=\"http://www.w3.org/2000/svg\"/>",
        "The picture has no size. Give its <svg> a viewBox such as \"0 0 720 360\"."
    )]
    [InlineData(
        "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 0 9\"/>",
        "The picture has no size. Give its <svg> a viewBox such as \"0 0 720 360\"."
    )]
    [InlineData(
        "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 9001 9\"/>",
        "The picture is 9001 by 9; 8000 is the most. Make it smaller.",
        0
    )]
    public void A_picture_that_is_none_is_left_out(string file, string told, int line = 1) => AssertLeftOut(file, line, told);

    // Entities that grow and entities that read files are both declared in a document type, and none is let in.
    [Theory]
    [InlineData(
        "<!DOCTYPE svg [<!ENTITY a \"xxxxxxxxxx\"><!ENTITY b \"&a;&a;&a;&a;&a;&a;&a;&a;\">]><svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 9 9\"><text>&b;</text></svg>"
    )]
    [InlineData(
        "<!DOCTYPE svg [<!ENTITY a SYSTEM \"file:///etc/passwd\">]><svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 9 9\"><text>&a;</text></svg>"
    )]
    [InlineData(
        "<!DOCTYPE svg PUBLIC \"-//W3C//DTD SVG 1.1//EN\" \"https://www.w3.org/Graphics/SVG/1.1/DTD/svg11.dtd\"><svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 9 9\"/>"
    )]
    [InlineData("not a picture")]
    [InlineData("")]
    [InlineData("<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 9 9\">")]
    public void A_picture_that_cannot_be_read_is_left_out(string file)
    {
        using var folder = new TestFolder().WithSample().With("towels", "press.svg", file);
        var library = folder.Load();

        Assert.Null(library.FindPicture("towels", "press.svg"));
        Assert.Contains(
            library.Findings,
            finding =>
                finding.File == "towels/press.svg"
                && finding.Message.StartsWith("The picture cannot be read as SVG", StringComparison.Ordinal)
        );
        Assert.Empty(SafePage.Body(library.Lessons[0].Html).QuerySelectorAll("img"));
    }

    [Fact]
    public void A_drawing_50000_groups_deep_does_not_exhaust_the_reader()
    {
        var groups = string.Concat(Enumerable.Repeat("<g>", 50_000)) + string.Concat(Enumerable.Repeat("</g>", 50_000));
        using var folder = new TestFolder()
            .WithSample()
            .With("towels", "press.svg", $"<svg xmlns=\"{Svg}\" viewBox=\"0 0 9 9\">{groups}</svg>");
        var started = Stopwatch.GetTimestamp();

        Assert.Contains(
            new(
                "towels/press.svg",
                0,
                Severity.Fault,
                "The picture has groups inside groups, more than 64 deep. Save it flatter."
            ),
            folder.Load().Findings
        );
        Assert.True(Stopwatch.GetElapsedTime(started) < TimeSpan.FromSeconds(10));
    }

    [Theory]
    [InlineData("<rect fill=\"url(#wet)\" style=\"stroke:url('#wet')\"/>")]
    [InlineData("<use href=\"#wet\"/><use xlink:href=\"#wet\"/>")]
    [InlineData("<style>.a{fill:red}@media print{.a{fill:none}}</style>")]
    [InlineData("<title>A dog &amp; a towel</title><text xml:space=\"preserve\" lang=\"en\">6.30 on: 7</text>")]
    [InlineData("<!-- drawn by hand -->")]
    public void A_plain_drawing_is_let_through(string piece)
    {
        using var folder = new TestFolder()
            .WithSample()
            .With(
                "towels",
                "press.svg",
                $"<svg xmlns=\"{Svg}\" xmlns:xlink=\"http://www.w3.org/1999/xlink\" viewBox=\"0,0 9.5,9\">{piece}</svg>"
            );

        Assert.Empty(folder.Load().Findings);
        Assert.Equal(
            (10, 9),
            (folder.Load().FindPicture("towels", "press.svg")!.Width, folder.Load().FindPicture("towels", "press.svg")!.Height)
        );
    }

    [Fact]
    public void A_png_picture_is_shown_with_its_size()
    {
        // The head of a PNG 3 wide and 2 high, W3C PNG specification, chapter 11.2.1.
        byte[] png = [0x89, .. "PNG\r\n\u001a\n"u8, 0, 0, 0, 13, .. "IHDR"u8, 0, 0, 0, 3, 0, 0, 0, 2, 8, 2, 0, 0, 0];
        using var folder = new TestFolder().WithSample("(press.svg)", "(press.png)").With("towels", "press.png", png);
        File.Delete(Path.Combine(folder.Root, "towels", "press.svg"));
        var library = folder.Load();
        var picture = library.FindPicture("towels", "press.png")!;

        Assert.Empty(library.Findings);
        Assert.Equal(("image/png", 3, 2), (picture.ContentType, picture.Width, picture.Height));
        Assert.Equal(png, picture.Bytes.ToArray());
        Assert.Equal(
            "/modules/towels/press.png",
            SafePage.Body(library.Lessons[0].Html).QuerySelector("img")!.GetAttribute("src")
        );
    }

    [Fact]
    public void Another_file_under_the_name_of_a_png_is_left_out()
    {
        using var folder = new TestFolder().WithSample().With("towels", "other.png", "<svg onload='alert(1)'/>");

        Assert.Contains(
            new("towels/other.png", 0, Severity.Fault, "The file is not a PNG picture, whatever its name says. Save it as PNG."),
            folder.Load().Findings
        );
    }

    [Fact]
    public void A_picture_too_large_is_left_out()
    {
        using var folder = new TestFolder()
            .WithSample()
            .With("towels", "press.svg", Encoding.ASCII.GetBytes(new string(' ', 600 * 1024)));

        Assert.Contains(
            new("towels/press.svg", 0, Severity.Fault, "The file has 600 KB; 512 KB are the most. Make it smaller."),
            folder.Load().Findings
        );
    }

    private static void AssertLeftOut(string svg, int line, string told)
    {
        using var folder = new TestFolder().WithSample().With("towels", "press.svg", svg);
        var library = folder.Load();

        Assert.Contains(new("towels/press.svg", line, Severity.Fault, told), library.Findings);
        Assert.Null(library.FindPicture("towels", "press.svg"));
        Assert.Empty(SafePage.Body(library.Lessons[0].Html).QuerySelectorAll("img"));
    }
}
