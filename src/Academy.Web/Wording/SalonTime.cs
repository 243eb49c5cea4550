using System.Globalization;
using Academy.Competence.Salons;

namespace Academy.Web.Wording;

/// <summary>Days, times and spans in words, as seen from one moment in the salon's zone.</summary>
/// <remarks>Spans are counted between instants and days on the salon's calendar, so neither slips when the clocks change.</remarks>
public sealed record SalonTime(TimeZoneInfo Zone, DateTimeOffset Now)
{
    /// <summary>The portal speaks British English only, whatever the server or the browser is set to.</summary>
    public static CultureInfo Culture { get; } = British();

    public DateOnly Today => DayOf(Now);

    public DateOnly DayOf(DateTimeOffset at) => SalonDay.Of(at, Zone);

    /// <summary>"Tuesday 3 March"; with its year where that is not this one.</summary>
    public string Day(DateOnly day) => Say(day, day.Year == Today.Year ? "dddd d MMMM" : "dddd d MMMM yyyy");

    public string Day(DateTimeOffset at) => Day(DayOf(at));

    /// <summary>"3 March"; with its year where that is not this one.</summary>
    public string Date(DateOnly day) => Say(day, day.Year == Today.Year ? "d MMMM" : "d MMMM yyyy");

    /// <summary>"3 Mar", for a dot or a narrow cell.</summary>
    public string ShortDate(DateOnly day) => Say(day, day.Year == Today.Year ? "d MMM" : "d MMM yyyy");

    /// <summary>"9:02"; in the hour that comes twice in autumn with its offset.</summary>
    public string Clock(DateTimeOffset at)
    {
        var local = TimeZoneInfo.ConvertTime(at, Zone);
        var clock = local.ToString("H:mm", Culture);
        return Zone.IsAmbiguousTime(local) ? $"{clock} (UTC{local.ToString("zzz", Culture)})" : clock;
    }

    /// <summary>The moment at which the salon's clock says this; an hour that the clocks skip is read as the one after it.</summary>
    public DateTimeOffset Moment(DateOnly day, TimeOnly clock)
    {
        var local = day.ToDateTime(clock);
        var real = Zone.IsInvalidTime(local) ? local.AddHours(1) : local;
        return new DateTimeOffset(real, Zone.GetUtcOffset(real)).ToUniversalTime();
    }

    /// <summary>"9:02 on Tuesday 3 March", "9:02 today", "9:02 tomorrow", "9:02 on Friday" within the coming six days.</summary>
    public string At(DateTimeOffset at) => $"{Clock(at)} {OnDay(DayOf(at))}";

    /// <summary>"2 hours left, until 17:10 on Friday", from two days on "6 days 21 hours left"; once it is past "closed at 17:10 on Friday".</summary>
    public string Left(DateTimeOffset until) =>
        until <= Now ? $"closed at {At(until)}" : $"{Span(until - Now)} left, until {At(until)}";

    /// <summary>"just now", "25 minutes ago", "3 hours ago", "2 days ago".</summary>
    public string Ago(DateTimeOffset at) =>
        (Now - at).TotalMinutes < 1 ? "just now"
        : Now - at < TimeSpan.FromDays(2) ? $"{Span(Now - at)} ago"
        : Ago(DayOf(at));

    /// <summary>"today", "yesterday", "131 days ago"; for a day to come "tomorrow", "in 9 days".</summary>
    public string Ago(DateOnly day) =>
        (Today.DayNumber - day.DayNumber) switch
        {
            0 => "today",
            1 => "yesterday",
            -1 => "tomorrow",
            > 1 and var days => $"{days} days ago",
            var days => $"in {-days} days",
        };

    /// <summary>"since 11 July", "since today".</summary>
    public string Since(DateOnly day) => day == Today ? "since today" : $"since {Date(day)}";

    /// <summary>A dog's age: "11 years", "7 months", "9 weeks".</summary>
    public string Age(DateOnly bornOn)
    {
        var years = Today.Year - bornOn.Year - (Today < bornOn.AddYears(Today.Year - bornOn.Year) ? 1 : 0);
        var weeks = (Today.DayNumber - bornOn.DayNumber) / 7;
        var months = ((Today.Year - bornOn.Year) * 12) + Today.Month - bornOn.Month - (Today.Day < bornOn.Day ? 1 : 0);
        return years >= 1 ? Counts.Of(years, "year")
            : weeks >= 26 ? Counts.Of(months, "month")
            : Counts.Of(weeks, "week");
    }

    private string OnDay(DateOnly day) =>
        (day.DayNumber - Today.DayNumber) switch
        {
            0 => "today",
            1 => "tomorrow",
            -1 => "yesterday",
            > 1 and < 7 => $"on {Say(day, "dddd")}",
            _ => $"on {Day(day)}",
        };

    private static string Span(TimeSpan span) =>
        span < TimeSpan.FromMinutes(1) ? "less than a minute"
        : span < TimeSpan.FromHours(1) ? Counts.Of((int)span.TotalMinutes, "minute")
        : span < TimeSpan.FromDays(2) ? Counts.Of((int)span.TotalHours, "hour")
        : span.Hours == 0 ? Counts.Of(span.Days, "day")
        : $"{Counts.Of(span.Days, "day")} {Counts.Of(span.Hours, "hour")}";

    private static string Say(DateOnly day, string format) => day.ToString(format, Culture);

    // Libraries of cultures disagree about "Sep" and "Sept"; the portal does not.
    private static CultureInfo British()
    {
        var culture = (CultureInfo)CultureInfo.GetCultureInfo("en-GB").Clone();
        culture.DateTimeFormat.AbbreviatedMonthNames = CultureInfo.InvariantCulture.DateTimeFormat.AbbreviatedMonthNames;
        culture.DateTimeFormat.AbbreviatedMonthGenitiveNames = CultureInfo
            .InvariantCulture
            .DateTimeFormat
            .AbbreviatedMonthGenitiveNames;
        return CultureInfo.ReadOnly(culture);
    }
}
