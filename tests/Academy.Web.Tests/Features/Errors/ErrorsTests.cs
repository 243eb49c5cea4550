using System.Net;
using Academy.Web.Features.Shared;
using AngleSharp.Dom;
using Microsoft.AspNetCore.Http;

namespace Academy.Web.Tests.Features.Errors;

public sealed class ErrorsTests
{
    [Theory]
    [InlineData("/no-such-page", HttpStatusCode.NotFound, "There is no such page here")]
    [InlineData("/status/403", HttpStatusCode.OK, "This page is not yours to open")]
    [InlineData("/status/409", HttpStatusCode.OK, "Someone wrote in between")]
    [InlineData("/status/503", HttpStatusCode.OK, "The portal is not well")]
    [InlineData("/status/200", HttpStatusCode.NotFound, "There is no such page here")]
    public async Task A_refusal_is_said_in_the_look_of_the_portal(string path, HttpStatusCode status, string heading)
    {
        await using var portal = new Portal();
        using var answer = await portal.Visitor().GetAsync(path, TestContext.Current.CancellationToken);
        var page = await Portal.ReadAsync(answer);

        Assert.Equal(status, answer.StatusCode);
        Assert.Equal(heading, page.QuerySelector("h1")!.TextContent);
        Assert.NotNull(page.QuerySelector("header.bind .brand"));
        Assert.NotNull(page.QuerySelector("main a[href='/heat']"));
    }

    [Fact]
    public async Task A_refused_form_is_a_refused_form_and_not_a_broken_page()
    {
        await using var portal = new Portal();
        using var form = new FormUrlEncodedContent([new("Dog", "Biscuit")]);
        using var answer = await portal.Visitor().PostAsync("/swatches", form, TestContext.Current.CancellationToken);
        var page = await Portal.ReadAsync(answer);

        Assert.Equal(HttpStatusCode.BadRequest, answer.StatusCode);
        Assert.Equal("This form could not be read", page.QuerySelector("h1")!.TextContent);
    }

    [Fact]
    public async Task Our_mistake_gives_a_number_to_quote_and_the_log_has_the_same_number()
    {
        await using var portal = new Portal().With<IFrames>(new BrokenFrames());
        using var answer = await portal.Visitor().GetAsync("/swatches", TestContext.Current.CancellationToken);
        var page = await Portal.ReadAsync(answer);
        var number = page.QuerySelector(".number")!.TextContent;

        Assert.Equal(HttpStatusCode.InternalServerError, answer.StatusCode);
        Assert.Matches("^[0-9A-F]{4}-[0-9A-F]{4}$", number);
        Assert.Contains(
            portal.Log.Lines,
            line => line.StartsWith($"Failure {number} at GET /swatches", StringComparison.Ordinal)
        );
        Assert.DoesNotContain("frame fell", page.Body!.TextContent, StringComparison.Ordinal);
        Assert.True(answer.Headers.CacheControl!.NoStore);
    }

    [Fact]
    public async Task The_heat_card_stands_when_the_frame_is_broken()
    {
        await using var portal = new Portal().With<IFrames>(new BrokenFrames());
        using var answer = await portal.Visitor().GetAsync("/heat", TestContext.Current.CancellationToken);

        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
    }

    private sealed class BrokenFrames : IFrames
    {
        public Task<PageFrame> OfAsync(HttpContext http, CancellationToken stop) =>
            throw new InvalidOperationException("The frame fell.");
    }
}
