using System.Globalization;

namespace Academy.Web.Features.Shared;

/// <summary>Where a page of a list ordered by time, newest first, ends: the next one begins behind it.</summary>
public sealed record ListPlace(DateTimeOffset At, Guid Id)
{
    /// <summary>As a link carries it.</summary>
    public override string ToString() => $"{At.UtcTicks}_{Id:N}";

    /// <summary>A place that nobody's link has made is the beginning.</summary>
    public static ListPlace? Read(string? place) =>
        place?.Split('_') is [var ticks, var id]
        && long.TryParse(ticks, NumberStyles.None, CultureInfo.InvariantCulture, out var at)
        && at <= DateTimeOffset.MaxValue.UtcTicks
        && Guid.TryParse(id, out var one)
            ? new ListPlace(new DateTimeOffset(at, TimeSpan.Zero), one)
            : null;
}
