using System.Net;
using Academy.Competence;
using Academy.Competence.Dogs;
using Academy.Competence.Skills;
using Academy.Web.Tests.Hosting;

namespace Academy.Web.Tests.Features.Flags;

/// <summary>A groom told as done alone by somebody who was not alone for it, from the log to the owner's word about it.</summary>
public sealed class FlagTests
{
    [Fact]
    public async Task A_groom_done_alone_without_being_so_is_flagged_on_its_story_on_today_and_in_the_list_until_spoken_about()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        var story = await LoggedAloneAsync(portal, cast);
        portal.Clock.Advance(TimeSpan.FromDays(400));
        using var ines = await portal.AsAsync(cast, cast.Owner);

        const string Flagged = "Pim did this alone, and was not alone for it when it began: wire, bath and brushing.";
        Assert.Contains(Flagged, (await ines.GetAsync(story)).Words, StringComparison.Ordinal);
        Assert.Equal("1 groom done alone without being alone for it waits for a word", (await ines.GetAsync("/")).Heading);
        var list = await ines.GetAsync("/flags");
        Assert.Equal("1 flagged groom waits for a word", list.Heading);
        Assert.Contains("Pim with Biscuit", list.Words, StringComparison.Ordinal);
        Assert.Contains("Pim: Biscuit", (await ines.GetAsync("/decide")).Words, StringComparison.Ordinal);

        var one = await ines.GetAsync(list.Page.QuerySelector("main .rows a")!.GetAttribute("href")!);
        Assert.Contains(Flagged, one.Words, StringComparison.Ordinal);
        Assert.Equal(["Write what you spoke about, and what follows."], (await one.Form().SendAsync()).Problems);
        var said = await one.Form().With(("Form.Says", "Pim asks before the next one.")).SendAsync();

        Assert.Equal("Pim with Biscuit: spoken about.", (await said.FollowAsync()).Said);
        Assert.Equal("No flagged groom waits for a word", (await ines.GetAsync("/flags")).Heading);
        Assert.DoesNotContain("waits for a word", (await ines.GetAsync("/")).Words, StringComparison.Ordinal);
        using var pim = await portal.AsAsync(cast, cast.Junior);
        var told = (await pim.GetAsync(story)).Words;
        Assert.Contains("Ines spoke about it", told, StringComparison.Ordinal);
        Assert.Contains("Pim asks before the next one.", told, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Spoken_about_twice_is_kept_once_and_a_stale_word_meets_what_is_there_now()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        await LoggedAloneAsync(portal, cast);
        using var ines = await portal.AsAsync(cast, cast.Owner);
        var path = (await ines.GetAsync("/flags")).Page.QuerySelector("main .rows a")!.GetAttribute("href")!;
        var form = (await ines.GetAsync(path)).Form().With(("Form.Says", "We spoke."));
        var other = (await ines.GetAsync(path)).Form().With(("Form.Says", "I spoke too."));

        Assert.Equal(HttpStatusCode.Redirect, (await form.SendAsync()).Status);
        Assert.Equal(HttpStatusCode.Redirect, (await form.SendAsync()).Status);
        var stale = await other.SendAsync();

        Assert.Equal(HttpStatusCode.UnprocessableEntity, stale.Status);
        Assert.Contains("was spoken about already", Assert.Single(stale.Problems), StringComparison.Ordinal);
        Assert.Contains("We spoke.", stale.Words, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Told_anew_with_a_watcher_it_is_flagged_no_longer()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        var story = await LoggedAloneAsync(portal, cast);
        using var pim = await portal.AsAsync(cast, cast.Junior);
        var right = await pim.GetAsync(story.Replace("/grooms/", "/log/", StringComparison.Ordinal));
        var sent = await right.Form().With(("Form.Watcher", cast.Senior.Id.Value.ToString())).SendAsync();

        Assert.Equal(HttpStatusCode.Redirect, sent.Status);
        Assert.DoesNotContain("was not alone", (await pim.GetAsync(story)).Words, StringComparison.Ordinal);
        using var ines = await portal.AsAsync(cast, cast.Owner);
        Assert.Equal("No flagged groom waits for a word", (await ines.GetAsync("/flags")).Heading);
    }

    [Fact]
    public async Task What_is_decided_after_it_began_does_not_make_it_right_and_what_is_stopped_after_it_does_not_make_it_wrong()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        await portal.DeclareAsync(cast, cast.Senior, "wire", "bath", "brushing");
        portal.Clock.Advance(TimeSpan.FromDays(1));
        var dog = await portal.MeetAsync(cast);
        using var rosa = await portal.AsAsync(cast, cast.Senior);
        using var dora = await portal.AsAsync(cast, cast.SecondSenior);
        portal.Clock.Advance(TimeSpan.FromHours(2));
        await portal.DeclareAsync(cast, cast.SecondSenior, "silky");
        var wire = await portal.StandingAsync(cast, cast.Senior, "wire");
        await portal.KeepAsync(
            cast.Salon,
            Competence.Decisions.StandingDown.Stop(new(portal.New()), wire, cast.Owner, new("Wait for the review."), portal.Now),
            cast.Owner
        );

        var rosas = await SendAsync(portal, rosa, dog);
        var doras = await SendAsync(portal, dora, dog, coat: SkillBook.Silky);

        Assert.DoesNotContain("was not alone", (await rosas.FollowAsync()).Words, StringComparison.Ordinal);
        Assert.Contains("was not alone for it when it began: silky", (await doras.FollowAsync()).Words, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Only_the_owner_opens_it_and_another_salons_is_not_there()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        await LoggedAloneAsync(portal, cast);
        using var ines = await portal.AsAsync(cast, cast.Owner);
        var path = (await ines.GetAsync("/flags")).Page.QuerySelector("main .rows a")!.GetAttribute("href")!;
        using var rosa = await portal.AsAsync(cast, cast.Senior);
        var elsewhere = await portal.OpenSalonAsync("Elsewhere");
        using var other = await portal.AsAsync(elsewhere, elsewhere.Owner);

        Assert.Equal(HttpStatusCode.Forbidden, (await rosa.GetAsync("/flags")).Status);
        Assert.Equal(HttpStatusCode.Forbidden, (await rosa.GetAsync(path)).Status);
        Assert.Equal(HttpStatusCode.NotFound, (await other.GetAsync(path)).Status);
        Assert.Equal("No flagged groom waits for a word", (await other.GetAsync("/flags")).Heading);
    }

    /// <summary>Pim tells a whole groom of Biscuit as done alone; the address of its story.</summary>
    private static async Task<string> LoggedAloneAsync(PortalHost portal, Cast cast)
    {
        var dog = await portal.MeetAsync(cast);
        using var pim = await portal.AsAsync(cast, cast.Junior);
        return (await SendAsync(portal, pim, dog)).Location!;
    }

    private static async Task<Answer> SendAsync(PortalHost portal, Visitor visitor, Dog dog, SkillCode? coat = null)
    {
        var form = (await visitor.GetAsync($"/log/{portal.New()}?dog={dog.Id.Value}")).Form();
        form.With(
            ("Form.Coat", (coat ?? SkillBook.Wire).Value),
            ("Form.Condition", "CombedThrough"),
            ("Form.Work", "Whole"),
            ("Form.Watcher", "nobody"),
            ("Form.Minutes", "75"),
            ("Form.Techniques", "bath"),
            ("Form.Techniques", "brushing"),
            ("Form.AsItWas", "true")
        );
        return await form.SendAsync();
    }
}
