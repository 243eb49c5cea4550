using System.Globalization;
using System.Text.RegularExpressions;

namespace Academy.Web.Features.Shared;

/// <summary>Reads what people type, forgivingly: spaces, units, a comma for a point. Null is "not readable", never a guess.</summary>
public static partial class Typed
{
    /// <summary>Tenths of a degree from "25", "25,5", "25.5 °C", "25 C"; more than one decimal is rounded.</summary>
    public static int? TenthsC(string? text) =>
        Number(text, "°c", "c", "°", "degrees") is { } degrees and >= -100 and <= 100
            ? (int)Math.Round(degrees * 10, MidpointRounding.AwayFromZero)
            : null;

    /// <summary>Whole percent from "61", "61 %", "60,6".</summary>
    public static int? Percent(string? text) =>
        Number(text, "%", "percent") is { } percent and >= 0 and <= 100
            ? (int)Math.Round(percent, MidpointRounding.AwayFromZero)
            : null;

    /// <summary>Whole kilograms from "31", "31 kg", "30,4"; a part of a kilogram counts as a whole one, so that no dog is lighter than it is.</summary>
    public static int? Kilos(string? text) =>
        Number(text, "kg", "kilos", "kilo") is { } kilos and >= 0 and <= 1000 ? (int)Math.Ceiling(kilos) : null;

    /// <summary>Minutes from "75", "75 min", "1:15", "1 h 15", "1h", "1,5 h".</summary>
    public static int? Minutes(string? text)
    {
        var plain = Plain(text);
        if (HoursAndMinutes().Match(plain) is { Success: true } both)
            return (60 * Whole(both, "hours")) + Whole(both, "minutes");
        var isHours =
            plain.EndsWith('h')
            || plain.EndsWith("hour", StringComparison.Ordinal)
            || plain.EndsWith("hours", StringComparison.Ordinal);
        var number = Number(plain, "hours", "hour", "h", "minutes", "minute", "mins", "min", "m");
        return (isHours ? number * 60 : number) is { } minutes and >= 0 and <= 1440
            ? (int)Math.Round(minutes, MidpointRounding.AwayFromZero)
            : null;
    }

    /// <summary>A time of day from "9:02", "9.02", "0902", "09:02:30", "9 h 02".</summary>
    public static TimeOnly? Clock(string? text)
    {
        var found = ClockTime().Match(Plain(text));
        return found.Success && Whole(found, "hours") is var hours and < 24 && Whole(found, "minutes") is var minutes and < 60
            ? new TimeOnly(hours, minutes)
            : null;
    }

    /// <summary>A day as a date field sends it, "2026-07-14", or as it is written, "14.7.2026" and "14/7/2026".</summary>
    public static DateOnly? Day(string? text)
    {
        string[] forms = ["yyyy-MM-dd", "d.M.yyyy", "d/M/yyyy", "d M yyyy", "d MMM yyyy", "d MMMM yyyy"];
        return DateOnly.TryParseExact(
            text?.Trim(),
            forms,
            CultureInfo.InvariantCulture,
            DateTimeStyles.AllowWhiteSpaces,
            out var day
        )
            ? day
            : null;
    }

    /// <summary>One of several choices by its name, as the forms send it; null where none was chosen.</summary>
    public static T? Choice<T>(string? name)
        where T : struct, Enum => Enum.TryParse<T>(name, out var chosen) && Enum.IsDefined(chosen) ? chosen : null;

    private static decimal? Number(string? text, params ReadOnlySpan<string> units)
    {
        var plain = Plain(text);
        foreach (var unit in units)
        {
            if (plain.EndsWith(unit, StringComparison.Ordinal))
            {
                plain = plain[..^unit.Length];
                break;
            }
        }

        return
            Decimal().IsMatch(plain)
            && decimal.TryParse(plain.Replace(',', '.'), NumberStyles.Float, CultureInfo.InvariantCulture, out var number)
            ? number
            : null;
    }

    // Spaces of every kind are nothing, and a minus sign may be typeset.
    private static string Plain(string? text) =>
        string.Concat((text ?? "").Where(letter => !char.IsWhiteSpace(letter))).ToLowerInvariant().Replace('−', '-');

    private static int Whole(Match found, string part) =>
        found.Groups[part] is { Length: > 0 } group ? int.Parse(group.ValueSpan, CultureInfo.InvariantCulture) : 0;

    [GeneratedRegex(@"^-?[0-9]{1,6}([.,][0-9]{1,6})?$", RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 1000)]
    private static partial Regex Decimal();

    [GeneratedRegex(
        @"^((?<hours>[0-9]{1,2}):(?<minutes>[0-5][0-9])|(?<hours>[0-9]{1,2})h(ours?)?(?<minutes>[0-5]?[0-9])(m|min|mins|minutes)?)$",
        RegexOptions.ExplicitCapture,
        matchTimeoutMilliseconds: 1000
    )]
    private static partial Regex HoursAndMinutes();

    [GeneratedRegex(
        @"^((?<hours>[0-9]{1,2})[:.h](?<minutes>[0-9]{2})(:[0-9]{2}(\.[0-9]+)?)?|(?<hours>[0-9]{1,2})(?<minutes>[0-9]{2}))$",
        RegexOptions.ExplicitCapture,
        matchTimeoutMilliseconds: 1000
    )]
    private static partial Regex ClockTime();
}
