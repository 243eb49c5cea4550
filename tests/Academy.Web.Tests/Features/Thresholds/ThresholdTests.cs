using System.Net;
using Academy.Competence;
using Academy.Competence.Standings;
using Academy.Competence.Statistics;
using Academy.Web.Tests.Hosting;

namespace Academy.Web.Tests.Features.Thresholds;

/// <summary>Each skill's rules: said in words, looked at before they are saved, saved as versions.</summary>
public sealed class ThresholdTests
{
    [Fact]
    public async Task Every_skill_says_its_rules_in_words()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        using var ines = await portal.AsAsync(cast, cast.Owner);
        var list = await ines.GetAsync("/thresholds");

        Assert.Equal(35, list.Page.QuerySelectorAll("main .rows li").Length);
        Assert.Contains(
            "17 marks, 6 taken by a groom that needed fixing; 3 breeds, 2 seniors; 3 grooms in 120 days",
            list.Words,
            StringComparison.Ordinal
        );
        Assert.Contains("turned off: nobody may", list.Words, StringComparison.Ordinal);
        Assert.Contains("modules only; no recency asked", list.Words, StringComparison.Ordinal);
    }

    [Fact]
    public async Task What_a_row_lets_through_and_who_would_change_is_shown_before_anything_is_saved()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        await portal.WoolAsync(cast, cast.Junior, marks: 17);
        await portal.ClearAsync(cast, cast.Junior, "wool");
        portal.Clock.Advance(TimeSpan.FromDays(40));
        using var ines = await portal.AsAsync(cast, cast.Owner);
        var looked = await (await ines.GetAsync("/thresholds/wool"))
            .Form("#rules")
            .With(("Rules.Profile", "standard"), ("Rules.RecentDays", "30"), ("do", "look"))
            .SendAsync();

        Assert.Equal(HttpStatusCode.OK, looked.Status);
        Assert.Contains("Nothing is saved yet.", looked.Words, StringComparison.Ordinal);
        // The exact chain of lc_cusum_oc.csv: 1 in 3 fills the standard row by 50 with .051, about 1 in 20; 1 in 10 in 26 grooms.
        Assert.Contains("about 1 in 20 of filling it by luck within 50", looked.Words, StringComparison.Ordinal);
        Assert.Contains("fills it in about 26 rated grooms", looked.Words, StringComparison.Ordinal);
        Assert.Contains("No longer alone: Pim, wool: alone now, lapsed then", looked.Words, StringComparison.Ordinal);
        Assert.Equal("standard", looked.Form("#rules")["Rules.Profile"]);
        Assert.Equal(StandingKind.Alone, (await portal.StandingAsync(cast, cast.Junior, "wool")).Kind);
        Assert.Equal(2, (await portal.BookAsync(cast)).NextVersionOf(new SkillCode("wool")));
    }

    [Fact]
    public async Task A_short_row_is_warned_of()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        using var ines = await portal.AsAsync(cast, cast.Owner);
        var form = (await ines.GetAsync("/thresholds/wool")).Form("#rules");
        var shortRow = await form.With(("Rules.Profile", "short")).SendAsync();
        var strict = await form.With(("Rules.Profile", "strictest")).SendAsync();

        // The exact chain: the short row lets 1 in 3 through within 20 with .193.
        Assert.Contains(
            "within 20 rated grooms it lets somebody who needs fixing 1 in 3 through with a chance of about 1 in 5",
            shortRow.Words,
            StringComparison.Ordinal
        );
        Assert.DoesNotContain("A short row", strict.Words, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_new_version_holds_from_its_day_and_the_old_one_stays()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        using var ines = await portal.AsAsync(cast, cast.Owner);
        var saved = await (await ines.GetAsync("/thresholds/wool"))
            .Form("#rules")
            .With(
                ("Rules.Profile", "own"),
                ("Rules.Marks", "20"),
                ("Rules.Takes", "5"),
                ("Rules.FineOneIn", "15"),
                ("Rules.From", "2026-06-20"),
                ("do", "save")
            )
            .SendAsync();

        Assert.Equal("Wool: version 2 holds from 20 June.", (await saved.FollowAsync()).Said);
        var book = await portal.BookAsync(cast);
        Assert.Equal(1, book.ThresholdOn(new SkillCode("wool"), portal.Today).Version);
        var then = book.ThresholdOn(new SkillCode("wool"), new DateOnly(2026, 6, 20));
        Assert.Equal((2, new RowProfile(1.0 / 15, 5, 20)), (then.Version, then.Row));
        Assert.Equal(2, (await ines.GetAsync("/thresholds/wool")).Page.QuerySelectorAll(".history li").Length);
    }

    [Fact]
    public async Task Numbers_that_mean_nothing_are_said_beside_their_fields_and_stay()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        using var ines = await portal.AsAsync(cast, cast.Owner);
        var form = (await ines.GetAsync("/thresholds/wool")).Form("#rules");
        var empties = await form.With(
                ("Rules.Profile", "own"),
                ("Rules.Marks", "20"),
                ("Rules.Takes", "8"),
                ("Rules.FineOneIn", "6"),
                ("do", "save")
            )
            .SendAsync();
        var beyond = await form.With(("Rules.Profile", "strict"), ("Rules.Breeds", "99")).SendAsync();
        var past = await form.With(("Rules.Breeds", "3"), ("Rules.From", "2026-06-01"), ("do", "save")).SendAsync();

        Assert.Equal(HttpStatusCode.UnprocessableEntity, empties.Status);
        Assert.StartsWith(
            "Fine: with 8 marks taken write more than 9",
            Assert.Single(empties.Problems),
            StringComparison.Ordinal
        );
        Assert.Equal("6", empties.Form("#rules")["Rules.FineOneIn"]);
        Assert.Equal(["Breeds: write 0 to 20"], beyond.Problems);
        Assert.StartsWith("1 June is past", Assert.Single(past.Problems), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_stale_form_comes_back_and_a_double_one_is_one_version()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        using var ines = await portal.AsAsync(cast, cast.Owner);
        var first = (await ines.GetAsync("/thresholds/wool")).Form("#rules").With(("do", "save"));
        var stale = (await ines.GetAsync("/thresholds/wool")).Form("#rules").With(("do", "save"));
        var saved = await first.SendAsync();
        var twice = await first.SendAsync();
        var conflict = await stale.SendAsync();

        Assert.Equal((HttpStatusCode.Redirect, HttpStatusCode.Redirect), (saved.Status, twice.Status));
        Assert.Equal(HttpStatusCode.Conflict, conflict.Status);
        Assert.Equal(3, (await portal.BookAsync(cast)).NextVersionOf(new SkillCode("wool")));
    }

    [Fact]
    public async Task Only_the_owner_opens_it_and_a_skill_that_is_not_there_is_not_found()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        using var rosa = await portal.AsAsync(cast, cast.Senior);
        using var ines = await portal.AsAsync(cast, cast.Owner);

        foreach (
            var path in new[] { "/thresholds", "/thresholds/wool", "/skills", "/skills/wool", "/skills/new", "/house", "/ledger" }
        )
            Assert.Equal(HttpStatusCode.Forbidden, (await rosa.GetAsync(path)).Status);
        Assert.Equal(HttpStatusCode.NotFound, (await ines.GetAsync("/thresholds/no-such-skill")).Status);
        Assert.Equal(HttpStatusCode.NotFound, (await ines.GetAsync("/skills/no-such-skill")).Status);
    }
}
