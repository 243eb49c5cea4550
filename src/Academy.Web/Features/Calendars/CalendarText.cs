using Academy.Competence;
using Academy.Competence.Evidence;
using Academy.Web.Wording;
using Ical.Net;
using Ical.Net.CalendarComponents;
using Ical.Net.DataTypes;
using Ical.Net.Serialization;

namespace Academy.Web.Features.Calendars;

/// <summary>
/// Reminders as a calendar file (RFC 5545): for each a whole day with a warning ahead. It holds titles of modules and days, and nobody's
/// name. The same reminders give the same file to the letter.
/// </summary>
internal static class CalendarText
{
    // At nine in the morning so many days before: a whole day begins at midnight.
    private static readonly int s_hoursAhead = (Reminding.DaysAhead * 24) - 9;

    /// <param name="due">What is due.</param>
    /// <param name="titles">What the modules are called; one that the salon does not have is left out.</param>
    /// <param name="idOf">The lasting id of a module's reminder.</param>
    public static string Of(
        IEnumerable<Reminder> due,
        IReadOnlyDictionary<ModuleName, string> titles,
        Func<ModuleName, Guid> idOf
    )
    {
        var calendar = new Calendar { ProductId = "-//Academy//Due modules//EN" };
        calendar.AddProperty("NAME", Name);
        calendar.AddProperty("X-WR-CALNAME", Name);
        calendar.AddProperty(
            new CalendarProperty("REFRESH-INTERVAL", "PT12H") { Parameters = { new CalendarParameter("VALUE", "DURATION") } }
        );
        foreach (var reminder in due)
            if (titles.TryGetValue(reminder.Module, out var title))
                calendar.Events.Add(EventOf(reminder, title, idOf(reminder.Module)));
        return new CalendarSerializer().SerializeToString(calendar)!;
    }

    private const string Name = "Modules due";

    private static CalendarEvent EventOf(Reminder reminder, string title, Guid id)
    {
        var words = $"{Say.Capital(Say.Word(reminder.Kind))}: {title}";
        var since = new CalDateTime(reminder.Since.UtcDateTime, "UTC");
        return new CalendarEvent
        {
            Uid = id.ToString(),
            DtStamp = since,
            LastModified = since,
            Summary = words,
            Description = "The last day on which your pass counts.",
            Start = new CalDateTime(reminder.LastDay),
            End = new CalDateTime(reminder.LastDay.AddDays(1)),
            Class = "PRIVATE",
            Transparency = "TRANSPARENT",
            Alarms =
            {
                new Alarm
                {
                    Action = "DISPLAY",
                    Description = words,
                    Trigger = new Trigger(Duration.FromHours(-s_hoursAhead)),
                },
            },
        };
    }
}
