namespace Academy.Competence.Salons;

/// <summary>The salon's local days: instants are UTC, days are counted in the salon's own time zone.</summary>
public static class SalonDay
{
    /// <summary>The salon's local day at this moment.</summary>
    public static DateOnly Of(DateTimeOffset at, TimeZoneInfo zone) =>
        DateOnly.FromDateTime(TimeZoneInfo.ConvertTime(at, zone).DateTime);

    /// <summary>The first moment of the day after this one: days are half-open, also across a change of clocks.</summary>
    /// <remarks>
    /// Where midnight is skipped by the clocks (Santiago in spring) the day begins at the first moment that exists; where it comes
    /// twice (Havana in autumn), with the first of the two.
    /// </remarks>
    public static DateTimeOffset End(DateOnly day, TimeZoneInfo zone)
    {
        var midnight = day.AddDays(1).ToDateTime(TimeOnly.MinValue);
        while (zone.IsInvalidTime(midnight))
            midnight = midnight.AddMinutes(15);
        var offset = zone.IsAmbiguousTime(midnight) ? zone.GetAmbiguousTimeOffsets(midnight).Max() : zone.GetUtcOffset(midnight);
        return new DateTimeOffset(midnight, offset).ToUniversalTime();
    }

    /// <summary>The moment at which the salon's clock shows this time on this day.</summary>
    /// <remarks>
    /// A time that the clocks skip in spring is taken as the moment they jump to; of one that comes twice in autumn the first is
    /// meant.
    /// </remarks>
    public static DateTimeOffset At(DateOnly day, TimeOnly time, TimeZoneInfo zone)
    {
        var local = day.ToDateTime(time);
        while (zone.IsInvalidTime(local))
            local = local.AddMinutes(1);
        var offset = zone.IsAmbiguousTime(local) ? zone.GetAmbiguousTimeOffsets(local).Max() : zone.GetUtcOffset(local);
        return new DateTimeOffset(local, offset).ToUniversalTime();
    }
}
