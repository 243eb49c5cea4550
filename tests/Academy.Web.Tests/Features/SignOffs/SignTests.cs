using System.Net;
using Academy.Competence;
using Academy.Competence.Grooms;
using Academy.Competence.Incidents;
using Academy.Competence.Salons;
using Academy.Competence.SignOffs;
using Academy.Competence.Standings;
using Academy.Storage;
using Academy.Web.Tests.Hosting;

namespace Academy.Web.Tests.Features.SignOffs;

/// <summary>A senior signs off what she watched, in four taps where all was well.</summary>
public sealed class SignTests
{
    [Fact]
    public async Task Four_taps_are_enough_for_a_groom_that_went_well()
    {
        var (portal, cast, groom) = await WatchedAsync(marks: 12);
        await using var _ = portal;
        using var rosa = await portal.AsAsync(cast, cast.Senior);

        var shown = await rosa.GetAsync(PathOf(groom));
        var allMet = await shown.Form().With(("Form.Level", "NotNeeded")).PressAsync("[data-all-met]");
        var saved = await allMet.Form().With(("Form.Watched", "True")).SendAsync();

        Assert.Equal(HttpStatusCode.Redirect, saved.Status);
        Assert.Equal("Pim with Dog 1 is signed off. Pim sees it at once.", (await saved.FollowAsync()).Said);
        var signed = Assert.Single((await StoryAsync(portal, cast, groom)).SignOffs);
        Assert.Equal(
            (SupportLevel.NotNeeded, Criteria.AllMet, cast.Senior.Id, false),
            (signed.Level, signed.Criteria, signed.Senior, signed.IsLate)
        );
        Assert.Equal(13, (await portal.StandingAsync(cast, cast.Junior, "wool")).Tally.Row);
    }

    [Fact]
    public async Task Nothing_is_chosen_beforehand_and_the_page_says_what_is_still_to_choose()
    {
        var (portal, cast, groom) = await WatchedAsync(marks: 0);
        await using var _ = portal;
        using var rosa = await portal.AsAsync(cast, cast.Senior);

        var shown = await rosa.GetAsync(PathOf(groom));

        Assert.Equal("Pim with Dog 1", shown.Heading);
        Assert.Empty(shown.Page.QuerySelectorAll("form.signoff input[checked]"));
        Assert.Equal("Not complete yet", Will(shown));
        Assert.Contains("7 days left, until 10:00 on Wednesday 17 June.", shown.Words, StringComparison.Ordinal);
        Assert.Contains("Choose met, not yet or not seen for all six.", shown.Words, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Before_saving_the_page_says_from_how_many_marks_to_how_many()
    {
        var (portal, cast, groom) = await WatchedAsync(marks: 12);
        await using var _ = portal;
        using var rosa = await portal.AsAsync(cast, cast.Senior);

        var good = await ShowAsync(rosa, groom, Good);
        var weak = await ShowAsync(rosa, groom, [.. Good, ("Form.Level", "TalkedThrough")]);
        var short_ = await ShowAsync(rosa, groom, [.. Good, ("Form.Finish", "NotYet")]);

        Assert.Equal("Suited: wool 12 to 13 of 17", Will(good));
        Assert.Equal("Needed fixing: wool 12 to 6 of 17", Will(weak));
        Assert.Equal("Needed fixing: wool 12 to 6 of 17", Will(short_));
        Assert.Contains("Support level 3, talked through: the senior was needed.", weak.Words, StringComparison.Ordinal);
        Assert.Contains("Finish: not yet.", short_.Words, StringComparison.Ordinal);
        Assert.Equal(12, (await portal.StandingAsync(cast, cast.Junior, "wool")).Tally.Row);
    }

    [Fact]
    public async Task What_the_page_foresees_is_what_then_happens()
    {
        var (portal, cast, groom) = await WatchedAsync(marks: 12);
        await using var _ = portal;
        using var rosa = await portal.AsAsync(cast, cast.Senior);

        await rosa.SendAsync(PathOf(groom), Newest([.. Good, ("Form.Level", "HandsOn")]));

        Assert.Equal(6, (await portal.StandingAsync(cast, cast.Junior, "wool")).Tally.Row);
    }

    [Fact]
    public async Task A_script_is_given_only_what_it_would_do()
    {
        var (portal, cast, groom) = await WatchedAsync(marks: 12);
        await using var _ = portal;
        using var rosa = await portal.AsAsync(cast, cast.Senior);
        var shown = await rosa.GetAsync(PathOf(groom));

        var preview = await shown
            .Form("form.signoff")
            .With(Good)
            .SendToAsync(shown.Page.QuerySelector("form.signoff")!.GetAttribute("data-preview")!);

        Assert.Equal(HttpStatusCode.OK, preview.Status);
        Assert.Equal("Suited: wool 12 to 13 of 17", preview.Page.QuerySelector("#will")!.TextContent);
        Assert.NotNull(preview.Page.QuerySelector("#result"));
        Assert.Null(preview.Page.QuerySelector("main, form"));
    }

    [Fact]
    public async Task An_empty_form_is_refused_with_every_reason_at_its_field_in_the_order_of_the_page()
    {
        var (portal, cast, groom) = await WatchedAsync(marks: 0);
        await using var _ = portal;
        using var rosa = await portal.AsAsync(cast, cast.Senior);

        var refused = await rosa.SendAsync(PathOf(groom));

        Assert.Equal(HttpStatusCode.UnprocessableEntity, refused.Status);
        Assert.Equal(
            [
                "Choose how much the senior was needed, 1 to 5.",
                "Handling and restraint: choose met, not yet or not seen.",
                "Preparation: choose met, not yet or not seen.",
                "Tools and blades: choose met, not yet or not seen.",
                "Skin safety: choose met, not yet or not seen.",
                "Finish: choose met, not yet or not seen.",
                "Dog's comfort: choose met, not yet or not seen.",
                "Say that you watched this groom; for one done alone, that you inspected the finished dog.",
            ],
            refused.Problems
        );
        Assert.All(
            refused.Page.QuerySelectorAll(".mend a.line"),
            line => Assert.NotNull(refused.Page.QuerySelector(line.GetAttribute("href")!))
        );
    }

    [Fact]
    public async Task Not_yet_asks_for_words_to_the_junior_and_a_tapped_phrase_will_do()
    {
        var (portal, cast, groom) = await WatchedAsync(marks: 0);
        await using var _ = portal;
        using var rosa = await portal.AsAsync(cast, cast.Senior);
        (string, string)[] notYet = [.. Good, ("Form.Finish", "NotYet")];

        var refused = await rosa.SendAsync(PathOf(groom), Newest(notYet));
        var saved = await refused.Form("form.signoff").With(("Form.Phrases", "dry-at-the-skin")).SendAsync();

        Assert.Equal(["Write what to practise next, or tap a phrase: something is “not yet”."], refused.Problems);
        Assert.Equal(HttpStatusCode.Redirect, saved.Status);
        Assert.Equal(["dry-at-the-skin"], Assert.Single((await StoryAsync(portal, cast, groom)).SignOffs).Phrases);
    }

    [Fact]
    public async Task Two_seniors_at_once_are_one_sign_off_and_the_second_is_shown_the_first()
    {
        var (portal, cast, groom) = await WatchedAsync(marks: 0);
        await using var _ = portal;
        using var rosa = await portal.AsAsync(cast, cast.Senior);
        using var dora = await portal.AsAsync(cast, cast.SecondSenior);
        var hers = await rosa.GetAsync(PathOf(groom));
        var others = await dora.GetAsync(PathOf(groom));

        var first = await hers.Form("form.signoff").With(Good).SendAsync();
        var second = await others.Form("form.signoff").With([.. Good, ("Form.ToJunior", "Mind the tail.")]).SendAsync();

        Assert.Equal(HttpStatusCode.Redirect, first.Status);
        Assert.Equal(HttpStatusCode.Conflict, second.Status);
        Assert.Contains("Meanwhile Rosa signed this off", Assert.Single(second.Problems), StringComparison.Ordinal);
        Assert.Contains("Suited, signed by Rosa", second.Words, StringComparison.Ordinal);
        Assert.Equal("Mind the tail.", second.Form("form.signoff")["Form.ToJunior"]);
        Assert.Equal(cast.Senior.Id, Assert.Single((await StoryAsync(portal, cast, groom)).SignOffs).Senior);
    }

    [Fact]
    public async Task A_double_post_is_one_sign_off()
    {
        var (portal, cast, groom) = await WatchedAsync(marks: 0);
        await using var _ = portal;
        using var rosa = await portal.AsAsync(cast, cast.Senior);
        var form = (await rosa.GetAsync(PathOf(groom))).Form("form.signoff").With(Good);

        var once = await form.SendAsync();
        var twice = await form.SendAsync();

        Assert.Equal((HttpStatusCode.Redirect, HttpStatusCode.Redirect), (once.Status, twice.Status));
        Assert.Single((await StoryAsync(portal, cast, groom)).SignOffs);
    }

    [Fact]
    public async Task Nobody_judges_her_own_work()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        await portal.WoolAsync(cast, cast.Junior, marks: 0);
        var dog = await portal.MeetAsync(cast, "Biscuit", "Poodle (Miniature)", "wool");
        var groom = await portal.LogAsync(cast, cast.Senior, cast.SecondSenior, dog);
        using var rosa = await portal.AsAsync(cast, cast.Senior);

        var refused = await rosa.SendAsync($"/sign-offs/{groom.Id.Value}?person={cast.Senior.Id.Value}", Good);

        Assert.Equal(HttpStatusCode.UnprocessableEntity, refused.Status);
        Assert.Equal(["Nobody judges their own work: another senior or the owner does."], refused.Problems);
    }

    [Fact]
    public async Task A_senior_who_is_alone_in_nothing_of_it_is_told_so_and_what_is_not_counted()
    {
        var (portal, cast, groom) = await WatchedAsync(marks: 0);
        await using var _ = portal;
        using var ines = await portal.AsAsync(cast, cast.Owner);

        var refused = await ines.SendAsync(PathOf(groom), Good);

        Assert.Equal(HttpStatusCode.UnprocessableEntity, refused.Status);
        Assert.Equal(["Whoever signs must be alone in at least one skill of this groom: ask a senior who is."], refused.Problems);
        Assert.Contains(
            "Wool: not counted, because whoever signs is not alone in it but learning.",
            refused.Words,
            StringComparison.Ordinal
        );
    }

    [Fact]
    public async Task Whoever_really_watched_signs_in_the_stead_of_the_senior_named_and_the_record_says_so()
    {
        var (portal, cast, groom) = await WatchedAsync(marks: 0);
        await using var _ = portal;
        using var dora = await portal.AsAsync(cast, cast.SecondSenior);

        var shown = await dora.GetAsync(PathOf(groom));
        await shown.Form("form.signoff").With(Good).SendAsync();
        var again = await dora.GetAsync(PathOf(groom));

        Assert.Contains(
            "Rosa was named as watching. If Rosa was away and you really watched, you sign",
            shown.Words,
            StringComparison.Ordinal
        );
        Assert.Contains("Rosa was named as watching; Dora really watched.", again.Words, StringComparison.Ordinal);
        Assert.Equal(cast.Senior.Id, Assert.Single((await StoryAsync(portal, cast, groom)).SignOffs).InsteadOf);
    }

    [Fact]
    public async Task A_late_one_is_kept_and_says_that_it_does_not_count()
    {
        var (portal, cast, groom) = await WatchedAsync(marks: 3);
        await using var _ = portal;
        portal.Clock.Advance(TimeSpan.FromDays(8));
        using var rosa = await portal.AsAsync(cast, cast.Senior);

        var shown = await ShowAsync(rosa, groom, Good);
        await shown.Form("form.signoff").SendAsync();

        Assert.Contains("Late: it does not count unless the owner says so.", shown.Words, StringComparison.Ordinal);
        Assert.Equal("Suited: wool stays at 3 of 17", Will(shown));
        Assert.True(Assert.Single((await StoryAsync(portal, cast, groom)).SignOffs).IsLate);
        Assert.Equal(3, (await portal.StandingAsync(cast, cast.Junior, "wool")).Tally.Row);
    }

    [Fact]
    public async Task A_correction_asks_why_and_leaves_the_old_one_visible()
    {
        var (portal, cast, groom) = await WatchedAsync(marks: 0);
        await using var _ = portal;
        await portal.SignAsync(cast, cast.Senior, groom);
        using var rosa = await portal.AsAsync(cast, cast.Senior);

        var shown = await rosa.GetAsync(PathOf(groom));
        var without = await shown.Form("form.signoff").With(("Form.Level", "HandsOn"), ("Form.Watched", "True")).SendAsync();
        var saved = await without.Form("form.signoff").With(("Form.Why", "I mixed two dogs up.")).SendAsync();
        var after = await rosa.GetAsync(PathOf(groom));

        Assert.Equal("StoodBy", shown.Form("form.signoff")["Form.Level"]);
        Assert.Null(shown.Form("form.signoff")["Form.Watched"]);
        Assert.Equal(["Write why this sign-off is corrected."], without.Problems);
        Assert.Equal(HttpStatusCode.Redirect, saved.Status);
        Assert.Equal(2, (await StoryAsync(portal, cast, groom)).SignOffs.Count);
        Assert.Contains("It corrects an earlier sign-off: I mixed two dogs up.", after.Words, StringComparison.Ordinal);
        Assert.Contains("Corrected by Rosa", after.Words, StringComparison.Ordinal);
        Assert.Equal(0, (await portal.StandingAsync(cast, cast.Junior, "wool")).Tally.Row);
    }

    [Fact]
    public async Task An_incident_asked_again_is_kept_with_the_sign_off_and_stops_what_it_must_at_once()
    {
        var (portal, cast, groom) = await WatchedAsync(marks: 3);
        await using var _ = portal;
        portal.Clock.Advance(TimeSpan.FromMinutes(10));
        await portal.ClearAsync(cast, cast.Junior, "wool", against: "Groomed wool for years elsewhere.");
        portal.Clock.Advance(TimeSpan.FromMinutes(10));
        using var rosa = await portal.AsAsync(cast, cast.Senior);
        (string, string)[] cut =
        [
            .. Good,
            ("Incident.Kind", "SkinOpened"),
            ("Incident.Severity", "Moderate"),
            ("Incident.WhatHappened", "A cut at the flank, skin through."),
        ];

        var shown = await ShowAsync(rosa, groom, cut);
        var saved = await shown.Form("form.signoff").SendAsync();
        var story = await StoryAsync(portal, cast, groom);

        Assert.Equal("Stops at once: wool", Will(shown));
        Assert.Contains("Pim is stood down at once: wool.", shown.Words, StringComparison.Ordinal);
        Assert.Equal(HttpStatusCode.Redirect, saved.Status);
        Assert.True(Assert.Single(story.Incidents).Incident.IsCritical);
        Assert.Single(story.SignOffs);
        Assert.Equal(StandingKind.StoodDown, (await portal.StandingAsync(cast, cast.Junior, "wool")).Kind);
    }

    [Fact]
    public async Task Half_an_incident_keeps_nothing_at_all()
    {
        var (portal, cast, groom) = await WatchedAsync(marks: 0);
        await using var _ = portal;
        using var rosa = await portal.AsAsync(cast, cast.Senior);

        var refused = await rosa.SendAsync(PathOf(groom), [.. Good, ("Incident.Kind", "Nick")]);
        var story = await StoryAsync(portal, cast, groom);

        Assert.Equal(HttpStatusCode.UnprocessableEntity, refused.Status);
        Assert.Equal(["Choose how bad it was for the dog."], refused.Problems);
        Assert.Equal((0, 0), (story.SignOffs.Count, story.Incidents.Count));
    }

    [Fact]
    public async Task Hostile_words_are_shown_as_words()
    {
        var (portal, cast, groom) = await WatchedAsync(marks: 0);
        await using var _ = portal;
        using var rosa = await portal.AsAsync(cast, cast.Senior);
        const string Hostile = "<script>alert(1)</script>";

        await rosa.SendAsync(
            PathOf(groom),
            [.. Good, ("Form.ToJunior", Hostile), ("Form.NotSuitable", Hostile), ("Form.Phrases", Hostile)]
        );
        var after = await rosa.GetAsync(PathOf(groom));
        var signed = Assert.Single((await StoryAsync(portal, cast, groom)).SignOffs);

        Assert.Contains(Hostile, after.Words, StringComparison.Ordinal);
        Assert.DoesNotContain(after.Page.Scripts, script => script.TextContent.Length > 0);
        Assert.Equal((0, 0), (signed.NotSuitable.Count, signed.Phrases.Count));
    }

    [Fact]
    public async Task A_junior_may_not_open_it_another_salon_does_not_find_it_and_nobody_is_led_to_sign_in()
    {
        var (portal, cast, groom) = await WatchedAsync(marks: 0);
        await using var _ = portal;
        var other = await portal.OpenSalonAsync("The Dry Towel");
        using var pim = await portal.AsAsync(cast, cast.Junior);
        using var stranger = await portal.AsAsync(other, other.Senior);
        using var rosa = await portal.AsAsync(cast, cast.Senior);

        Assert.Equal(HttpStatusCode.Forbidden, (await pim.GetAsync(PathOf(groom))).Status);
        Assert.Equal(HttpStatusCode.NotFound, (await stranger.GetAsync(PathOf(groom))).Status);
        Assert.Equal(
            HttpStatusCode.NotFound,
            (await rosa.GetAsync($"/sign-offs/{groom.Id.Value}?person={cast.SecondJunior.Id.Value}")).Status
        );
        Assert.Equal(HttpStatusCode.Redirect, (await portal.Anyone().GetAsync(PathOf(groom))).Status);
    }

    [Fact]
    public async Task The_page_asks_the_database_the_same_few_times_however_much_was_groomed()
    {
        var (portal, cast, groom) = await WatchedAsync(marks: 1);
        await using var _ = portal;
        using var rosa = await portal.AsAsync(cast, cast.Senior);
        await rosa.GetAsync(PathOf(groom));
        var few = await portal.Sql.OfAsync(() => rosa.GetAsync(PathOf(groom)));
        var more = await portal.LogAsync(
            cast,
            cast.Junior,
            cast.Senior,
            await portal.MeetAsync(cast, "Teasel", "Poodle (Miniature)", "wool")
        );
        for (var at = 0; at < 3; at++)
            await portal.RatedAsync(cast, cast.Junior, cast.Senior, await portal.MeetAsync(cast, "Fig", "Bichon Frise", "wool"));

        using var later = await portal.AsAsync(cast, cast.Senior);
        await later.GetAsync(PathOf(more));

        Assert.Equal(few, await portal.Sql.OfAsync(() => later.GetAsync(PathOf(more))));
        Assert.InRange(few, 1, 17);
    }

    private static readonly (string Name, string Value)[] Good =
    [
        ("Form.Level", "StoodBy"),
        ("Form.Handling", "Met"),
        ("Form.Preparation", "Met"),
        ("Form.Tools", "Met"),
        ("Form.SkinSafety", "Met"),
        ("Form.Finish", "Met"),
        ("Form.Comfort", "Met"),
        ("Form.Watched", "True"),
    ];

    private static async Task<(PortalHost Portal, Cast Cast, Groom Groom)> WatchedAsync(int marks)
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await portal.WoolAsync(cast, cast.Junior, marks);
        var dog = await portal.MeetAsync(cast, "Dog 1", "Poodle (Miniature)", "wool");
        return (portal, cast, await portal.LogAsync(cast, cast.Junior, cast.Senior, dog));
    }

    private static async Task<Answer> ShowAsync(Visitor visitor, Groom groom, (string, string)[] typed) =>
        await (await visitor.GetAsync(PathOf(groom))).Form("form.signoff").With(Newest(typed)).PressAsync("[data-show]");

    private static IEnumerable<(string, string)> Newest((string Name, string Value)[] typed) =>
        typed.GroupBy(one => one.Name).Select(same => same.Last());

    private static string PathOf(Groom groom) => $"/sign-offs/{groom.Id.Value}?person={groom.By.Value}";

    private static string Will(Answer answer) => answer.Page.QuerySelector(".savebar #will")!.TextContent;

    private static async Task<GroomStory> StoryAsync(PortalHost portal, Cast cast, Groom groom) =>
        (await portal.DoAsync<RecordBook, Known<GroomRecord>?>(records => records.GroomAsync(cast.Salon, groom.Id, default)))!
            .Record
            .Story!;
}
