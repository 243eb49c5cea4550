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
    public async Task Nothing_of_anybody_is_kept_on_the_device_but_the_heat_card_and_the_files_that_it_shows()
    {
        await using var salon = await SalonPortal.OpenAsync(stage);
        await salon.LetInAsync(salon.Cast.Owner);
        var page = await salon.OpenAsync(Device.Phone);
        var ines = Hands.Finger(page);
        await SalonPortal.SignInAsync(ines, salon.Cast.Owner);
        await page.EvaluateAsync("navigator.serviceWorker.ready");
        foreach (var path in (string[])["/heat", "/", "/board", "/people", "/study", "/ledger", "/dogs", "/me/account", "/heat"])
            await ines.GoAsync(path);

        var kept = await page.EvaluateAsync<string[]>(Kept);
        var paths = kept.Select(one => new Uri(one.Split('\n')[0]).AbsolutePath).ToList();
        Assert.Contains("/heat", paths);
        Assert.All(paths.Where(path => path != "/heat"), path => Assert.Matches(@"^/[a-z0-9./-]+\.(css|js|svg)$", path));
        // Not even the card is kept as somebody saw it who was signed in.
        foreach (var name in salon.Cast.Everybody.Select(person => person.Name).Append(salon.Cast.Name))
            Assert.All(kept, one => Assert.DoesNotContain(name, one, StringComparison.Ordinal));

        await page.Context.SetOfflineAsync(true);
        await ines.GoAsync("/heat");
        await ines.SeesHeadingAsync("Dog too hot");
        foreach (var path in (string[])["/board", "/study"])
            Assert.Equal("not there", await page.EvaluateAsync<string>(Asked, path));
    }

    // Asked as the page itself asks, not by going there: the browser's own page of errors would stand in the way of what follows.
    private const string Asked = """
        (path) => fetch(path).then((answer) => `answered ${answer.status}`, () => "not there")
        """;

    private const string Kept = """
        async () => {
          const all = [];
          for (const shelf of await caches.keys()) {
            const kept = await caches.open(shelf);
            for (const request of await kept.keys()) all.push(`${request.url}\n${await (await kept.match(request)).text()}`);
          }
          return all;
        }
        """;

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
