using System.Net;
using Academy.Competence.Grooms;
using Academy.Competence.SignOffs;
using Academy.Web.Tests.Hosting;
using AngleSharp.Dom;

namespace Academy.Web.Tests.Features.Disputes;

/// <summary>Whoever was judged may dispute; the owner answers; both stay visible. The owner lets a late one count.</summary>
public sealed class DisputeTests
{
    [Fact]
    public async Task A_junior_disputes_the_owner_takes_it_back_and_both_stay_visible()
    {
        var (portal, cast, _, signed) = await SignedAsync(suits: false);
        await using var __ = portal;
        using var pim = await portal.AsAsync(cast, cast.Junior);
        using var ines = await portal.AsAsync(cast, cast.Owner);

        var disputed = await pim.SendAsync(PathOf(signed), ("Form.Says", "She only held the lead."));
        var told = await disputed.FollowAsync();
        var open = await ines.GetAsync("/disputes");
        var shown = await ines.GetAsync(PathOf(signed));
        var answered = await shown
            .Form()
            .With(("Form.Overturn", "True"), ("Form.Says", "The camera agrees with Pim."))
            .SendAsync();
        var after = await pim.GetAsync(PathOf(signed));

        Assert.Equal("The owner sees your dispute and answers it.", told.Said);
        Assert.Equal("1 dispute waits for your answer", open.Heading);
        Assert.Contains(PathOf(signed), open.Page.QuerySelectorAll("main a").Select(way => way.GetAttribute("href")));
        Assert.Contains("Wool, 0 to 3 of 17", shown.Words, StringComparison.Ordinal);
        Assert.Equal(HttpStatusCode.Redirect, answered.Status);
        Assert.Equal("Disputed, and taken back", after.Heading);
        Assert.Contains("She only held the lead.", after.Words, StringComparison.Ordinal);
        Assert.Contains("The camera agrees with Pim.", after.Words, StringComparison.Ordinal);
        Assert.Contains("The owner took it back after a dispute: it does not count.", after.Words, StringComparison.Ordinal);
        Assert.Equal(3, (await portal.StandingAsync(cast, cast.Junior, "wool")).Tally.Row);
        Assert.Equal("No dispute waits for your answer", (await ines.GetAsync("/disputes")).Heading);
    }

    [Fact]
    public async Task An_owner_who_was_the_judge_is_told_and_the_record_says_so()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        await portal.WoolAsync(cast, cast.Junior, marks: 0);
        await portal.DeclareAsync(cast, cast.Owner, "wool");
        portal.Clock.Advance(TimeSpan.FromHours(1));
        var groom = await portal.LogAsync(
            cast,
            cast.Junior,
            cast.Owner,
            await portal.MeetAsync(cast, "Fig", "Bichon Frise", "wool")
        );
        var signed = await portal.SignAsync(cast, cast.Owner, groom, suits: false);
        using var pim = await portal.AsAsync(cast, cast.Junior);
        using var ines = await portal.AsAsync(cast, cast.Owner);
        await pim.SendAsync(PathOf(signed), ("Form.Says", "I see it differently."));

        var shown = await ines.GetAsync(PathOf(signed));
        await shown.Form().With(("Form.Overturn", "False"), ("Form.Says", "I looked again: it stands.")).SendAsync();
        var after = await pim.GetAsync(PathOf(signed));

        Assert.Contains("You judged this groom yourself.", shown.Words, StringComparison.Ordinal);
        Assert.Equal("Disputed, and it stands", after.Heading);
        Assert.Contains("The owner lets it stand. The owner was the judge", after.Words, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Words_are_asked_for_and_a_double_post_is_one_dispute()
    {
        var (portal, cast, _, signed) = await SignedAsync(suits: false);
        await using var __ = portal;
        using var pim = await portal.AsAsync(cast, cast.Junior);
        var form = (await pim.GetAsync(PathOf(signed))).Form();

        var refused = await form.SendAsync();
        var once = await form.With(("Form.Says", "I see it differently.")).SendAsync();
        var twice = await form.SendAsync();

        Assert.Equal(
            (HttpStatusCode.UnprocessableEntity, "Write what you see differently."),
            (refused.Status, Assert.Single(refused.Problems))
        );
        Assert.Equal((HttpStatusCode.Redirect, HttpStatusCode.Redirect), (once.Status, twice.Status));
        Assert.Null((await pim.GetAsync(PathOf(signed))).Page.QuerySelector("main form"));
    }

    [Fact]
    public async Task A_dispute_of_a_sign_off_that_was_corrected_meanwhile_is_shown_the_new_one()
    {
        var (portal, cast, groom, signed) = await SignedAsync(suits: false);
        await using var _ = portal;
        using var pim = await portal.AsAsync(cast, cast.Junior);
        using var rosa = await portal.AsAsync(cast, cast.Senior);
        var form = (await pim.GetAsync(PathOf(signed))).Form().With(("Form.Says", "I see it differently."));
        await rosa.SendAsync(
            $"/sign-offs/{groom.Id.Value}?person={cast.Junior.Id.Value}",
            "form.signoff",
            ("Form.Level", "StoodBy"),
            ("Form.Watched", "True"),
            ("Form.Why", "I mixed two dogs up.")
        );

        Assert.Equal(HttpStatusCode.NotFound, (await form.SendAsync()).Status);
    }

    [Fact]
    public async Task The_owner_lets_a_late_sign_off_count_with_a_reason()
    {
        var (portal, cast, groom) = await LoggedAsync();
        await using var _ = portal;
        portal.Clock.Advance(TimeSpan.FromDays(8));
        var signed = await portal.SignAsync(cast, cast.Senior, groom);
        using var ines = await portal.AsAsync(cast, cast.Owner);
        using var rosa = await portal.AsAsync(cast, cast.Senior);

        var open = await ines.GetAsync("/disputes");
        var shown = await ines.GetAsync(PathOf(signed));
        var refused = await shown.Form().SendAsync();
        var saved = await refused.Form().With(("Form.Says", "Rosa was ill that week.")).SendAsync();

        Assert.Contains("Signed late by Rosa", open.Words, StringComparison.Ordinal);
        Assert.Equal("Signed late, does not count", shown.Heading);
        Assert.Contains("Wool, 3 to 4 of 17", shown.Words, StringComparison.Ordinal);
        Assert.Equal(["Write why this late sign-off counts."], refused.Problems);
        Assert.Equal("The late sign-off counts now.", (await saved.FollowAsync()).Said);
        Assert.Equal(4, (await portal.StandingAsync(cast, cast.Junior, "wool")).Tally.Row);
        Assert.DoesNotContain("Signed late by Rosa", (await ines.GetAsync("/disputes")).Words, StringComparison.Ordinal);
        Assert.Contains(
            "It was late; the owner let it count.",
            (await rosa.GetAsync(PathOf(signed))).Words,
            StringComparison.Ordinal
        );
    }

    [Fact]
    public async Task Only_whoever_was_judged_may_dispute_and_only_the_owner_may_answer()
    {
        var (portal, cast, _, signed) = await SignedAsync(suits: false);
        await using var __ = portal;
        var other = await portal.OpenSalonAsync("The Dry Towel");
        using var pim = await portal.AsAsync(cast, cast.Junior);
        using var juno = await portal.AsAsync(cast, cast.SecondJunior);
        using var dora = await portal.AsAsync(cast, cast.SecondSenior);
        using var stranger = await portal.AsAsync(other, other.Owner);
        var hers = (await pim.GetAsync(PathOf(signed))).Form().With(("Form.Says", "Mine."), ("Form.Overturn", "True"));

        Assert.Null((await dora.GetAsync(PathOf(signed))).Page.QuerySelector("main form"));
        var answered = await hers.SendToAsync($"{PathOf(signed)}?handler=Answer");
        Assert.Equal(
            (HttpStatusCode.UnprocessableEntity, true),
            (answered.Status, answered.Problems.Contains("Only the owner may do this."))
        );
        Assert.Equal(HttpStatusCode.NotFound, (await juno.GetAsync(PathOf(signed))).Status);
        Assert.Equal(HttpStatusCode.NotFound, (await stranger.GetAsync(PathOf(signed))).Status);
        Assert.Equal(HttpStatusCode.Forbidden, (await dora.GetAsync("/disputes")).Status);
    }

    [Fact]
    public async Task The_lists_say_when_they_are_empty_and_cost_little()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        using var ines = await portal.AsAsync(cast, cast.Owner);

        var open = await ines.GetAsync("/disputes");

        Assert.Equal("No dispute waits for your answer", open.Heading);
        Assert.NotNull(open.Page.QuerySelector(".empty"));
        Assert.InRange(await portal.Sql.OfAsync(() => ines.GetAsync("/disputes")), 1, 7);
    }

    private static async Task<(PortalHost Portal, Cast Cast, Groom Groom)> LoggedAsync()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await portal.WoolAsync(cast, cast.Junior, marks: 3);
        return (
            portal,
            cast,
            await portal.LogAsync(cast, cast.Junior, cast.Senior, await portal.MeetAsync(cast, "Fig", "Bichon Frise", "wool"))
        );
    }

    private static async Task<(PortalHost Portal, Cast Cast, Groom Groom, SignOff Signed)> SignedAsync(bool suits)
    {
        var (portal, cast, groom) = await LoggedAsync();
        return (portal, cast, groom, await portal.SignAsync(cast, cast.Senior, groom, suits));
    }

    private static string PathOf(SignOff signed) => $"/disputes/{signed.Id.Value}";
}
