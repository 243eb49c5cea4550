using System.Text.RegularExpressions;
using Academy.Competence.People;
using Academy.Web.Access;
using Academy.Web.Tests.Hosting;
using Microsoft.Playwright;

namespace Academy.Browser.Tests;

/// <summary>A small salon of a test's own behind a real port: Ines decides, Rosa and Dora judge, Pim and Juno learn.</summary>
public sealed class SalonPortal : IAsyncDisposable
{
    public const string Password = "seven kettles sing quietly";

    private readonly Chrome _chrome;
    private readonly string _address;
    private readonly List<IPage> _pages = [];

    private SalonPortal(Chrome chrome, PortalHost portal, string address, Cast cast) =>
        (_chrome, Portal, _address, Cast) = (chrome, portal, address, cast);

    public PortalHost Portal { get; }

    public Cast Cast { get; }

    /// <summary>Opens the salon; without modules, unless a test names a folder of them.</summary>
    public static async Task<SalonPortal> OpenAsync(Stage stage, string? modules = null)
    {
        var portal = modules is null ? new PortalHost() : new PortalHost().With("Modules:Folder", modules);
        var address = portal.Listen();
        return new SalonPortal(stage.Chrome, portal, address, await portal.OpenSalonAsync());
    }

    /// <summary>Gives somebody a password, for signing in and for signatures.</summary>
    public Task LetInAsync(params IEnumerable<Person> people) =>
        Portal.DoAsync<Accounts, int>(async accounts =>
        {
            foreach (var person in people)
                await accounts.OpenAsync(Cast.Salon, person.Id, NameOf(person), Password);
            return 0;
        });

    /// <summary>Hands that go one of three ways: "finger" on a phone, "keyboard" at a desk, "no script" on a phone.</summary>
    public async Task<Hands> HandsAsync(string way) => Hands.Of(way, await OpenAsync(Device.Of(way)));

    public async Task<IPage> OpenAsync(Device device)
    {
        var page = await _chrome.OpenAsync(_address, device);
        _pages.Add(page);
        return page;
    }

    /// <summary>Signs in as somebody does: name, password, Enter or a tap.</summary>
    public static async Task SignInAsync(Hands hands, Person person)
    {
        await hands.GoAsync("/sign-in");
        await hands.TypeAsync("Name", NameOf(person));
        await hands.TypeAsync("Password", Password);
        await hands.PressAsync("Sign in");
        await Assertions.Expect(hands.Page).Not.ToHaveURLAsync(new Regex("/sign-in"));
    }

    public async ValueTask DisposeAsync()
    {
        foreach (var page in _pages)
            await page.Context.CloseAsync();
        await Portal.DisposeAsync();
    }

    private static string NameOf(Person person) => person.Name.ToLowerInvariant();
}
