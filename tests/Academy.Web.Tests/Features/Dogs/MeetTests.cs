using System.Net;
using Academy.Competence.Dogs;
using Academy.Competence.Skills;
using Academy.Storage;
using Academy.Web.Tests.Hosting;
using AngleSharp.Dom;
using AngleSharp.Html.Dom;

namespace Academy.Web.Tests.Features.Dogs;

public sealed class MeetTests
{
    private static readonly (string, string)[] Biscuit =
    [
        ("Form.Name", " Biscuit "),
        ("Form.Breed", "Border Terrier"),
        ("Form.Coat", "wire"),
        ("Form.Hazards", "nervous"),
        ("Form.Hazards", "heart"),
        ("Form.Born", "2022-03-01"),
        ("Form.Weight", "8,4 kg"),
        ("Form.Client", "Oduya"),
    ];

    [Fact]
    public async Task A_junior_adds_a_dog_and_reads_it_in_the_book()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        using var junior = await portal.AsAsync(cast, cast.Junior);
        var sent = await junior.SendAsync("/dogs/new", Biscuit);
        var page = await sent.FollowAsync();

        Assert.Equal("Biscuit is in the book.", page.Said);
        Assert.Equal("Biscuit", page.Heading);
        Assert.Contains("Border Terrier, 9 kg, 4 years, Oduya", page.Words, StringComparison.Ordinal);
        var kept = await DogAsync(portal, cast, sent.Location!);
        Assert.Equal(
            kept with
            {
                Name = "Biscuit",
                Breed = "Border Terrier",
                Coat = SkillBook.Wire,
                Hazards = [SkillBook.Nervous, SkillBook.Heart],
                BornOn = new DateOnly(2022, 3, 1),
                WeightKg = 9,
                Client = "Oduya",
            },
            kept
        );
    }

    [Fact]
    public async Task A_dog_needs_a_name_and_a_breed_and_nothing_else()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        using var junior = await portal.AsAsync(cast, cast.Junior);

        var empty = await junior.SendAsync("/dogs/new");
        Assert.Equal(HttpStatusCode.UnprocessableEntity, empty.Status);
        Assert.Equal(
            ["Name: write what the dog is called", "Breed: write the breed or cross, or “cross” if nobody knows"],
            empty.Problems
        );
        var least = await junior.SendAsync("/dogs/new", ("Form.Name", "Scrap"), ("Form.Breed", "something with ears"));
        var page = await least.FollowAsync();
        Assert.Contains(
            "Nobody has said its coat, how old it is or what it weighs yet. The dog check asks for it.",
            page.Words,
            StringComparison.Ordinal
        );
    }

    [Fact]
    public async Task What_cannot_be_read_or_be_true_comes_back_as_it_was_typed()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        using var junior = await portal.AsAsync(cast, cast.Junior);
        var unreadable = await junior.SendAsync(
            "/dogs/new",
            ("Form.Name", "<b>Scrap</b>"),
            ("Form.Breed", "Pug"),
            ("Form.Weight", "a lot"),
            ("Form.Born", "long ago"),
            ("Form.Coat", "velvet"),
            ("Form.Hazards", "dragon")
        );
        Assert.Equal(HttpStatusCode.UnprocessableEntity, unreadable.Status);
        Assert.Equal(
            [
                "Born: write a date such as 14/7/2019, or leave it empty",
                "Coat: choose from the list",
                "Hazards: choose from the list",
                "Weight: write whole kilograms, or leave it empty",
            ],
            unreadable.Problems.Order(StringComparer.Ordinal)
        );
        Assert.Equal("<b>Scrap</b>", unreadable.Form()["Form.Name"]);
        Assert.Equal("a lot", unreadable.Form()["Form.Weight"]);

        var untrue = await junior.SendAsync(
            "/dogs/new",
            ("Form.Name", "Scrap"),
            ("Form.Breed", "Pug"),
            ("Form.Weight", "300"),
            ("Form.Coat", "wool"),
            ("Form.SecondCoat", "wool")
        );
        Assert.Equal(HttpStatusCode.UnprocessableEntity, untrue.Status);
        Assert.Equal(
            ["300 kg cannot be a dog's weight: write 1 to 120 kg.", "Both coats are wool: choose another second coat, or none."],
            untrue.Problems
        );
        Assert.Equal("wool", untrue.Form()["Form.SecondCoat"]);
    }

    [Fact]
    public async Task A_breed_suggests_coat_and_hazards_and_nothing_is_kept_by_asking()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        using var junior = await portal.AsAsync(cast, cast.Junior);
        var form = (await junior.GetAsync("/dogs/new")).Form();
        var page = await form.With(("Form.Name", "Bär"), ("Form.Breed", "chow chow"), ("Form.Hazards", "nervous"))
            .PressAsync("[formaction*=Suggest]");

        Assert.Equal(HttpStatusCode.OK, page.Status);
        Assert.Equal("double", page.Form()["Form.Coat"]);
        Assert.Equal(["heavy-coat", "heat-prone", "nervous"], page.Form().All("Form.Hazards"));
        Assert.Contains("Usual for this breed: double, heavy coat and heat-prone breed.", page.Words, StringComparison.Ordinal);
        Assert.Equal("No dogs yet", (await junior.GetAsync("/dogs")).Heading);

        var kept = await page.Form().SendAsync();
        Assert.Equal("Bär is in the book.", (await kept.FollowAsync()).Said);
    }

    [Fact]
    public async Task A_part_of_a_breed_lists_what_it_may_mean_and_the_coat_chosen_by_hand_stays()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        using var junior = await portal.AsAsync(cast, cast.Junior);
        var form = (await junior.GetAsync("/dogs/new")).Form();
        var asked = await form.With(("Form.Name", "Hector"), ("Form.Breed", "bulldog"), ("Form.Coat", "wire"))
            .PressAsync("[formaction*=Suggest]");
        Assert.Empty(asked.Page.QuerySelectorAll("[name='Form.Meant']"));

        asked = await asked.Form().With(("Form.Breed", "french")).PressAsync("[formaction*=Suggest]");
        var meant = asked.Page.QuerySelectorAll<IHtmlInputElement>("[name='Form.Meant']").Select(pick => pick.Value).ToList();
        Assert.Contains("French Bulldog", meant);

        var taken = await asked.Form().With(("Form.Meant", "French Bulldog")).PressAsync("[formaction*=Suggest]");
        Assert.Equal("French Bulldog", taken.Form()["Form.Breed"]);
        Assert.Equal("wire", taken.Form()["Form.Coat"]);
        Assert.Contains("flat-faced", taken.Form().All("Form.Hazards"));
    }

    [Fact]
    public async Task Pressed_twice_it_is_one_dog()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        using var junior = await portal.AsAsync(cast, cast.Junior);
        var form = (await junior.GetAsync("/dogs/new")).Form().With(Biscuit);
        var first = await form.SendAsync();
        var second = await form.SendAsync();

        Assert.Equal(first.Location, second.Location);
        Assert.Equal("1 dog", (await junior.GetAsync("/dogs")).Heading);
    }

    [Fact]
    public async Task Whoever_was_about_to_log_it_is_led_back_there()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        using var junior = await portal.AsAsync(cast, cast.Junior);
        var sent = await junior.SendAsync("/dogs/new?to=log", Biscuit);

        Assert.StartsWith("/log?dog=", sent.Location, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Nobody_signed_in_adds_a_dog()
    {
        var (portal, _) = await PortalHost.OpenAsync();
        await using var __ = portal;
        using var anyone = portal.Anyone();

        Assert.StartsWith(
            "/sign-in",
            new Uri((await anyone.GetAsync("/dogs/new")).Location!).AbsolutePath,
            StringComparison.Ordinal
        );
    }

    private static Task<Dog> DogAsync(PortalHost portal, Cast cast, string place) =>
        portal.DoAsync<RecordBook, Dog>(async book =>
            (
                await book.DogAsync(cast.Salon, new(Guid.Parse(place.Split('/')[^1])), TestContext.Current.CancellationToken)
            )!.Record
        );
}
