using Academy.Competence.Grooms;
using Academy.Competence.Salons;
using Academy.Competence.Skills;

namespace Academy.Competence.Heat;

/// <summary>What a room reading means for a dog.</summary>
public enum HeatState
{
    /// <summary>No reading that is new enough, on a day that may be hot.</summary>
    Unknown,

    /// <summary>No reading that is new enough, out of season: the day is taken as it comes.</summary>
    NotAsked,

    /// <summary>Under the limits.</summary>
    Under,

    /// <summary>A hot day for this dog.</summary>
    Hot,

    /// <summary>At the stop line: nobody grooms, re-book.</summary>
    Stop,
}

/// <summary>The salon's heat rules on one reading. The salon's own numbers, common practice, no published threshold for salons.</summary>
public static class RoomHeat
{
    /// <summary>Whether a dog with these hazards is at risk in heat.</summary>
    public static bool IsAtRisk(IEnumerable<SkillCode> hazards) => hazards.Any(SkillBook.AtRiskInHeat.Contains);

    /// <summary>What the newest reading means now, for a dog at risk or not.</summary>
    /// <remarks>
    /// A day may be hot in the salon's season, or at any time of year once a reading of that day reached the limit for dogs at
    /// risk. Limits are inclusive: 26.0 °C is a hot day, 30.0 °C the stop line. The heat index is asked only where humidity was
    /// read, and within the range for which it is published.
    /// </remarks>
    public static HeatState StateOf(RoomReading? newest, bool isAtRisk, HouseRules house, DateTimeOffset now, TimeZoneInfo zone)
    {
        if (newest is null || !IsNewEnough(newest, house, now))
            return MayBeHot(newest, house, now, zone) ? HeatState.Unknown : HeatState.NotAsked;
        if (newest.TenthsC >= (isAtRisk ? house.StopForAtRiskFromTenthsC : house.StopFromTenthsC))
            return HeatState.Stop;
        return newest.TenthsC >= (isAtRisk ? house.HotForAtRiskFromTenthsC : house.HotFromTenthsC) || IsHotByIndex(newest, house)
            ? HeatState.Hot
            : HeatState.Under;
    }

    /// <summary>Whether a reading still says something: taken at most the salon's hours ago, and not in the future.</summary>
    public static bool IsNewEnough(RoomReading reading, HouseRules house, DateTimeOffset now) =>
        reading.At <= now + Logging.Grace && now - reading.At < TimeSpan.FromHours(house.ReadingGoodForHours);

    private static bool MayBeHot(RoomReading? newest, HouseRules house, DateTimeOffset now, TimeZoneInfo zone)
    {
        var today = SalonDay.Of(now, zone);
        return house.MayBeHot(today)
            || newest is not null && SalonDay.Of(newest.At, zone) == today && newest.TenthsC >= house.HotForAtRiskFromTenthsC;
    }

    private static bool IsHotByIndex(RoomReading reading, HouseRules house)
    {
        var celsius = reading.TenthsC / 10.0;
        return reading.HumidityPct is { } humidity
            && celsius is >= HeatIndex.LowestCelsius and <= HeatIndex.HighestCelsius
            && HeatIndex.InFahrenheit(HeatIndex.ToFahrenheit(celsius), humidity) >= house.HotFromIndexF;
    }
}
