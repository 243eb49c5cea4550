using Academy.Competence.Evidence;
using Academy.Competence.Standings;
using Academy.Competence.Statistics;

namespace Academy.Competence.Forecasts;

/// <summary>The days by which a row is foreseen to be full under one answer to "how does she go on?".</summary>
/// <param name="Half">As likely before this day as after it; null where that is more than two years away, or never.</param>
/// <param name="Most">Four in five chances to be full by this day; null likewise.</param>
public sealed record ForeseenDays(DateOnly? Half, DateOnly? Most)
{
    private const int TwoYears = 730;

    internal static ForeseenDays Of(Forecast forecast, DateOnly today)
    {
        return new(By(.5), By(.8));

        DateOnly? By(double chance) =>
            forecast.WeeksUntil(chance) is { } weeks && weeks * 7 <= TwoYears
                ? today.AddDays((int)Math.Ceiling(weeks * 7))
                : null;
    }
}

/// <summary>What can be foreseen for the row of somebody who learns a skill.</summary>
/// <param name="Have">Marks now.</param>
/// <param name="Need">Marks that fill the row.</param>
/// <param name="Unsuitable">How many of the last rated grooms needed fixing.</param>
/// <param name="Rated">Of how many, at most 20.</param>
/// <param name="PerWeek">Rated grooms a week, as expected from now on.</param>
/// <param name="AsNow">If she stays as she is now.</param>
/// <param name="Learning">If she keeps learning at her pace.</param>
/// <param name="IsOffCourse">Whether staying as now would never fill the row: time for a talk, not for a date.</param>
/// <remarks>
/// Only points are foreseen: breadth, modules and the owner's signature come on top. Nothing is foreseen before
/// <see cref="LeastRated"/> rated grooms.
/// </remarks>
public sealed record Outlook(
    int Have,
    int Need,
    int Unsuitable,
    int Rated,
    double PerWeek,
    ForeseenDays AsNow,
    ForeseenDays Learning,
    bool IsOffCourse
)
{
    /// <summary>Below this many rated grooms nothing is foreseen (the salon's own rule, no published source).</summary>
    public const int LeastRated = 5;

    /// <summary>The time over which a person's rated grooms a week are counted: a quarter of a year (our own figure).</summary>
    public const int WeeksWatched = 13;

    /// <summary>What is foreseen from one path, its tally, and how often others get such a dog.</summary>
    /// <param name="path">The path, oldest first.</param>
    /// <param name="tally">What it comes to.</param>
    /// <param name="profile">How the row is counted.</param>
    /// <param name="salonsRate">Rated grooms a week that a learner of this skill gets here on average, above 0.</param>
    /// <param name="today">The salon's local day.</param>
    /// <returns>Null where the row is full, or where too little is known.</returns>
    public static Outlook? Of(IEnumerable<Step> path, Tally tally, RowProfile profile, double salonsRate, DateOnly today)
    {
        var rated = path.Where(step => step.Verdict is not null).ToList();
        if (tally.Row >= profile.MarksToFill || rated.Count < LeastRated)
            return null;

        var rate = RateOf(rated, salonsRate, today);
        var unsuitable = tally.Last.Count(groom => groom.Verdict != Verdict.Suitable);
        var asNow = Forecast.AsNow(profile, tally.Row, unsuitable, tally.Last.Count, rate);
        var curve = LearningCurve.Of([.. rated.Select(step => step.Verdict != Verdict.Suitable)]);
        var learning = Forecast.Learning(profile, tally.Row, curve, rated.Count, rate);
        return new(
            tally.Row,
            profile.MarksToFill,
            unsuitable,
            tally.Last.Count,
            rate.Mean,
            ForeseenDays.Of(asNow, today),
            ForeseenDays.Of(learning, today),
            IsOffCourse: asNow.ChanceNotOnCourse >= .5
        );
    }

    /// <summary>Whether there is something to foresee: a row that was begun and does not let its person groom alone yet, or any more.</summary>
    public static bool IsAsked(Standing standing) =>
        standing.Kind != StandingKind.Alone && standing.Tally.Rated > 0 && standing.Findings.OfType<PointsFound>().Any();

    /// <summary>Rated grooms a week that somebody who learns a skill gets here on average, from the paths of those who do.</summary>
    /// <remarks>One before anybody was rated; never less than one in half a year, for a rate of nought says nothing (our own figures).</remarks>
    public static double SalonsRateOf(IEnumerable<IEnumerable<Step>> paths, DateOnly today) =>
        Math.Max(1 / 26.0, paths.Select(path => PerWeekOf(path, today)).OfType<double>().DefaultIfEmpty(1).Average());

    /// <summary>Rated grooms a week over the last quarter, or since the first where that is less; null before the first.</summary>
    public static double? PerWeekOf(IEnumerable<Step> path, DateOnly today)
    {
        var rated = path.Where(step => step.Verdict is not null).ToList();
        return rated.Count == 0 ? null : CountLately(rated, today) / WeeksOf(rated, today);
    }

    private static GroomRate RateOf(List<Step> rated, double salonsRate, DateOnly today) =>
        new GroomRate(salonsRate, 1).After(CountLately(rated, today), WeeksOf(rated, today));

    private static int CountLately(List<Step> rated, DateOnly today) =>
        rated.Count(step => step.Day > today.AddDays(-7 * WeeksWatched));

    private static double WeeksOf(List<Step> rated, DateOnly today) =>
        Math.Clamp((today.DayNumber - rated[0].Day.DayNumber) / 7.0, 1, WeeksWatched);
}
