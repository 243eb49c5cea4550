using System.Net;
using Academy.Competence;
using Academy.Competence.Evidence;
using Academy.Competence.Grooms;
using Academy.Competence.Incidents;
using Academy.Competence.Standings;
using Academy.Web.Tests.Hosting;
using AngleSharp.Dom;

namespace Academy.Web.Tests.Features.Incidents;

/// <summary>The owner reviews: who was responsible, whether technique contributed, and what follows is said before.</summary>
public sealed class ReviewTests
{
    [Fact]
    public async Task Where_nothing_is_open_the_page_says_so()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        using var ines = await portal.AsAsync(cast, cast.Owner);

        var reviews = await ines.GetAsync("/reviews");

        Assert.Equal("No critical incident waits for your review", reviews.Heading);
        Assert.NotNull(reviews.Page.QuerySelector(".empty"));
    }

    [Fact]
    public async Task Open_ones_stand_oldest_first_and_what_stops_clearances_before_the_rest()
    {
        var (portal, cast, groom, first) = await CutAsync();
        await using var _ = portal;
        var second = await portal.CutAsync(cast, groom, cast.Senior);
        using var ines = await portal.AsAsync(cast, cast.Owner);

        var reviews = await ines.GetAsync("/reviews");

        Assert.Equal("2 critical incidents wait for your review", reviews.Heading);
        Assert.Equal(
            [$"/reviews/{first.Value}", $"/reviews/{second.Value}"],
            reviews.Page.QuerySelectorAll("main .rows .act2").Select(act => act.GetAttribute("href"))
        );
        Assert.InRange(await portal.Sql.OfAsync(() => ines.GetAsync("/reviews")), 1, 7);
    }

    [Fact]
    public async Task Technique_means_the_whole_way_again()
    {
        var (portal, cast, _, incident) = await CutAsync();
        await using var __ = portal;
        using var ines = await portal.AsAsync(cast, cast.Owner);
        (string, string)[] technique =
        [
            ("Form.Responsible", Of(cast)),
            ("Form.Technique", "True"),
            ("Form.Found", "Blade too steep."),
        ];

        var shown = await (await ines.GetAsync(PathOf(incident))).Form("form.signoff").With(technique).PressAsync("[data-show]");
        var saved = await shown.Form("form.signoff").SendAsync();
        var standing = await portal.StandingAsync(cast, cast.Junior, "wool");

        Assert.Contains(
            "Technique contributed: Pim walks the whole row of these skills again from no marks",
            shown.Words,
            StringComparison.Ordinal
        );
        Assert.Equal((HttpStatusCode.Redirect, "/reviews"), (saved.Status, saved.Location));
        Assert.Equal(
            (StandingKind.StoodDown, WayBack.Whole, 0),
            (standing.Kind, standing.Tally.Back, standing.Tally.OpenReviews)
        );
    }

    [Fact]
    public async Task Not_technique_is_one_groom_that_needed_fixing_and_the_stop_waits_to_be_lifted()
    {
        var (portal, cast, _, incident) = await CutAsync();
        await using var __ = portal;
        using var ines = await portal.AsAsync(cast, cast.Owner);

        var saved = await ines.SendAsync(
            PathOf(incident),
            "form.signoff",
            ("Form.Responsible", Of(cast)),
            ("Form.Technique", "False"),
            ("Form.Found", "The loop broke.")
        );
        var standing = await portal.StandingAsync(cast, cast.Junior, "wool");

        Assert.Equal(HttpStatusCode.Redirect, saved.Status);
        Assert.Equal((StandingKind.StoodDown, false), (standing.Kind, standing.Tally.StandDown!.IsTechnique));
        Assert.Equal(Competence.Statistics.Verdict.Unsuitable, standing.Tally.Last[^1].Verdict);
    }

    [Fact]
    public async Task Nobody_responsible_ends_the_stop()
    {
        var (portal, cast, _, incident) = await CutAsync();
        await using var __ = portal;
        using var ines = await portal.AsAsync(cast, cast.Owner);
        (string, string)[] nobody = [("Form.Responsible", "nobody"), ("Form.Found", "It came with the wound.")];

        var shown = await (await ines.GetAsync(PathOf(incident))).Form("form.signoff").With(nobody).PressAsync("[data-show]");
        await shown.Form("form.signoff").SendAsync();

        Assert.Contains("Wool: Pim is no longer stood down.", shown.Words, StringComparison.Ordinal);
        Assert.Equal(StandingKind.Alone, (await portal.StandingAsync(cast, cast.Junior, "wool")).Kind);
        Assert.Equal("Skin opened through, moderate: reviewed", (await ines.GetAsync(PathOf(incident))).Heading);
    }

    [Fact]
    public async Task Nothing_chosen_is_refused_with_all_that_is_missing()
    {
        var (portal, cast, _, incident) = await CutAsync();
        await using var __ = portal;
        using var ines = await portal.AsAsync(cast, cast.Owner);

        var refused = await ines.SendAsync(PathOf(incident), "form.signoff");
        var half = await ines.SendAsync(PathOf(incident), "form.signoff", ("Form.Responsible", Of(cast)));

        Assert.Equal(HttpStatusCode.UnprocessableEntity, refused.Status);
        Assert.Equal(["Choose who was responsible, or nobody.", "Write what the review found."], refused.Problems.Order());
        Assert.Equal(["Choose whether technique contributed.", "Write what the review found."], half.Problems.Order());
    }

    [Fact]
    public async Task A_second_review_from_an_old_page_is_shown_the_first_and_a_double_post_is_one()
    {
        var (portal, cast, _, incident) = await CutAsync();
        await using var __ = portal;
        using var ines = await portal.AsAsync(cast, cast.Owner);
        (string, string)[] found = [("Form.Responsible", "nobody"), ("Form.Found", "It came with the wound.")];
        var one = (await ines.GetAsync(PathOf(incident))).Form("form.signoff").With(found);
        var old = (await ines.GetAsync(PathOf(incident)))
            .Form("form.signoff")
            .With(("Form.Responsible", Of(cast)), ("Form.Technique", "True"), ("Form.Found", "Other."));

        Assert.Equal(HttpStatusCode.Redirect, (await one.SendAsync()).Status);
        Assert.Equal(HttpStatusCode.Redirect, (await one.SendAsync()).Status);
        var moved = await old.SendAsync();

        Assert.Equal(HttpStatusCode.Conflict, moved.Status);
        Assert.Contains("It came with the wound.", moved.Words, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Reviews_open_for_the_owner_alone_and_for_this_salon()
    {
        var (portal, cast, groom, incident) = await CutAsync();
        await using var _ = portal;
        var other = await portal.OpenSalonAsync("The Dry Towel");
        using var rosa = await portal.AsAsync(cast, cast.Senior);
        using var stranger = await portal.AsAsync(other, other.Owner);
        var complaint = $"/grooms/{groom.Id.Value}/complaint";

        foreach (var path in new[] { "/reviews", PathOf(incident), complaint })
            Assert.Equal(HttpStatusCode.Forbidden, (await rosa.GetAsync(path)).Status);
        foreach (var path in new[] { PathOf(incident), complaint })
            Assert.Equal(HttpStatusCode.NotFound, (await stranger.GetAsync(path)).Status);
        Assert.Equal("No critical incident waits for your review", (await stranger.GetAsync("/reviews")).Heading);
    }

    [Fact]
    public async Task A_complaint_upheld_is_one_groom_that_needed_fixing_and_says_so_before()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        var grooms = await portal.WoolAsync(cast, cast.Junior, marks: 8);
        using var ines = await portal.AsAsync(cast, cast.Owner);
        var path = $"/grooms/{grooms[^1].Id.Value}/complaint";

        var shown = await ines.GetAsync(path);
        var refused = await shown.Form("form.signoff").SendAsync();
        var saved = await refused.Form("form.signoff").With(("Form.Says", "Uneven legs, done again.")).SendAsync();

        Assert.Equal("Pim: one that needed fixing", shown.Page.QuerySelector(".savebar #will")!.TextContent);
        Assert.Contains("8 to 1 of 17", shown.Words, StringComparison.Ordinal);
        Assert.Equal(["Write what happened."], refused.Problems);
        Assert.Equal(HttpStatusCode.Redirect, saved.Status);
        Assert.Equal(1, (await portal.StandingAsync(cast, cast.Junior, "wool")).Tally.Row);
    }

    private static async Task<(PortalHost Portal, Cast Cast, Groom Groom, IncidentId Incident)> CutAsync()
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
        var incident = await portal.CutAsync(cast, groom, cast.Junior);
        portal.Clock.Advance(TimeSpan.FromMinutes(5));
        return (portal, cast, groom, incident);
    }

    private static string PathOf(IncidentId incident) => $"/reviews/{incident.Value}";

    private static string Of(Cast cast) => cast.Junior.Id.Value.ToString();
}
