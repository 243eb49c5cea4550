using System.Net;
using Academy.Competence;
using Academy.Competence.Facts;
using Academy.Competence.Grooms;
using Academy.Storage;
using Academy.Storage.Rows;
using Academy.Web.Access;
using Academy.Web.Tests.Features;
using Academy.Web.Tests.Hosting;
using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;

namespace Academy.Web.Tests.BadDays;

/// <summary>Days on which something outside goes wrong, seen from the pages. Lost power and killed processes are the storage tests' business.</summary>
public sealed class BadDayTests
{
    [Fact]
    public async Task A_locked_database_is_a_page_with_a_number_and_the_same_form_works_afterwards()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        var dog = await portal.MeetAsync(cast);
        using var junior = await portal.AsAsync(cast, cast.Junior);
        var form = (await junior.GetAsync($"/log/{portal.New()}?dog={dog.Id.Value}")).Form().With(Usual(cast));
        Answer refused;
        await using (var other = new SqliteConnection($"Data Source={Path.Combine(portal.Folder, "academy.db")};Pooling=False"))
        {
            await other.OpenAsync(TestContext.Current.CancellationToken);
            await using var held = other.BeginTransaction(deferred: false);
            refused = await form.SendAsync();
        }

        Assert.Equal((HttpStatusCode.InternalServerError, "Something of ours broke"), (refused.Status, refused.Heading));
        Assert.Equal(0, await GroomsAsync(portal));
        Assert.Equal(HttpStatusCode.Redirect, (await form.SendAsync()).Status);
        Assert.Equal(HttpStatusCode.Redirect, (await form.SendAsync()).Status);
        Assert.Equal(1, await GroomsAsync(portal));
    }

    // IANA tzdb: in Amsterdam the clocks go back on 25 October 2026 at 3:00, and forward on 28 March 2027 at 2:00.
    [Theory]
    [InlineData("2026-10-25", "1:30", "4:00", "1:30 to 4:00, 210 minutes")] // the hour that comes twice lies between
    [InlineData("2026-10-25", "2:15", "3:15", "2:15 (UTC+01:00) to 3:15, 60 minutes")] // typed, it is read as the second one
    [InlineData("2027-03-28", "1:30", "3:30", "1:30 to 3:30, 60 minutes")] // the hour that is not lies between
    [InlineData("2027-03-28", "2:15", "4:00", "3:15 to 4:00, 45 minutes")] // an hour that is not is read as the one after it
    public async Task A_groom_across_a_change_of_the_clocks_lasts_as_long_as_it_did(
        string day,
        string from,
        string to,
        string told
    )
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        var dog = await portal.MeetAsync(cast);
        portal.Clock.SetUtcNow(DateTimeOffset.Parse($"{day}T12:00:00Z", System.Globalization.CultureInfo.InvariantCulture));
        using var junior = await portal.AsAsync(cast, cast.Junior);
        var form = (await junior.GetAsync($"/log/{portal.New()}?dog={dog.Id.Value}")).Form();

        var sent = await form.With([
                .. Usual(cast),
                ("Form.Minutes", ""),
                ("Form.Day", day),
                ("Form.Start", from),
                ("Form.End", to),
            ])
            .SendAsync();
        var story = await sent.FollowAsync();

        Assert.Contains(told, story.Words, StringComparison.Ordinal);
        var again = (await junior.GetAsync($"/log/{sent.Location!.Split('/')[^1]}")).Form();
        Assert.Contains(told, (await (await again.SendAsync()).FollowAsync()).Words, StringComparison.Ordinal);
    }

    [Fact]
    public async Task On_the_day_the_clocks_change_the_pages_of_the_day_open_for_everybody()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        foreach (var moment in new[] { "2026-10-25T00:30:00Z", "2026-10-25T01:30:00Z", "2027-03-28T01:00:00Z" })
        {
            portal.Clock.SetUtcNow(DateTimeOffset.Parse(moment, System.Globalization.CultureInfo.InvariantCulture));
            foreach (var person in cast.Everybody)
            {
                using var visitor = await portal.AsAsync(cast, person);
                foreach (var path in new[] { "/", "/in-today", "/log", "/dog-check", "/readings/new" })
                    Assert.Equal((path, HttpStatusCode.OK), (path, (await visitor.GetAsync(path)).Status));
            }
        }
    }

    [Fact]
    public async Task Times_in_the_future_are_refused_with_words_whatever_the_device_says()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        var dog = await portal.MeetAsync(cast);
        using var junior = await portal.AsAsync(cast, cast.Junior);
        var form = (await junior.GetAsync($"/log/{portal.New()}?dog={dog.Id.Value}")).Form().With(Usual(cast));
        var tomorrow = portal.Today.AddDays(1).ToString("yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture);

        var ahead = await form.With(("Form.Minutes", ""), ("Form.Day", tomorrow), ("Form.Start", "9:00"), ("Form.End", "10:00"))
            .SendAsync();
        Assert.Equal(HttpStatusCode.UnprocessableEntity, ahead.Status);
        Assert.Contains("lies in the future", Assert.Single(ahead.Problems), StringComparison.Ordinal);

        var saved = portal.Now.AddDays(2).ToString("O", System.Globalization.CultureInfo.InvariantCulture);
        var kept = await form.With(
                ("Form.Minutes", "60"),
                ("Form.Day", ""),
                ("Form.Start", ""),
                ("Form.End", ""),
                ("Form.SavedAt", saved)
            )
            .SendAsync();
        Assert.Equal(HttpStatusCode.Redirect, kept.Status);
        var row = await portal.DoAsync<AcademyDb, GroomRow>(db => db.Grooms.SingleAsync());
        Assert.Equal((portal.Now.AddMinutes(-60), portal.Now), (row.StartedAt, row.EndedAt));
        Assert.Equal(portal.Now, row.RecordedAt);
    }

    [Fact]
    public async Task Whoever_leaves_is_signed_out_her_link_is_dead_and_she_is_still_named_where_she_worked()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        var groom = await portal.GroomAsync(cast, await portal.MeetAsync(cast), cast.Junior, cast.Senior);
        using var pim = await portal.AsAsync(cast, cast.Junior);
        using var ines = await portal.AsAsync(cast, cast.Owner);
        var link = await portal.DoAsync<Links, string>(links => links.MakeAsync(cast.Salon, cast.Junior.Id));
        Assert.Equal(HttpStatusCode.OK, (await pim.GetAsync("/me")).Status);

        var left = await ines.SendAsync(
            $"/people/{cast.Junior.Id.Value}/leave",
            ("On", portal.Today.ToString("yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture))
        );
        Assert.Equal(HttpStatusCode.Redirect, left.Status);

        Assert.StartsWith("/sign-in", (await pim.GetAsync("/me")).Location, StringComparison.Ordinal);
        using var anyone = portal.Anyone();
        Assert.Empty((await anyone.GetAsync(link)).Page.QuerySelectorAll("input[type=password]"));
        Assert.Contains("Groomed by Pim", (await ines.GetAsync($"/grooms/{groom.Id.Value}")).Words, StringComparison.Ordinal);
        Assert.DoesNotContain("Pim", (await ines.GetAsync("/board")).Words, StringComparison.Ordinal);
        Assert.Equal("Pim", (await ines.GetAsync($"/people/{cast.Junior.Id.Value}")).Heading);
    }

    [Theory]
    [InlineData("/", "No groom was started or logged today.")]
    [InlineData("/dogs", "Dogs are added here")]
    [InlineData("/sign-offs", "appears here as soon as somebody logs it")]
    [InlineData("/decide", "Nobody is ready.")]
    [InlineData("/reviews", "Nothing is open.")]
    [InlineData("/disputes", "No dispute waits for your answer")]
    [InlineData("/flags", "No flagged groom waits for a word")]
    [InlineData("/stand-downs", "Nobody is stood down")]
    [InlineData("/dog-check", "Which dog?")]
    [InlineData("/study", "module")]
    public async Task An_empty_list_says_what_will_stand_there(string path, string says)
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        using var ines = await portal.AsAsync(cast, cast.Owner);

        var page = await ines.GetAsync(path);

        Assert.Equal(HttpStatusCode.OK, page.Status);
        Assert.Contains(says, page.Words, StringComparison.OrdinalIgnoreCase);
    }

    private static (string, string)[] Usual(Cast cast) =>
        [
            ("Form.Condition", "CombedThrough"),
            ("Form.Work", "Whole"),
            ("Form.Watcher", cast.Senior.Id.Value.ToString()),
            ("Form.Minutes", "60"),
            ("Form.Techniques", "bath"),
        ];

    private static Task<int> GroomsAsync(PortalHost portal) => portal.DoAsync<AcademyDb, int>(db => db.Grooms.CountAsync());
}
