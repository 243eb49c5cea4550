using System.Text.RegularExpressions;
using Academy.Competence.Dogs;
using Academy.Storage;
using Academy.Storage.Rows;
using Academy.Web.Tests.Hosting;
using Microsoft.EntityFrameworkCore;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Academy.Browser.Tests;

/// <summary>A junior logs grooms on a phone with damp hands and a bad line. What the device keeps is nobody's business but ids and codes.</summary>
public sealed class LogWalk(Stage stage)
{
    private const string Notes = "He was sweet and slept through the nails.";

    [Fact]
    public async Task What_was_tapped_survives_a_reload_and_a_groom_saved_without_a_signal_is_sent_when_it_is_back()
    {
        await using var salon = await SalonPortal.OpenAsync(stage);
        var dog = await salon.Portal.MeetAsync(salon.Cast, "Biscuit", "Beagle", "smooth");
        var pim = await ComeInAsync(salon);
        await pim.StartAsync(dog, salon.Cast.Senior);
        salon.Portal.Clock.Advance(TimeSpan.FromMinutes(50));

        await pim.PressAsync("Looked at");
        await Expect(pim.Page.Locator(".stamp .at")).ToHaveValueAsync(new Regex("^10:0[0-9]$"));
        await TellAsync(pim);
        await pim.Page.ReloadAsync();
        await Expect(pim.Page.Locator("#waiting")).ToContainTextAsync("What you tapped before is filled in again.");
        await Expect(Picked(pim, "some tangles")).ToBeCheckedAsync();
        await Expect(pim.Page.Locator("[name='Form.Techniques'][value=bath]")).ToBeCheckedAsync();
        await Expect(pim.Page.Locator(".stamp .at")).ToHaveCountAsync(1);
        await Expect(pim.Page.GetByLabel("In words", new() { Exact = true })).ToHaveValueAsync("");

        await WriteAsync(pim);
        await pim.Page.Context.SetOfflineAsync(true);
        await pim.PressAsync("Save Biscuit");
        await Expect(pim.Page.Locator("#waiting")).ToContainTextAsync("1 groom waits on this device.");
        await KeepsNoWordsAsync(pim, salon.Cast, dog);
        Assert.Equal(0, await ToldAsync(salon));

        await pim.Page.Context.SetOfflineAsync(false);
        await Expect(pim.Heading).ToContainTextAsync("Biscuit, ");
        await pim.SeesAsync(Notes);
        await pim.SeesAsync("some tangles");
        Assert.Equal(1, await ToldAsync(salon));
        Assert.Equal("0", await pim.Page.EvaluateAsync<string>("String(Object.keys(localStorage).length)"));
    }

    [Fact]
    public async Task A_double_tap_makes_one_groom()
    {
        await using var salon = await SalonPortal.OpenAsync(stage);
        var dog = await salon.Portal.MeetAsync(salon.Cast, "Biscuit", "Beagle", "smooth");
        var pim = await ComeInAsync(salon);
        await pim.StartAsync(dog, salon.Cast.Senior);
        salon.Portal.Clock.Advance(TimeSpan.FromMinutes(50));
        await TellAsync(pim);

        var save = pim.Page.GetByRole(AriaRole.Button, new() { Name = "Save Biscuit" });
        await save.EvaluateAsync("(button) => { button.click(); button.click(); }");

        await Expect(pim.Heading).ToContainTextAsync("Biscuit, ");
        Assert.Equal(1, await ToldAsync(salon));
        Assert.Equal(1, await salon.Portal.DoAsync<AcademyDb, int>(db => db.GroomDoers.CountAsync()));
    }

    [Fact]
    public async Task An_unusual_groom_is_told_on_the_same_page_and_what_lacks_is_said_with_everything_kept()
    {
        await using var salon = await SalonPortal.OpenAsync(stage);
        var dog = await salon.Portal.MeetAsync(salon.Cast, "Biscuit", "Beagle", "smooth");
        var pim = await ComeInAsync(salon);
        await pim.StartAsync(dog, salon.Cast.Senior);
        salon.Portal.Clock.Advance(TimeSpan.FromMinutes(20));

        await TellAsync(pim);
        await pim.PickAsync("Signs you saw", "panting");
        await Expect(pim.Page.GetByText("Panting: heat or stress?")).ToBeVisibleAsync();
        await pim.TickAsync("we stopped before the end");
        await pim.UnfoldAsync("Something happened, or nearly");
        await pim.PickAsync("How bad was it for the dog?", "near miss");
        await pim.PickAsync("What happened?", "fall, or hanging from the table");
        await pim.TypeAsync("What happened, in words", "He stepped back to the edge; my hand was on him.");
        await pim.PressAsync("Save Biscuit");

        await Expect(pim.Page.Locator(".mend")).ToContainTextAsync("Where on the dog: choose one");
        Assert.Equal([], await Axe.LookAsync(pim.Page));
        await Expect(pim.Page.GetByLabel("In words", new() { Exact = true })).ToHaveValueAsync(Notes);
        await Expect(pim.Page.GetByLabel("What happened, in words"))
            .ToHaveValueAsync("He stepped back to the edge; my hand was on him.");
        await Expect(Picked(pim, "we stopped before the end")).ToBeCheckedAsync();

        await pim.Page.SetViewportSizeAsync(Device.Phone.Width, Device.Phone.Height);
        await pim.PickAsync("Where on the dog?", "not on the body");
        await pim.PressAsync("Save Biscuit");
        await Expect(pim.Heading).ToContainTextAsync("Biscuit, ");
        await pim.SeesAsync("He stepped back to the edge; my hand was on him.");
        await pim.SeesAsync("ended early");
        Assert.Equal(1, await salon.Portal.DoAsync<AcademyDb, int>(db => db.Incidents.CountAsync()));
    }

    private static async Task<Hands> ComeInAsync(SalonPortal salon)
    {
        await salon.LetInAsync(salon.Cast.Junior);
        var pim = Hands.Finger(await salon.OpenAsync(Device.Phone));
        await SalonPortal.SignInAsync(pim, salon.Cast.Junior);
        return pim;
    }

    private static async Task TellAsync(Hands pim)
    {
        await pim.PickAsync("How it came", "some tangles");
        await pim.PickAsync("What was done", "bath");
        await WriteAsync(pim);
    }

    private static async Task WriteAsync(Hands pim)
    {
        await pim.UnfoldAsync("A phrase or a word, or stopped early");
        await pim.TypeAsync("In words", Notes);
    }

    private static ILocator Picked(Hands pim, string words) =>
        pim.Page.Locator("label.pick", new() { Has = pim.Page.Locator($".say:text-is('{words}')") }).Locator("input");

    private static async Task KeepsNoWordsAsync(Hands pim, Cast cast, Dog dog)
    {
        var kept = await pim.Page.EvaluateAsync<string>("JSON.stringify({ ...localStorage })");
        Assert.Contains("log-queue:", kept, StringComparison.Ordinal);
        foreach (
            var word in (string[])[Notes, "sweet", dog.Name, dog.Breed, cast.Name, .. cast.Everybody.Select(one => one.Name)]
        )
            Assert.DoesNotContain(word, kept, StringComparison.OrdinalIgnoreCase);
    }

    private static Task<int> ToldAsync(SalonPortal salon) =>
        salon.Portal.DoAsync<AcademyDb, int>(db => db.Grooms.CountAsync(groom => groom.State == GroomState.Told));
}
