using Academy.Web.Tests.Hosting;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Academy.Browser.Tests;

/// <summary>A junior reads between two dogs: the place is kept by itself, another device goes on there, and a voice may read.</summary>
public sealed class ReadingWalk(Stage stage)
{
    private const string Name = "blades-and-scissors";

    // Chromium in a test has no voices. This one says nothing, and tells what it was asked.
    private const string Voice = """
        (() => {
          const said = (window.said = []);
          let now = null;
          class Speech { constructor(text) { this.text = text; } }
          const voice = {
            paused: false,
            getVoices: () => [{ name: "a voice", lang: "en-GB" }],
            addEventListener() {},
            speak(speech) { now = speech; said.push(speech.text); },
            pause() { this.paused = true; said.push("(pause)"); },
            resume() { this.paused = false; said.push("(resume)"); },
            cancel() { this.paused = false; now = null; said.push("(stop)"); },
          };
          window.nextBlock = () => now.onend();
          Object.defineProperty(window, "speechSynthesis", { value: voice });
          Object.defineProperty(window, "SpeechSynthesisUtterance", { value: Speech });
        })();
        """;

    [Fact]
    public async Task What_was_read_on_the_tablet_goes_on_on_the_phone()
    {
        using var modules = new TestModules().With(Name);
        await using var salon = await SalonPortal.OpenAsync(stage, modules.Root);
        await salon.LetInAsync(salon.Cast.Junior);
        var tablet = Hands.Finger(await salon.OpenAsync(new(820, 1180, IsTouched: true)));
        await SalonPortal.SignInAsync(tablet, salon.Cast.Junior);
        await tablet.GoAsync($"/study/{Name}");
        var last = tablet.Page.Locator(".lesson h2").Filter(new() { HasNotText = "Sources" }).Last;
        var title = await last.InnerTextAsync();

        var kept = tablet.Page.WaitForResponseAsync(answer => answer.Status == 204);
        await last.EvaluateAsync("(heading) => heading.scrollIntoView()");
        await kept;

        var phone = Hands.Finger(await salon.OpenAsync(Device.Phone));
        await SalonPortal.SignInAsync(phone, salon.Cast.Junior);
        await phone.GoAsync("/study");
        await phone.SeesAsync("Go on where you were");
        Assert.Equal([], await Axe.LookAsync(phone.Page));
        await phone.FollowAsync(TestModules.Title);
        await phone.SeesAsync($"You stopped at {title}");
        await Expect(phone.Page.Locator(".lesson h2", new() { HasText = title })).ToBeInViewportAsync();
    }

    [Fact]
    public async Task Without_a_voice_nothing_is_offered_and_with_one_it_reads_pauses_goes_on_and_stops_by_keyboard()
    {
        using var modules = new TestModules().With(Name);
        await using var salon = await SalonPortal.OpenAsync(stage, modules.Root);
        await salon.LetInAsync(salon.Cast.Junior);
        var page = await salon.OpenAsync(Device.Desk);
        var pim = Hands.Keyboard(page);
        await SalonPortal.SignInAsync(pim, salon.Cast.Junior);
        await pim.GoAsync($"/study/{Name}");
        await Expect(page.Locator("#aloud")).ToBeHiddenAsync();

        await page.AddInitScriptAsync(Voice);
        await page.ReloadAsync();
        await pim.PressAsync("Read aloud");
        await Expect(page.Locator(".aloud-now")).ToHaveCountAsync(1);
        var first = await page.EvaluateAsync<string[]>("said");
        Assert.Equal([await page.Locator(".aloud-now").InnerTextAsync()], first);
        Assert.Equal([], await Axe.LookAsync(page));
        await page.EvaluateAsync("nextBlock()");
        Assert.Equal(2, (await page.EvaluateAsync<string[]>("said")).Length);

        await pim.PressAsync("Pause");
        await pim.PressAsync("Go on reading aloud");
        await pim.PressAsync("Stop");
        Assert.Equal(["(pause)", "(resume)", "(stop)"], (await page.EvaluateAsync<string[]>("said"))[2..]);
        await Expect(page.Locator(".aloud-now")).ToHaveCountAsync(0);
        await Expect(page.Locator("#aloud-stop")).ToBeHiddenAsync();

        // To the end: every block once, no source and no number of one.
        await pim.PressAsync("Read aloud");
        await page.EvaluateAsync("() => { while (document.querySelector('.aloud-now')) nextBlock(); }");
        var all = string.Join('\n', await page.EvaluateAsync<string[]>("said"));
        Assert.Contains("After the dog", all, StringComparison.Ordinal);
        Assert.DoesNotContain("source", all, StringComparison.Ordinal);
    }
}
