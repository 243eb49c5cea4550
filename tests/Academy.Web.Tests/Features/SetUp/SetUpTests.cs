using System.Net;
using System.Text.RegularExpressions;
using Academy.Competence;
using Academy.Competence.People;
using Academy.Competence.Salons;
using Academy.Competence.Skills;
using Academy.Storage;
using Academy.Web.Access;
using Academy.Web.Features.SetUp;
using Academy.Web.Tests.Hosting;
using Microsoft.Extensions.DependencyInjection;

namespace Academy.Web.Tests.Features.SetUp;

public sealed partial class SetUpTests
{
    private static readonly (string, string)[] Filled =
    [
        ("Salon", "The Wet Nose"),
        ("Zone", "Europe/Amsterdam"),
        ("Person", "Ines"),
        ("Own.Name", "ines"),
        ("Own.Password", Joining.Password),
    ];

    [Theory]
    [InlineData("/sign-in")]
    [InlineData("/people")]
    [InlineData("/in-today")]
    [InlineData("/join/any-token")]
    [InlineData("/welcome")]
    public async Task While_there_is_no_salon_every_page_leads_to_the_one_on_which_it_is_opened(string path)
    {
        await using var portal = new PortalHost();
        using var visitor = portal.Anyone();

        Assert.Equal("/set-up", (await visitor.GetAsync(path)).Location);
    }

    [Theory]
    [InlineData("/heat")]
    [InlineData("/healthz/live")]
    [InlineData("/academy.css")]
    public async Task The_heat_card_and_the_files_stand_without_a_salon(string path)
    {
        await using var portal = new PortalHost();
        using var visitor = portal.Anyone();

        Assert.Equal(HttpStatusCode.OK, (await visitor.GetAsync(path)).Status);
    }

    [Fact]
    public async Task With_the_key_from_the_console_the_salon_is_opened_and_its_owner_signed_in()
    {
        await using var portal = new PortalHost();
        using var ines = portal.Anyone();
        var opened = await ines.SendAsync("/set-up", [.. Filled, ("Key", KeyOf(portal))]);
        var welcome = await opened.FollowAsync();

        Assert.Equal("/welcome", opened.Location);
        Assert.Equal("The salon is open, and you are its owner.", welcome.Said);
        var book = await BookAsync(portal);
        Assert.Equal(("The Wet Nose", "Europe/Amsterdam"), (book.Name, book.Zone.Id));
        var owner = Assert.Single(book.People);
        Assert.Equal(("Ines", Role.Owner, portal.Today), (owner.Name, owner.Role, owner.JoinedOn));
        Assert.Equal(SkillBook.Defaults.Count, book.Skills.Count);
        using var later = portal.Anyone();
        Assert.Equal("/", (await later.SignInAsync("ines")).Location);
    }

    [Fact]
    public async Task The_key_may_be_typed_in_small_letters_with_spaces()
    {
        await using var portal = new PortalHost();
        using var ines = portal.Anyone();
        var key = KeyOf(portal).ToLowerInvariant().Replace('-', ' ');

        Assert.Equal("/welcome", (await ines.SendAsync("/set-up", [.. Filled, ("Key", key)])).Location);
    }

    [Theory]
    [InlineData("ABCDE-FGHJK-LMNPQ-RSTUV-WXYZ2-34567")]
    [InlineData("' or 1=1 --")]
    [InlineData("-")]
    public async Task A_stranger_without_the_key_cannot_claim_the_salon(string key)
    {
        await using var portal = new PortalHost();
        using var stranger = portal.Anyone();
        var refused = await stranger.SendAsync("/set-up", [.. Filled, ("Key", key)]);

        Assert.Equal(HttpStatusCode.UnprocessableEntity, refused.Status);
        Assert.Equal(["Key: this is not the one in the console. Copy it whole; a restart makes a new one"], refused.Problems);
        Assert.Equal("The Wet Nose", refused.Form()["Salon"]);
        Assert.Null(await portal.Services.GetRequiredService<FirstRun>().SalonAsync(TestContext.Current.CancellationToken));
    }

    [Fact]
    public async Task Everything_that_is_wrong_is_said_at_once_and_nothing_is_opened()
    {
        await using var portal = new PortalHost();
        using var ines = portal.Anyone();
        var refused = await ines.SendAsync(
            "/set-up",
            ("Key", KeyOf(portal)),
            ("Salon", ""),
            ("Zone", "Atlantis"),
            ("Person", ""),
            ("Own.Name", "i"),
            ("Own.Password", "short")
        );

        Assert.Equal(
            [
                "Name to sign in with: between 2 and 80 characters",
                "Password: at least 15 characters, this one has 5. A few words in a row do well",
                "Salon: write what it is called",
                "Time zone: choose one of the list, such as Europe/Amsterdam",
                "Your name: write what people here call you",
            ],
            refused.Problems.Order(StringComparer.Ordinal)
        );
        Assert.Equal("Atlantis", refused.Form()["Zone"]);
        Assert.Equal("", refused.Form()["Own.Password"]);
    }

    [Fact]
    public async Task Afterwards_the_key_is_void_and_the_page_is_gone()
    {
        await using var portal = new PortalHost();
        using var ines = portal.Anyone();
        using var second = portal.Anyone();
        var open = await second.GetAsync("/set-up");
        await ines.SendAsync("/set-up", [.. Filled, ("Key", KeyOf(portal))]);

        Assert.Equal(HttpStatusCode.NotFound, (await second.GetAsync("/set-up")).Status);
        Assert.Equal(HttpStatusCode.NotFound, (await open.Form().With([.. Filled, ("Key", KeyOf(portal))]).SendAsync()).Status);
        Assert.False(portal.Services.GetRequiredService<FirstRun>().Fits(KeyOf(portal)));
    }

    [Fact]
    public async Task Two_who_open_it_at_once_open_one_salon()
    {
        await using var portal = new PortalHost();
        using var visitor = portal.Anyone();
        var form = (await visitor.GetAsync("/set-up")).Form().With([.. Filled, ("Key", KeyOf(portal))]);
        var answers = await Task.WhenAll(Enumerable.Range(0, 4).Select(_ => form.SendAsync()));

        Assert.Equal(
            [HttpStatusCode.Redirect, HttpStatusCode.NotFound, HttpStatusCode.NotFound, HttpStatusCode.NotFound],
            answers.Select(answer => answer.Status).Order()
        );
        Assert.Equal(1, await portal.DoAsync<AcademyDb, int>(db => Task.FromResult(db.Salons.Count())));
    }

    [Fact]
    public async Task Names_that_look_like_HTML_are_only_names()
    {
        await using var portal = new PortalHost();
        using var ines = portal.Anyone();
        var opened = await ines.SendAsync(
            "/set-up",
            [
                .. Filled.Where(field => field.Item1 is not ("Salon" or "Person")),
                ("Key", KeyOf(portal)),
                ("Salon", "<b>Wet</b>"),
                ("Person", "<i>Ines</i>"),
            ]
        );
        var welcome = await opened.FollowAsync();

        Assert.Equal("<b>Wet</b> is open; 5 things can still be filled in", welcome.Heading);
        Assert.Empty(welcome.Page.QuerySelectorAll("h1 b, .where i"));
    }

    [Theory]
    [InlineData("Europe/Amsterdam", "Europe/Amsterdam")]
    [InlineData(" europe/amsterdam ", "Europe/Amsterdam")]
    [InlineData("amsterdam", "Europe/Amsterdam")]
    [InlineData("new york", "America/New_York")]
    [InlineData("America/Argentina/Buenos Aires", "America/Argentina/Buenos_Aires")]
    [InlineData("Atlantis", null)]
    [InlineData("Europe", null)]
    [InlineData("", null)]
    [InlineData(null, null)]
    // Names of the IANA time zone database (public domain).
    public void A_zone_is_found_by_its_name_or_by_its_town(string? typed, string? zone) =>
        Assert.Equal(zone, Zones.Find(typed)?.Id);

    [Fact]
    public void The_zone_to_begin_with_is_one_of_the_list() => Assert.Contains(Zones.Likely, Zones.All);

    internal static string KeyOf(PortalHost portal)
    {
        _ = portal.Services;
        return Key().Match(portal.Console.ToString()).Value;
    }

    private static async Task<SalonBook> BookAsync(PortalHost portal)
    {
        var salon = await portal.Services.GetRequiredService<FirstRun>().SalonAsync(TestContext.Current.CancellationToken);
        return await portal.DoAsync<RecordBook, SalonBook>(records =>
            records.SalonAsync((SalonId)salon!, TestContext.Current.CancellationToken)
        );
    }

    [GeneratedRegex("([A-Z2-9]{5}-){5}[A-Z2-9]{5}", RegexOptions.ExplicitCapture)]
    private static partial Regex Key();
}
