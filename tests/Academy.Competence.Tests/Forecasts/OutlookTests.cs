using Academy.Competence.Evidence;
using Academy.Competence.Forecasts;
using Academy.Competence.Skills;
using Academy.Competence.Statistics;
using Academy.Competence.Tests.Cast;
using static Academy.Competence.Tests.Cast.PathWords;
using static Academy.Competence.Tests.Cast.TestSalon;

namespace Academy.Competence.Tests.Forecasts;

/// <summary>How the forecast, whose figures are checked in ForecastTests, is asked for one person's path.</summary>
public class OutlookTests
{
    private static readonly RowProfile Row = RowProfile.Standard;

    // One groom every three and a half days for ten weeks: two a week, the first of every ten unsuitable.
    private static readonly Step[] Slow = [.. Enumerable.Range(0, 20).Select(at => At(at, at % 10 == 0))];

    [Fact]
    public void It_is_the_forecast_from_the_marks_the_record_and_the_rate_of_the_path()
    {
        var tally = Fold(Slow);
        var rate = new GroomRate(3, 1).After(20, (Today.DayNumber - Slow[0].Day.DayNumber) / 7.0);
        var weeks = Forecast.AsNow(Row, tally.Row, unsuitable: 2, rated: 20, rate).WeeksUntil(.5)!.Value;

        var outlook = Outlook.Of(Slow, tally, Row, salonsRate: 3, Today)!;

        Assert.Equal((tally.Row, 15, 2, 20), (outlook.Have, outlook.Need, outlook.Unsuitable, outlook.Rated));
        Assert.Equal(rate.Mean, outlook.PerWeek, 12);
        Assert.Equal(Today.AddDays((int)Math.Ceiling(weeks * 7)), outlook.AsNow.Half);
        Assert.True(outlook.AsNow.Half < outlook.AsNow.Most);
        Assert.True(outlook.Learning.Half < outlook.Learning.Most);
        Assert.False(outlook.IsOffCourse);
    }

    [Fact]
    public void Four_rated_grooms_foresee_nothing_and_five_do()
    {
        Assert.Null(Outlook.Of(Slow.Take(4), Fold(Slow.Take(4)), Row, salonsRate: 2, Today));
        Assert.NotNull(Outlook.Of(Slow.Take(5), Fold(Slow.Take(5)), Row, salonsRate: 2, Today));
    }

    [Fact]
    public void A_full_row_has_nothing_to_foresee()
    {
        var path = FullRow(Today).ToArray();

        Assert.Null(Outlook.Of(path, Fold(path), Row, salonsRate: 2, Today));
    }

    [Fact]
    public void Whoever_needs_fixing_every_second_time_is_off_course_and_gets_no_day()
    {
        Step[] path = [.. Enumerable.Range(0, 20).Select(at => At(at, at % 2 == 0))];

        var outlook = Outlook.Of(path, Fold(path), Row, salonsRate: 2, Today)!;

        Assert.True(outlook.IsOffCourse);
        Assert.Equal(new ForeseenDays(Half: null, Most: null), outlook.AsNow);
    }

    [Fact]
    public void Whoever_has_had_no_such_dog_for_a_quarter_waits_longer()
    {
        Step[] old = [.. Slow.Select(step => step with { Day = step.Day.AddDays(-91), At = step.At.AddDays(-91) })];

        var (now, then) = (Outlook.Of(Slow, Fold(Slow), Row, 2, Today)!, Outlook.Of(old, Fold(old), Row, 2, Today)!);

        Assert.True(then.PerWeek < now.PerWeek / 4);
        Assert.True(then.AsNow.Half is null || then.AsNow.Half > now.AsNow.Half);
    }

    [Fact]
    public void Rated_grooms_a_week_are_those_of_the_last_quarter_at_most()
    {
        Assert.Equal(20 / 10.0, Outlook.PerWeekOf(Slow, Today)!.Value, .1);
        Assert.Equal(0, Outlook.PerWeekOf(Slow.Select(step => step with { Day = step.Day.AddDays(-200) }), Today));
        Assert.Null(Outlook.PerWeekOf([GroomedAlone(Today)], Today));
    }

    [Fact]
    public void The_salon_s_rate_is_the_mean_of_those_who_are_rated_and_never_nought()
    {
        Step[] old = [.. Slow.Select(step => step with { Day = step.Day.AddDays(-200) })];
        var own = Outlook.PerWeekOf(Slow, Today)!.Value;

        Assert.Equal(own / 2, Outlook.SalonsRateOf([Slow, old, [GroomedAlone(Today)]], Today), 12);
        Assert.Equal(1, Outlook.SalonsRateOf([], Today));
        Assert.Equal(1 / 26.0, Outlook.SalonsRateOf([old], Today));
    }

    [Fact]
    public void Only_a_row_that_was_begun_and_is_not_alone_has_something_ahead()
    {
        Assert.False(Outlook.IsAsked(StandingNow()));
        Assert.True(Outlook.IsAsked(StandingNow(Suitable(Today))));
        Assert.False(Outlook.IsAsked(StandingNow(Alone(Today))));
    }

    private static Step At(int at, bool isUnsuitable) =>
        Rated(Today.AddDays(-70 + (at * 7 / 2)), isUnsuitable ? Verdict.Unsuitable : Verdict.Suitable);
}
