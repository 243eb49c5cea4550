using System.Net;
using Academy.Competence;
using Academy.Competence.Grooms;
using Academy.Competence.Incidents;
using Academy.Competence.People;
using Academy.Competence.Salons;
using Academy.Competence.SignOffs;
using Academy.Competence.Skills;
using Academy.Competence.Standings;
using Academy.Web.Tests.Hosting;
using AngleSharp.Dom;

namespace Academy.Web.Tests.Features.Grooms;

public sealed class StoryTests
{
    [Fact]
    public async Task A_groom_reads_as_it_was_told_and_says_what_nobody_noted()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        var told = await portal.GroomAsync(
            cast,
            await portal.MeetAsync(cast),
            cast.Junior,
            cast.Senior,
            groom =>
                groom with
                {
                    Condition = CoatCondition.Mats,
                    Checks = [new(WelfareCheck.ArrivalPads, portal.Now.AddMinutes(-58))],
                    Blades = ["10", "comb"],
                    Room = new(portal.Now.AddMinutes(-90), 235, 61),
                    Notes = new("<b>Calm</b> after the bath."),
                }
        );
        using var junior = await portal.AsAsync(cast, cast.Junior);
        var page = await junior.GetAsync($"/grooms/{told.Id.Value}");

        Assert.Equal("Biscuit, Wednesday 10 June", page.Heading);
        Assert.Contains("Rosa watched. Pim: waits for the sign-off.", page.Words, StringComparison.Ordinal);
        Assert.Contains("9:00 to 10:00, 60 minutes", page.Words, StringComparison.Ordinal);
        Assert.Contains("10, guard comb", page.Words, StringComparison.Ordinal);
        Assert.Contains("23.5 °C, 61 %, read 8:30 today", page.Words, StringComparison.Ordinal);
        Assert.Contains("<b>Calm</b> after the bath.", page.Words, StringComparison.Ordinal);
        Assert.Contains(
            "Not noted: water offered before the bath; water offered after the bath; water offered after the groom; consent: clip-off of a matted coat.",
            page.Words,
            StringComparison.Ordinal
        );
        Assert.NotNull(page.Page.QuerySelector($"a[href='/log/{told.Id.Value}']"));
        Assert.NotNull(page.Page.QuerySelector($"a[href='/grooms/{told.Id.Value}/incident']"));
    }

    [Fact]
    public async Task A_junior_sees_her_own_a_senior_those_of_juniors_and_what_she_watched_the_owner_all()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        var dog = await portal.MeetAsync(cast);
        var juniors = await portal.GroomAsync(cast, dog, cast.Junior, cast.Senior);
        var seniors = await portal.GroomAsync(cast, dog, cast.Senior, watcher: null);
        var watched = await portal.GroomAsync(cast, dog, cast.Senior, cast.SecondSenior);

        Assert.Equal([true, false, false], await SeenByAsync(cast.Junior));
        Assert.Equal([false, false, false], await SeenByAsync(cast.SecondJunior));
        Assert.Equal([true, false, true], await SeenByAsync(cast.SecondSenior));
        Assert.Equal([true, true, true], await SeenByAsync(cast.Owner));

        async Task<IReadOnlyList<bool>> SeenByAsync(Person person)
        {
            using var visitor = await portal.AsAsync(cast, person);
            var seen = new List<bool>();
            foreach (var groom in new[] { juniors, seniors, watched })
                seen.Add((await visitor.GetAsync($"/grooms/{groom.Id.Value}")).Status == HttpStatusCode.OK);
            return seen;
        }
    }

    [Fact]
    public async Task Another_salons_groom_is_not_there()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        var other = await portal.OpenSalonAsync("The Dry Nose");
        var theirs = await portal.GroomAsync(other, await portal.MeetAsync(other), other.Junior, other.Senior);
        using var owner = await portal.AsAsync(cast, cast.Owner);

        Assert.Equal(HttpStatusCode.NotFound, (await owner.GetAsync($"/grooms/{theirs.Id.Value}")).Status);
        Assert.Equal(HttpStatusCode.NotFound, (await owner.GetAsync($"/grooms/{portal.New()}")).Status);
    }

    [Fact]
    public async Task Sign_offs_replaced_and_disputed_stay_visible()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        var told = await portal.GroomAsync(cast, await portal.MeetAsync(cast), cast.Junior, cast.Senior);
        var first = await SignAsync(portal, cast, GroomStory.Of(told, portal.Now), replaces: null);
        await portal.DisputeAsync(cast, told, first, "The tail was done.");
        await SignAsync(portal, cast, Signed(told, portal.Now, first), replaces: first.Id);
        using var junior = await portal.AsAsync(cast, cast.Junior);
        var page = await junior.GetAsync($"/grooms/{told.Id.Value}");

        Assert.Equal("Signed off.", page.Page.QuerySelector(".lead")!.TextContent);
        Assert.Equal(2, page.Page.QuerySelectorAll("section[aria-labelledby=signed] li").Length);
        Assert.Contains("Disputed by Pim 10:00 today: “The tail was done.” No answer yet.", page.Words, StringComparison.Ordinal);
        Assert.Contains("Replaced by a later one.", page.Words, StringComparison.Ordinal);
        Assert.Contains("Corrects an earlier one: Seen again.", page.Words, StringComparison.Ordinal);
        Assert.Null(page.Page.QuerySelector($"a[href='/log/{told.Id.Value}']"));
    }

    [Fact]
    public async Task A_senior_is_led_to_the_sign_off_and_a_signed_groom_is_no_longer_put_right()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        var told = await portal.GroomAsync(cast, await portal.MeetAsync(cast), cast.Junior, cast.Senior);
        using var senior = await portal.AsAsync(cast, cast.Senior);
        var page = await senior.GetAsync($"/grooms/{told.Id.Value}");
        Assert.Equal(
            $"/sign-offs/{told.Id.Value}?person={cast.Junior.Id.Value}",
            page.Page.QuerySelector("a.act")!.GetAttribute("href")
        );

        await SignAsync(portal, cast, GroomStory.Of(told, portal.Now), replaces: null);
        Assert.Null((await senior.GetAsync($"/grooms/{told.Id.Value}")).Page.QuerySelector("a.act"));
        using var junior = await portal.AsAsync(cast, cast.Junior);
        Assert.Equal($"/grooms/{told.Id.Value}", (await junior.GetAsync($"/log/{told.Id.Value}")).Location);
    }

    [Fact]
    public async Task An_incident_shows_who_says_what_and_that_it_waits()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        var told = await portal.GroomAsync(cast, await portal.MeetAsync(cast), cast.Junior, cast.Senior);
        var draft = new IncidentDraft(
            new IncidentId(portal.New()),
            cast.Junior.Id,
            portal.Now,
            IncidentKind.Nick,
            Severity.Serious,
            BodySite.FlankOrArmpit,
            [SkillBook.Brushing],
            VetContact.Seen,
            new Words("A fold in the comb."),
            new Words("Pressed, phoned, driven.")
        );
        await portal.KeepAsync(cast.Salon, Reporting.Report(draft, told, cast.Senior, new HouseRules(), portal.Now), cast.Senior);
        using var junior = await portal.AsAsync(cast, cast.Junior);
        var page = await junior.GetAsync($"/grooms/{told.Id.Value}");

        Assert.Contains("Nick or graze, serious", page.Words, StringComparison.Ordinal);
        Assert.Contains("Critical by the salon’s list.", page.Words, StringComparison.Ordinal);
        Assert.Contains("Done: Pressed, phoned, driven.", page.Words, StringComparison.Ordinal);
        Assert.Contains("reported by Rosa 10:00 today", page.Words, StringComparison.Ordinal);
        Assert.Contains("Waits for the owner’s review.", page.Words, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_story_takes_few_commands()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        var told = await portal.GroomAsync(cast, await portal.MeetAsync(cast), cast.Junior, cast.Senior);
        using var junior = await portal.AsAsync(cast, cast.Junior);
        var path = $"/grooms/{told.Id.Value}";
        await junior.GetAsync(path);
        var plain = await portal.Sql.OfAsync(() => junior.GetAsync(path));
        await SignAsync(portal, cast, GroomStory.Of(told, portal.Now), replaces: null);
        await junior.GetAsync(path);

        Assert.Equal(plain, await portal.Sql.OfAsync(() => junior.GetAsync(path)));
        Assert.InRange(plain, 1, 9);
    }

    private static GroomStory Signed(Groom told, DateTimeOffset at, SignOff signed) =>
        GroomStory.Of(told, at) with
        {
            SignOffs = [signed],
        };

    private static async Task<SignOff> SignAsync(PortalHost portal, Cast cast, GroomStory story, SignOffId? replaces)
    {
        if (replaces is null)
            await portal.DeclareAsync(cast, cast.Senior, "wire", "bath", "brushing");
        var skills = story.Groom.SkillsOf(cast.Junior.Id).ToDictionary(skill => skill, _ => StandingKind.Alone);
        var draft = new SignOffDraft(
            new SignOffId(portal.New()),
            cast.Junior.Id,
            HasWatched: true,
            SupportLevel.StoodBy,
            Criteria.AllMet,
            [],
            ["ask-sooner"],
            Words.None,
            replaces,
            replaces is null ? default : new Words("Seen again.")
        );
        var decision = SigningOff.Decide(
            draft,
            story,
            new Signer(cast.Senior, skills, [portal.Today]),
            new SkillKinds(SkillBook.Defaults),
            portal.Now,
            Cast.Zone
        );
        await portal.KeepAsync(cast.Salon, decision, cast.Senior);
        return ((Academy.Competence.Facts.SignedOff)((Granted)decision).Facts[0]).SignOff;
    }
}
