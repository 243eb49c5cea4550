using Academy.Competence.Grooms;
using Academy.Competence.Heat;
using Academy.Competence.Salons;
using Academy.Web.Features.Shared;

namespace Academy.Web.Wording;

public static partial class Say
{
    /// <summary>The newest room reading in one line: what was read, how old it is, what it means now.</summary>
    public static ReadingLine Reading(RoomReading? newest, SalonBook book, DateTimeOffset now)
    {
        var time = new SalonTime(book.Zone, now);
        var other = RoomHeat.StateOf(newest, isAtRisk: false, book.House, now, book.Zone);
        var atRisk = RoomHeat.StateOf(newest, isAtRisk: true, book.House, now, book.Zone);
        return new ReadingLine(
            newest is null ? null : Reading(newest),
            newest is null ? null : $"{time.At(newest.At)}, {time.Ago(newest.At)}",
            Meaning(atRisk, other, book.House),
            atRisk is HeatState.Hot or HeatState.Stop or HeatState.Unknown
        );
    }

    /// <summary>"25.5 °C, 61 %"; without humidity where none was read.</summary>
    public static string Reading(RoomReading reading) =>
        reading.HumidityPct is { } humidity
            ? $"{Counts.Celsius(reading.TenthsC)}, {humidity} %"
            : Counts.Celsius(reading.TenthsC);

    private static string Meaning(HeatState atRisk, HeatState other, HouseRules house) =>
        (atRisk, other) switch
        {
            (_, HeatState.Stop) => "Stop line: nobody grooms, re-book",
            (HeatState.Stop, HeatState.Hot) => "Hot day, and the stop line for dogs at risk in heat: re-book them",
            (HeatState.Stop, _) => "Stop line for dogs at risk in heat: re-book them",
            (_, HeatState.Hot) => "Hot day",
            (HeatState.Hot, _) => "Hot day for dogs at risk in heat",
            (HeatState.Unknown, _) =>
                $"No reading in the last {Counts.Of(house.ReadingGoodForHours, "hour")}: dogs at risk in heat wait for one",
            (HeatState.NotAsked, _) => "No reading is asked at this time of year",
            _ => "Under the salon’s limits",
        };
}
