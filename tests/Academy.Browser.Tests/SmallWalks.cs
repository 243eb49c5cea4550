using Academy.Web.Tests.Hosting;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Academy.Browser.Tests;

/// <summary>Short ways that must hold for everybody: the heat card without a network, the skip link, a breed that suggests its coat.</summary>
public sealed class SmallWalks(Stage stage)
{
    [Fact]
    public async Task The_heat_card_is_one_tap_away_signed_out_and_opens_with_the_network_off()
    {
        await using var salon = await SalonPortal.OpenAsync(stage);
        var page = await salon.OpenAsync(Device.Phone);
        var anybody = Hands.Finger(page);
        await anybody.GoAsync("/sign-in");

        await anybody.FollowAsync("Dog too hot?");
        await anybody.SeesHeadingAsync("Dog too hot");
        await page.EvaluateAsync("navigator.serviceWorker.ready");
        await page.ReloadAsync();
        await page.Context.SetOfflineAsync(true);
        await page.ReloadAsync();

        await anybody.SeesHeadingAsync("Dog too hot");
        await anybody.SeesAsync("Wet the dog and move air over it. Start at once.");
    }

    [Fact]
    public async Task The_skip_link_is_the_first_stop_and_leads_to_the_page()
    {
        var page = await (await stage.DemoAsync()).AsAsync(Addresses.Owner);
        await page.GotoAsync("/board");

        await page.Keyboard.PressAsync("Tab");
        await Expect(page.GetByText("Skip to the page")).ToBeInViewportAsync();
        await page.Keyboard.PressAsync("Enter");
        await page.Keyboard.PressAsync("Tab");

        Assert.True(await page.EvaluateAsync<bool>("document.querySelector('main').contains(document.activeElement)"));
        await page.Context.CloseAsync();
    }

    [Fact]
    public async Task A_breed_ticks_what_is_usual_and_what_was_chosen_by_hand_stays()
    {
        await using var salon = await SalonPortal.OpenAsync(stage);
        await salon.LetInAsync(salon.Cast.Junior);
        var page = await salon.OpenAsync(Device.Phone);
        var pim = Hands.Finger(page);
        await SalonPortal.SignInAsync(pim, salon.Cast.Junior);
        await pim.GoAsync("/dogs/new");
        var (chosen, nervous) = (
            page.Locator("[name='Form.Coat']:checked"),
            page.Locator("[name='Form.Hazards'][value=nervous]")
        );

        await BreedAsync(pim, "Pug");
        await Expect(chosen).ToHaveValueAsync("smooth");
        await Expect(page.Locator("[name='Form.Hazards'][value=flat-faced]")).ToBeCheckedAsync();
        await pim.PickAsync("Hazards", "nervous");
        await BreedAsync(pim, "Poodle (Miniature)");
        await Expect(chosen).ToHaveValueAsync("wool");
        await Expect(page.Locator("[name='Form.Hazards'][value=flat-faced]")).Not.ToBeCheckedAsync();
        await Expect(nervous).ToBeCheckedAsync();

        await pim.PickAsync("Coat it usually wears", "double");
        await BreedAsync(pim, "Pug");
        await Expect(chosen).ToHaveValueAsync("double");
        await pim.TypeAsync("Name", "Winkle");
        await pim.PressAsync("Add this dog");
        await pim.SeesHeadingAsync("Winkle");
    }

    private static async Task BreedAsync(Hands pim, string breed)
    {
        await pim.TypeAsync("Breed or cross", breed);
        await pim.Page.Keyboard.PressAsync("Tab");
    }
}
