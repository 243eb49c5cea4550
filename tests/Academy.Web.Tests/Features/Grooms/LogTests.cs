using System.Globalization;
using System.Net;
using Academy.Competence;
using Academy.Competence.Grooms;
using Academy.Competence.Incidents;
using Academy.Competence.Salons;
using Academy.Competence.Skills;
using Academy.Storage;
using Academy.Web.Tests.Hosting;
using AngleSharp.Dom;

namespace Academy.Web.Tests.Features.Grooms;

public sealed class LogTests
{
    [Fact]
    public async Task The_usual_groom_is_four_answers_and_says_whom_it_asks()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        var dog = await portal.MeetAsync(cast);
        var groom = await portal.StartAsync(cast, dog, cast.Junior, cast.Senior);
        portal.Clock.Advance(TimeSpan.FromMinutes(70));
        using var junior = await portal.AsAsync(cast, cast.Junior);
        var form = (await junior.GetAsync($"/log/{groom.Value}")).Form();
        Assert.Equal(cast.Senior.Id.Value.ToString(), form["Form.Watcher"]);
        Assert.Equal("wire", form["Form.Coat"]);

        var sent = await form.With(
                ("Form.Condition", "SomeTangles"),
                ("Form.Techniques", "bath"),
                ("Form.Techniques", "hand-stripping")
            )
            .SendAsync();
        var page = await sent.FollowAsync();

        Assert.Equal($"/grooms/{groom.Value}", sent.Location);
        Assert.Equal("Kept. Rosa is asked to sign it off.", page.Said);
        var told = await GroomAsync(portal, cast, groom.Value);
        Assert.Equal(PortalHost.Start, told.StartedAt);
        Assert.Equal(portal.Now, told.EndedAt);
        Assert.Equal(cast.Senior.Id, told.Watcher);
        Assert.Equal(cast.Junior.Id, told.WholeFinishBy);
        Assert.Equal(
            [new Part(SkillBook.Bath, cast.Junior.Id), new Part(SkillBook.HandStripping, cast.Junior.Id)],
            told.Parts.AsEnumerable()
        );
        Assert.Equal(CoatCondition.SomeTangles, told.Condition);
        Assert.Equal("Border Terrier", told.Breed);
    }

    [Fact]
    public async Task What_was_usual_last_time_is_ticked_and_so_are_the_hazards_that_follow()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        var dog = await portal.MeetAsync(
            cast,
            dog => dog with { BornOn = portal.Today.AddYears(-10), Hazards = [SkillBook.Nervous] }
        );
        await portal.GroomAsync(cast, dog, cast.SecondJunior, cast.Senior);
        using var junior = await portal.AsAsync(cast, cast.Junior);
        var page = await junior.GetAsync(Straight(portal, dog.Id));

        Assert.Equal(["bath", "brushing"], page.Form().All("Form.Techniques"));
        Assert.Equal(["elderly", "nervous"], page.Form().All("Form.Hazards").Order());
        Assert.Null(page.Form()["Form.Condition"]);
        Assert.Null(page.Form()["Form.Watcher"]);
    }

    [Fact]
    public async Task A_hot_room_ticks_the_hot_day_and_says_what_to_mind()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        await portal.KeepAsync(
            cast.Salon,
            Keeping.ReadRoom(new RoomReading(portal.Now, 265, 50), "table", portal.Now),
            cast.Senior
        );
        var dog = await portal.MeetAsync(cast);
        using var junior = await portal.AsAsync(cast, cast.Junior);
        var page = await junior.GetAsync(Straight(portal, dog.Id));

        Assert.Contains("hot-day", page.Form().All("Form.Hazards"));
        Assert.Contains("26.5 °C is a hot day", page.Words, StringComparison.Ordinal);
        Assert.Equal(("26.5", "50"), (page.Form()["Form.Temperature"], page.Form()["Form.Humidity"]));
    }

    [Fact]
    public async Task An_empty_form_says_all_that_it_needs_and_keeps_what_was_tapped()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        var dog = await portal.MeetAsync(cast, dog => dog with { Coat = null });
        using var junior = await portal.AsAsync(cast, cast.Junior);
        var form = (await junior.GetAsync(Straight(portal, dog.Id))).Form();
        var answer = await form.With(("Form.Signs", "Panting"), ("Form.Notes", "<i>calm</i>")).SendAsync();

        Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.Status);
        Assert.Equal(
            [
                "Coat: choose the one on the dog in front of you",
                "Condition: choose how it came",
                "How long: write the minutes it took, or when it started",
                "Who watched: choose the senior, or nobody",
            ],
            answer.Problems.Order(StringComparer.Ordinal)
        );
        Assert.Equal("Panting", answer.Form()["Form.Signs"]);
        Assert.Equal("<i>calm</i>", answer.Form()["Form.Notes"]!.Trim());
    }

    [Fact]
    public async Task Hostile_codes_are_refused_beside_their_fields()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        var dog = await portal.MeetAsync(cast);
        using var junior = await portal.AsAsync(cast, cast.Junior);
        var form = (await junior.GetAsync(Straight(portal, dog.Id))).Form();
        var answer = await Usual(form, cast)
            .With(
                ("Form.Watcher", Guid.CreateVersion7().ToString()),
                ("Form.Condition", "7"),
                ("Form.Techniques", "flying"),
                ("Form.Hazards", "wool"),
                ("Form.Signs", "Laughing"),
                ("Form.Temperature", "warm"),
                ("Form.Humidity", "140"),
                ("Form.Day", "someday")
            )
            .SendAsync();

        Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.Status);
        Assert.Equal(
            [
                "Choose from the list",
                "Choose one from the list",
                "Choose one from the list",
                "Choose somebody who is in the salon’s book",
                "Condition: choose how it came",
                "Day: write a date such as 14/7/2026",
                "Humidity: write whole percent, 0 to 100",
                "Temperature: write degrees, such as 24,5",
            ],
            answer.Problems.Order(StringComparer.Ordinal)
        );
    }

    [Fact]
    public async Task Shared_work_names_who_did_which_part()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        var dog = await portal.MeetAsync(cast);
        using var junior = await portal.AsAsync(cast, cast.Junior);
        var form = (await junior.GetAsync(Straight(portal, dog.Id))).Form();
        var sent = await Usual(form, cast)
            .With(
                ("Form.Work", "Shared"),
                ("Form.Techniques", "bath"),
                ("Form.Techniques", "nails"),
                ("Form.Doers[nails]", cast.SecondJunior.Id.Value.ToString())
            )
            .SendAsync();
        var page = await sent.FollowAsync();

        var told = await GroomAsync(portal, cast, IdOf(sent));
        Assert.Null(told.WholeFinishBy);
        Assert.Equal(
            [new Part(SkillBook.Bath, cast.Junior.Id), new Part(SkillBook.Nails, cast.SecondJunior.Id)],
            told.Parts.AsEnumerable()
        );
        Assert.Contains("Pim and Juno, shared", page.Words, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Parts_only_do_not_claim_the_coat()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        var dog = await portal.MeetAsync(cast);
        using var junior = await portal.AsAsync(cast, cast.Junior);
        var form = (await junior.GetAsync(Straight(portal, dog.Id))).Form();
        var sent = await Usual(form, cast).With(("Form.Work", "Parts")).SendAsync();

        Assert.Null((await GroomAsync(portal, cast, IdOf(sent))).WholeFinishBy);
    }

    [Fact]
    public async Task Blades_and_consents_are_told_only_where_they_apply()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        var dog = await portal.MeetAsync(cast);
        using var junior = await portal.AsAsync(cast, cast.Junior);
        var form = (await junior.GetAsync(Straight(portal, dog.Id))).Form();
        var sent = await Usual(form, cast)
            .With(("Form.Blades", "10"), ("Form.Consents", "ClipOff"), ("Form.Consents", "Muzzle"))
            .SendAsync();
        var plain = await GroomAsync(portal, cast, IdOf(sent));
        Assert.Empty(plain.Blades);
        Assert.Empty(plain.Consents);

        form = (await junior.GetAsync(Straight(portal, dog.Id))).Form();
        sent = await Usual(form, cast)
            .With(
                ("Form.Techniques", "de-matting"),
                ("Form.Condition", "Mats"),
                ("Form.Blades", "7"),
                ("Form.Blades", "10"),
                ("Form.Consents", "ClipOff"),
                ("Form.Consents", "Muzzle")
            )
            .SendAsync();
        var matted = await GroomAsync(portal, cast, IdOf(sent));
        Assert.Equal(["7", "10"], matted.Blades.AsEnumerable());
        Assert.Equal([Consent.ClipOff], matted.Consents.AsEnumerable());
    }

    [Fact]
    public async Task Cautions_stand_at_the_point_of_risk()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        var dog = await portal.MeetAsync(cast);
        using var junior = await portal.AsAsync(cast, cast.Junior);
        var page = await junior.GetAsync(Straight(portal, dog.Id));

        var opened = page
            .Page.QuerySelectorAll("[data-when]:has(.caution)")
            .ToDictionary(part => part.GetAttribute("data-when")!, part => part.TextContent, StringComparer.Ordinal);
        Assert.Contains("treat it as heat: stop, cool, offer water", opened["Panting"], StringComparison.Ordinal);
        Assert.Contains("Phone the vet now", opened["LaboredBreathing"], StringComparison.Ordinal);
        Assert.Contains("never on a flat face", opened["muzzled MuzzleOn"], StringComparison.Ordinal);
        Assert.All(
            ["Panting", "LaboredBreathing", "muzzled MuzzleOn", "VomitingOrLooseStool"],
            risk => Assert.NotNull(page.Page.QuerySelector($"[data-when='{risk}'] a[href='/heat']"))
        );
        Assert.Contains("You felt each on your wrist", page.Words, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_near_miss_is_kept_with_its_groom_and_waits_for_nobody()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        var dog = await portal.MeetAsync(cast);
        using var junior = await portal.AsAsync(cast, cast.Junior);
        var form = (await junior.GetAsync(Straight(portal, dog.Id))).Form();
        var sent = await Usual(form, cast)
            .With(
                ("Form.Severity", "NearMiss"),
                ("Form.Kind", "Escape"),
                ("Form.Site", "None"),
                ("Form.During", "bath"),
                ("Form.WhatHappened", "Out of the loop, <caught> at the door.")
            )
            .SendAsync();
        var page = await sent.FollowAsync();

        Assert.Contains("Out of the loop, <caught> at the door.", page.Words, StringComparison.Ordinal);
        Assert.Contains("A near miss. It lowers nothing.", page.Words, StringComparison.Ordinal);
        var incident = Assert.Single((await StoryAsync(portal, cast, IdOf(sent))).Incidents).Incident;
        Assert.Equal((IncidentKind.Escape, Severity.NearMiss, false), (incident.Kind, incident.Severity, incident.IsCritical));
        Assert.Equal([SkillBook.Bath], incident.During.AsEnumerable());
    }

    [Fact]
    public async Task An_incident_without_words_keeps_nothing_at_all()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        var dog = await portal.MeetAsync(cast);
        using var junior = await portal.AsAsync(cast, cast.Junior);
        var form = (await junior.GetAsync(Straight(portal, dog.Id))).Form();
        var answer = await Usual(form, cast)
            .With(("Form.Severity", "Serious"), ("Form.Kind", "Burn"), ("Form.Site", "BellyOrGroin"))
            .SendAsync();

        Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.Status);
        Assert.Equal(["Write what happened."], answer.Problems);
        Assert.True(answer.Page.QuerySelector("details.risk")!.HasAttribute("open"));
        Assert.Empty((await junior.GetAsync("/log")).Page.QuerySelectorAll(".rows li"));
    }

    [Fact]
    public async Task Ended_early_asks_for_a_word_or_a_phrase()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        var dog = await portal.MeetAsync(cast);
        using var junior = await portal.AsAsync(cast, cast.Junior);
        var form = Usual((await junior.GetAsync(Straight(portal, dog.Id))).Form(), cast);
        Assert.Equal(
            ["Write why the groom ended early, or tap a phrase."],
            (await form.With(("Form.EndedEarly", "true")).SendAsync()).Problems
        );

        var sent = await form.With(("Form.Phrases", "had-enough")).SendAsync();
        Assert.Contains("ended early", (await sent.FollowAsync()).Words, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Done_alone_by_somebody_who_may_not_yet_is_told_as_it_was_and_says_what_is_missing()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        var dog = await portal.MeetAsync(cast);
        using var junior = await portal.AsAsync(cast, cast.Junior);
        var form = (await junior.GetAsync(Straight(portal, dog.Id))).Form();
        var answer = await Usual(form, cast).With(("Form.Watcher", "nobody")).SendAsync();

        Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.Status);
        Assert.Empty(answer.Problems);
        var missing = answer.Page.QuerySelectorAll("#more-than-alone li").Select(line => line.TextContent.Trim()).ToList();
        Assert.Contains(missing, line => line.Contains("Wire: learning", StringComparison.Ordinal));
        Assert.Contains(missing, line => line.Contains("Bath: learning", StringComparison.Ordinal));
        Assert.DoesNotContain(missing, line => line.Contains("in today", StringComparison.Ordinal));

        var sent = await answer.Form().PressAsync("[name='Form.AsItWas']");
        Assert.Equal("Kept as it was. The owner sees that it was done alone.", (await sent.FollowAsync()).Said);
        Assert.Null((await GroomAsync(portal, cast, IdOf(sent))).Watcher);
    }

    [Fact]
    public async Task Done_alone_by_somebody_who_may_is_kept_without_a_question()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        await portal.DeclareAsync(cast, cast.Senior, "wire", "bath");
        portal.Clock.Advance(TimeSpan.FromHours(2));
        await portal.KeepAsync(
            cast.Salon,
            Keeping.ReadRoom(new RoomReading(portal.Now, 200, 50), "table", portal.Now),
            cast.Senior
        );
        var dog = await portal.MeetAsync(cast);
        using var senior = await portal.AsAsync(cast, cast.Senior);
        var form = (await senior.GetAsync(Straight(portal, dog.Id))).Form();
        Assert.Equal("nobody", form["Form.Watcher"]);

        var sent = await Usual(form, cast).With(("Form.Watcher", "nobody")).SendAsync();
        Assert.Equal("Kept.", (await sent.FollowAsync()).Said);
    }

    [Fact]
    public async Task Nobody_watches_her_own_groom()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        var dog = await portal.MeetAsync(cast);
        using var senior = await portal.AsAsync(cast, cast.Senior);
        var form = (await senior.GetAsync(Straight(portal, dog.Id))).Form();
        var answer = await Usual(form, cast).With(("Form.Watcher", cast.Senior.Id.Value.ToString())).SendAsync();

        Assert.Equal(["Nobody watches their own groom: name another senior, or nobody."], answer.Problems);
    }

    [Fact]
    public async Task Saved_twice_it_is_one_groom_with_one_answer()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        var dog = await portal.MeetAsync(cast);
        using var junior = await portal.AsAsync(cast, cast.Junior);
        var form = Usual((await junior.GetAsync(Straight(portal, dog.Id))).Form(), cast);
        var first = await form.SendAsync();
        var second = await form.SendAsync();

        Assert.Equal(HttpStatusCode.Redirect, second.Status);
        Assert.Equal(first.Location, second.Location);
        Assert.Single((await junior.GetAsync("/log")).Page.QuerySelectorAll(".rows li"));
    }

    [Fact]
    public async Task A_groom_that_waited_on_a_device_ended_when_it_was_saved_there()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        var dog = await portal.MeetAsync(cast);
        using var junior = await portal.AsAsync(cast, cast.Junior);
        var form = Usual((await junior.GetAsync(Straight(portal, dog.Id))).Form(), cast);
        portal.Clock.Advance(TimeSpan.FromHours(5));
        var sent = await form.With(("Form.SavedAt", PortalHost.Start.AddMinutes(2).ToString("O", CultureInfo.InvariantCulture)))
            .SendAsync();

        var told = await GroomAsync(portal, cast, IdOf(sent));
        Assert.Equal(PortalHost.Start.AddMinutes(2), told.EndedAt);
        Assert.Equal(PortalHost.Start.AddMinutes(-58), told.StartedAt);
    }

    [Theory]
    [InlineData("2026-06-10T23:00:00Z")] // a clock that runs ahead
    [InlineData("yesterday")] // no time at all
    public async Task A_device_clock_that_cannot_be_right_is_not_believed(string savedAt)
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        var dog = await portal.MeetAsync(cast);
        using var junior = await portal.AsAsync(cast, cast.Junior);
        var form = Usual((await junior.GetAsync(Straight(portal, dog.Id))).Form(), cast);
        var sent = await form.With(("Form.SavedAt", savedAt)).SendAsync();

        Assert.Equal(portal.Now, (await GroomAsync(portal, cast, IdOf(sent))).EndedAt);
    }

    [Fact]
    public async Task A_groom_kept_on_a_device_for_weeks_asks_for_its_day()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        var dog = await portal.MeetAsync(cast);
        using var junior = await portal.AsAsync(cast, cast.Junior);
        var form = Usual((await junior.GetAsync(Straight(portal, dog.Id))).Form(), cast);
        var answer = await form.With(("Form.SavedAt", PortalHost.Start.AddDays(-15).ToString("O", CultureInfo.InvariantCulture)))
            .SendAsync();

        Assert.Equal(["Day: this was kept on a device for more than 14 days; write its day and times"], answer.Problems);
    }

    [Theory]
    [InlineData("2026-06-08", "9:05", "10:20", "", "2026-06-08T07:05:00Z", "2026-06-08T08:20:00Z")] // another day, in summer time
    [InlineData("2026-01-12", "0905", "1020", "", "2026-01-12T08:05:00Z", "2026-01-12T09:20:00Z")] // another day, in winter time
    [InlineData("", "8:15", "9:30", "", "2026-06-10T06:15:00Z", "2026-06-10T07:30:00Z")] // today
    [InlineData("2026-06-09", "8:15", "", "1:15", "2026-06-09T06:15:00Z", "2026-06-09T07:30:00Z")] // start and length
    [InlineData("", "8:15", "", "", "2026-06-10T06:15:00Z", "2026-06-10T08:00:00Z")] // until now
    public async Task Another_day_or_other_times_may_be_told(
        string day,
        string start,
        string end,
        string minutes,
        string from,
        string until
    )
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        var dog = await portal.MeetAsync(cast);
        using var junior = await portal.AsAsync(cast, cast.Junior);
        var form = Usual((await junior.GetAsync(Straight(portal, dog.Id))).Form(), cast);
        var sent = await form.With(("Form.Day", day), ("Form.Start", start), ("Form.End", end), ("Form.Minutes", minutes))
            .SendAsync();

        var told = await GroomAsync(portal, cast, IdOf(sent));
        Assert.Equal((from, until), (Utc(told.StartedAt), Utc(told.EndedAt)));
    }

    [Fact]
    public async Task A_day_that_is_past_asks_when_it_ended_and_one_to_come_is_refused()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        var dog = await portal.MeetAsync(cast);
        using var junior = await portal.AsAsync(cast, cast.Junior);
        var form = Usual((await junior.GetAsync(Straight(portal, dog.Id))).Form(), cast);

        var open = await form.With(("Form.Day", "2026-06-08"), ("Form.Start", "9:00"), ("Form.Minutes", "")).SendAsync();
        Assert.Equal(["End: write when it ended that day, or how long it took"], open.Problems);
        var ahead = await form.With(("Form.Day", "2026-06-12"), ("Form.End", "10:00")).SendAsync();
        Assert.Equal(HttpStatusCode.UnprocessableEntity, ahead.Status);
        Assert.Contains("lies in the future", Assert.Single(ahead.Problems), StringComparison.Ordinal);
        var backwards = await form.With(("Form.Day", ""), ("Form.Start", "9:30"), ("Form.End", "9:00")).SendAsync();
        Assert.Equal(["The groom ends before it starts: correct one of the two times."], backwards.Problems);
    }

    [Fact]
    public async Task A_new_reading_typed_with_a_groom_is_the_salons_newest()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        var dog = await portal.MeetAsync(cast);
        using var junior = await portal.AsAsync(cast, cast.Junior);
        var form = Usual((await junior.GetAsync(Straight(portal, dog.Id))).Form(), cast);
        var sent = await form.With(("Form.Temperature", "23,5 °C"), ("Form.Humidity", "61 %")).SendAsync();

        Assert.Equal(new RoomReading(portal.Now, 235, 61), (await GroomAsync(portal, cast, IdOf(sent))).Room);
        Assert.Equal(
            new RoomReading(portal.Now, 235, 61),
            await portal.DoAsync<RecordBook, RoomReading?>(book => book.NewestReadingAsync(cast.Salon, portal.Now, default))
        );
    }

    [Fact]
    public async Task A_room_that_cannot_be_is_refused()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        var dog = await portal.MeetAsync(cast);
        using var junior = await portal.AsAsync(cast, cast.Junior);
        var form = Usual((await junior.GetAsync(Straight(portal, dog.Id))).Form(), cast);

        Assert.Equal(
            ["No room is like that: write -10 to 60 °C, and 0 to 100 % humidity."],
            (await form.With(("Form.Temperature", "78")).SendAsync()).Problems
        );
    }

    [Fact]
    public async Task Ones_own_unsigned_groom_is_put_right_with_everything_filled_in()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        var dog = await portal.MeetAsync(cast);
        var told = await portal.GroomAsync(
            cast,
            dog,
            cast.Junior,
            cast.Senior,
            groom =>
                groom with
                {
                    StartedAt = groom.StartedAt.AddSeconds(17),
                    Checks = [new(WelfareCheck.WaterAfterBath, portal.Now.AddMinutes(-20))],
                    Signs = [Sign.Trembling],
                    Phrases = ["took-breaks"],
                    Notes = new("Calm after the bath."),
                }
        );
        using var junior = await portal.AsAsync(cast, cast.Junior);
        portal.Clock.Advance(TimeSpan.FromMinutes(30));
        var page = await junior.GetAsync($"/log/{told.Id.Value}");
        Assert.Equal("Put Biscuit right", page.Heading);
        Assert.Equal(["09:40"], page.Form().All("Form.StampedAt"));

        var sent = await page.Form().With(("Form.Techniques", "nails")).SendAsync();
        var after = await sent.FollowAsync();
        Assert.Contains("Put right 10:30 today.", after.Words, StringComparison.Ordinal);
        Assert.Equal(
            told with
            {
                Parts = [new Part(SkillBook.Nails, cast.Junior.Id)],
            },
            await GroomAsync(portal, cast, told.Id.Value)
        );
    }

    [Fact]
    public async Task A_groom_told_on_another_device_meanwhile_is_seen_and_what_was_tapped_is_kept()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        var dog = await portal.MeetAsync(cast);
        var told = await portal.GroomAsync(cast, dog, cast.Junior, cast.Senior);
        using var phone = await portal.AsAsync(cast, cast.Junior);
        using var tablet = await portal.AsAsync(cast, cast.Junior);
        var stale = (await phone.GetAsync($"/log/{told.Id.Value}")).Form().With(("Form.Condition", "Mats"));
        await (await tablet.GetAsync($"/log/{told.Id.Value}")).Form().With(("Form.Coat", "double")).SendAsync();

        var answer = await stale.SendAsync();
        Assert.Equal(HttpStatusCode.Conflict, answer.Status);
        Assert.Contains("told while you wrote: double", Assert.Single(answer.Problems), StringComparison.Ordinal);
        Assert.Equal("Mats", answer.Form()["Form.Condition"]);
        Assert.Equal(HttpStatusCode.Redirect, (await answer.Form().SendAsync()).Status);
    }

    [Fact]
    public async Task A_started_groom_is_taken_off_the_table_with_a_word()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        var dog = await portal.MeetAsync(cast);
        var groom = await portal.StartAsync(cast, dog, cast.Junior, cast.Senior);
        using var junior = await portal.AsAsync(cast, cast.Junior);
        var form = (await junior.GetAsync($"/log/{groom.Value}")).Form();
        Assert.Equal(["Why: a word is enough"], (await form.PressAsync("[formaction*=Abandon]")).Problems);

        var sent = await form.With(("Why", "went home")).PressAsync("[formaction*=Abandon]");
        var page = await sent.FollowAsync();
        Assert.Equal("Biscuit is off the table. Nothing was logged.", page.Said);
        Assert.Contains("taken off the table: went home", page.Words, StringComparison.Ordinal);
        Assert.Empty((await junior.GetAsync("/log")).Page.QuerySelectorAll(".rows li"));
        Assert.Equal($"/grooms/{groom.Value}", (await junior.GetAsync($"/log/{groom.Value}")).Location);
    }

    [Fact]
    public async Task A_groom_is_told_by_whoever_began_it_and_by_nobody_else()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        var dog = await portal.MeetAsync(cast);
        var groom = await portal.StartAsync(cast, dog, cast.Junior, cast.Senior);
        using var other = await portal.AsAsync(cast, cast.SecondJunior);
        using var owner = await portal.AsAsync(cast, cast.Owner);

        Assert.Equal(HttpStatusCode.NotFound, (await other.GetAsync($"/log/{groom.Value}")).Status);
        Assert.Equal(HttpStatusCode.NotFound, (await owner.GetAsync($"/log/{groom.Value}")).Status);
    }

    [Fact]
    public async Task A_form_that_another_person_opened_is_not_sent_in_ones_own_name()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        var dog = await portal.MeetAsync(cast);
        using var junior = await portal.AsAsync(cast, cast.Junior);
        using var other = await portal.AsAsync(cast, cast.SecondJunior);
        var path = Straight(portal, dog.Id);
        var mine = Usual((await junior.GetAsync(path)).Form(), cast);
        var hers = Usual((await other.GetAsync(path)).Form(), cast).With(("Form.By", mine["Form.By"]!));

        Assert.Equal(HttpStatusCode.NotFound, (await hers.SendAsync()).Status);
    }

    [Fact]
    public async Task Another_salons_dog_cannot_be_logged()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        var theirs = await portal.MeetAsync(await portal.OpenSalonAsync("The Dry Nose"));
        using var junior = await portal.AsAsync(cast, cast.Junior);

        Assert.Equal(HttpStatusCode.NotFound, (await junior.GetAsync(Straight(portal, theirs.Id))).Status);
        Assert.Equal(HttpStatusCode.NotFound, (await junior.GetAsync($"/log?dog={theirs.Id.Value}")).Status);
    }

    [Fact]
    public async Task The_page_takes_the_same_few_commands_however_long_the_dog_has_been_coming()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        var dog = await portal.MeetAsync(cast);
        await portal.GroomAsync(cast, dog, cast.Junior, cast.Senior);
        using var junior = await portal.AsAsync(cast, cast.Junior);
        var path = Straight(portal, dog.Id);
        await junior.GetAsync(path);
        var first = await portal.Sql.OfAsync(() => junior.GetAsync(path));
        for (var visit = 0; visit < 6; visit++)
        {
            portal.Clock.Advance(TimeSpan.FromMinutes(10));
            await portal.GroomAsync(cast, dog, cast.Junior, cast.Senior);
        }

        await junior.GetAsync(path);
        Assert.Equal(first, await portal.Sql.OfAsync(() => junior.GetAsync(path)));
        Assert.InRange(first, 1, 20);
    }

    internal static string Straight(PortalHost portal, DogId dog) => $"/log/{portal.New()}?dog={dog.Value}";

    internal static Form Usual(Form form, Cast cast) =>
        form.With(
            ("Form.Watcher", cast.SecondSenior.Id.Value.ToString()),
            ("Form.Condition", "CombedThrough"),
            ("Form.Techniques", "bath"),
            ("Form.Minutes", "60")
        );

    internal static Guid IdOf(Answer sent) =>
        Guid.Parse((sent.Location ?? throw new InvalidOperationException(sent.Words)).Split('/')[^1]);

    internal static async Task<Groom> GroomAsync(PortalHost portal, Cast cast, Guid groom) =>
        (await StoryAsync(portal, cast, groom)).Groom;

    private static Task<GroomStory> StoryAsync(PortalHost portal, Cast cast, Guid groom) =>
        portal.DoAsync<RecordBook, GroomStory>(async book =>
            (await book.GroomAsync(cast.Salon, new(groom), TestContext.Current.CancellationToken))!.Record.Story!
        );

    private static string Utc(DateTimeOffset at) =>
        at.UtcDateTime.ToString("yyyy-MM-dd'T'HH:mm:ss'Z'", CultureInfo.InvariantCulture);
}
