using System.Net;
using Academy.Competence.People;
using Academy.Competence.Standings;
using Academy.Storage;
using Academy.Web.Tests.Hosting;

namespace Academy.Web.Tests.Features.Decisions;

/// <summary>Standing down and lifting it, by the owner or a deputy.</summary>
public sealed class StandDownTests
{
    [Fact]
    public async Task A_deputy_stops_clearances_and_lifts_the_stop_with_a_reason()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        await DeputyAsync(portal, cast);
        await portal.DeclareAsync(cast, cast.SecondSenior, "wool", "silky");
        portal.Clock.Advance(TimeSpan.FromMinutes(5));
        using var rosa = await portal.AsSignerAsync(cast, cast.Senior);
        var list = await rosa.GetAsync("/stand-downs");
        Assert.Equal("Nobody is stood down", list.Heading);
        Assert.NotNull(list.Page.QuerySelector($"main a[href='{Of(cast.SecondSenior)}']"));

        var stopped = await rosa.SendAsync(
            Of(cast.SecondSenior),
            "form[action*=Stop]",
            ("Stop.Skills", "wool"),
            ("Stop.Skills", "silky"),
            ("Stop.Reason", "Her wrist first."),
            ("Stop.Password", Signature.Password)
        );
        Assert.Equal("Dora is stood down: wool and silky.", (await stopped.FollowAsync()).Said);
        Assert.Equal(StandingKind.StoodDown, (await portal.StandingAsync(cast, cast.SecondSenior, "silky")).Kind);
        Assert.Equal("1 person is stood down", (await rosa.GetAsync("/stand-downs")).Heading);

        portal.Clock.Advance(TimeSpan.FromMinutes(5));
        var lifted = await rosa.SendAsync(
            Of(cast.SecondSenior),
            "form[action*=Lift]",
            ("Lift.Skills", "wool"),
            ("Lift.Reason", "The wrist is well."),
            ("Lift.Password", Signature.Password)
        );
        Assert.Equal("Lifted for Dora: wool.", (await lifted.FollowAsync()).Said);
        Assert.Equal(StandingKind.Alone, (await portal.StandingAsync(cast, cast.SecondSenior, "wool")).Kind);
    }

    [Fact]
    public async Task Nobody_lifts_over_an_open_review_and_all_reasons_are_said_at_once()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        var grooms = await portal.WoolAsync(cast, cast.Junior, marks: 3);
        await portal.ClearAsync(cast, cast.Junior, "wool", against: "I watched him twice.");
        await portal.CutAsync(cast, grooms[^1], cast.Senior);
        using var ines = await portal.AsSignerAsync(cast, cast.Owner);
        var sent = await ines.SendAsync(
            Of(cast.Junior),
            "form[action*=Lift]",
            ("Lift.Skills", "wool"),
            ("Lift.Password", Signature.Password)
        );

        Assert.Equal(HttpStatusCode.UnprocessableEntity, sent.Status);
        Assert.Equal(
            ["Wool: an incident waits for its review, and that comes first.", "Write why the stop is lifted."],
            sent.Problems
        );
        Assert.Equal(["wool"], sent.Form("form[action*=Lift]").All("Lift.Skills"));
    }

    [Fact]
    public async Task A_deputy_does_not_lift_her_own_stop()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        await DeputyAsync(portal, cast);
        await portal.DeclareAsync(cast, cast.Senior, "wool");
        using var rosa = await portal.AsSignerAsync(cast, cast.Senior);
        await rosa.SendAsync(
            Of(cast.Senior),
            "form[action*=Stop]",
            ("Stop.Skills", "wool"),
            ("Stop.Reason", "Not today."),
            ("Stop.Password", Signature.Password)
        );
        portal.Clock.Advance(TimeSpan.FromMinutes(5));
        var sent = await rosa.SendAsync(
            Of(cast.Senior),
            "form[action*=Lift]",
            ("Lift.Skills", "wool"),
            ("Lift.Reason", "Today."),
            ("Lift.Password", Signature.Password)
        );

        Assert.Equal(["Nobody judges their own work: another senior or the owner does."], sent.Problems);
    }

    [Fact]
    public async Task Nothing_chosen_and_a_wrong_password_are_said_beside_their_fields()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        await portal.DeclareAsync(cast, cast.Senior, "wool");
        using var ines = await portal.AsSignerAsync(cast, cast.Owner);
        var none = await ines.SendAsync(Of(cast.Senior), "form[action*=Stop]", ("Stop.Password", Signature.Password));
        var wrong = await ines.SendAsync(Of(cast.Senior), "form[action*=Stop]", ("Stop.Skills", "wool"), ("Stop.Password", "x"));

        Assert.Equal(["Skills: choose at least one"], none.Problems);
        Assert.Equal("#Stop_Skills", none.Page.QuerySelector(".mend a")!.GetAttribute("href"));
        Assert.Equal("#Stop_Password", wrong.Page.QuerySelector(".mend a")!.GetAttribute("href"));
        Assert.Equal(StandingKind.Alone, (await portal.StandingAsync(cast, cast.Senior, "wool")).Kind);
    }

    [Fact]
    public async Task A_senior_who_is_no_deputy_may_not_open_it_and_another_salons_person_is_not_found()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        var other = await portal.OpenSalonAsync("The Dry Nose");
        using var rosa = await portal.AsAsync(cast, cast.Senior);
        using var ines = await portal.AsAsync(cast, cast.Owner);

        Assert.Equal(HttpStatusCode.Forbidden, (await rosa.GetAsync("/stand-downs")).Status);
        Assert.Equal(HttpStatusCode.Forbidden, (await rosa.GetAsync(Of(cast.Junior))).Status);
        Assert.Equal(HttpStatusCode.NotFound, (await ines.GetAsync(Of(other.Senior))).Status);
    }

    private static Task<Kept> DeputyAsync(PortalHost portal, Cast cast) =>
        portal.KeepAsync(
            cast.Salon,
            Staffing.Describe(cast.Senior with { IsDeputy = true }, cast.Senior, cast.Owner, owners: 1),
            cast.Owner
        );

    private static string Of(Person person) => $"/stand-downs/{person.Id.Value}";
}
