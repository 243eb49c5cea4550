namespace Academy.Competence.Quizzes;

/// <summary>The salon's local days.</summary>
internal static class LocalDay
{
    /// <summary>The local day on which a moment falls.</summary>
    public static DateOnly Of(DateTimeOffset at, TimeZoneInfo zone) =>
        DateOnly.FromDateTime(TimeZoneInfo.ConvertTime(at, zone).DateTime);

    /// <summary>The first moment of a local day.</summary>
    /// <remarks>
    /// Where the clock jumps over midnight (Santiago in spring) the day begins later; where midnight comes twice (Havana in
    /// autumn) it begins with the first one.
    /// </remarks>
    public static DateTimeOffset StartOf(DateOnly day, TimeZoneInfo zone)
    {
        var clock = day.ToDateTime(TimeOnly.MinValue);
        while (zone.IsInvalidTime(clock))
            clock = clock.AddMinutes(1);
        var offset = zone.IsAmbiguousTime(clock) ? zone.GetAmbiguousTimeOffsets(clock).Max() : zone.GetUtcOffset(clock);
        return new(clock, offset);
    }
}
