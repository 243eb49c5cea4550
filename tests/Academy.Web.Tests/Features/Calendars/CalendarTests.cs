using System.Net;
using Academy.Competence;
using Academy.Competence.People;
using Academy.Competence.Quizzes;
using Academy.Modules;
using Academy.Storage;
using Academy.Storage.Rows;
using Academy.Web.Tests.Hosting;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;

namespace Academy.Web.Tests.Features.Calendars;

/// <summary>
/// The private address from which a calendar reads what is due (RFC 5545). That the file says what it should is read by another
/// library in Academy.Browser.Tests; here, who gets it and when.
/// </summary>
public sealed class CalendarTests
{
    private const string Blades = "blades-and-scissors";

    [Fact]
    public async Task A_person_makes_an_address_sees_it_once_and_a_calendar_reads_it_without_a_cookie()
    {
        using var modules = new TestModules().With(Blades);
        await using var portal = new PortalHost().With("Modules:Folder", modules.Root);
        var cast = await portal.OpenSalonAsync();
        using var pim = await portal.AsAsync(cast, cast.Junior);
        await PassAsync(portal, cast, cast.Junior);

        var made = await MakeAsync(pim);
        Assert.DoesNotContain(
            ".ics",
            (await pim.GetAsync("/me/account")).Page.DocumentElement.OuterHtml,
            StringComparison.Ordinal
        );
        using var calendar = portal.Anyone();
        var read = await calendar.Client.GetAsync(made, Stop);

        Assert.Equal(HttpStatusCode.OK, read.StatusCode);
        Assert.Equal("text/calendar; charset=utf-8", read.Content.Headers.ContentType!.ToString());
        Assert.Equal("no-cache, private", read.Headers.CacheControl!.ToString());
        Assert.Empty(calendar.Cookies);
        var text = await read.Content.ReadAsStringAsync(Stop);
        Assert.Contains(
            $"SUMMARY:Refresher: {TestModules.Title.Replace(",", "\\,", StringComparison.Ordinal)}",
            text,
            StringComparison.Ordinal
        );
        // Passed on 10 June, due 28 days later: the last day that counts is the one before.
        Assert.Contains("DTSTART;VALUE=DATE:20260707", text, StringComparison.Ordinal);
        Assert.All(
            (string[])[cast.Name, .. cast.Everybody.SelectMany(one => (string[])[one.Name, one.Id.Value.ToString()])],
            personal => Assert.DoesNotContain(personal, text, StringComparison.OrdinalIgnoreCase)
        );
        Assert.All(text.Split("\r\n"), line => Assert.True(System.Text.Encoding.UTF8.GetByteCount(line) <= 75, line));
    }

    [Fact]
    public async Task An_unchanged_file_is_not_sent_again_and_a_further_pass_moves_its_day_under_the_same_id()
    {
        using var modules = new TestModules().With(Blades);
        await using var portal = new PortalHost().With("Modules:Folder", modules.Root);
        var cast = await portal.OpenSalonAsync();
        using var pim = await portal.AsAsync(cast, cast.Junior);
        await PassAsync(portal, cast, cast.Junior);
        var address = await MakeAsync(pim);
        using var calendar = portal.Anyone();
        var first = await calendar.Client.GetAsync(address, Stop);
        portal.Clock.Advance(TimeSpan.FromDays(20));

        var same = await AskAsync(calendar, address, first.Headers.ETag!.Tag);
        await PassAsync(portal, cast, cast.Junior, isRefresher: true);
        var moved = await AskAsync(calendar, address, first.Headers.ETag!.Tag);

        Assert.Equal(HttpStatusCode.NotModified, same.StatusCode);
        Assert.Equal(HttpStatusCode.OK, moved.StatusCode);
        var (before, after) = (await first.Content.ReadAsStringAsync(Stop), await moved.Content.ReadAsStringAsync(Stop));
        Assert.Equal(Lines(before, "UID:"), Lines(after, "UID:"));
        Assert.NotEqual(Lines(before, "DTSTART"), Lines(after, "DTSTART"));
    }

    [Fact]
    public async Task A_new_address_closes_the_one_before_and_taking_it_back_closes_it_too()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        using var pim = await portal.AsAsync(cast, cast.Junior);
        using var calendar = portal.Anyone();

        var first = await MakeAsync(pim);
        var second = await MakeAsync(pim);
        Assert.Equal(HttpStatusCode.NotFound, (await calendar.GetAsync(first)).Status);
        Assert.Equal(HttpStatusCode.OK, (await calendar.GetAsync(second)).Status);
        var ended = await (await pim.SendAsync("/me/account", "form[action*=EndCalendar]")).FollowAsync();

        Assert.Equal("The address opens nothing any more.", ended.Said);
        Assert.Equal(HttpStatusCode.NotFound, (await calendar.GetAsync(second)).Status);
        Assert.Equal(HttpStatusCode.NotFound, (await calendar.GetAsync("/calendar/AAAA.ics")).Status);
        Assert.Equal(HttpStatusCode.NotFound, (await calendar.GetAsync("/calendar/.ics")).Status);
    }

    [Fact]
    public async Task The_address_of_somebody_who_left_is_closed_and_stays_so_when_she_is_back()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        using var pim = await portal.AsAsync(cast, cast.Junior);
        using var ines = await portal.AsAsync(cast, cast.Owner);
        using var calendar = portal.Anyone();
        var address = await MakeAsync(pim);
        var leave = $"/people/{cast.Junior.Id.Value}/leave";

        // A day to come ends it by itself.
        await ines.SendAsync(leave, ("On", portal.Today.AddDays(2).ToString("yyyy-MM-dd", null)));
        Assert.Equal(HttpStatusCode.OK, (await calendar.GetAsync(address)).Status);
        portal.Clock.Advance(TimeSpan.FromDays(3));
        Assert.Equal(HttpStatusCode.NotFound, (await calendar.GetAsync(address)).Status);
        using var again = await portal.AsAsync(cast, cast.Owner);
        await again.SendAsync(leave, ("On", portal.Today.ToString("yyyy-MM-dd", null)));

        Assert.Equal(HttpStatusCode.NotFound, (await calendar.GetAsync(address)).Status);
    }

    [Fact]
    public async Task Only_the_hash_of_the_token_is_kept_and_a_signed_in_person_needs_it_as_anybody()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        using var pim = await portal.AsAsync(cast, cast.Junior);
        using var ines = await portal.AsAsync(cast, cast.Owner);
        var token = (await MakeAsync(pim))["/calendar/".Length..^".ics".Length];

        var kept = await portal.DoAsync<AcademyDb, CalendarAddressRow>(db => db.CalendarAddresses.SingleAsync(Stop));

        Assert.Equal(43, token.Length); // 256 bits in base64url
        Assert.Equal(32, kept.TokenHash.Length);
        Assert.NotEqual(Convert.FromBase64String(token.Replace('-', '+').Replace('_', '/') + "="), kept.TokenHash);
        Assert.Equal(HttpStatusCode.NotFound, (await ines.GetAsync($"/calendar/{cast.Junior.Id.Value}.ics")).Status);
    }

    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    private static async Task<string> MakeAsync(Visitor person)
    {
        var made = await person.SendAsync("/me/account", "form[action*='handler=Calendar']");
        Assert.Equal(HttpStatusCode.OK, made.Status);
        return new Uri(made.Page.QuerySelector("#the-address")!.TextContent.Trim()).AbsolutePath;
    }

    private static async Task<HttpResponseMessage> AskAsync(Visitor calendar, string address, string tag)
    {
        using var request = new HttpRequestMessage(HttpMethod.Get, address);
        request.Headers.Add("If-None-Match", tag);
        return await calendar.Client.SendAsync(request, Stop);
    }

    internal static async Task PassAsync(PortalHost portal, Cast cast, Person person, bool isRefresher = false)
    {
        var module = portal.Services.GetRequiredService<ModuleLibrary>().Find(Blades)!.Module;
        var sitting = new Sitting(
            new AttemptId(portal.New()),
            person.Id,
            module.Name,
            module.Hash,
            isRefresher,
            Seed: 3,
            portal.Now,
            ReadOutBy: null
        );
        var answers = sitting
            .Draw(module)
            .Select(question => new Competence.Quizzes.Answer(question.Id, question.Kind.Right))
            .ToList();
        await portal.KeepAsync(cast.Salon, sitting.HandIn(module, answers, portal.Now), person);
    }

    private static IEnumerable<string> Lines(string text, string start) =>
        text.Split("\r\n").Where(line => line.StartsWith(start, StringComparison.Ordinal));
}
