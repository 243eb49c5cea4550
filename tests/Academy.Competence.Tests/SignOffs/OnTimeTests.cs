using Academy.Competence.SignOffs;
using Academy.Competence.Tests.Cast;
using static Academy.Competence.Tests.Cast.StoryWords;
using static Academy.Competence.Tests.Cast.TestSalon;

namespace Academy.Competence.Tests.SignOffs;

/// <summary>A groom is rated within 72 hours of its end, or by the end of the senior's next working day, at most 7 days.</summary>
public class OnTimeTests
{
    // groom ends (UTC)    senior in on     signed at         on time until
    [Theory]
    [InlineData("2026-06-01 10:00Z", "", "2026-06-01 12:00Z", "2026-06-08 10:00Z")] // her next working day is not known: 7 days
    [InlineData("2026-06-01 10:00Z", "2026-06-01", "2026-06-02 12:00Z", "2026-06-08 10:00Z")] // the day of the groom is not the next
    [InlineData("2026-06-01 10:00Z", "2026-06-02", "2026-06-02 12:00Z", "2026-06-04 10:00Z")] // 72 hours are longer
    [InlineData("2026-06-01 10:00Z", "2026-06-05", "2026-06-05 12:00Z", "2026-06-05 23:00Z")] // her next day ends at midnight in London
    [InlineData("2026-06-01 10:00Z", "2026-06-05", "2026-06-09 12:00Z", "2026-06-05 23:00Z")]
    [InlineData("2026-06-01 10:00Z", "2026-06-03 2026-06-05", "2026-06-05 12:00Z", "2026-06-04 10:00Z")] // the first of them counts
    [InlineData("2026-06-01 10:00Z", "2026-06-05", "2026-06-04 12:00Z", "2026-06-08 10:00Z")] // a day to come is not known to be worked
    [InlineData("2026-06-01 10:00Z", "2026-06-08", "2026-06-08 09:00Z", "2026-06-08 10:00Z")] // at most 7 days
    [InlineData("2026-06-01 10:00Z", "2026-06-10", "2026-06-10 09:00Z", "2026-06-08 10:00Z")]
    [InlineData("2026-06-01 23:30Z", "2026-06-02", "2026-06-03 12:00Z", "2026-06-08 23:30Z")] // in London the groom was on the 2nd
    [InlineData("2026-03-25 10:00Z", "2026-03-29", "2026-03-29 12:00Z", "2026-03-29 23:00Z")] // clocks go forward: her day is 23 hours
    [InlineData("2026-10-21 10:00Z", "2026-10-25", "2026-10-25 12:00Z", "2026-10-26 00:00Z")] // clocks go back: her day is 25 hours
    [InlineData("2026-03-27 10:00Z", "2026-03-28", "2026-03-28 12:00Z", "2026-03-30 10:00Z")] // 72 hours are hours, not days on a clock
    public void A_sign_off_is_on_time_until(string ended, string daysIn, string signed, string until) =>
        Assert.Equal(At(until), SigningOff.OnTimeUntil(At(ended), Days(daysIn), At(signed), London));

    [Fact]
    public void South_of_the_equator_a_day_with_a_change_of_clocks_ends_at_its_own_midnight()
    {
        // clocks go back on 5 April 2026 and forward on 4 October 2026
        Assert.Equal(
            At("2026-04-05 14:00Z"),
            SigningOff.OnTimeUntil(At("2026-04-01 02:00Z"), Days("2026-04-05"), At("2026-04-05 06:00Z"), Hobart)
        );
        Assert.Equal(
            At("2026-10-04 13:00Z"),
            SigningOff.OnTimeUntil(At("2026-09-30 02:00Z"), Days("2026-10-04"), At("2026-10-04 06:00Z"), Hobart)
        );
    }

    // signed so long after the end (the senior was in the next day)
    [Theory]
    [InlineData(72, 0, false)]
    [InlineData(72, 1, true)]
    public void Seventy_two_hours_are_still_on_time_and_a_minute_more_is_late(int hours, int minutes, bool late)
    {
        var ended = Yesterday.Groom.EndedAt;
        var rosa = Rosa.MayStripWire() with { DaysIn = [Today] };

        Assert.Equal(late, Met(Pim).Signed(Yesterday, rosa, ended.AddHours(hours).AddMinutes(minutes)).IsLate);
    }

    [Fact]
    public void A_late_sign_off_is_possible_marked_and_does_not_count_until_it_is_admitted()
    {
        var story = Yesterday.SignedOff(Met(Pim), Rosa.MayStripWire(), Yesterday.Groom.EndedAt.AddDays(30));
        var signed = story.SignOffs[0];

        Assert.True(signed.IsLate);
        Assert.False(story.Counts(signed));
        Assert.True((story with { Admitted = [signed.Id] }).Counts(signed));
    }

    [Fact]
    public void A_correction_is_as_late_as_what_it_corrects()
    {
        var correction = Met(Pim) with
        {
            Id = SignOffNumber(302),
            Replaces = SignOffNumber(301),
            Why = Said("I mixed up two dogs."),
        };
        var monthLater = Yesterday.Groom.EndedAt.AddDays(30);
        var onTime = Yesterday.SignedOff(Met(Pim), Rosa.MayStripWire());
        var late = Yesterday.SignedOff(Met(Pim), Rosa.MayStripWire(), Yesterday.Groom.EndedAt.AddDays(8));

        Assert.False(correction.Signed(onTime, Rosa.MayStripWire(), monthLater).IsLate);
        Assert.True(correction.Signed(late, Rosa.MayStripWire(), monthLater).IsLate);
    }

    private static DateOnly[] Days(string days) => [.. days.Split(' ', StringSplitOptions.RemoveEmptyEntries).Select(Day)];
}
