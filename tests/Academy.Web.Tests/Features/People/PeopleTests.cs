using System.Net;
using Academy.Competence;
using Academy.Competence.People;
using Academy.Competence.Salons;
using Academy.Storage;
using Academy.Web.Tests.Hosting;

namespace Academy.Web.Tests.Features.People;

public sealed class PeopleTests
{
    [Fact]
    public async Task The_list_says_who_works_here_and_who_left()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        using var ines = await portal.AsAsync(cast, cast.Owner);
        await portal.KeepAsync(cast.Salon, Staffing.Leave(cast.SecondJunior, portal.Today, cast.Owner, owners: 1), cast.Owner);

        var list = await ines.GetAsync("/people");

        Assert.Equal("4 people work here", list.Heading);
        Assert.Equal(
            ["Ines", "Rosa", "Dora", "Pim", "Juno"],
            list.Page.QuerySelectorAll(".rows h3").Select(name => name.TextContent)
        );
        Assert.Contains("Junior since 10 June 2025, under 18, left on 10 June", list.Words, StringComparison.OrdinalIgnoreCase);
        Assert.Equal(5, await portal.Sql.OfAsync(() => ines.GetAsync("/people")));
    }

    [Fact]
    public async Task Somebody_is_added_and_gets_a_link_that_is_shown_once()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        using var ines = await portal.AsAsync(cast, cast.Owner);
        var added = await ines.SendAsync(
            "/people/new",
            ("Told.Name", " Mira "),
            ("Told.Role", "Junior"),
            ("Told.EndsOn", "2026-09-30")
        );
        var person = await added.FollowAsync();
        var made = await person.Form("form[action*=Link]").SendAsync();
        var link = new Uri(made.Page.QuerySelector("#the-link")!.TextContent.Trim());
        var again = await ines.GetAsync(added.Location!);

        Assert.Equal("Mira is in the book. Make a link, so that Mira can sign in.", person.Said);
        Assert.StartsWith(
            "Mira Junior since 10 June, last day 30 September.",
            person.Words[person.Words.IndexOf("Mira Junior", StringComparison.Ordinal)..],
            StringComparison.Ordinal
        );
        Assert.Equal("Mira, choose how you sign in", (await portal.Anyone().GetAsync(link.PathAndQuery)).Heading);
        Assert.Null(again.Page.QuerySelector("#the-link"));
        Assert.Contains("Has a link that opens until 10:00 on Wednesday 17 June.", again.Words, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_form_sent_twice_adds_one_person()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        using var ines = await portal.AsAsync(cast, cast.Owner);
        var form = (await ines.GetAsync("/people/new")).Form().With(("Told.Name", "Mira"), ("Told.Role", "Junior"));
        var first = await form.SendAsync();
        var second = await form.SendAsync();

        Assert.Equal(first.Location, second.Location);
        Assert.Equal(6, (await BookAsync(portal, cast)).People.Count);
    }

    [Fact]
    public async Task A_form_that_is_wrong_comes_back_as_it_was_typed()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        using var ines = await portal.AsAsync(cast, cast.Owner);
        var refused = await ines.SendAsync("/people/new", ("Told.Name", ""), ("Told.JoinedOn", ""), ("Told.IsDeputy", "true"));

        Assert.Equal(HttpStatusCode.UnprocessableEntity, refused.Status);
        Assert.Equal(
            ["First day: write it", "Name: write what people here call her"],
            refused.Problems.Order(StringComparer.Ordinal)
        );
        Assert.Equal(["true", "false"], refused.Form().All("Told.IsDeputy"));
    }

    [Fact]
    public async Task The_rules_refuse_with_every_reason()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        using var ines = await portal.AsAsync(cast, cast.Owner);
        var refused = await ines.SendAsync(
            $"/people/{cast.Owner.Id.Value}/change",
            ("Told.Role", "Senior"),
            ("Told.EndsOn", "2020-01-01")
        );

        Assert.Equal(
            [
                "That day lies before the first day here, 10 June 2025: write that day or a later one.",
                "The salon needs an owner: make somebody else owner first.",
            ],
            refused.Problems
        );
        Assert.Equal(Role.Owner, (await BookAsync(portal, cast)).Find(cast.Owner.Id)!.Role);
    }

    [Fact]
    public async Task The_owner_lets_a_senior_write_modules_and_takes_it_back()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        using var ines = await portal.AsAsync(cast, cast.Owner);
        var page = $"/people/{cast.Senior.Id.Value}";

        var kept = await ines.SendAsync($"{page}/change", ("Told.WritesModules", "true"));

        Assert.Contains("writes modules", (await kept.FollowAsync()).Words, StringComparison.Ordinal);
        Assert.True((await BookAsync(portal, cast)).Find(cast.Senior.Id)!.MayWriteModules);

        // Described anew for another reason, she still may; taken back, she does not.
        await ines.SendAsync($"{page}/change", ("Told.Name", "Rosalind"));
        Assert.True((await BookAsync(portal, cast)).Find(cast.Senior.Id)!.MayWriteModules);
        await ines.SendAsync($"{page}/change", ("Told.WritesModules", "false"));
        Assert.False((await BookAsync(portal, cast)).Find(cast.Senior.Id)!.MayWriteModules);
        Assert.DoesNotContain("writes modules", (await ines.GetAsync(page)).Words, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_role_that_is_changed_holds_with_the_next_page()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        using var ines = await portal.AsAsync(cast, cast.Owner);
        using var rosa = await portal.AsAsync(cast, cast.Senior);

        await ines.SendAsync($"/people/{cast.Senior.Id.Value}/change", ("Told.Role", "Owner"));
        Assert.Equal(HttpStatusCode.OK, (await rosa.GetAsync("/people")).Status);
        await ines.SendAsync($"/people/{cast.Senior.Id.Value}/change", ("Told.Role", "Junior"));
        Assert.Equal(HttpStatusCode.Forbidden, (await rosa.GetAsync("/people")).Status);
    }

    [Fact]
    public async Task A_stale_form_is_shown_what_is_there_now_and_kept_when_it_is_sent_again()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        using var ines = await portal.AsAsync(cast, cast.Owner);
        var stale = (await ines.GetAsync($"/people/{cast.Junior.Id.Value}/change")).Form().With(("Told.Name", "Pim the Younger"));
        await ines.SendAsync($"/people/{cast.Junior.Id.Value}/change", ("Told.Name", "Pim Hollis"));

        var moved = await stale.SendAsync();
        Assert.Equal(HttpStatusCode.Conflict, moved.Status);
        Assert.Equal(
            [
                "Somebody described this person in between: Pim Hollis, junior since 10 June 2025. Look, and keep yours if it holds",
            ],
            moved.Problems
        );
        Assert.Equal("Pim the Younger", moved.Form()["Told.Name"]);

        Assert.Equal(HttpStatusCode.Redirect, (await moved.Form().SendAsync()).Status);
        Assert.Equal("Pim the Younger", (await BookAsync(portal, cast)).Find(cast.Junior.Id)!.Name);
    }

    [Fact]
    public async Task Whoever_leaves_is_out_at_once_and_a_link_that_waited_is_void()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        using var ines = await portal.AsAsync(cast, cast.Owner);
        using var pim = portal.Anyone();
        await pim.JoinAsync(portal, cast, cast.Junior);
        var made = await (await ines.GetAsync($"/people/{cast.Junior.Id.Value}")).Form("form[action*=Link]").SendAsync();
        var link = new Uri(made.Page.QuerySelector("#the-link")!.TextContent.Trim()).PathAndQuery;

        var left = await ines.SendAsync($"/people/{cast.Junior.Id.Value}/leave");

        Assert.Equal("Pim leaves on 10 June.", (await left.FollowAsync()).Said);
        Assert.StartsWith("/sign-in", (await pim.GetAsync("/in-today")).Location, StringComparison.Ordinal);
        Assert.Equal(HttpStatusCode.UnprocessableEntity, (await pim.SignInAsync("Pim")).Status);
        Assert.Equal(HttpStatusCode.NotFound, (await portal.Anyone().GetAsync(link)).Status);
    }

    [Fact]
    public async Task Whoever_leaves_on_a_day_to_come_works_until_then()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        using var ines = await portal.AsAsync(cast, cast.Owner);
        using var pim = await portal.AsAsync(cast, cast.Junior);
        var leaves = await ines.SendAsync($"/people/{cast.Junior.Id.Value}/leave", ("On", "2026-06-11"));
        Assert.True(leaves.Status == HttpStatusCode.Redirect, leaves.Words);

        Assert.Equal(HttpStatusCode.OK, (await pim.GetAsync("/in-today")).Status);
        portal.Clock.Advance(TimeSpan.FromHours(8));
        Assert.Equal(HttpStatusCode.OK, (await pim.GetAsync("/in-today")).Status);
        portal.Clock.Advance(TimeSpan.FromHours(6)); // midnight in the salon's zone
        Assert.StartsWith("/sign-in", (await pim.GetAsync("/in-today")).Location, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Whoever_comes_back_signs_in_with_a_new_link()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        using var ines = await portal.AsAsync(cast, cast.Owner);
        using var pim = portal.Anyone();
        await pim.JoinAsync(portal, cast, cast.Junior);
        await ines.SendAsync($"/people/{cast.Junior.Id.Value}/leave");
        var back = await ines.SendAsync($"/people/{cast.Junior.Id.Value}/leave");

        Assert.Equal("Pim is back. A new link lets Pim sign in.", (await back.FollowAsync()).Said);
        Assert.Equal(HttpStatusCode.UnprocessableEntity, (await pim.SignInAsync("Pim")).Status);
        await pim.JoinAsync(portal, cast, cast.Junior);
        Assert.Equal(HttpStatusCode.OK, (await pim.GetAsync("/in-today")).Status);
    }

    [Fact]
    public async Task The_last_owner_cannot_leave()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        using var ines = await portal.AsAsync(cast, cast.Owner);

        var refused = await ines.SendAsync($"/people/{cast.Owner.Id.Value}/leave");

        Assert.Equal(["The salon needs an owner: make somebody else owner first."], refused.Problems);
    }

    [Fact]
    public async Task The_owner_ends_one_session_or_all_of_them()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        using var ines = await portal.AsAsync(cast, cast.Owner);
        using var phone = await portal.AsAsync(cast, cast.Junior);
        using var desk = await portal.AsAsync(cast, cast.Junior);
        var path = $"/people/{cast.Junior.Id.Value}";

        var ended = await (await ines.GetAsync(path)).Form("form[action*='End']:has(input[name=session])").SendAsync();
        Assert.Equal("That session has ended.", (await ended.FollowAsync()).Said);
        Assert.Single(await OpenAsync(phone, desk));

        await (await ines.GetAsync(path)).Form("form[action*=EndAll]").SendAsync();
        Assert.Empty(await OpenAsync(phone, desk));
    }

    [Fact]
    public async Task A_session_of_somebody_else_is_not_ended_under_this_name()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        using var ines = await portal.AsAsync(cast, cast.Owner);
        using var pim = await portal.AsAsync(cast, cast.Junior);
        using var rosa = await portal.AsAsync(cast, cast.Senior);
        var pims = (await ines.GetAsync($"/people/{cast.Junior.Id.Value}")).Form("form:has(input[name=session])")["session"]!;

        var refused = await (await ines.GetAsync($"/people/{cast.Senior.Id.Value}"))
            .Form("form:has(input[name=session])")
            .With(("session", pims))
            .SendAsync();

        Assert.Equal(HttpStatusCode.NotFound, refused.Status);
        Assert.Single(await OpenAsync(pim));
    }

    [Fact]
    public async Task A_name_that_looks_like_HTML_is_only_a_name()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        using var ines = await portal.AsAsync(cast, cast.Owner);
        var added = await ines.SendAsync("/people/new", ("Told.Name", "<img src=x onerror=alert(1)>"), ("Told.Role", "Junior"));
        var person = await added.FollowAsync();

        Assert.Equal("<img src=x onerror=alert(1)>", person.Heading);
        Assert.Empty(person.Page.QuerySelectorAll("main img"));
    }

    [Fact]
    public async Task Several_skills_are_declared_under_one_reason()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        using var ines = await portal.AsAsync(cast, cast.Owner);
        var declared = await ines.SendAsync(
            $"/people/{cast.Senior.Id.Value}/experience",
            "form[action*=Declare]",
            ("Declared.Skills", "wool"),
            ("Declared.Skills", "bath"),
            ("Declared.Reason", "Eleven years at another salon.")
        );

        Assert.Equal("Declared for Rosa: wool and bath.", (await declared.FollowAsync()).Said);
        var team = await portal.DoAsync<RecordBook, Academy.Competence.Standings.Team>(book =>
            book.TeamAsync(cast.Salon, portal.Now, default)
        );
        Assert.Equal(
            ["wool", "bath"],
            team.Of(cast.Senior.Id)
                .Where(one => one.Kind == Academy.Competence.Standings.StandingKind.Alone)
                .Select(one => one.Skill.Value)
        );
        var left = await ines.GetAsync($"/people/{cast.Senior.Id.Value}/experience");
        Assert.Empty(left.Page.QuerySelectorAll("input[value=wool]"));
    }

    [Fact]
    public async Task A_declaration_asks_for_a_skill_and_for_a_reason()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        using var ines = await portal.AsAsync(cast, cast.Owner);
        var path = $"/people/{cast.Senior.Id.Value}/experience";

        Assert.Equal(["Skills: choose at least one"], (await ines.SendAsync(path, "form[action*=Declare]")).Problems);
        var refused = await ines.SendAsync(path, "form[action*=Declare]", ("Declared.Skills", "wool"), ("Declared.Reason", " "));
        Assert.Equal(["Write what the experience is: where, how long, who has seen it."], refused.Problems);
        Assert.Equal(["wool"], refused.Form("form[action*=Declare]").All("Declared.Skills"));
        Assert.Equal(
            HttpStatusCode.UnprocessableEntity,
            (
                await ines.SendAsync(
                    path,
                    "form[action*=Declare]",
                    ("Declared.Skills", "no such skill"),
                    ("Declared.Reason", "x")
                )
            ).Status
        );
    }

    [Fact]
    public async Task Work_elsewhere_is_noted_with_its_source()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        using var ines = await portal.AsAsync(cast, cast.Owner);
        var path = $"/people/{cast.Junior.Id.Value}/experience";
        var noted = await ines.SendAsync(
            path,
            "form[action*=Elsewhere]",
            ("Elsewhere.Skill", "smooth"),
            ("Elsewhere.Grooms", "4"),
            ("Elsewhere.On", "2026-05-30"),
            ("Elsewhere.Source", "The owner there, on the telephone.")
        );
        var said = (await noted.FollowAsync()).Said;
        var refused = await ines.SendAsync(path, "form[action*=Elsewhere]", ("Elsewhere.Grooms", "many"));

        Assert.True(noted.Status == HttpStatusCode.Redirect, noted.Words);
        Assert.Equal("Work elsewhere is noted for Pim; it counts for recency only.", said);
        Assert.Contains("Skill: choose one", refused.Problems);
        Assert.Contains("Last day of it: write it", refused.Problems);
        Assert.Equal(3, refused.Problems.Count);
    }

    private static Task<SalonBook> BookAsync(PortalHost portal, Cast cast) =>
        portal.DoAsync<RecordBook, SalonBook>(book => book.SalonAsync(cast.Salon, TestContext.Current.CancellationToken));

    private static async Task<IReadOnlyList<Visitor>> OpenAsync(params Visitor[] visitors)
    {
        var open = new List<Visitor>();
        foreach (var visitor in visitors)
            if ((await visitor.GetAsync("/in-today")).Status == HttpStatusCode.OK)
                open.Add(visitor);
        return open;
    }
}
