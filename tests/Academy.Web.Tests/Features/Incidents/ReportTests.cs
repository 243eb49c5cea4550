using System.Net;
using Academy.Competence;
using Academy.Competence.Grooms;
using Academy.Competence.Incidents;
using Academy.Competence.Salons;
using Academy.Competence.Standings;
using Academy.Storage;
using Academy.Web.Tests.Hosting;

namespace Academy.Web.Tests.Features.Incidents;

/// <summary>Anyone who may see a groom may report on it, also days later; a critical incident stops clearances at once.</summary>
public sealed class ReportTests
{
    [Fact]
    public async Task A_critical_incident_stops_the_clearance_at_once_and_the_page_says_so_before()
    {
        var (portal, cast, groom) = await AloneAsync();
        await using var _ = portal;
        using var pim = await portal.AsAsync(cast, cast.Junior);

        var shown = await ShowAsync(pim, groom, Cut);
        var saved = await shown.Form("form.signoff").SendAsync();

        Assert.Equal("Stops at once: wool", Will(shown));
        Assert.Contains("It does not wait for the review.", shown.Words, StringComparison.Ordinal);
        Assert.Contains("Pim is stood down at once: wool.", shown.Words, StringComparison.Ordinal);
        Assert.Equal((HttpStatusCode.Redirect, $"/grooms/{groom.Id.Value}"), (saved.Status, saved.Location));
        Assert.Equal(StandingKind.StoodDown, (await portal.StandingAsync(cast, cast.Junior, "wool")).Kind);
    }

    [Fact]
    public async Task A_near_miss_lowers_nothing_and_the_page_says_so()
    {
        var (portal, cast, groom) = await AloneAsync();
        await using var _ = portal;
        using var pim = await portal.AsAsync(cast, cast.Junior);
        var before = (await portal.StandingAsync(cast, cast.Junior, "wool")).Tally;

        var shown = await ShowAsync(
            pim,
            groom,
            [.. Cut[..1], ("Incident.Severity", "NearMiss"), ("Incident.WhatHappened", "Nearly.")]
        );
        await shown.Form("form.signoff").SendAsync();

        Assert.Equal("Stops nothing", Will(shown));
        Assert.Contains(
            "A near miss harmed nobody: it lowers no row and stops no clearance",
            shown.Words,
            StringComparison.Ordinal
        );
        Assert.Equal(before, (await portal.StandingAsync(cast, cast.Junior, "wool")).Tally);
        Assert.False(Assert.Single((await StoryAsync(portal, cast, groom)).Incidents).Incident.IsCritical);
    }

    [Fact]
    public async Task Red_skin_that_showed_at_home_two_days_later_is_reported_with_its_own_day()
    {
        var (portal, cast, groom) = await AloneAsync();
        await using var _ = portal;
        portal.Clock.Advance(TimeSpan.FromDays(3));
        using var dora = await portal.AsAsync(cast, cast.SecondSenior);

        var saved = await dora.SendAsync(
            PathOf(groom),
            "form.signoff",
            ("Incident.Kind", "RedSkin"),
            ("Incident.Severity", "Slight"),
            ("Incident.NoticedOn", "12.6.2026"),
            ("Incident.NoticedAt", "18:30"),
            ("Incident.WhatHappened", "The client phoned: red skin at the flank.")
        );
        var incident = Assert.Single((await StoryAsync(portal, cast, groom)).Incidents).Incident;

        Assert.Equal(HttpStatusCode.Redirect, saved.Status);
        Assert.Equal(new DateTimeOffset(2026, 6, 12, 16, 30, 0, TimeSpan.Zero), incident.NoticedAt);
        Assert.Equal((cast.SecondSenior.Id, cast.Junior.Id), (incident.ReportedBy, incident.Person));
    }

    [Fact]
    public async Task What_was_not_said_is_asked_for_beside_its_field_and_what_was_typed_is_kept()
    {
        var (portal, cast, groom) = await AloneAsync();
        await using var _ = portal;
        using var pim = await portal.AsAsync(cast, cast.Junior);

        var bare = await pim.SendAsync(
            PathOf(groom),
            "form.signoff",
            ("Incident.NoticedOn", "the other day"),
            ("Incident.WhatWasDone", "Cooled.")
        );
        var wordless = await pim.SendAsync(
            PathOf(groom),
            "form.signoff",
            ("Incident.Kind", "Nick"),
            ("Incident.Severity", "Slight")
        );
        var ahead = await pim.SendAsync(PathOf(groom), "form.signoff", [.. Cut, ("Incident.NoticedOn", "2026-07-01")]);

        Assert.Equal(
            [
                "Choose what it was.",
                "Choose how bad it was for the dog.",
                "Noticed: write a day such as 14/7/2026 and a time such as 9:02.",
            ],
            bare.Problems
        );
        Assert.Equal("Cooled.", bare.Form("form.signoff")["Incident.WhatWasDone"]);
        Assert.Equal(["Write what happened."], wordless.Problems);
        Assert.Contains("lies in the future", Assert.Single(ahead.Problems), StringComparison.Ordinal);
        Assert.Empty((await StoryAsync(portal, cast, groom)).Incidents);
    }

    [Fact]
    public async Task A_bite_says_that_what_happened_to_a_person_goes_into_the_accident_book()
    {
        var (portal, cast, groom) = await AloneAsync();
        await using var _ = portal;
        using var pim = await portal.AsAsync(cast, cast.Junior);

        Assert.Contains(
            "An injury to a person is not described here: it goes into the salon's accident book.",
            (await pim.GetAsync(PathOf(groom))).Words,
            StringComparison.Ordinal
        );
    }

    [Fact]
    public async Task A_double_post_is_one_incident()
    {
        var (portal, cast, groom) = await AloneAsync();
        await using var _ = portal;
        using var pim = await portal.AsAsync(cast, cast.Junior);
        var form = (await pim.GetAsync(PathOf(groom))).Form("form.signoff").With(Cut);

        Assert.Equal(HttpStatusCode.Redirect, (await form.SendAsync()).Status);
        Assert.Equal(HttpStatusCode.Redirect, (await form.SendAsync()).Status);
        Assert.Single((await StoryAsync(portal, cast, groom)).Incidents);
    }

    [Fact]
    public async Task A_junior_reports_on_her_own_grooms_and_other_salons_are_not_found()
    {
        var (portal, cast, groom) = await AloneAsync();
        await using var _ = portal;
        var other = await portal.OpenSalonAsync("The Dry Towel");
        using var juno = await portal.AsAsync(cast, cast.SecondJunior);
        using var stranger = await portal.AsAsync(other, other.Owner);

        Assert.Equal(HttpStatusCode.NotFound, (await juno.GetAsync(PathOf(groom))).Status);
        Assert.Equal(HttpStatusCode.NotFound, (await stranger.GetAsync(PathOf(groom))).Status);
        Assert.Equal(HttpStatusCode.Redirect, (await portal.Anyone().GetAsync(PathOf(groom))).Status);
    }

    [Fact]
    public async Task The_page_is_cheap()
    {
        var (portal, cast, groom) = await AloneAsync();
        await using var _ = portal;
        using var pim = await portal.AsAsync(cast, cast.Junior);
        await pim.GetAsync(PathOf(groom));

        Assert.InRange(await portal.Sql.OfAsync(() => pim.GetAsync(PathOf(groom))), 1, 10);
    }

    private static readonly (string Name, string Value)[] Cut =
    [
        ("Incident.Kind", "SkinOpened"),
        ("Incident.Severity", "Moderate"),
        ("Incident.WhatHappened", "A cut at the flank, skin through."),
    ];

    private static async Task<(PortalHost Portal, Cast Cast, Groom Groom)> AloneAsync()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await portal.WoolAsync(cast, cast.Junior, marks: 0);
        await portal.ClearAsync(cast, cast.Junior, "wool", against: "Groomed wool for years elsewhere.");
        portal.Clock.Advance(TimeSpan.FromHours(1));
        var groom = await portal.LogAsync(
            cast,
            cast.Junior,
            watcher: null,
            await portal.MeetAsync(cast, "Fig", "Bichon Frise", "wool")
        );
        portal.Clock.Advance(TimeSpan.FromMinutes(5));
        return (portal, cast, groom);
    }

    private static async Task<Answer> ShowAsync(Visitor visitor, Groom groom, (string, string)[] typed) =>
        await (await visitor.GetAsync(PathOf(groom))).Form("form.signoff").With(typed).PressAsync("[data-show]");

    private static string PathOf(Groom groom) => $"/grooms/{groom.Id.Value}/incident";

    private static string Will(Answer answer) => answer.Page.QuerySelector(".savebar #will")!.TextContent;

    private static async Task<GroomStory> StoryAsync(PortalHost portal, Cast cast, Groom groom) =>
        (await portal.DoAsync<RecordBook, Known<GroomRecord>?>(records => records.GroomAsync(cast.Salon, groom.Id, default)))!
            .Record
            .Story!;
}
