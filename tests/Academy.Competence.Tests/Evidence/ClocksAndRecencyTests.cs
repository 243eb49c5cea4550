using Academy.Competence.Evidence;
using Academy.Competence.Salons;
using static Academy.Competence.Tests.Cast.PathWords;
using static Academy.Competence.Tests.Cast.TestSalon;

namespace Academy.Competence.Tests.Evidence;

/// <summary>Recency counts local days, also where the clocks change in between. Zones and rules: the IANA time zone database.</summary>
public class ClocksAndRecencyTests
{
    // the third last groom ended (UTC); asked at (UTC): recent enough (3 in 120 days)?
    [Theory]
    [InlineData("Europe/London", "2026-03-29 00:30Z", "2026-07-26 22:59Z", true)] // 29 March, clocks go forward; 26 July is day 119
    [InlineData("Europe/London", "2026-03-29 00:30Z", "2026-07-26 23:00Z", false)] // 27 July has begun by the salon's clock
    [InlineData("Europe/London", "2026-03-28 23:59Z", "2026-07-25 22:59Z", true)] // 28 March, still winter
    [InlineData("Europe/London", "2026-03-28 23:59Z", "2026-07-25 23:00Z", false)]
    [InlineData("Europe/London", "2026-10-25 23:59Z", "2027-02-21 23:59Z", true)] // 25 October, clocks go back
    [InlineData("Europe/London", "2026-10-25 23:59Z", "2027-02-22 00:00Z", false)]
    [InlineData("Europe/London", "2026-10-24 23:30Z", "2027-02-21 23:59Z", true)] // already 25 October in London
    [InlineData("Australia/Hobart", "2026-04-04 13:30Z", "2026-08-02 13:59Z", true)] // 5 April, clocks go back; 2 August is day 119
    [InlineData("Australia/Hobart", "2026-04-04 13:30Z", "2026-08-02 14:00Z", false)]
    [InlineData("Australia/Hobart", "2026-10-03 13:30Z", "2027-01-30 12:59Z", true)] // 3 October, the night before they go forward
    [InlineData("Australia/Hobart", "2026-10-03 13:30Z", "2027-01-30 13:00Z", false)]
    public void Recency_counts_local_days_across_a_change_of_clocks(string zone, string ended, string asked, bool recent)
    {
        var place = TimeZoneInfo.FindSystemTimeZoneById(zone);
        var groom = Yesterday with { Groom = StrippingBiscuit with { EndedAt = At(ended) } };
        var step = Paths.Of(groom, place)[0].Step;

        Assert.Equal(recent, Fold(step, step, step).IsRecentOn(SalonDay.Of(At(asked), place), Standard));
    }
}
