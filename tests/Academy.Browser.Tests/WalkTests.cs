using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Academy.Browser.Tests;

/// <summary>Journeys as their person walks them, in a real browser.</summary>
public sealed class WalkTests(DemoPortal portal)
{
    // A Beagle of the demo: smooth, no hazards.
    private const string Sorrel = "/dog-check?Form.Dog=00000d06-0000-7000-8000-000000000008";

    [Fact]
    public async Task Without_script_the_dog_check_answers()
    {
        var page = await portal.AsAsync("Bettina", width: 390, scripts: false);

        await page.GotoAsync(Sorrel);
        await page.GetByRole(AriaRole.Button, new() { Name = "Who may groom this dog?" }).ClickAsync();

        await Expect(page.GetByRole(AriaRole.Heading, new() { Level = 1 }))
            .ToHaveTextAsync(new System.Text.RegularExpressions.Regex("^Sorrel: .*Bettina Orrock.*, alone$"));
        await page.Context.CloseAsync();
    }

    [Fact]
    public async Task By_keyboard_alone_a_reading_is_kept()
    {
        var page = await portal.AsAsync("Tamsin");
        await page.GotoAsync("/readings/new");

        await TabToAsync(page, "Temperature");
        await page.Keyboard.TypeAsync("23,5");
        await page.Keyboard.PressAsync("Tab");
        await page.Keyboard.TypeAsync("58");
        await page.Keyboard.PressAsync("Enter");

        await Expect(page.Locator(".said")).ToContainTextAsync("23.5 °C is in the book.");
        await page.Context.CloseAsync();
    }

    [Fact]
    public async Task The_heat_card_is_one_tap_away_signed_out_and_opens_with_the_network_off()
    {
        var page = await portal.OpenAsync(width: 390);
        await page.GotoAsync("/sign-in");

        await page.GetByRole(AriaRole.Link, new() { Name = "Dog too hot?" }).First.ClickAsync();
        await Expect(page.GetByRole(AriaRole.Heading, new() { Level = 1 })).ToBeVisibleAsync();
        var heading = await page.GetByRole(AriaRole.Heading, new() { Level = 1 }).TextContentAsync();
        await page.EvaluateAsync("navigator.serviceWorker.ready");
        await page.ReloadAsync();
        await page.Context.SetOfflineAsync(true);
        await page.ReloadAsync();

        await Expect(page.GetByRole(AriaRole.Heading, new() { Level = 1 })).ToHaveTextAsync(heading!);
        await page.Context.CloseAsync();
    }

    [Fact]
    public async Task The_skip_link_is_the_first_stop_and_leads_to_the_page()
    {
        var page = await portal.AsAsync("Wilhelmina");
        await page.GotoAsync("/board");

        await page.Keyboard.PressAsync("Tab");

        Assert.Equal("#main", await page.EvaluateAsync<string>("document.activeElement.getAttribute('href')"));
        await page.Context.CloseAsync();
    }

    private static async Task TabToAsync(IPage page, string field)
    {
        for (var stops = 0; stops < 60; stops++)
        {
            await page.Keyboard.PressAsync("Tab");
            if (await page.EvaluateAsync<string?>("document.activeElement.getAttribute('name')") == field)
                return;
        }
        Assert.Fail($"The field {field} is not reached by keyboard.");
    }
}
