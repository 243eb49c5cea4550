using Academy.Web.Tests.Hosting;
using Microsoft.AspNetCore.Hosting;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Academy.Browser.Tests;

/// <summary>Each kind of question answered with the keyboard alone, without script, in a real browser; and a picture tapped.</summary>
public sealed class QuestionKindTests : IAsyncLifetime
{
    private const string Module = "blades-and-scissors";
    private readonly TestModules _modules = new TestModules().WithOneOfEachKind(Module);
    private PortalHost _portal = null!;
    private string _session = "";
    private IPlaywright _playwright = null!;
    private IBrowser _browser = null!;
    private string _attempt = "";

    public async ValueTask InitializeAsync()
    {
        _portal = new PortalHost().With("Modules:Folder", _modules.Root);
        _portal.UseKestrel(0);
        _portal.StartServer();
        var cast = await _portal.OpenSalonAsync();
        _session = await _portal.SignInAsync(cast, cast.Junior);
        _playwright = await Playwright.CreateAsync();
        _browser = await _playwright.Chromium.LaunchAsync(
            new()
            {
                ExecutablePath = Environment.GetEnvironmentVariable("ACADEMY_CHROMIUM") ?? "/usr/bin/chromium",
                Args = ["--disable-background-networking", "--no-first-run", "--disable-gpu", "--disable-dev-shm-usage"],
            }
        );
    }

    public async ValueTask DisposeAsync()
    {
        await _browser.DisposeAsync();
        _playwright.Dispose();
        await _portal.DisposeAsync();
        _modules.Dispose();
    }

    [Fact]
    public async Task By_keyboard_alone_every_kind_is_answered_and_the_quiz_is_passed()
    {
        var page = await OpenAsync(width: 390);

        await PickAsync(await FindAsync(page, "When do you reach for the towel?"), "Before the dryer");
        await TickAsync(await FindAsync(page, "What does less dryer time mean"), "Less heat", "Less noise");
        await PickAsync(await FindAsync(page, "A towel that fell on the floor"), "False");
        await ChooseAsync(
            await FindAsync(page, "In which order do you take the water out"),
            ("Squeeze the legs by hand", "1st"),
            ("Press with the first towel", "2nd"),
            ("Press with a dry towel", "3rd"),
            ("Switch on the dryer", "4th")
        );
        await TypeAsync(await FindAsync(page, "How hot are towels washed"), "140 f");
        await ChooseAsync(
            await FindAsync(page, "How many towels does each coat take"),
            ("Smooth", "One towel"),
            ("Double", "Two towels"),
            ("Wool", "Three towels")
        );
        await PickAsync(await FindAsync(page, "Where on the back"), "the middle of the back");
        await page.GotoAsync($"{_attempt}/hand-in");
        await PressAsync(page, "Hand in");

        await Expect(page.GetByRole(AriaRole.Heading, new() { Level = 1 })).ToHaveTextAsync("7 of 7. Passed.");
    }

    [Fact]
    public async Task Tapping_a_letter_on_the_picture_picks_its_place_without_script_and_a_finger_finds_it()
    {
        var page = await FindAsync(await OpenAsync(width: 390), "Where on the back");

        for (var place = 0; place < 3; place++)
        {
            var marker = page.Locator("svg.spots label").Nth(place);
            var box = (await marker.BoundingBoxAsync())!;
            Assert.True(box.Width >= 44 && box.Height >= 44, $"{box.Width} by {box.Height}");
            await page.Mouse.ClickAsync(box.X + box.Width / 2, box.Y + box.Height / 2);
            await Expect(page.GetByRole(AriaRole.Radio).Nth(place)).ToBeCheckedAsync();
        }
        await Expect(page.GetByRole(AriaRole.Radio, new() { Name = "A the ", Exact = false })).ToHaveCountAsync(1);
        await Expect(page.Locator("svg.spots"))
            .ToHaveAccessibleNameAsync("A picture with 3 places marked A to C. Each is described below.");
    }

    private async Task<IPage> OpenAsync(int width)
    {
        var address = _portal.ClientOptions.BaseAddress.ToString().TrimEnd('/');
        var context = await _browser.NewContextAsync(
            new()
            {
                BaseURL = address,
                ViewportSize = new() { Width = width, Height = 844 },
                JavaScriptEnabled = false,
            }
        );
        await context.AddCookiesAsync([
            new()
            {
                Name = "academy-session",
                Value = _session,
                Url = address,
            },
        ]);
        var page = await context.NewPageAsync();
        await page.GotoAsync($"/study/{Module}");
        await page.GetByRole(AriaRole.Button, new() { Name = "Take the quiz" })
            .Or(page.GetByRole(AriaRole.Link, new() { Name = "Go on" }))
            .First.ClickAsync();
        await page.WaitForURLAsync("**/quiz/**");
        _attempt = new Uri(page.Url).AbsolutePath;
        return page;
    }

    private async Task<IPage> FindAsync(IPage page, string question)
    {
        for (var number = 1; number <= 7; number++)
        {
            await page.GotoAsync($"{_attempt}?q={number}");
            if (await page.GetByText(question).CountAsync() > 0)
                return page;
        }
        Assert.Fail($"The question is not asked: {question}");
        return page;
    }

    // One stop for a group of radio buttons: Space picks the first, arrows go on.
    private static async Task PickAsync(IPage page, string words)
    {
        await TabToAsync(page, "type", "radio");
        await page.Keyboard.PressAsync("Space");
        for (var turns = 0; turns < 6 && !await FocusedWordsAsync(page, words); turns++)
            await page.Keyboard.PressAsync("ArrowDown");
        Assert.True(await FocusedWordsAsync(page, words), $"{words} is not reached by keyboard");
        await PressAsync(page, "Keep this and");
    }

    private static async Task TickAsync(IPage page, params string[] words)
    {
        for (var boxes = 0; boxes < 4; boxes++)
        {
            await TabToAsync(page, "type", "checkbox");
            foreach (var right in words)
                if (await FocusedWordsAsync(page, right))
                    await page.Keyboard.PressAsync("Space");
        }
        await PressAsync(page, "Keep this and");
    }

    private static async Task ChooseAsync(IPage page, params (string Row, string Choice)[] pairs)
    {
        for (var row = 0; row < pairs.Length; row++)
        {
            await TabToAsync(page, "name", $"Placed[{row}]");
            foreach (var (label, choice) in pairs)
                if (
                    await page.GetByLabel(label, new() { Exact = true })
                        .EvaluateAsync<bool>("one => one === document.activeElement")
                )
                    await page.Keyboard.TypeAsync(choice);
        }
        await PressAsync(page, "Keep this and");
    }

    private static async Task TypeAsync(IPage page, string text)
    {
        await TabToAsync(page, "name", "Typed");
        await page.Keyboard.TypeAsync(text);
        await PressAsync(page, "Keep this and");
    }

    private static async Task PressAsync(IPage page, string button)
    {
        for (var stops = 0; stops < 80; stops++)
        {
            await page.Keyboard.PressAsync("Tab");
            if (await page.Locator("button:focus").CountAsync() > 0 && await FocusedWordsAsync(page, button))
            {
                var before = page.Url;
                await page.Keyboard.PressAsync("Enter");
                await Expect(page).Not.ToHaveURLAsync(before);
                return;
            }
        }
        Assert.Fail($"The button {button} is not reached by keyboard.");
    }

    private static async Task TabToAsync(IPage page, string attribute, string value)
    {
        for (var stops = 0; stops < 80; stops++)
        {
            await page.Keyboard.PressAsync("Tab");
            if (await page.Locator($"[{attribute}='{value}']:focus").CountAsync() > 0)
                return;
        }
        Assert.Fail($"Nothing with {attribute} {value} is reached by keyboard.");
    }

    private static async Task<bool> FocusedWordsAsync(IPage page, string words) =>
        await page.Locator("button:focus, label:has(:focus)").Filter(new() { HasText = words }).CountAsync() > 0;
}
