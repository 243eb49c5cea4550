using System.Net;
using Academy.Competence;
using Academy.Competence.People;
using Academy.Competence.SignOffs;
using Academy.Web.Tests.Hosting;
using AngleSharp.Dom;

namespace Academy.Web.Tests.Features.OwnSkills;

/// <summary>A person's page: what is left, what is due, what seniors said.</summary>
public sealed class SkillsTests
{
    [Fact]
    public async Task A_junior_reads_what_is_left_for_each_skill_and_what_her_seniors_said()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        await portal.WoolAsync(cast, cast.Junior, marks: 11);
        using var pim = await portal.AsAsync(cast, cast.Junior);
        var me = await pim.GetAsync("/me");

        Assert.Equal((HttpStatusCode.OK, "You may do 0 of 35 skills alone"), (me.Status, me.Heading));
        var wool = Line(me, "wool");
        Assert.Equal("learning", wool.QuerySelector(".st")!.TextContent);
        Assert.Contains("11 of 17", wool.TextContent, StringComparison.Ordinal);
        Assert.Contains("6 more grooms that suit would fill the row", wool.TextContent, StringComparison.Ordinal);
        Assert.Equal(11, wool.QuerySelectorAll(".dots a").Length);
        Assert.Equal($"/board/{cast.Junior.Id.Value}/wool", wool.QuerySelector("h3 a")!.GetAttribute("href"));
        var newest = me.Page.QuerySelectorAll("section:has(#grooms) .rows > li")[0];
        Assert.Contains("wool, suited", newest.TextContent, StringComparison.Ordinal);
        Assert.Contains("“Neat feet.” Rosa", newest.TextContent, StringComparison.Ordinal);
        Assert.Contains("Not begun: smooth, double, wire,", me.Words, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Somebody_new_is_told_what_would_fill_her_page()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        using var pim = await portal.AsAsync(cast, cast.Junior);
        var me = await pim.GetAsync("/me");

        Assert.Contains("Nothing begun yet.", me.Words, StringComparison.Ordinal);
        Assert.Contains("No groom is on record yet.", me.Words, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_groom_that_waits_names_whom_it_waits_for_and_what_was_typed_stays_text()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        await portal.WoolAsync(cast, cast.Junior, marks: 0);
        var dog = await portal.MeetAsync(cast, "Pilchard", "Cockapoo", "wool");
        var groom = await portal.LogAsync(cast, cast.Junior, cast.Senior, dog);
        await portal.SignAsync(cast, cast.Senior, groom, suits: false, "<img src=x onerror=alert(1)> Comb to the skin.");
        await portal.LogAsync(cast, cast.Junior, cast.SecondSenior, dog);
        await portal.LogAsync(cast, cast.Junior, watcher: null, dog);
        using var pim = await portal.AsAsync(cast, cast.Junior);
        var me = await pim.GetAsync("/me");

        var lines = me.Page.QuerySelectorAll("section:has(#grooms) .rows > li").Select(line => line.TextContent).ToList();
        Assert.Contains(lines, line => line.Contains("wool, waits for Dora", StringComparison.Ordinal));
        Assert.Contains(lines, line => line.Contains("wool, groomed alone, not inspected", StringComparison.Ordinal));
        Assert.Contains(lines, line => line.Contains("wool, needed fixing", StringComparison.Ordinal));
        Assert.Contains(lines, line => line.Contains("<img src=x onerror=alert(1)> Comb to the skin.", StringComparison.Ordinal));
        Assert.Empty(me.Page.QuerySelectorAll("main img"));
    }

    [Fact]
    public async Task Whoever_is_alone_reads_her_limits_and_what_runs_out_soon()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        await portal.WithoutModulesAsync(cast, "wool");
        await portal.DeclareAsync(cast, cast.Senior, "wool");
        portal.Clock.Advance(TimeSpan.FromDays(110));
        using var rosa = await portal.AsAsync(cast, cast.Senior);
        var me = await rosa.GetAsync("/me");

        Assert.Equal("You may do 1 of 35 skills alone", me.Heading);
        Assert.Contains("9 days left: it holds until 7 October.", Line(me, "wool").TextContent, StringComparison.Ordinal);
        Assert.Null(Line(me, "wool").QuerySelector(".pts"));
    }

    [Fact]
    public async Task A_module_is_due_with_the_skills_that_ask_for_it()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        await portal.DeclareAsync(cast, cast.Senior, "wool");
        using var rosa = await portal.AsAsync(cast, cast.Senior);
        var due = (await rosa.GetAsync("/me")).Page.QuerySelectorAll("section:has(#due) li");

        Assert.Contains(
            due,
            module =>
                module.QuerySelector("a")!.GetAttribute("href") == "/study/blades-and-scissors"
                && module.TextContent.Contains("due by 10 July", StringComparison.Ordinal)
                && module.TextContent.Contains("for smooth, double, wire and", StringComparison.Ordinal)
        );
    }

    [Fact]
    public async Task A_dispute_is_listed_with_its_state()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        await portal.WoolAsync(cast, cast.Junior, marks: 0);
        var dog = await portal.MeetAsync(cast, "Pilchard", "Cockapoo", "wool");
        var groom = await portal.LogAsync(cast, cast.Junior, cast.Senior, dog);
        var signed = await portal.SignAsync(cast, cast.Senior, groom, suits: false);
        await portal.DisputeAsync(cast, groom, signed, "The mat was pelted.");
        using var pim = await portal.AsAsync(cast, cast.Junior);
        var me = await pim.GetAsync("/me");

        Assert.Contains("waits for the owner’s answer", me.Words, StringComparison.Ordinal);
        Assert.NotNull(me.Page.QuerySelector($"main a[href='/disputes/{signed.Id.Value}']"));
    }

    [Fact]
    public async Task Older_grooms_follow_on_a_next_page_each_once()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        var dog = await portal.MeetAsync(cast, "Pilchard", "Cockapoo", "wool");
        for (var at = 0; at < 23; at++)
            await portal.LogAsync(cast, cast.Junior, cast.Senior, dog);
        using var pim = await portal.AsAsync(cast, cast.Junior);
        var first = await pim.GetAsync("/me");
        var second = await pim.GetAsync(first.Page.QuerySelector("a[href*='after=']")!.GetAttribute("href")!);

        var shown = Grooms(first).Concat(Grooms(second)).ToList();
        Assert.Equal((20, 23), (Grooms(first).Count, shown.Distinct(StringComparer.Ordinal).Count()));
        Assert.Null(second.Page.QuerySelector("a[href*='after=']"));
    }

    [Fact]
    public async Task A_senior_opens_the_pages_of_juniors_the_owner_all_and_a_junior_her_own()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        var other = await portal.OpenSalonAsync("The Dry Nose");
        using var pim = await portal.AsAsync(cast, cast.Junior);
        using var rosa = await portal.AsAsync(cast, cast.Senior);
        using var ines = await portal.AsAsync(cast, cast.Owner);

        Assert.Equal(HttpStatusCode.OK, (await pim.GetAsync(Of(cast.Junior))).Status);
        Assert.Equal(HttpStatusCode.NotFound, (await pim.GetAsync(Of(cast.SecondJunior))).Status);
        Assert.Equal("Pim may do 0 of 35 skills alone", (await rosa.GetAsync(Of(cast.Junior))).Heading);
        Assert.Equal(HttpStatusCode.NotFound, (await rosa.GetAsync(Of(cast.SecondSenior))).Status);
        Assert.NotNull(
            (await ines.GetAsync(Of(cast.Senior))).Page.QuerySelector($"main a[href='/decide/{cast.Senior.Id.Value}']")
        );
        Assert.Equal(HttpStatusCode.NotFound, (await ines.GetAsync(Of(other.Junior))).Status);
        Assert.StartsWith("/sign-in", (await portal.Anyone().GetAsync("/me")).Location, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Somebody_who_left_keeps_her_grooms_and_has_no_standing()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        var dog = await portal.MeetAsync(cast, "Pilchard", "Cockapoo", "wool");
        await portal.LogAsync(cast, cast.Junior, cast.Senior, dog);
        await portal.KeepAsync(cast.Salon, Staffing.Leave(cast.Junior, portal.Today, cast.Owner, owners: 1), cast.Owner);
        using var ines = await portal.AsAsync(cast, cast.Owner);
        var page = await ines.GetAsync(Of(cast.Junior));

        Assert.Equal("Pim does not work here now", page.Heading);
        Assert.Single(Grooms(page));
    }

    [Fact]
    public async Task The_page_costs_the_same_for_one_groom_and_for_many()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        await portal.WoolAsync(cast, cast.Junior, marks: 1);
        var few = await CommandsAsync();
        var dog = await portal.MeetAsync(cast, "Pilchard", "Cockapoo", "wool");
        for (var at = 0; at < 8; at++)
            await portal.RatedAsync(cast, cast.Junior, cast.Senior, dog);

        // Session and book; book, tallies and quizzes; grooms; stories and their words; disputes; the reading of the frame.
        Assert.Equal((8, 8), (few, await CommandsAsync()));

        async Task<int> CommandsAsync()
        {
            using var pim = await portal.AsAsync(cast, cast.Junior);
            await pim.GetAsync("/me?after=0_0");
            return await portal.Sql.OfAsync(() => pim.GetAsync("/me"));
        }
    }

    private static string Of(Person person) => $"/people/{person.Id.Value}/skills";

    private static List<string> Grooms(Answer page) =>
        [.. page.Page.QuerySelectorAll("section:has(#grooms) h3 a").Select(link => link.GetAttribute("href")!)];

    private static IElement Line(Answer page, string skill) =>
        page.Page.QuerySelectorAll(".skills > li").Single(line => line.QuerySelector("h3")!.TextContent == skill);
}
