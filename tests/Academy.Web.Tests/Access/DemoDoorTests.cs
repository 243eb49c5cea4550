using System.Net;
using Academy.Competence;
using Academy.Competence.Salons;
using Academy.Storage;
using Academy.Web.Access;
using Academy.Web.Tests.Hosting;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Hosting;
using Microsoft.Extensions.DependencyInjection;

namespace Academy.Web.Tests.Access;

public sealed class DemoDoorTests
{
    // Addresses of the ranges kept for documentation: RFC 5737 and RFC 3849.
    [Theory]
    [InlineData("127.0.0.1", null, true)]
    [InlineData("::1", null, true)]
    [InlineData("192.0.2.7", null, false)]
    [InlineData("2001:db8::7", null, false)]
    [InlineData("127.0.0.1", "X-Forwarded-For", false)] // something stands in front: who asks is not known
    [InlineData("127.0.0.1", "Forwarded", false)]
    [InlineData(null, null, false)]
    public async Task Only_somebody_at_this_machine_may_step_in(string? address, string? header, bool opens)
    {
        await using var portal = await DemoAsync(address);
        using var visitor = portal.Anyone();
        if (header is not null)
            visitor.Client.DefaultRequestHeaders.Add(header, "192.0.2.7");
        var cover = await visitor.GetAsync("/sign-in");

        Assert.Equal(opens, cover.Page.QuerySelectorAll("button.tile").Length > 0);
        var stepped = await cover
            .Form("main form")
            .With(("person", (await SomebodyAsync(portal)).ToString()))
            .SendToAsync("/sign-in?handler=StepIn");
        Assert.Equal(opens ? HttpStatusCode.Redirect : HttpStatusCode.NotFound, stepped.Status);
    }

    [Fact]
    public async Task Whoever_stepped_in_sees_the_demo_on_every_page_and_signs_with_its_word()
    {
        await using var portal = await DemoAsync("127.0.0.1");
        using var visitor = portal.Anyone();
        var cover = await visitor.GetAsync("/sign-in");
        var owner = cover.Page.QuerySelectorAll("button.tile").First(tile => tile.QuerySelector("span")!.TextContent == "owner");
        var stepped = await cover.Form("form[action*=StepIn]").PressAsync($"button[value='{owner.GetAttribute("value")}']");

        Assert.Equal("/", stepped.Location);
        foreach (var path in new[] { "/people", "/in-today", "/me/account" })
            Assert.StartsWith(
                "Demo: an invented salon",
                (await visitor.GetAsync(path)).Page.QuerySelector(".strip.demo")!.TextContent,
                StringComparison.Ordinal
            );
        var refused = await visitor.SendAsync(
            "/me/account",
            "form[action*=Password]",
            ("Form.Old", "wrong"),
            ("Form.New", "nine kettles sing louder")
        );
        Assert.Equal(["Password: this is not yours. Write it once more"], refused.Problems);
        var taken = await visitor.SendAsync(
            "/me/account",
            "form[action*=Password]",
            ("Form.Old", DemoDoor.Word),
            ("Form.New", "nine kettles sing louder")
        );
        Assert.Equal("/me/account", taken.Location);
    }

    [Fact]
    public async Task Without_the_demo_nobody_steps_in_from_anywhere()
    {
        await using var portal = new PortalHost().With(From("127.0.0.1"));
        var cast = await portal.OpenSalonAsync();
        using var visitor = portal.Anyone();
        var cover = await visitor.GetAsync("/sign-in");

        Assert.Empty(cover.Page.QuerySelectorAll("button.tile, .strip.demo"));
        var stepped = await cover.Form().With(("person", cast.Owner.Id.Value.ToString())).SendToAsync("/sign-in?handler=StepIn");
        Assert.Equal(HttpStatusCode.NotFound, stepped.Status);
    }

    private static async Task<Guid> SomebodyAsync(PortalHost portal)
    {
        var salon = await portal.Services.GetRequiredService<FirstRun>().SalonAsync(TestContext.Current.CancellationToken);
        var book = await portal.DoAsync<RecordBook, SalonBook>(records =>
            records.SalonAsync((SalonId)salon!, TestContext.Current.CancellationToken)
        );
        return book.People[0].Id.Value;
    }

    // A salon of the test's own stands for the invented one: it is there in a moment.
    private static async Task<PortalHost> DemoAsync(string? address)
    {
        var portal = new PortalHost().With(From(address)).With(parts => parts.AddSingleton(Site()));
        await portal.OpenSalonAsync();
        return portal;
    }

    private static Academy.Web.Shell.Site Site() =>
        new(Https: false, Demo: true, Development: false, DataFolder: Path.GetTempPath(), ColourFile: null, Logo: null);

    private static Action<IServiceCollection> From(string? address) =>
        parts => parts.AddSingleton<IStartupFilter>(new ComesFrom(address is null ? null : IPAddress.Parse(address)));

    private sealed class ComesFrom(IPAddress? address) : IStartupFilter
    {
        public Action<IApplicationBuilder> Configure(Action<IApplicationBuilder> next) =>
            app =>
            {
                app.Use(
                    (http, then) =>
                    {
                        http.Connection.RemoteIpAddress = address;
                        return then(http);
                    }
                );
                next(app);
            };
    }
}
