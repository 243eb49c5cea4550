using System.Net;
using System.Text;
using Academy.Web.Tests.Hosting;
using SkiaSharp;

namespace Academy.Web.Tests.Features.Writing;

/// <summary>The pictures of a module that is being written.</summary>
public sealed class PicturesTests
{
    private const string TakingIn = "section[aria-labelledby=another] form";

    [Theory]
    [InlineData(SKEncodedImageFormat.Png, "wet-back.png", "image/png")]
    [InlineData(SKEncodedImageFormat.Jpeg, "wet-back.jpg", "image/jpeg")]
    [InlineData(SKEncodedImageFormat.Webp, "wet-back.webp", "image/webp")]
    public async Task A_photo_is_taken_in_with_a_line_to_copy_and_shown_where_the_line_stands(
        SKEncodedImageFormat kind,
        string file,
        string type
    )
    {
        await using var desk = await Desk.OpenAsync();
        using var rosa = await desk.AsAsync(desk.Cast.Senior);
        await Desk.BeginAsync(rosa);

        var taken = await rosa.SendFileAsync(Desk.Pictures, TakingIn, ("Sent", "Wet Back.JPEG", Desk.Photo(kind, 3200, 2000)));
        var page = await taken.FollowAsync();

        Assert.StartsWith($"{file} is taken in, 1600 by 1000,", page.Said, StringComparison.Ordinal);
        Assert.Equal("3 pictures", page.Heading);
        Assert.Contains(
            page.Page.QuerySelectorAll("input[readonly]"),
            line => line.GetAttribute("value") == $"![What is to be seen]({file})"
        );
        var shown = await rosa.Client.GetAsync(
            $"{Desk.Pictures}?handler=Picture&file={file}",
            TestContext.Current.CancellationToken
        );
        Assert.Equal(type, shown.Content.Headers.ContentType!.MediaType);
        Assert.Equal("no-cache, private", shown.Headers.CacheControl!.ToString());
        Assert.Contains("sandbox", Assert.Single(shown.Headers.GetValues("Content-Security-Policy")), StringComparison.Ordinal);

        await Desk.SaveAsync(
            rosa,
            await Desk.TextAsync(rosa, ("Begin at the neck.", $"Begin at the neck.\n\n![A wet back]({file})\n"))
        );
        var written = await rosa.GetAsync(Desk.Write);
        Assert.Equal("1600", written.Page.QuerySelector("img[alt='A wet back']")!.GetAttribute("width"));
        Assert.Contains("Nothing has to be put right", written.Words, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_picture_is_replaced_by_one_of_its_kind_and_taken_out()
    {
        await using var desk = await Desk.OpenAsync();
        using var rosa = await desk.AsAsync(desk.Cast.Senior);
        await Desk.BeginAsync(rosa);
        await rosa.SendFileAsync(Desk.Pictures, TakingIn, ("Sent", "back.png", Desk.Photo()), ("Name", "dog"));

        var replaced = await rosa.SendFileAsync(
            Desk.Pictures,
            "form[action*='file=dog.png'][action*=Replace]",
            ("with", "another.jpeg", Desk.Photo(SKEncodedImageFormat.Jpeg, 100, 50))
        );
        Assert.StartsWith("dog.png is taken in, 100 by 50,", (await replaced.FollowAsync()).Said, StringComparison.Ordinal);
        var wrong = await rosa.SendFileAsync(
            Desk.Pictures,
            "form[action*='file=press.svg'][action*=Replace]",
            ("with", "another.png", Desk.Photo())
        );
        var nothing = await rosa.SendFileAsync(
            Desk.Pictures,
            "form[action*='file=press.svg'][action*=Replace]",
            ("with", "", [])
        );

        Assert.Equal(HttpStatusCode.UnprocessableEntity, wrong.Status);
        Assert.StartsWith(
            "another.png: A drawing takes the place of a drawing",
            Assert.Single(wrong.Problems),
            StringComparison.Ordinal
        );
        Assert.Equal(["press.svg: choose the file that takes its place"], nothing.Problems);
        Assert.Equal(Desk.Pictures, nothing.Form(TakingIn).Drawn.GetAttribute("action"));

        await rosa.SendAsync(Desk.Pictures, "form[action*='file=dog.png'][action*=TakeOut]");
        Assert.Equal("2 pictures", (await rosa.GetAsync(Desk.Pictures)).Heading);
        Assert.Equal(HttpStatusCode.NotFound, (await rosa.GetAsync($"{Desk.Pictures}?handler=Picture&file=dog.png")).Status);
    }

    public static TheoryData<string, string, string> Hostile =>
        new()
        {
            {
                "x.svg",
                "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 9 9\"><script>alert(1)</script></svg>",
                "holds the element <script>"
            },
            {
                "x.svg",
                "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 9 9\" onload=\"alert(1)\"/>",
                "holds the attribute onload"
            },
            {
                "x.svg",
                "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 9 9\"><image href=\"https://evil.example/x\"/></svg>",
                "holds the element <image>"
            },
            {
                "x.svg",
                "<!DOCTYPE svg [<!ENTITY a \"aaaa\"><!ENTITY b \"&a;&a;&a;\">]><svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 9 9\"><text>&b;</text></svg>",
                "cannot be read as SVG"
            },
            { "x.png", "<html><script>alert(1)</script></html>", "holds the element <html>" },
            { "x.png", "GIF89a", "This is no picture that a module can show." },
            { "x.jpg", "MZ\0\0", "This is no picture that a module can show." },
            { "x.svg", "", "This is no picture that a module can show." },
        };

    [Theory]
    [MemberData(nameof(Hostile))]
    public async Task What_is_no_plain_picture_is_refused_with_words(string name, string sent, string why)
    {
        await using var desk = await Desk.OpenAsync();
        using var rosa = await desk.AsAsync(desk.Cast.Senior);
        await Desk.BeginAsync(rosa);

        var refused = await rosa.SendFileAsync(Desk.Pictures, TakingIn, ("Sent", name, Encoding.UTF8.GetBytes(sent)));

        Assert.Equal(HttpStatusCode.UnprocessableEntity, refused.Status);
        Assert.Contains(why, Assert.Single(refused.Problems), StringComparison.Ordinal);
        Assert.Equal("2 pictures", (await rosa.GetAsync(Desk.Pictures)).Heading);
    }

    [Fact]
    public async Task A_file_too_large_none_at_all_and_a_name_that_cannot_be_are_refused_with_words()
    {
        await using var desk = await Desk.OpenAsync();
        using var rosa = await desk.AsAsync(desk.Cast.Senior);
        await Desk.BeginAsync(rosa);

        var large = await rosa.SendFileAsync(Desk.Pictures, TakingIn, ("Sent", "x.png", new byte[6 * 1024 * 1024]));
        var none = await rosa.SendFileAsync(Desk.Pictures, TakingIn, ("Sent", "", []));
        var named = await rosa.SendFileAsync(Desk.Pictures, TakingIn, ("Sent", "x.png", Desk.Photo()), ("Name", "../../etc"));

        Assert.Equal(["Picture: the file has 6 MB, and 5 MB are the most. Make it smaller"], large.Problems);
        Assert.Equal(["Picture: choose a file"], none.Problems);
        Assert.Equal(
            ["x.png: The name of a picture has to be small letters a to z, digits and single hyphens, such as heat-stroke."],
            named.Problems
        );
        Assert.Equal("../../etc", named.Form(TakingIn)["Name"]);
    }

    [Fact]
    public async Task A_picture_for_a_draft_that_is_gone_is_not_kept()
    {
        await using var desk = await Desk.OpenAsync();
        using var rosa = await desk.AsAsync(desk.Cast.Senior);
        await Desk.BeginAsync(rosa);
        var token = (await rosa.GetAsync(Desk.Pictures)).Form(TakingIn)["__RequestVerificationToken"]!;
        await rosa.SendAsync(Desk.Write, "form[action*=End]");

        using MultipartFormDataContent content = new()
        {
            { new StringContent(token), "__RequestVerificationToken" },
            { new ByteArrayContent(Desk.Photo()), "Sent", "x.png" },
        };
        var answer = await rosa.Client.PostAsync(Desk.Pictures, content, TestContext.Current.CancellationToken);

        Assert.Equal(HttpStatusCode.NotFound, answer.StatusCode);
    }
}
