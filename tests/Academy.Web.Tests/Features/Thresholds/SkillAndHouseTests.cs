using System.Net;
using Academy.Competence;
using Academy.Competence.Salons;
using Academy.Competence.Skills;
using Academy.Web.Tests.Hosting;

namespace Academy.Web.Tests.Features.Thresholds;

/// <summary>The salon's skills, and its house rules.</summary>
public sealed class SkillAndHouseTests
{
    [Fact]
    public async Task A_skill_of_the_salons_own_begins_with_the_standard_row_and_stands_on_the_board()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        using var ines = await portal.AsAsync(cast, cast.Owner);
        var added = await ines.SendAsync(
            "/skills/new",
            "#skill",
            ("Skill.Name", "Crème & cream rinse"),
            ("Skill.Kind", "Technique")
        );

        Assert.Equal("Crème & cream rinse is added, with the standard row.", (await added.FollowAsync()).Said);
        var skill = (await portal.BookAsync(cast)).Find(new SkillCode("creme-cream-rinse"))!;
        Assert.Equal(SkillKind.Technique, skill.Kind);
        Assert.Contains("Crème & cream rinse", (await ines.GetAsync("/board")).Words, StringComparison.Ordinal);
        Assert.Equal(HttpStatusCode.OK, (await ines.GetAsync($"/board/{cast.Junior.Id.Value}/creme-cream-rinse")).Status);
    }

    [Fact]
    public async Task A_second_skill_of_the_same_name_gets_a_code_of_its_own_and_new_is_no_code()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        using var ines = await portal.AsAsync(cast, cast.Owner);
        await ines.SendAsync("/skills/new", "#skill", ("Skill.Name", "Wool"), ("Skill.Kind", "Technique"));
        await ines.SendAsync("/skills/new", "#skill", ("Skill.Name", "New"), ("Skill.Kind", "Technique"));
        var book = await portal.BookAsync(cast);

        Assert.Equal(SkillKind.Coat, book.Find(new SkillCode("wool"))!.Kind);
        Assert.NotNull(book.Find(new SkillCode("wool-2")));
        Assert.NotNull(book.Find(new SkillCode("new-2")));
    }

    [Fact]
    public async Task A_skill_is_renamed_given_modules_and_retired()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        using var ines = await portal.AsAsync(cast, cast.Owner);
        var page = await ines.GetAsync("/skills/wool");
        Assert.Equal(["blades-and-scissors"], page.Form("#skill").All("Skill.Modules"));
        await page.Form("#skill")
            .With(("Skill.Name", "<b>curly</b>"), ("Skill.Modules", "heat-stroke"), ("Skill.IsRetired", "true"))
            .SendAsync();

        var wool = (await portal.BookAsync(cast)).Find(new SkillCode("wool"))!;
        Assert.Equal(("<b>curly</b>", true), (wool.Name, wool.IsRetired));
        Assert.Equal([new ModuleName("heat-stroke")], wool.Modules);
        Assert.Contains("<b>curly</b>", (await ines.GetAsync("/skills")).Words, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_skill_without_a_name_or_a_kind_is_not_kept()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        using var ines = await portal.AsAsync(cast, cast.Owner);
        var nameless = await ines.SendAsync("/skills/new", "#skill", ("Skill.Name", " "), ("Skill.Kind", "Coat"));
        var kindless = await ines.SendAsync("/skills/new", "#skill", ("Skill.Name", "Rinse"));

        Assert.Equal((HttpStatusCode.UnprocessableEntity, "Write a name."), (nameless.Status, nameless.Problems.Single()));
        Assert.Equal(["Kind: choose one"], kindless.Problems);
        Assert.Equal("Rinse", kindless.Form("#skill")["Skill.Name"]);
    }

    [Fact]
    public async Task House_rules_and_the_vet_are_kept_together()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        using var ines = await portal.AsAsync(cast, cast.Owner);
        var page = await ines.GetAsync("/house");
        Assert.Contains("Salon’s own number, common practice.", page.Words, StringComparison.Ordinal);
        Assert.Equal("26.0", page.Form("#house")["House.Hot"]);
        var kept = await page.Form("#house")
            .With(
                ("House.Hot", "25,5"),
                ("House.LiftKg", "20"),
                ("House.VetName", "Quay Vets"),
                ("House.VetPhone", "01632 960123")
            )
            .SendAsync();

        Assert.Equal("The house rules are kept. They hold from now on.", (await kept.FollowAsync()).Said);
        var book = await portal.BookAsync(cast);
        Assert.Equal(new HouseRules { HotFromTenthsC = 255, LiftAloneUpToKg = 20 }, book.House);
        Assert.Equal(("Quay Vets", "01632 960123"), (book.VetName, book.VetPhone));
    }

    [Fact]
    public async Task Limits_that_contradict_each_other_are_all_said_and_stay_as_typed()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        using var ines = await portal.AsAsync(cast, cast.Owner);
        var sent = await ines.SendAsync("/house", "#house", ("House.HotAtRisk", "27"), ("House.Stop", "25"));

        Assert.Equal(HttpStatusCode.UnprocessableEntity, sent.Status);
        Assert.Equal(
            [
                "Hot day for dogs at risk: not above the one for every dog",
                "Stop line for dogs at risk: not above the one for every dog",
                "Stop line: above the hot day",
            ],
            sent.Problems.Order(StringComparer.Ordinal)
        );
        Assert.Equal("25", sent.Form("#house")["House.Stop"]);
        Assert.Equal(new HouseRules(), (await portal.BookAsync(cast)).House);
    }
}
