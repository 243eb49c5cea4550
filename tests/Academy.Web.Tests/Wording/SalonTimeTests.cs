using Academy.Web.Wording;

namespace Academy.Web.Tests.Wording;

public class SalonTimeTests
{
    // Tuesday 21 July 2026, 10:00 in London.
    private static readonly SalonTime s_time = new(Sample.London, Sample.Now);

    [Fact]
    public void Days_are_said_in_british_english_and_carry_another_years_number()
    {
        Assert.Equal("Tuesday 3 March", s_time.Day(new DateOnly(2026, 3, 3)));
        Assert.Equal("Monday 3 March 2025", s_time.Day(new DateOnly(2025, 3, 3)));
        Assert.Equal("3 Sep", s_time.ShortDate(new DateOnly(2026, 9, 3)));
        Assert.Equal("since 11 July", s_time.Since(new DateOnly(2026, 7, 11)));
        Assert.Equal("since today", s_time.Since(new DateOnly(2026, 7, 21)));
    }

    [Theory]
    [InlineData("2026-07-21T08:02Z", "9:02 today")]
    [InlineData("2026-07-20T16:10Z", "17:10 yesterday")]
    [InlineData("2026-07-22T16:10Z", "17:10 tomorrow")]
    [InlineData("2026-07-24T16:10Z", "17:10 on Friday")]
    [InlineData("2026-07-28T16:10Z", "17:10 on Tuesday 28 July")] // a week on, "Tuesday" alone would be today's
    [InlineData("2026-03-03T09:02Z", "9:02 on Tuesday 3 March")] // winter time
    public void A_moment_is_said_in_the_salons_zone(string at, string words) => Assert.Equal(words, s_time.At(Moment(at)));

    [Theory]
    [InlineData("2026-07-24T16:10Z", "3 days 7 hours left, until 17:10 on Friday")]
    [InlineData("2026-07-28T06:30Z", "6 days 21 hours left, until 7:30 on Tuesday 28 July")]
    [InlineData("2026-07-23T09:00Z", "2 days left, until 10:00 on Thursday")]
    [InlineData("2026-07-23T08:59Z", "47 hours left, until 9:59 on Thursday")]
    [InlineData("2026-07-24T08:59Z", "2 days 23 hours left, until 9:59 on Friday")]
    [InlineData("2026-07-21T11:59Z", "2 hours left, until 12:59 today")] // a begun hour is not promised
    [InlineData("2026-07-21T10:00Z", "1 hour left, until 11:00 today")]
    [InlineData("2026-07-21T09:45Z", "45 minutes left, until 10:45 today")]
    [InlineData("2026-07-21T09:00:20Z", "less than a minute left, until 10:00 today")]
    [InlineData("2026-07-21T09:00Z", "closed at 10:00 today")]
    [InlineData("2026-07-20T13:30Z", "closed at 14:30 yesterday")]
    public void Time_left_is_days_and_hours_with_the_hour_it_closes(string until, string words) =>
        Assert.Equal(words, s_time.Left(Moment(until)));

    [Theory]
    [InlineData("2026-07-21T08:59:30Z", "just now")]
    [InlineData("2026-07-21T08:35Z", "25 minutes ago")]
    [InlineData("2026-07-21T07:59Z", "1 hour ago")]
    [InlineData("2026-07-18T09:00Z", "3 days ago")]
    public void Ages_are_said_in_the_unit_that_fits(string at, string words) => Assert.Equal(words, s_time.Ago(Moment(at)));

    [Theory]
    [InlineData("2026-07-21", "today")]
    [InlineData("2026-07-20", "yesterday")]
    [InlineData("2026-03-12", "131 days ago")]
    [InlineData("2026-07-22", "tomorrow")]
    [InlineData("2026-07-30", "in 9 days")]
    public void Days_are_counted_on_the_calendar(string day, string words) =>
        Assert.Equal(words, s_time.Ago(DateOnly.Parse(day, SalonTime.Culture)));

    // Zone data (IANA tzdb): clocks in London go forward on 29 March 2026 at 1:00 and back on 25 October 2026 at 2:00.
    [Fact]
    public void A_day_on_which_the_clocks_go_forward_has_one_hour_less_left()
    {
        var evening = new SalonTime(Sample.London, Moment("2026-03-28T17:10Z"));
        Assert.Equal("23 hours left, until 17:10 tomorrow", evening.Left(Moment("2026-03-29T16:10Z")));
        Assert.Equal("yesterday", new SalonTime(Sample.London, Moment("2026-03-29T16:10Z")).Ago(new DateOnly(2026, 3, 28)));
    }

    [Fact]
    public void The_hour_that_comes_twice_says_which_one_it_is()
    {
        var time = new SalonTime(Sample.London, Moment("2026-10-25T12:00Z"));
        Assert.Equal("1:30 (UTC+01:00)", time.Clock(Moment("2026-10-25T00:30Z")));
        Assert.Equal("1:30 (UTC+00:00)", time.Clock(Moment("2026-10-25T01:30Z")));
        Assert.Equal("2:30", time.Clock(Moment("2026-10-25T02:30Z")));
    }

    [Fact]
    public void The_same_moment_is_another_day_elsewhere() =>
        Assert.Equal(
            "Wednesday 22 July",
            new SalonTime(TimeZoneInfo.FindSystemTimeZoneById("Pacific/Auckland"), Sample.Now).Day(Moment("2026-07-21T13:00Z"))
        );

    [Theory]
    [InlineData("2015-07-21", "11 years")] // its birthday
    [InlineData("2015-07-22", "10 years")]
    [InlineData("2024-02-29", "2 years")]
    [InlineData("2025-07-21", "1 year")]
    [InlineData("2025-12-22", "6 months")]
    [InlineData("2026-05-19", "9 weeks")]
    [InlineData("2026-07-20", "0 weeks")]
    public void A_dogs_age_is_said_in_years_months_or_weeks(string born, string words) =>
        Assert.Equal(words, s_time.Age(DateOnly.Parse(born, SalonTime.Culture)));

    private static DateTimeOffset Moment(string at) => DateTimeOffset.Parse(at, SalonTime.Culture);
}
