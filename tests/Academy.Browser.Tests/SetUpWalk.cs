using System.Text.RegularExpressions;
using Academy.Web.Tests.Hosting;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Academy.Browser.Tests;

/// <summary>The first day of a salon: from the key in the console to the first person who chooses a password.</summary>
public sealed partial class SetUpWalk(Stage stage)
{
    [Theory]
    [InlineData("keyboard")]
    [InlineData("no script")]
    public async Task An_empty_salon_is_opened_with_the_key_and_its_first_person_comes_in_by_a_link(string way)
    {
        await using var portal = new PortalHost();
        var address = portal.Listen();
        var ines = await HandsAsync(address, way);

        await ines.GoAsync("/");
        await ines.SeesHeadingAsync("No salon is set up here yet");
        await FillAsync(ines, "AAAAA-BBBBB-CCCCC-DDDDD-EEEEE-FFFFF");
        await ines.PressAsync("Open the salon");
        await ines.SeesAsync("this is not the one in the console");
        Assert.Equal([], await Axe.WalkAsync(ines.Page, way));
        await Expect(ines.Page.GetByLabel("What the salon is called")).ToHaveValueAsync("The Wet Nose");

        await FillAsync(ines, Key().Match(portal.Console.ToString()).Value);
        await ines.PressAsync("Open the salon");
        await ines.SeesSaidAsync("The salon is open, and you are its owner.");
        await ines.SeesHeadingAsync("The Wet Nose is open; 5 things can still be filled in");
        Assert.Equal([], await Axe.WalkAsync(ines.Page, way));

        var link = await AddPimAsync(ines);
        await ines.GoAsync("/welcome");
        await ines.SeesHeadingAsync("The Wet Nose is open; 4 things can still be filled in");

        var pim = await HandsAsync(address, way);
        await JoinAsync(pim, link);
        await ComesBackAsync(pim);

        var stranger = await HandsAsync(address, way);
        await stranger.GoAsync(link);
        await stranger.SeesHeadingAsync("This link does not open");
        await stranger.GoAsync("/set-up");
        await stranger.SeesHeadingAsync("There is no such page here");
        foreach (var hands in (Hands[])[ines, pim, stranger])
            await hands.Page.Context.CloseAsync();
    }

    private async Task<Hands> HandsAsync(string address, string way) =>
        Hands.Of(way, await stage.Chrome.OpenAsync(address, Device.Of(way)));

    private static async Task FillAsync(Hands ines, string key)
    {
        await ines.TypeAsync("Key", key);
        await ines.TypeAsync("What the salon is called", "The Wet Nose");
        await ines.TypeAsync("Time zone", "Europe/Amsterdam");
        await ines.TypeAsync("What people here call you", "Ines");
        await ines.TypeAsync("Name to sign in with", "ines");
        await ines.TypeAsync("Password", SalonPortal.Password);
    }

    private static async Task<string> AddPimAsync(Hands ines)
    {
        await ines.FollowAsync("Add people");
        await ines.SeesHeadingAsync("You work here alone");
        await ines.FollowAsync("Add a person");
        await ines.TypeAsync("Name", "Pim");
        await ines.PickAsync("Role", "Junior");
        await ines.PressAsync("Add this person");
        await ines.SeesHeadingAsync("Pim");
        await ines.PressAsync("Make a link");
        return await ines.Page.Locator("#the-link").InnerTextAsync();
    }

    private static async Task JoinAsync(Hands pim, string link)
    {
        await pim.GoAsync(link);
        await pim.SeesHeadingAsync("Pim, choose how you sign in");
        await pim.TypeAsync("Name to sign in with", "pim");
        await pim.TypeAsync("Password", "short");
        await pim.PressAsync("Keep and sign in");
        await Expect(pim.Page.Locator(".mend")).ToContainTextAsync("15");
        await pim.TypeAsync("Password", "five grey herons wade");
        await pim.PressAsync("Keep and sign in");
        await Expect(pim.Page).ToHaveURLAsync(new Regex("/$"));
    }

    private static async Task ComesBackAsync(Hands pim)
    {
        await pim.SignOutAsync();
        await pim.SeesSaidAsync("You are signed out.");
        await pim.TypeAsync("Name", "pim");
        await pim.TypeAsync("Password", "five grey herons wade");
        await pim.PressAsync("Sign in");
        await Expect(pim.Page.Locator("header")).ToContainTextAsync("Pim");
    }

    [GeneratedRegex("([A-Z2-9]{5}-){5}[A-Z2-9]{5}")]
    private static partial Regex Key();
}
