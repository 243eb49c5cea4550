using Academy.Competence.Salons;

namespace Academy.Competence.Quizzes;

/// <summary>Says when a module's next refresher is due.</summary>
/// <remarks>
/// Rules of the salon's own, in the shape that studies of spaced practice favour: gaps that begin at about a twelfth of the year for
/// which something has to be kept (Cepeda and others 2008, doi 10.1111/j.1467-9280.2008.02209.x) and grow (Kang and others
/// 2014, doi 10.3758/s13423-014-0636-z). No study was made in salons.
/// </remarks>
public static class Refreshing
{
    /// <summary>The gap after a first pass, in days.</summary>
    public const int FirstGap = 28;

    /// <summary>The gap from which the next pass starts again after two failures in a row, in days.</summary>
    public const int GapAfterFailing = 7;

    /// <summary>The longest time that a pass counts without another one, in days.</summary>
    public const int LongestGap = 365;

    /// <summary>The gap in days after one more refresher was settled.</summary>
    /// <param name="gap">The gap before it, or null before the first.</param>
    /// <param name="hasPassed">Whether it was passed; failed means failed again after the one further try.</param>
    /// <param name="longest">The longest gap of the module, <see cref="Module.RefresherDays"/>.</param>
    public static int NextGap(int? gap, bool hasPassed, int longest) =>
        (gap, hasPassed) switch
        {
            (_, false) => GapAfterFailing,
            (null, true) => Math.Min(FirstGap, longest),
            ({ } days, true) => Math.Min(days * 2, longest),
        };

    /// <summary>Where somebody stands with the refreshers of a module, or null before the module was passed at all.</summary>
    /// <param name="attempts">Every attempt at the module, whole quizzes and refreshers alike, in any order.</param>
    /// <param name="longest">The longest gap of the module, <see cref="Module.RefresherDays"/>.</param>
    /// <param name="zone">The salon's time zone: gaps count local days.</param>
    /// <remarks>
    /// A first failed refresher moves nothing: it may be tried again. A second one in a row pauses what rests on the module until
    /// the next pass. A pass in the first half of a gap begins the same gap anew without lengthening it, so that nobody reaches the
    /// longest gap in one afternoon. Failures before the first pass say nothing about refreshers.
    /// </remarks>
    public static NextRefresher? After(IEnumerable<Attempt> attempts, int longest, TimeZoneInfo zone)
    {
        var counted = attempts.OrderBy(attempt => attempt.HandedInAt).SkipWhile(attempt => !attempt.HasPassed).ToArray();
        return counted is []
            ? null
            : counted
                .Aggregate(new State(null, 0, default, default), (state, attempt) => state.Then(attempt, longest, zone))
                .Next();
    }

    private sealed record State(int? Gap, int Failed, DateOnly SettledOn, DateOnly PassedOn)
    {
        public State Then(Attempt attempt, int longest, TimeZoneInfo zone)
        {
            var day = SalonDay.Of(attempt.HandedInAt, zone);
            if (attempt.HasPassed)
                return new(IsEarly(day) ? Gap : NextGap(Gap, hasPassed: true, longest), 0, day, day);
            return Failed == 0
                ? this with
                {
                    Failed = 1,
                }
                : new(NextGap(Gap, hasPassed: false, longest), Failed + 1, day, PassedOn);
        }

        private bool IsEarly(DateOnly day) => Failed < 2 && Gap is { } days && (day.DayNumber - SettledOn.DayNumber) * 2 < days;

        public NextRefresher Next() =>
            new(SettledOn.AddDays(Gap!.Value), IsPaused: Failed > 1, PassedOn.AddDays(LongestGap), HasFailedOnce: Failed == 1);
    }
}

/// <summary>When a module's next refresher is due.</summary>
/// <param name="DueOn">The first local day on which it is overdue.</param>
/// <param name="IsPaused">Whether two failures in a row pause what rests on the module until the next pass, whatever the day.</param>
/// <param name="ExpiresOn">The first local day on which the last pass no longer counts at all.</param>
/// <param name="HasFailedOnce">Whether one try since the last pass failed, so that a second failure would pause.</param>
public sealed record NextRefresher(DateOnly DueOn, bool IsPaused, DateOnly ExpiresOn, bool HasFailedOnce = false);
