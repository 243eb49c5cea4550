using System.Text.RegularExpressions;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Academy.Browser.Tests;

/// <summary>Somebody at a page, who finds things by their words: with a mouse or a finger, or by keyboard alone.</summary>
public abstract class Hands(IPage page)
{
    public IPage Page => page;

    public ILocator Heading => page.GetByRole(AriaRole.Heading, new() { Level = 1 });

    /// <summary>What the page says was done.</summary>
    public ILocator Said => page.Locator(".said:not(.waiting)");

    public static Hands Mouse(IPage page) => new Pointer(page, taps: false);

    public static Hands Finger(IPage page) => new Pointer(page, taps: true);

    public static Hands Keyboard(IPage page) => new Keys(page);

    /// <summary>Hands that go one of the ways of <see cref="Device.Of"/>.</summary>
    public static Hands Of(string way, IPage page) =>
        way switch
        {
            "finger" => Finger(page),
            "keyboard" => Keyboard(page),
            _ => Mouse(page),
        };

    public Task GoAsync(string path) => page.GotoAsync(path);

    /// <summary>Presses a button of the page's own part; its words may go on.</summary>
    public Task PressAsync(string button) => ActAsync(Named(page.GetByRole(AriaRole.Main), AriaRole.Button, button));

    public Task FollowAsync(string link) => ActAsync(Named(page.Locator("body"), AriaRole.Link, link));

    public Task SignOutAsync() => ActAsync(Named(page.GetByRole(AriaRole.Banner), AriaRole.Button, "Sign out"));

    /// <summary>Types into the field of this label; what stood there goes.</summary>
    public Task TypeAsync(string label, string words, string within = "main") =>
        TypeAsync(page.Locator(within).GetByLabel(Whole(label)), words);

    /// <summary>Chooses a radio button or ticks a box, among those under one legend; what is ticked already stays so.</summary>
    public Task PickAsync(string legend, string choice) =>
        PickOnceAsync(
            page.GetByRole(AriaRole.Group, new() { NameRegex = Whole(legend) })
                .Locator("label.pick", new() { Has = Words(choice) })
                .Locator("input")
        );

    /// <summary>Ticks a box that stands on its own.</summary>
    public Task TickAsync(string words) =>
        PickOnceAsync(page.Locator("label.pick", new() { Has = Words(words) }).Locator("input"));

    /// <summary>Opens what is folded away.</summary>
    public async Task UnfoldAsync(string summary)
    {
        var fold = page.Locator("details", new() { Has = page.Locator("summary", new() { HasTextString = summary }) }).First;
        if (await fold.GetAttributeAsync("open") is null)
            await ActAsync(fold.Locator("summary"));
    }

    public Task SeesHeadingAsync(string words) => Expect(Heading).ToHaveTextAsync(words);

    public Task SeesAsync(string words) => Expect(page.Locator("main")).ToContainTextAsync(words);

    public Task SeesSaidAsync(string words) => Expect(Said).ToContainTextAsync(words);

    protected abstract Task ActAsync(ILocator thing);

    protected abstract Task TypeAsync(ILocator field, string words);

    protected abstract Task PickAsync(ILocator input);

    private async Task PickOnceAsync(ILocator input)
    {
        if (!await input.IsCheckedAsync())
            await PickAsync(input);
    }

    private static ILocator Named(ILocator part, AriaRole role, string name) =>
        part.GetByRole(role, new() { NameRegex = new Regex($"^{Regex.Escape(name)}") }).First;

    private ILocator Words(string words) => page.Locator(".say", new() { HasTextRegex = Whole(words) });

    // A label of a field that must be mended begins with its number.
    private static Regex Whole(string words) => new($@"^\s*(\d\s+)?{Regex.Escape(words)}\s*$");

    private sealed class Pointer(IPage page, bool taps) : Hands(page)
    {
        protected override Task ActAsync(ILocator thing) => taps ? thing.TapAsync() : thing.ClickAsync();

        protected override Task TypeAsync(ILocator field, string words) => field.FillAsync(words);

        protected override async Task PickAsync(ILocator input)
        {
            if (taps)
                await input.TapAsync();
            else
                await input.ClickAsync();
        }
    }

    /// <summary>Tab, arrows, space and Enter; at each stop the focus must be there, be seen, and not lie under something.</summary>
    private sealed class Keys(IPage page) : Hands(page)
    {
        private const int MostStops = 400;

        // Answers what is wrong with the focus as it stands; null at the end of the page, where the browser's own controls follow.
        private const string Look = """
            () => {
              const at = document.activeElement;
              if (at === null || at === document.body || at === document.documentElement) return null;
              const isDrawn = (one) => {
                const style = getComputedStyle(one);
                return style.outlineStyle !== "none" && parseFloat(style.outlineWidth) >= 2 && style.opacity !== "0";
              };
              const seen = [at, at.closest("label")].find((one) => one !== null && isDrawn(one));
              if (!seen) return `no focus is drawn on ${at.outerHTML}`;
              const box = seen.getBoundingClientRect();
              const points = [0.1, 0.5, 0.9].flatMap((x) => [0.1, 0.5, 0.9].map((y) => [box.x + box.width * x, box.y + box.height * y]));
              const isOnTop = ([x, y]) => {
                const top = document.elementFromPoint(x, y);
                return top !== null && (seen.contains(top) || top.contains(seen) && top !== document.body && top !== document.documentElement);
              };
              return points.some(isOnTop) ? "" : `the focus lies under something or out of sight: ${at.outerHTML}`;
            }
            """;

        protected override async Task ActAsync(ILocator thing)
        {
            await ReachAsync(thing);
            await Page.Keyboard.PressAsync("Enter");
        }

        protected override async Task TypeAsync(ILocator field, string words)
        {
            await ReachAsync(field);
            await Page.Keyboard.PressAsync("Control+A");
            await Page.Keyboard.TypeAsync(words);
        }

        protected override async Task PickAsync(ILocator input)
        {
            await Expect(input).ToBeAttachedAsync();
            if (await input.GetAttributeAsync("type") == "radio")
                await ChooseAsync(input);
            else
            {
                await ReachAsync(input);
                await Page.Keyboard.PressAsync("Space");
            }
        }

        // The group of radio buttons is one stop; the arrows go through it.
        private async Task ChooseAsync(ILocator radio)
        {
            await ReachAsync(
                radio,
                "(one) => document.activeElement.type === 'radio' && document.activeElement.name === one.name"
            );
            await Page.Keyboard.PressAsync("Space");
            for (var turns = 0; turns < MostStops && !await radio.IsCheckedAsync(); turns++)
                await Page.Keyboard.PressAsync("ArrowDown");
            Assert.True(await radio.IsCheckedAsync());
        }

        private async Task ReachAsync(ILocator thing, string isThere = "(one) => document.activeElement === one")
        {
            await Expect(thing).ToBeAttachedAsync();
            var ends = 0;
            for (var stops = 0; stops < MostStops && ends < 2; stops++)
            {
                if (await thing.EvaluateAsync<bool>(isThere))
                    return;
                await Page.Keyboard.PressAsync("Tab");
                var wrong = await Page.EvaluateAsync<string?>(Look);
                Assert.True(wrong is null or "", $"{Page.Url}: {wrong}");
                ends += wrong is null ? 1 : 0;
            }
            Assert.Fail($"{Page.Url}: {thing} is not reached by keyboard.");
        }
    }
}
