using System.Net;
using Academy.Competence;
using Academy.Competence.Decisions;
using Academy.Competence.Facts;
using Academy.Competence.People;
using Academy.Competence.Standings;
using Academy.Storage;
using Academy.Web.Tests.Hosting;

namespace Academy.Web.Tests.Features.Decisions;

/// <summary>The owner decides on one person.</summary>
public sealed class PersonTests
{
    [Fact]
    public async Task One_signature_makes_alone_within_its_limits()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        await portal.WoolAsync(cast, cast.Junior, marks: 17);
        using var ines = await portal.AsSignerAsync(cast, cast.Owner);
        var page = await ines.GetAsync(Of(cast.Junior));
        Assert.Equal("Pim is ready in 1 skill", page.Heading);
        var sent = await page.Form("#signing")
            .With(
                ("Sign.Skills[0].Chosen", "true"),
                ("Sign.Skills[0].Limits.UpToKg", "20"),
                ("Sign.Skills[0].Limits.NotOnHotDays", "true"),
                ("Sign.Password", Signature.Password)
            )
            .SendAsync();

        Assert.Equal((HttpStatusCode.Redirect, Of(cast.Junior)), (sent.Status, sent.Location));
        Assert.Equal("Signed. Pim may do alone: wool.", (await sent.FollowAsync()).Said);
        var wool = await portal.StandingAsync(cast, cast.Junior, "wool");
        Assert.Equal((StandingKind.Alone, new Limits(NotOnHotDays: true, UpToKg: 20)), (wool.Kind, wool.Limits));
        Assert.False(wool.IsException);
    }

    [Fact]
    public async Task Several_skills_go_under_one_signature()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        await portal.WoolAsync(cast, cast.Junior, marks: 17);
        await portal.ClearAsync(cast, cast.Junior, "silky", against: "I watched him twice.");
        using var ines = await portal.AsSignerAsync(cast, cast.Owner);
        var sent = await (await ines.GetAsync(Of(cast.Junior)))
            .Form("#signing")
            .With(
                ("Sign.Skills[0].Chosen", "true"),
                ("Sign.Skills[1].Chosen", "true"),
                ("Sign.Skills[1].Limits.UpToKg", "8"),
                ("Sign.Password", Signature.Password)
            )
            .SendAsync();

        Assert.Equal("Signed. Pim may do alone: wool and silky.", (await sent.FollowAsync()).Said);
        var given = (await FactsAsync(portal, cast, cast.Junior)).OfType<ClearanceGiven>().TakeLast(2).ToList();
        Assert.Single(given.Select(one => one.Signature).Distinct());
        Assert.Equal([new Limits(), new Limits(UpToKg: 8)], given.Select(one => one.Limits));
    }

    [Fact]
    public async Task Without_the_password_nothing_is_signed_and_what_was_typed_stays()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        await portal.WoolAsync(cast, cast.Junior, marks: 17);
        using var ines = await portal.AsSignerAsync(cast, cast.Owner);
        var sent = await (await ines.GetAsync(Of(cast.Junior)))
            .Form("#signing")
            .With(("Sign.Skills[0].Chosen", "true"), ("Sign.Skills[0].Limits.UpToKg", "20"), ("Sign.Password", "not hers"))
            .SendAsync();

        Assert.Equal(HttpStatusCode.UnprocessableEntity, sent.Status);
        Assert.Equal(["Password: this is not yours. Write it once more"], sent.Problems);
        Assert.Equal("20", sent.Form("#signing")["Sign.Skills[0].Limits.UpToKg"]);
        Assert.True(sent.Page.QuerySelector("input[name='Sign.Skills[0].Chosen']")!.HasAttribute("checked"));
        Assert.Equal(StandingKind.Ready, (await portal.StandingAsync(cast, cast.Junior, "wool")).Kind);
    }

    [Fact]
    public async Task All_reasons_against_are_said_at_once()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        await portal.WoolAsync(cast, cast.Junior, marks: 17);
        await portal.ClearAsync(cast, cast.Junior, "silky", against: "I watched him twice.");
        using var ines = await portal.AsSignerAsync(cast, cast.Owner);
        var sent = await (await ines.GetAsync(Of(cast.Junior)))
            .Form("#signing")
            .With(
                ("Sign.Skills[0].Chosen", "true"),
                ("Sign.Skills[0].Limits.Until", "2026-01-01"),
                ("Sign.Skills[1].Chosen", "true"),
                ("Sign.Password", Signature.Password)
            )
            .SendAsync();

        Assert.Equal(HttpStatusCode.UnprocessableEntity, sent.Status);
        Assert.Equal(2, sent.Problems.Count);
        Assert.Contains(sent.Problems, said => said.StartsWith("1 January is past", StringComparison.Ordinal));
        Assert.Contains(sent.Problems, said => said.StartsWith("Silky: alone already", StringComparison.Ordinal));
        Assert.Equal("2026-01-01", sent.Form("#signing")["Sign.Skills[0].Limits.Until"]);
    }

    [Fact]
    public async Task Nothing_chosen_and_a_weight_that_is_no_dogs_are_said()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        await portal.WoolAsync(cast, cast.Junior, marks: 17);
        using var ines = await portal.AsSignerAsync(cast, cast.Owner);
        var page = await ines.GetAsync(Of(cast.Junior));
        var none = await page.Form("#signing").With(("Sign.Password", Signature.Password)).SendAsync();
        var heavy = await page.Form("#signing").With(("Sign.Skills[0].Limits.UpToKg", "500")).SendAsync();

        Assert.Equal(["Nothing is chosen: choose at least one skill."], none.Problems);
        Assert.Equal(["Up to: write 1 to 120 kg, or nothing for any weight"], heavy.Problems);
    }

    [Fact]
    public async Task A_form_sent_twice_is_one_decision()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        await portal.WoolAsync(cast, cast.Junior, marks: 17);
        using var ines = await portal.AsSignerAsync(cast, cast.Owner);
        var form = (await ines.GetAsync(Of(cast.Junior)))
            .Form("#signing")
            .With(("Sign.Skills[0].Chosen", "true"), ("Sign.Password", Signature.Password));
        var first = await form.SendAsync();
        var second = await form.SendAsync();

        Assert.Equal((HttpStatusCode.Redirect, HttpStatusCode.Redirect), (first.Status, second.Status));
        Assert.Single((await FactsAsync(portal, cast, cast.Junior)).OfType<ClearanceGiven>());
    }

    [Fact]
    public async Task A_form_that_somebody_overtook_comes_back_with_what_is_there_now()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        await portal.WoolAsync(cast, cast.Junior, marks: 17);
        using var ines = await portal.AsSignerAsync(cast, cast.Owner);
        var form = (await ines.GetAsync(Of(cast.Junior)))
            .Form("#signing")
            .With(("Sign.Skills[0].Chosen", "true"), ("Sign.Password", Signature.Password));
        await portal.KeepAsync(
            cast.Salon,
            Clearing.Refuse(
                new DecisionId(portal.New()),
                cast.Junior,
                new SkillCode("wool"),
                cast.Owner,
                new Words("Not this week.")
            ),
            cast.Owner
        );
        var stale = await form.SendAsync();
        var again = await stale.Form("#signing").With(("Sign.Password", Signature.Password)).SendAsync();

        Assert.Equal(HttpStatusCode.Conflict, stale.Status);
        Assert.StartsWith("Somebody wrote in between.", Assert.Single(stale.Problems), StringComparison.Ordinal);
        Assert.Equal(HttpStatusCode.Redirect, again.Status);
        Assert.Equal(StandingKind.Alone, (await portal.StandingAsync(cast, cast.Junior, "wool")).Kind);
    }

    [Fact]
    public async Task Against_the_rules_shows_every_gap_first_and_asks_for_a_reason()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        await portal.WoolAsync(cast, cast.Junior, marks: 14);
        using var ines = await portal.AsSignerAsync(cast, cast.Owner);
        var page = await ines.GetAsync(Of(cast.Junior) + "/wool");

        Assert.Contains(
            "3 more grooms that suit would fill the row",
            page.Page.QuerySelector(".why-list")!.TextContent,
            StringComparison.Ordinal
        );
        var silent = await page.Form("#exception").With(("Against.Password", Signature.Password)).SendAsync();
        Assert.Equal(
            (HttpStatusCode.UnprocessableEntity, "Write why you decide against the rules."),
            (silent.Status, silent.Problems.Single())
        );

        var sent = await page.Form("#exception")
            .With(
                ("Against.Password", Signature.Password),
                ("Against.Reason", "Fourteen of seventeen, and I watched every one."),
                ("Against.Limits.OnlyWithSeniorIn", "true")
            )
            .SendAsync();
        Assert.Equal("Signed. Pim may do alone: wool.", (await sent.FollowAsync()).Said);
        var wool = await portal.StandingAsync(cast, cast.Junior, "wool");
        Assert.Equal((StandingKind.Alone, true, new Limits(OnlyWithSeniorIn: true)), (wool.Kind, wool.IsException, wool.Limits));
    }

    [Fact]
    public async Task No_decision_goes_over_an_incident_that_waits_for_its_review()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        var grooms = await portal.WoolAsync(cast, cast.Junior, marks: 3);
        await portal.CutAsync(cast, grooms[^1], cast.Senior);
        using var ines = await portal.AsSignerAsync(cast, cast.Owner);
        var sent = await (await ines.GetAsync(Of(cast.Junior) + "/wool"))
            .Form("#exception")
            .With(("Against.Password", Signature.Password), ("Against.Reason", "I know him."))
            .SendAsync();

        Assert.Equal(HttpStatusCode.UnprocessableEntity, sent.Status);
        Assert.Equal(["Wool: an incident waits for its review, and that comes first."], sent.Problems);
        Assert.Equal("I know him.", sent.Form("#exception")["Against.Reason"]);
    }

    [Fact]
    public async Task Not_yet_is_said_with_words_and_changes_no_standing()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        await portal.WoolAsync(cast, cast.Junior, marks: 17);
        using var ines = await portal.AsSignerAsync(cast, cast.Owner);
        var page = await ines.GetAsync(Of(cast.Junior) + "/wool");
        Assert.Empty(page.Page.QuerySelectorAll("#exception"));
        var silent = await page.Form("#refusing").SendAsync();
        var sent = await page.Form("#refusing").With(("Refuse.Says", "<i>Scissors</i> first.")).SendAsync();

        Assert.Equal(["Write why not yet, and what would change it."], silent.Problems);
        Assert.Equal("Pim reads your words on wool.", (await sent.FollowAsync()).Said);
        Assert.Equal(StandingKind.Ready, (await portal.StandingAsync(cast, cast.Junior, "wool")).Kind);
        using var pim = await portal.AsAsync(cast, cast.Junior);
        Assert.Contains(
            "“<i>Scissors</i> first.”",
            (await pim.GetAsync($"/board/{cast.Junior.Id.Value}/wool")).Words,
            StringComparison.Ordinal
        );
    }

    [Fact]
    public async Task Another_salons_person_and_one_who_left_are_not_found_and_a_senior_may_not_sign()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        var other = await portal.OpenSalonAsync("The Dry Nose");
        await portal.KeepAsync(cast.Salon, Staffing.Leave(cast.SecondJunior, portal.Today, cast.Owner, owners: 1), cast.Owner);
        using var ines = await portal.AsSignerAsync(cast, cast.Owner);
        using var rosa = await portal.AsSignerAsync(cast, cast.Senior);

        Assert.Equal(HttpStatusCode.NotFound, (await ines.GetAsync(Of(other.Junior))).Status);
        Assert.Equal(HttpStatusCode.NotFound, (await ines.GetAsync(Of(cast.SecondJunior))).Status);
        Assert.Equal(HttpStatusCode.NotFound, (await ines.GetAsync(Of(cast.Junior) + "/no-such-skill")).Status);
        var form = (await ines.GetAsync(Of(cast.Junior) + "/wool")).Form("#exception");
        var forged = form with { Visitor = rosa };
        Assert.Equal(HttpStatusCode.Forbidden, (await forged.With(("Against.Password", Signature.Password)).SendAsync()).Status);
    }

    private static string Of(Person person) => $"/decide/{person.Id.Value}";

    private static async Task<IEnumerable<Fact>> FactsAsync(PortalHost portal, Cast cast, Person person) =>
        (
            await portal.DoAsync<RecordBook, IReadOnlyList<Recorded>>(records =>
                records.FactsAboutAsync(cast.Salon, person.Id.Value, default)
            )
        ).Select(told => told.Fact);
}
