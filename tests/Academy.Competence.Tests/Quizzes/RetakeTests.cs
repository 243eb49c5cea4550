using System.Globalization;
using Academy.Competence.Quizzes;

namespace Academy.Competence.Tests.Quizzes;

public class RetakeTests
{
    [Fact]
    public void The_first_attempt_waits_for_nothing() => Assert.Null(Quizzing.MayTakeAgainAt([], Zone("Europe/London")));

    [Fact]
    public void A_passed_quiz_waits_for_nothing() =>
        Assert.Null(Quizzing.MayTakeAgainAt([Failed("2026-06-01T10:00Z"), Passed("2026-06-01T11:00Z")], Zone("Europe/London")));

    // failed at                                     zone              again from
    [Theory]
    [InlineData("2026-06-01T10:00Z", "Europe/London", "2026-06-01T11:10+01:00")] // first failure: ten minutes
    [InlineData("2026-06-01T10:00Z 2026-06-01T10:10Z", "Europe/London", "2026-06-02T00:00+01:00")] // second: the next local day
    [InlineData("2026-06-01T10:10Z 2026-06-01T10:00Z", "Europe/London", "2026-06-02T00:00+01:00")] // in any order
    [InlineData("2026-06-01T10:00Z 2026-06-01T23:30Z", "Europe/London", "2026-06-03T00:00+01:00")] // half past midnight in London
    [InlineData("2026-06-01T10:00Z 2026-06-01T23:30Z", "America/New_York", "2026-06-02T00:00-04:00")] // still evening there
    [InlineData("2026-05-01T10:00Z 2026-06-01T10:00Z 2026-06-02T10:00Z", "Europe/London", "2026-06-03T00:00+01:00")] // third: a day
    [InlineData("2026-10-24T09:00Z 2026-10-24T10:00Z", "Europe/London", "2026-10-25T00:00+01:00")] // the clock goes back that day
    public void A_failed_quiz_waits_ten_minutes_then_for_the_next_local_day(string failed, string zone, string again) =>
        Assert.Equal(At(again), Quizzing.MayTakeAgainAt(failed.Split(' ').Select(Failed), Zone(zone)));

    // Offsets of the IANA time zone database, release 2022b and later for Chile.
    [Theory]
    [InlineData("America/Santiago", "2025-09-06T15:00-04:00", "2025-09-07T01:00-03:00")] // no midnight: 24:00 becomes 01:00
    [InlineData("America/Havana", "2025-11-01T15:00-04:00", "2025-11-02T00:00-04:00")] // two midnights: the first
    public void The_next_day_begins_where_the_salons_clock_says(string zone, string failed, string again) =>
        Assert.Equal(At(again), Quizzing.MayTakeAgainAt([Failed(failed), Failed(failed)], Zone(zone)));

    [Fact]
    public void Failures_before_a_pass_are_forgotten() =>
        Assert.Equal(
            At("2026-09-01T12:10+01:00"),
            Quizzing.MayTakeAgainAt(
                [
                    Failed("2026-06-01T10:00Z"),
                    Failed("2026-06-01T10:20Z"),
                    Passed("2026-06-02T10:00Z"),
                    Failed("2026-09-01T11:00Z"),
                ],
                Zone("Europe/London")
            )
        );

    private static Attempt Failed(string at) => new(At(at), HasPassed: false);

    private static Attempt Passed(string at) => new(At(at), HasPassed: true);

    private static DateTimeOffset At(string at) => DateTimeOffset.Parse(at, CultureInfo.InvariantCulture);

    private static TimeZoneInfo Zone(string id) => TimeZoneInfo.FindSystemTimeZoneById(id);
}
