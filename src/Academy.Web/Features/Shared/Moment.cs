using System.Globalization;

namespace Academy.Web.Features.Shared;

/// <summary>A moment that an address asks for by the salon's clock.</summary>
/// <param name="At">The moment.</param>
/// <param name="IsPast">Whether one was asked for that is past.</param>
/// <param name="Wrong">What is wrong with what was asked.</param>
public sealed record Moment(DateTimeOffset At, bool IsPast, string? Wrong)
{
    private const string Form = "yyyy-MM-dd'T'HH:mm";

    /// <summary>The moment asked for; now where none was, or where it cannot be read or has not come yet.</summary>
    public static Moment Asked(string? asked, DateTimeOffset now, TimeZoneInfo zone)
    {
        if (string.IsNullOrWhiteSpace(asked))
            return new(now, IsPast: false, Wrong: null);
        if (!DateTime.TryParseExact(asked, Form, CultureInfo.InvariantCulture, DateTimeStyles.None, out var local))
            return new(now, IsPast: false, "Another day: write a date and a time, such as 2026-03-03 14:00.");
        var at = Of(local, zone);
        return at > now
            ? new(now, IsPast: false, "Another day: that moment has not come yet. Choose one up to now.")
            : new(at, IsPast: true, Wrong: null);
    }

    /// <summary>As a form takes it.</summary>
    public static string Write(DateTimeOffset at, TimeZoneInfo zone) =>
        TimeZoneInfo.ConvertTime(at, zone).ToString(Form, CultureInfo.InvariantCulture);

    /// <summary>What a link carries on to ask for the same moment.</summary>
    public static string Ask(DateTimeOffset at, TimeZoneInfo zone) => $"?at={Write(at, zone)}";

    // An hour that the clocks skip is read as the one after it.
    private static DateTimeOffset Of(DateTime local, TimeZoneInfo zone)
    {
        var real = zone.IsInvalidTime(local) ? local.AddHours(1) : local;
        return new DateTimeOffset(real, zone.GetUtcOffset(real)).ToUniversalTime();
    }
}
