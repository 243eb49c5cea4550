using System.Net;
using Academy.Competence;
using Academy.Competence.Dogs;
using Academy.Competence.Grooms;
using Academy.Competence.Incidents;
using Academy.Competence.People;
using Academy.Competence.Salons;
using Academy.Competence.Skills;
using Academy.Web.Tests.Hosting;

namespace Academy.Web.Tests.Features.DogChecks;

public sealed class CheckTests
{
    private static readonly string[] Asked = ["bath", "nails"];

    [Fact]
    public async Task A_senior_who_is_in_and_alone_in_all_of_it_may_and_a_junior_may_with_her_beside()
    {
        var (portal, cast) = await OpenAsync(cast => [cast.Senior, cast.Junior]);
        await portal.DeclareAsync(cast, cast.Senior, "smooth", "bath", "nails");
        var dog = await portal.MeetAsync(cast, Smooth);
        using var pim = await portal.AsAsync(cast, cast.Junior);

        var answer = await pim.GetAsync(Ask(dog));

        Assert.Equal("Winkle: Rosa, alone", answer.Heading);
        Assert.Equal(["Rosa"], Names(answer, "may-alone"));
        Assert.Equal(["Pim"], Names(answer, "with-somebody"));
        Assert.Contains("With Rosa beside.", answer.Words, StringComparison.Ordinal);
        Assert.Contains("Juno", Names(answer, "not-this-dog"));
        portal.Dispose();
    }

    [Fact]
    public async Task A_dog_without_agreed_work_is_not_everybodys()
    {
        var (portal, cast) = await OpenAsync(cast => cast.Everybody);
        await portal.DeclareAsync(cast, cast.Senior, "smooth");
        var dog = await portal.MeetAsync(cast, Smooth);
        using var rosa = await portal.AsAsync(cast, cast.Senior);

        var answer = await rosa.GetAsync(Ask(dog, techniques: []));

        Assert.Equal("Winkle: nobody before something more is known", answer.Heading);
        Assert.Empty(Names(answer, "may-alone"));
        portal.Dispose();
    }

    [Fact]
    public async Task At_the_stop_line_nobody_grooms()
    {
        var (portal, cast) = await OpenAsync(cast => cast.Everybody);
        await portal.DeclareAsync(cast, cast.Senior, "smooth", "bath", "nails", "hot-day");
        var dog = await portal.MeetAsync(cast, Smooth);
        await portal.ReadRoomAsync(cast, tenthsC: 300);
        using var rosa = await portal.AsAsync(cast, cast.Senior);

        var answer = await rosa.GetAsync(Ask(dog));

        Assert.Equal("Winkle: nobody, now", answer.Heading);
        Assert.Contains("30.0 °C", answer.Words, StringComparison.Ordinal);
        Assert.Empty(Names(answer, "may-alone"));
        portal.Dispose();
    }

    [Fact]
    public async Task A_dog_at_risk_in_heat_is_nobodys_without_a_reading_in_season()
    {
        var (portal, cast) = await OpenAsync(cast => cast.Everybody);
        await portal.DeclareAsync(cast, cast.Senior, "smooth", "bath", "nails", "flat-faced");
        var dog = await portal.MeetAsync(cast, Smooth with { Hazards = [SkillBook.FlatFaced] });
        using var rosa = await portal.AsAsync(cast, cast.Senior);

        var answer = await rosa.GetAsync(Ask(dog));

        Assert.Equal("Winkle: nobody before something more is known", answer.Heading);
        portal.Dispose();
    }

    [Fact]
    public async Task Laboured_breathing_comes_before_every_clearance()
    {
        var (portal, cast) = await OpenAsync(cast => cast.Everybody);
        await portal.DeclareAsync(cast, cast.Senior, "smooth", "bath", "nails");
        var dog = await portal.MeetAsync(cast, Smooth);
        using var rosa = await portal.AsAsync(cast, cast.Senior);

        var answer = await rosa.GetAsync(Ask(dog) + "&Form.Breathing=true");

        Assert.Equal("Winkle: nobody, now", answer.Heading);
        Assert.Contains("vet", answer.Words, StringComparison.Ordinal);
        portal.Dispose();
    }

    [Fact]
    public async Task A_critical_incident_turns_the_answer_to_no_at_once()
    {
        var (portal, cast) = await OpenAsync(cast => [cast.Senior]);
        await portal.DeclareAsync(cast, cast.Senior, "smooth", "bath", "nails");
        var dog = await portal.MeetAsync(cast, Smooth);
        using var rosa = await portal.AsAsync(cast, cast.Senior);
        Assert.Equal("Winkle: Rosa, alone", (await rosa.GetAsync(Ask(dog))).Heading);

        var groom = await portal.GroomAloneAsync(cast, cast.Senior, dog);
        await portal.HurtAsync(cast, groom);
        var answer = await rosa.GetAsync(Ask(dog));

        Assert.Equal("Winkle: nobody who is in today", answer.Heading);
        Assert.Equal("Rosa", Assert.Single(Names(answer, "not-this-dog"), name => name == "Rosa"));
        portal.Dispose();
    }

    [Fact]
    public async Task A_past_moment_is_answered_from_what_was_known_then()
    {
        var (portal, cast) = await OpenAsync(cast => [cast.Senior]);
        var dog = await portal.MeetAsync(cast, Smooth);
        portal.Clock.Advance(TimeSpan.FromHours(1));
        var before = TimeZoneInfo.ConvertTime(portal.Now, Cast.Zone);
        portal.Clock.Advance(TimeSpan.FromHours(1));
        await portal.DeclareAsync(cast, cast.Senior, "smooth", "bath", "nails");
        using var rosa = await portal.AsAsync(cast, cast.Senior);

        var then = await rosa.GetAsync(Ask(dog) + $"&Form.On={before:yyyy-MM-dd}&Form.Time={before:HH:mm}");

        Assert.Equal("Winkle: nobody who is in today", then.Heading);
        Assert.Equal("Winkle: Rosa, alone", (await rosa.GetAsync(Ask(dog))).Heading);
        Assert.Contains("as it was known then", then.Words, StringComparison.Ordinal);
        portal.Dispose();
    }

    [Fact]
    public async Task A_moment_that_lies_ahead_is_not_answered()
    {
        var (portal, cast) = await OpenAsync(cast => [cast.Senior]);
        var dog = await portal.MeetAsync(cast, Smooth);
        using var rosa = await portal.AsAsync(cast, cast.Senior);

        var answer = await rosa.GetAsync(Ask(dog) + "&Form.On=2026-12-24&Form.Time=9:00");

        Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.Status);
        Assert.Equal(["Give the day and the time of a moment that has been, such as 14/7/2026 and 14:00."], answer.Problems);
        portal.Dispose();
    }

    [Fact]
    public async Task A_dog_of_another_salon_is_not_there()
    {
        var (portal, cast) = await OpenAsync(cast => [cast.Senior]);
        var other = await portal.OpenSalonAsync("The Dry Nose");
        var theirs = await portal.MeetAsync(other, Smooth);
        using var rosa = await portal.AsAsync(cast, cast.Senior);

        Assert.Equal(HttpStatusCode.NotFound, (await rosa.GetAsync(Ask(theirs))).Status);
        portal.Dispose();
    }

    [Fact]
    public async Task A_dog_described_on_the_spot_is_answered_too()
    {
        var (portal, cast) = await OpenAsync(cast => [cast.Senior]);
        await portal.DeclareAsync(cast, cast.Senior, "wool", "bath");
        using var rosa = await portal.AsAsync(cast, cast.Senior);

        var answer = await rosa.GetAsync(
            "/dog-check?Form.IsAsked=true&Form.IsDescribed=true&Form.Breed=Cockapoo&Form.Coat=wool&Form.Age=Grown&Form.Weight=11&Form.Techniques=bath"
        );

        Assert.Equal("This Cockapoo: Rosa, alone", answer.Heading);
        portal.Dispose();
    }

    [Fact]
    public async Task Hostile_words_come_back_as_words()
    {
        var (portal, cast) = await OpenAsync(cast => [cast.Senior]);
        var dog = await portal.MeetAsync(cast, Smooth with { Name = "<script>alert(1)</script>" });
        using var rosa = await portal.AsAsync(cast, cast.Senior);

        var answer = await rosa.GetAsync(Ask(dog));

        Assert.StartsWith("<script>alert(1)</script>: ", answer.Heading, StringComparison.Ordinal);
        Assert.DoesNotContain(answer.Page.Scripts, script => script.Text.Contains("alert", StringComparison.Ordinal));
        portal.Dispose();
    }

    [Fact]
    public async Task An_empty_salon_says_what_to_do()
    {
        var (portal, cast) = await OpenAsync(_ => []);
        using var ines = await portal.AsAsync(cast, cast.Owner);

        var answer = await ines.GetAsync("/dog-check");

        Assert.Equal("Which dog?", answer.Heading);
        Assert.Contains("There are no dogs in the book yet. Describe one below.", answer.Words, StringComparison.Ordinal);
        portal.Dispose();
    }

    private static readonly Dog Smooth = new(
        default,
        "Winkle",
        "Beagle",
        SkillBook.Smooth,
        SecondCoat: null,
        Hazards: [],
        BornOn: new DateOnly(2022, 5, 1),
        AgeByLook.NotSaid,
        WeightKg: 13
    );

    private static async Task<(PortalHost Portal, Cast Cast)> OpenAsync(Func<Cast, IEnumerable<Person>> isIn)
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        foreach (var person in isIn(cast))
            await portal.KeepAsync(cast.Salon, Staffing.Tick(person, portal.Today, isIn: true, cast.Owner), cast.Owner);
        return (portal, cast);
    }

    private static string Ask(DogId dog, string[]? techniques = null) =>
        $"/dog-check?Form.Dog={dog.Value}&Form.IsAsked=true"
        + string.Concat((techniques ?? Asked).Select(one => $"&Form.Techniques={one}"));

    private static IReadOnlyList<string> Names(Answer answer, string group) =>
        [.. answer.Page.QuerySelectorAll($"section[aria-labelledby={group}] h3").Select(name => name.TextContent.Trim())];
}

/// <summary>What happens on the floor of a test salon.</summary>
internal static class Floor
{
    public static async Task<DogId> MeetAsync(this PortalHost portal, Cast cast, Dog dog)
    {
        var met = dog with { Id = new DogId(portal.New()) };
        await portal.KeepAsync(cast.Salon, DogKeeping.Describe(met, portal.Today), cast.Owner);
        return met.Id;
    }

    public static Task ReadRoomAsync(this PortalHost portal, Cast cast, int tenthsC) =>
        portal.KeepAsync(
            cast.Salon,
            Keeping.ReadRoom(new RoomReading(portal.Now, tenthsC, HumidityPct: null), "table room", portal.Now),
            cast.Senior
        );

    public static async Task<Groom> GroomAloneAsync(this PortalHost portal, Cast cast, Person person, DogId dog)
    {
        var groom = new Groom(
            new GroomId(portal.New()),
            dog,
            person.Id,
            Watcher: null,
            portal.Now.AddHours(-1),
            portal.Now,
            "Beagle",
            SkillBook.Smooth,
            SecondCoat: null,
            CoatCondition.CombedThrough,
            person.Id,
            [new Part(SkillBook.Bath, person.Id)],
            Blades: [],
            Hazards: [],
            Consents: [],
            Checks: [],
            Signs: [],
            Room: null,
            EndedEarly: false,
            Phrases: [],
            Words.None
        );
        await portal.KeepAsync(cast.Salon, Logging.Log(groom, earlier: null, person, portal.Now, Cast.Zone), person);
        return groom;
    }

    public static Task HurtAsync(this PortalHost portal, Cast cast, Groom groom) =>
        portal.KeepAsync(
            cast.Salon,
            Reporting.Report(
                new IncidentDraft(
                    new IncidentId(portal.New()),
                    groom.By,
                    portal.Now,
                    IncidentKind.Burn,
                    Severity.Moderate,
                    BodySite.BellyOrGroin,
                    During: [],
                    VetContact.Phoned,
                    new Words("The blade was hot."),
                    new Words("Cool water, vet phoned.")
                ),
                groom,
                cast.Junior,
                new HouseRules(),
                portal.Now
            ),
            cast.Junior
        );
}
