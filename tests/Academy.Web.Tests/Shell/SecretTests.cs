using Academy.Web.Tests.Hosting;
using AngleSharp.Dom;
using AngleSharp.Html.Dom;

namespace Academy.Web.Tests.Shell;

/// <summary>Whoever types a long password may look at it; without script nothing is there that does nothing.</summary>
public sealed class SecretTests
{
    [Fact]
    public async Task Every_password_has_a_hidden_button_that_names_it_and_the_page_brings_its_script()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        await portal.DeclareAsync(cast, cast.Senior, "wool");
        using var anyone = portal.Anyone();
        using var ines = await portal.AsAsync(cast, cast.Owner);
        var pages = new[]
        {
            await anyone.GetAsync("/sign-in"),
            await ines.GetAsync("/me/account"),
            await ines.GetAsync($"/stand-downs/{cast.Senior.Id.Value}"),
            await ines.GetAsync($"/decide/{cast.Senior.Id.Value}"),
        };

        Assert.All(
            pages,
            page =>
            {
                var passwords = page.Page.QuerySelectorAll<IHtmlInputElement>("input[type=password]").ToList();
                Assert.NotEmpty(passwords);
                Assert.All(
                    passwords,
                    password =>
                    {
                        var button = page.Page.QuerySelector<IHtmlButtonElement>($"button[data-shows='{password.Id}']")!;
                        Assert.Equal(
                            ("button", true, "false"),
                            (button.Type, button.IsHidden, button.GetAttribute("aria-pressed"))
                        );
                        Assert.Equal("Show password", button.TextContent);
                    }
                );
                var script = Assert.Single(page.Page.QuerySelectorAll("script[src*='secret']"));
                Assert.NotEmpty(script.GetAttribute("nonce")!);
            }
        );
    }

    [Fact]
    public async Task A_page_that_asks_for_no_password_brings_no_script_for_it()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        using var pim = await portal.AsAsync(cast, cast.Junior);

        Assert.Empty((await pim.GetAsync("/")).Page.QuerySelectorAll("script[src*='secret']"));
    }
}
