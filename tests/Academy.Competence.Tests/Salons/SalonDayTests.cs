using Academy.Competence.Salons;
using static Academy.Competence.Tests.Cast.TestSalon;

namespace Academy.Competence.Tests.Salons;

/// <summary>Days are the salon's own, in its time zone, also when the clocks change. Zones and rules: the IANA time zone database.</summary>
public class SalonDayTests
{
    [Theory]
    [InlineData("Europe/London", "2026-01-15 23:59Z", "2026-01-15")] // winter: the clock shows UTC
    [InlineData("Europe/London", "2026-01-16 00:00Z", "2026-01-16")]
    [InlineData("Europe/London", "2026-06-15 22:59Z", "2026-06-15")] // summer: an hour ahead
    [InlineData("Europe/London", "2026-06-15 23:00Z", "2026-06-16")]
    [InlineData("Europe/London", "2026-03-29 22:59Z", "2026-03-29")] // the day on which clocks go forward
    [InlineData("Europe/London", "2026-10-25 23:30Z", "2026-10-25")] // the day on which they go back
    [InlineData("Australia/Hobart", "2026-04-04 12:59Z", "2026-04-04")] // an hour further in summer, 11 ahead
    [InlineData("Australia/Hobart", "2026-04-05 13:30Z", "2026-04-05")] // clocks went back that night, 10 ahead
    public void A_moment_belongs_to_the_day_that_the_salons_clock_shows(string zone, string moment, string day) =>
        Assert.Equal(Day(day), SalonDay.Of(At(moment), Zone(zone)));

    [Theory]
    [InlineData("Europe/London", "2026-01-15", "2026-01-16 00:00Z")]
    [InlineData("Europe/London", "2026-03-28", "2026-03-29 00:00Z")]
    [InlineData("Europe/London", "2026-03-29", "2026-03-29 23:00Z")] // a day of 23 hours
    [InlineData("Europe/London", "2026-10-25", "2026-10-26 00:00Z")] // a day of 25 hours
    [InlineData("Australia/Hobart", "2026-04-05", "2026-04-05 14:00Z")]
    [InlineData("Australia/Hobart", "2026-10-04", "2026-10-04 13:00Z")]
    [InlineData("America/Santiago", "2026-09-05", "2026-09-06 04:00Z")] // there is no midnight: the clock jumps to one
    [InlineData("America/Havana", "2026-10-31", "2026-11-01 04:00Z")] // midnight comes twice: the first of them
    public void A_day_ends_with_the_first_moment_of_the_next(string zone, string day, string end)
    {
        Assert.Equal(At(end), SalonDay.End(Day(day), Zone(zone)));
        Assert.Equal(Day(day).AddDays(1), SalonDay.Of(At(end), Zone(zone)));
        Assert.Equal(Day(day), SalonDay.Of(At(end).AddSeconds(-1), Zone(zone)));
    }

    private static TimeZoneInfo Zone(string id) => TimeZoneInfo.FindSystemTimeZoneById(id);
}
