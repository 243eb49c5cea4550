using System.Net;
using Academy.Web.Tests.Hosting;
using AngleSharp.Dom;

namespace Academy.Web.Tests.Features.Writing;

/// <summary>
/// Whatever somebody who may write modules writes: it reaches no page as anything that runs or fetches, and it never stops the
/// portal. Shapes of attack from public lists (OWASP XSS filter evasion cheat sheet, CommonMark pathological inputs), written anew.
/// </summary>
public sealed class HostileDraftTests
{
    private static readonly string[] s_own = ["https", "http", "tel"];

    public static TheoryData<string> Running =>
        [
            "<script>alert(1)</script>",
            "<img src=x onerror=alert(1)>",
            "<svg/onload=alert(1)>",
            "<iframe srcdoc='<script>alert(1)</script>'></iframe>",
            "[go](javascript:alert(1))",
            "[go](java&#10;script:alert(1))",
            "[go](data:text/html;base64,PHNjcmlwdD5hbGVydCgxKTwvc2NyaXB0Pg==)",
            "[go](//evil.example)",
            "![x](data:image/svg+xml;base64,PHN2Zz4=)",
            "![x](https://evil.example/x.png)",
            "![x](../../people)",
            "![x\" onerror=\"alert(1)](press.svg \"t\\\" onerror=\\\"alert(1)\")",
            "## \" onmouseover=alert(1) x=\"",
            "> [!CAUTION\" onclick=\"alert(1)]\n> x",
        ];

    [Theory]
    [MemberData(nameof(Running))]
    public async Task Nothing_that_runs_or_fetches_reaches_a_page(string attack)
    {
        await using var desk = await Desk.OpenAsync();
        using var rosa = await desk.AsAsync(desk.Cast.Senior);
        using var ines = await desk.AsAsync(desk.Cast.Owner);
        await Desk.BeginAsync(rosa);
        var text = await Desk.TextAsync(
            rosa,
            ("Begin at the neck.", $"Begin at the neck.\n\n{attack}\n"),
            ("The skin may still be wet [1].", $"The skin may still be wet [1]. {attack.ReplaceLineEndings(" ")}")
        );

        var looked = await (await rosa.GetAsync(Desk.Write))
            .Form(Desk.Writing)
            .With(("Form.Text", text))
            .PressAsync("[data-look]");
        await Desk.SaveAsync(rosa, text);

        AssertSafe(looked);
        AssertSafe(await rosa.GetAsync(Desk.Write));
        AssertSafe(await rosa.GetAsync(Desk.Pictures));
        AssertSafe(await ines.GetAsync(Desk.ReadOver));
        AssertSafe(await ines.GetAsync(Desk.Ask));
    }

    // In the front matter, where words are shown on lists and in headings.
    [Theory]
    [InlineData("title: \"Towels: dry first, blow later\"", "title: \"<script>alert(1)</script>\"")]
    [InlineData("summary: How", "summary: <img src=x onerror=alert(1)> How")]
    [InlineData("https://example.org/house-rules", "javascript:alert(1)")]
    [InlineData("Saltmarsh Lane, an invented salon", "<b onclick=alert(1)>x</b>")]
    public async Task Nor_from_the_front_matter(string from, string to)
    {
        await using var desk = await Desk.OpenAsync();
        using var rosa = await desk.AsAsync(desk.Cast.Senior);
        await Desk.BeginAsync(rosa);
        await Desk.SaveAsync(rosa, await Desk.TextAsync(rosa, (from, to)));

        foreach (var page in (string[])[Desk.Write, Desk.Pictures, Desk.Ask, Desk.ReadOver, "/modules"])
            AssertSafe(await rosa.GetAsync(page));
    }

    public static TheoryData<string, string, string> Exhausting =>
        new()
        {
            { "a line of a megabyte", new string('a', 1 << 20), "KB are the most. Make it shorter" },
            { "a line of 5,000 letters", new string('a', 5000), "The line has 5000 characters; 4000 are the most." },
            { "quotes 1,000 deep", Many("> ", 1000) + "x", "nested too deeply" },
            { "lists 1,000 deep", Many("- ", 1000) + "x", "nested too deeply" },
            { "brackets 1,900 deep", Many("[", 1900) + "x" + Many("]", 1900), "" },
            { "stars without an end", Many("*a **a ", 550), "" },
            { "a table of 1,900 columns", $"{Many("|a", 1900)}\n{Many("|-", 1900)}\n{Many("|b", 1900)}", "" },
            { "headings without an end", Many("## x\n\n", 1000), "" },
        };

    [Theory]
    [MemberData(nameof(Exhausting))]
    public async Task What_would_take_for_ever_is_refused_with_words_and_the_portal_goes_on(
        string name,
        string attack,
        string says
    )
    {
        await using var desk = await Desk.OpenAsync();
        using var rosa = await desk.AsAsync(desk.Cast.Senior);
        await Desk.BeginAsync(rosa);
        var text = await Desk.TextAsync(rosa, ("Begin at the neck.", $"Begin at the neck.\n\n{attack}\n"));
        var form = (await rosa.GetAsync(Desk.Write)).Form(Desk.Writing).With(("Form.Text", text));

        var looked = await form.PressAsync("[data-look]");
        var saved = await form.SendAsync();

        Assert.True(looked.Status == HttpStatusCode.OK, name);
        Assert.Contains(says, looked.Page.QuerySelector("#found")!.TextContent, StringComparison.Ordinal);
        Assert.NotEmpty(looked.Page.QuerySelectorAll("#found li"));
        AssertSafe(looked);
        Assert.True(saved.Status is HttpStatusCode.Redirect or HttpStatusCode.UnprocessableEntity, name);
        Assert.Equal(HttpStatusCode.OK, (await rosa.GetAsync(Desk.Write)).Status);
        Assert.DoesNotContain(desk.Portal.Log.Lines, line => line.Contains("Exception", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData(
        "a: &a [x,x,x,x,x,x,x,x,x]\nb: &b [*a,*a,*a,*a,*a,*a,*a,*a,*a]\nc: [*b,*b,*b,*b,*b,*b,*b,*b,*b]",
        "an anchor (&name)"
    )]
    [InlineData("a: !System.Diagnostics.Process x", "a tag (!name)")]
    [InlineData("a: [x", "opened and not closed")]
    public async Task A_front_matter_that_means_harm_or_breaks_off_is_told_with_its_line(string attack, string says)
    {
        await using var desk = await Desk.OpenAsync();
        using var rosa = await desk.AsAsync(desk.Cast.Senior);
        await Desk.BeginAsync(rosa);
        await Desk.SaveAsync(rosa, await Desk.TextAsync(rosa, ("minutes: 6\n", $"minutes: 6\n{attack}\n")));

        var page = await rosa.GetAsync(Desk.Write);

        Assert.Contains(says, page.Page.QuerySelector("#found")!.TextContent, StringComparison.Ordinal);
        Assert.Equal("6", page.Page.QuerySelector("#found [data-line]")!.GetAttribute("data-line"));
        Assert.Contains(attack, await Desk.TextAsync(rosa), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_form_of_many_megabytes_is_refused_and_the_portal_goes_on()
    {
        await using var desk = await Desk.OpenAsync();
        using var rosa = await desk.AsAsync(desk.Cast.Senior);
        await Desk.BeginAsync(rosa);

        var refused = await Desk.SaveAsync(rosa, new string('a', 8 << 20));

        Assert.Equal(HttpStatusCode.BadRequest, refused.Status);
        Assert.Equal(HttpStatusCode.OK, (await rosa.GetAsync(Desk.Write)).Status);
    }

    private static void AssertSafe(Answer page)
    {
        Assert.True((int)page.Status < 500, $"{page.Status}");
        foreach (var part in page.Page.QuerySelectorAll("main *"))
        {
            Assert.False(part.LocalName is "script" or "iframe" or "style" or "object" or "embed" or "math", part.OuterHtml);
            Assert.All(
                part.Attributes,
                attribute => Assert.False(attribute.Name.StartsWith("on", StringComparison.OrdinalIgnoreCase), part.OuterHtml)
            );
            AssertLeadsNowhereElse(part);
        }
    }

    private static void AssertLeadsNowhereElse(IElement part)
    {
        if (part.GetAttribute("src") is { } picture)
            Assert.StartsWith("/modules/", picture, StringComparison.Ordinal);
        if (
            part.GetAttribute("href") is { } address
            && !address.StartsWith('#')
            && (address.StartsWith("//", StringComparison.Ordinal) || address[0] != '/')
        )
            Assert.Contains(address.Split(':')[0], s_own);
        if (part.GetAttribute("href") is { } other)
            Assert.DoesNotContain("evil.example", other, StringComparison.Ordinal);
    }

    private static string Many(string text, int times) => string.Concat(Enumerable.Repeat(text, times));
}
