using System.Text.Json;
using Academy.Competence;
using Academy.Competence.Quizzes;
using Academy.Modules;
using Academy.Web.Tests.Hosting;
using Microsoft.Extensions.DependencyInjection;

namespace Academy.Browser.Tests;

/// <summary>
/// Somebody makes an address for a calendar, by keyboard; what stands there is read by ical.js 2.2.1, an independent reader of RFC 5545
/// (data/calendars/README.md).
/// </summary>
public sealed class CalendarWalk(Stage stage)
{
    private const string Name = "blades-and-scissors";

    private const string Read = """
        async ([reader, text]) => {
          const ICAL = (await import(`data:text/javascript;base64,${reader}`)).default;
          const calendar = new ICAL.Component(ICAL.parse(text));
          const events = calendar.getAllSubcomponents("vevent").map((one) => new ICAL.Event(one));
          return JSON.stringify({
            version: calendar.getFirstPropertyValue("version"),
            name: calendar.getFirstPropertyValue("name"),
            refresh: calendar.getFirstPropertyValue("refresh-interval").toString(),
            events: events.map((one) => ({
              uid: one.uid,
              words: one.summary,
              wholeDay: one.startDate.isDate,
              day: one.startDate.toString(),
              end: one.endDate.toString(),
              stamp: one.component.getFirstPropertyValue("dtstamp").toString(),
              alarms: one.component.getAllSubcomponents("valarm").map((alarm) => [
                alarm.getFirstPropertyValue("action"), alarm.getFirstPropertyValue("trigger").toSeconds(), alarm.getFirstPropertyValue("description"),
              ]),
            })),
          });
        }
        """;

    [Fact]
    public async Task A_calendar_reads_the_day_a_pass_runs_out_and_warns_a_week_ahead_at_nine()
    {
        using var modules = new TestModules().With(Name);
        await using var salon = await SalonPortal.OpenAsync(stage, modules.Root);
        await salon.LetInAsync(salon.Cast.Junior);
        await PassAsync(salon);
        var pim = Hands.Keyboard(await salon.OpenAsync(Device.Phone));
        await SalonPortal.SignInAsync(pim, salon.Cast.Junior);

        await pim.GoAsync("/me/account");
        await pim.PressAsync("Make an address");
        await pim.SeesAsync("It stands here only now.");
        Assert.Equal([], await Axe.LookAsync(pim.Page));
        var address = (await pim.Page.Locator("#the-address").InnerTextAsync()).Trim();
        using var calendar = new HttpClient();
        var text = await calendar.GetStringAsync(new Uri(address), TestContext.Current.CancellationToken);

        using var read = JsonDocument.Parse(await ReadAsync(pim, text));
        var root = read.RootElement;
        Assert.Equal("2.0", root.GetProperty("version").GetString());
        Assert.Equal("Modules due", root.GetProperty("name").GetString());
        Assert.Equal("PT12H", root.GetProperty("refresh").GetString());
        var due = Assert.Single(root.GetProperty("events").EnumerateArray());
        Assert.True(Guid.TryParse(due.GetProperty("uid").GetString(), out _));
        Assert.Equal($"Refresher: {TestModules.Title}", due.GetProperty("words").GetString());
        Assert.True(due.GetProperty("wholeDay").GetBoolean());
        // Passed on 10 June; the refresher is overdue 28 days later, on 8 July.
        Assert.Equal("2026-07-07", due.GetProperty("day").GetString());
        Assert.Equal("2026-07-08", due.GetProperty("end").GetString());
        Assert.Equal("2026-06-10T08:00:00Z", due.GetProperty("stamp").GetString());
        var alarm = Assert.Single(due.GetProperty("alarms").EnumerateArray());
        Assert.Equal("DISPLAY", alarm[0].GetString());
        Assert.Equal(-((7 * 24) - 9) * 3600, alarm[1].GetInt32());

        await pim.GoAsync("/me/account");
        await pim.PressAsync("Take the address back");
        await pim.SeesSaidAsync("The address opens nothing any more.");
        Assert.Equal(
            System.Net.HttpStatusCode.NotFound,
            (await calendar.GetAsync(new Uri(address), TestContext.Current.CancellationToken)).StatusCode
        );
    }

    // On an empty page: the portal's own pages let no script in.
    private static async Task<string> ReadAsync(Hands pim, string text)
    {
        var page = await pim.Page.Context.NewPageAsync();
        var reader = await File.ReadAllBytesAsync(
            Path.Combine(AppContext.BaseDirectory, "data", "calendars", "ical.js"),
            TestContext.Current.CancellationToken
        );
        return await page.EvaluateAsync<string>(Read, new object[] { Convert.ToBase64String(reader), text });
    }

    private static async Task PassAsync(SalonPortal salon)
    {
        var (portal, junior) = (salon.Portal, salon.Cast.Junior);
        var module = portal.Services.GetRequiredService<ModuleLibrary>().Find(Name)!.Module;
        var sitting = new Sitting(
            new AttemptId(portal.New()),
            junior.Id,
            module.Name,
            module.Hash,
            IsRefresher: false,
            Seed: 3,
            portal.Now,
            ReadOutBy: null
        );
        var answers = sitting
            .Draw(module)
            .Select(question => new Competence.Quizzes.Answer(question.Id, question.Kind.Right))
            .ToList();
        await portal.KeepAsync(salon.Cast.Salon, sitting.HandIn(module, answers, portal.Now), junior);
    }
}
