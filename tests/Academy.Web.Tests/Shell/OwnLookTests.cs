using System.Net;
using AngleSharp.Dom;

namespace Academy.Web.Tests.Shell;

public sealed class OwnLookTests
{
    [Fact]
    public async Task A_salons_own_colours_come_after_ours_and_its_logo_in_place_of_ours()
    {
        await using var portal = new Portal().With("Site:ColourFile", "colours.css").With("Site:Logo", "logo.svg");
        await WriteAsync(portal, "colours.css", ":root { --woad: #2F5D3A; }");
        await WriteAsync(portal, "logo.svg", "<svg xmlns=\"http://www.w3.org/2000/svg\"/>");
        using var visitor = portal.Visitor();
        using var answer = await visitor.GetAsync("/heat", TestContext.Current.CancellationToken);
        var page = await Portal.ReadAsync(answer);
        using var colours = await visitor.GetAsync("/own/colours", TestContext.Current.CancellationToken);
        using var logo = await visitor.GetAsync("/own/logo", TestContext.Current.CancellationToken);

        Assert.Equal("/own/colours", page.QuerySelectorAll("link[rel=stylesheet]")[^1].GetAttribute("href"));
        Assert.Equal("/own/logo", page.QuerySelector(".brand img")!.GetAttribute("src"));
        Assert.Equal("text/css", colours.Content.Headers.ContentType!.MediaType);
        Assert.Equal("image/svg+xml", logo.Content.Headers.ContentType!.MediaType);
        Assert.Contains(
            "#2F5D3A",
            await colours.Content.ReadAsStringAsync(TestContext.Current.CancellationToken),
            StringComparison.Ordinal
        );
    }

    [Theory]
    [InlineData("../secrets.css", "must be the bare name of a file")]
    [InlineData("colours.html", "must end in .css")]
    [InlineData("missing.css", "there is no 'missing.css'")]
    public async Task A_setting_that_cannot_be_followed_is_said_and_our_look_stays(string setting, string reason)
    {
        await using var portal = new Portal().With("Site:ColourFile", setting);
        await WriteAsync(portal, "colours.html", "<script>alert(1)</script>");
        await WriteAsync(portal, "../secrets.css", "x");
        using var visitor = portal.Visitor();
        using var answer = await visitor.GetAsync("/heat", TestContext.Current.CancellationToken);
        using var colours = await visitor.GetAsync("/own/colours", TestContext.Current.CancellationToken);
        var page = await Portal.ReadAsync(answer);

        Assert.Single(page.QuerySelectorAll("link[rel=stylesheet]"));
        Assert.Equal(HttpStatusCode.NotFound, colours.StatusCode);
        Assert.Contains(portal.Log.Lines, line => line.Contains(reason, StringComparison.Ordinal));
    }

    private static Task WriteAsync(Portal portal, string name, string content) =>
        File.WriteAllTextAsync(Path.Combine(portal.OwnFolder, name), content, TestContext.Current.CancellationToken);
}
