using System.Diagnostics;
using Academy.Competence.Decisions;
using Academy.Competence.Statistics;
using Academy.Competence.Thresholds;
using Marks = Academy.Competence.Statistics.Row;

namespace Academy.Competence.Evidence;

/// <summary>How far back a clearance that no longer holds has to walk.</summary>
public enum WayBack
{
    /// <summary>It is not on the way back.</summary>
    None,

    /// <summary>Last groom at most 180 days ago: from H-3 marks; returns by itself when full.</summary>
    Short,

    /// <summary>Last groom at most 365 days ago, or after a check: from H-8 marks, with the owner's signature.</summary>
    Long,

    /// <summary>Longer ago, or after an incident to which technique contributed: from no marks, with the owner's signature.</summary>
    Whole,
}

/// <summary>One of the last 20 rated grooms, as the dots beside a row show it.</summary>
/// <param name="Groom">The groom it links to.</param>
/// <param name="Day">The salon's local day on which it ended.</param>
/// <param name="Breed">The breed groomed.</param>
/// <param name="Senior">Who rated it; null where nobody did (an upheld complaint).</param>
/// <param name="Verdict">What it said.</param>
public sealed record RatedGroom(Guid Groom, DateOnly Day, string Breed, PersonId? Senior, Verdict Verdict);

/// <summary>The clearance in a tally; whether it holds today is the standing's question.</summary>
/// <param name="Decision">The decision or declaration it comes from.</param>
/// <param name="On">Its local day.</param>
/// <param name="Limits">What it is limited to.</param>
/// <param name="ThresholdVersion">The version it was taken under.</param>
/// <param name="IsDeclared">Whether it rests on declared experience.</param>
/// <param name="IsException">Whether it was given against the rules.</param>
public sealed record HeldClearance(
    Guid Decision,
    DateOnly On,
    Limits Limits,
    int ThresholdVersion,
    bool IsDeclared,
    bool IsException
);

/// <summary>A stand-down in force.</summary>
/// <param name="Id">The decision or incident it comes from.</param>
/// <param name="On">Its local day.</param>
/// <param name="IsTechnique">Whether an incident stands behind it to which technique contributed: then only the whole way back ends it.</param>
public sealed record HeldStandDown(Guid Id, DateOnly On, bool IsTechnique);

/// <summary>
/// What one person's path in one skill has come to: a small bounded state, moved by one step at a time. It is a cache of the
/// path and nothing more: folding the whole path again gives the same.
/// </summary>
/// <remarks>Row and drift depend on the threshold, so a tally belongs to one version; under another the path is folded again.</remarks>
public sealed record Tally
{
    /// <summary>Where everybody starts.</summary>
    public static readonly Tally Empty = new();

    /// <summary>Marks of the row now.</summary>
    public int Row { get; init; }

    /// <summary>All rated grooms of the path.</summary>
    public int Rated { get; init; }

    /// <summary>Those of them that were suitable.</summary>
    public int Suitable { get; init; }

    /// <summary>Rated grooms since this row began: at the start, at a clearance, or at a way back.</summary>
    public int RatedOnRow { get; init; }

    /// <summary>The last rated grooms, oldest first, at most 20.</summary>
    public Listed<RatedGroom> Last { get; init; }

    /// <summary>The newest days that count for recency, oldest first, at most 10.</summary>
    public Listed<DateOnly> RecentDays { get; init; }

    /// <summary>Rated grooms since the last critical one, or since the beginning where there was none.</summary>
    public int RatedSinceCritical { get; init; }

    /// <summary>The day of the last critical groom; null if there was none, or if an exception was made after it.</summary>
    public DateOnly? LastCriticalOn { get; init; }

    /// <summary>Incidents of this path that are not reviewed yet.</summary>
    public int OpenReviews { get; init; }

    /// <summary>The mirrored test's alarm since the clearance.</summary>
    public int Alarm { get; init; }

    /// <summary>Rated grooms for which a senior still stands beside; never 0 while the alarm asks for one.</summary>
    public int WatchedYet { get; init; }

    /// <summary>The newest clearance, if one was ever given.</summary>
    public HeldClearance? Clearance { get; init; }

    /// <summary>The stand-down in force, if any.</summary>
    public HeldStandDown? StandDown { get; init; }

    /// <summary>The day on which drift asked for a check, until the owner clears anew.</summary>
    public DateOnly? CheckAgainOn { get; init; }

    /// <summary>How far the clearance has to walk back.</summary>
    public WayBack Back { get; init; }

    /// <summary>Grooms done alone since the clearance, inspected or not.</summary>
    public int SoloSinceClearance { get; init; }

    /// <summary>Those of them that were inspected.</summary>
    public int InspectedSinceClearance { get; init; }

    /// <summary>The newest day that counts for recency; null if none does.</summary>
    public DateOnly? LastGroomOn => RecentDays.IsEmpty ? null : RecentDays[^1];

    /// <summary>Different breeds among the suitable of the last 20, however they are capitalised; a breed left blank is none.</summary>
    public int BreedsSuitable =>
        Last.Where(groom => groom.Verdict == Verdict.Suitable && !string.IsNullOrWhiteSpace(groom.Breed))
            .Select(groom => groom.Breed.Trim())
            .Distinct(StringComparer.OrdinalIgnoreCase)
            .Count();

    /// <summary>Seniors with 3 or more ratings among the last 20.</summary>
    public int SeniorsWithEnough =>
        Last.Where(groom => groom.Senior is not null)
            .GroupBy(groom => groom.Senior)
            .Count(group => group.Count() >= Threshold.RatingsPerSenior);

    /// <summary>Whether anything was ever rated or decided here.</summary>
    public bool HasPath => Rated > 0 || Clearance is not null;

    /// <summary>
    /// Whether a clearance was in force on this day by the path alone: given, not stopped, not to be checked, not on the way
    /// back, its last day not past. Modules are not on a path.
    /// </summary>
    public bool HoldsOn(DateOnly day, Threshold threshold) =>
        LapsedBy(day, threshold) is { Clearance: { } held, StandDown: null, CheckAgainOn: null, Back: WayBack.None }
        && !(held.Limits.Until < day);

    /// <summary>Folds a whole path, already in order.</summary>
    public static Tally Of(IEnumerable<Step> path, Threshold threshold) =>
        path.Aggregate(Empty, (tally, step) => tally.Add(step, threshold));

    /// <summary>The order of a path: by time, then by id, so that the same facts always give the same path.</summary>
    public static IEnumerable<Step> InOrder(IEnumerable<Step> steps) =>
        steps.OrderBy(step => step.At).ThenBy(step => step.Id).ThenBy(step => step.Kind);

    /// <summary>Marks from which a way back of this depth starts: H-3, H-8 or none, never below none.</summary>
    public static int StartOf(WayBack depth, Threshold threshold) =>
        (depth, threshold.Row) switch
        {
            (_, null) or (WayBack.Whole, _) => 0,
            (WayBack.Long, { } row) => Math.Max(0, row.MarksToFill - 8),
            (WayBack.Short, { } row) => Math.Max(0, row.MarksToFill - 3),
            (WayBack.None, { } row) => row.MarksToFill,
            _ => throw new UnreachableException(),
        };

    /// <summary>The tally after one more step, which must not be earlier than those before it.</summary>
    public Tally Add(Step step, Threshold threshold)
    {
        var tally = LapsedBy(step.Day, threshold);
        return step.Kind switch
        {
            StepKind.Alone => tally.Remember(step.Day).Return(step.Day, threshold).Solo(inspected: false),
            StepKind.Watched or StepKind.Elsewhere => tally.Remember(step.Day).Return(step.Day, threshold),
            StepKind.Rated => tally.Rate(step, threshold).Return(step.Day, threshold),
            StepKind.Inspected => tally.Rate(step, threshold).Return(step.Day, threshold).Solo(inspected: true),
            StepKind.Declared or StepKind.Cleared => tally.Clear(step, threshold),
            StepKind.StoodDown => tally.Stop(step),
            StepKind.Lifted => tally with { StandDown = null },
            _ => throw new UnreachableException(),
        };
    }

    /// <summary>Grooms that count for recency within the window that ends on this day; one of a later day does not count yet.</summary>
    public int RecentOn(DateOnly day, Threshold threshold)
    {
        var count = 0;
        foreach (var groomed in RecentDays)
            if (groomed <= day && day.DayNumber - groomed.DayNumber < threshold.RecentDays)
                count++;
        return count;
    }

    /// <summary>Whether recency holds on this day.</summary>
    public bool IsRecentOn(DateOnly day, Threshold threshold) => RecentOn(day, threshold) >= threshold.RecentGrooms;

    /// <summary>The last day on which recency still holds if nothing more is groomed; null where it does not hold or is not asked.</summary>
    public DateOnly? RecentUntil(DateOnly day, Threshold threshold) =>
        threshold.RecentGrooms == 0 || !IsRecentOn(day, threshold)
            ? null
            : RecentDays[^threshold.RecentGrooms].AddDays(threshold.RecentDays - 1);

    /// <summary>
    /// The tally as it stands on this day: where recency has run out, the clearance is on its way back, at the depth that the
    /// time since the last groom asks for. Stood down or not: skills go stale all the same.
    /// </summary>
    public Tally LapsedBy(DateOnly day, Threshold threshold)
    {
        if (Clearance is null || IsRecentOn(day, threshold))
            return this;

        var depth = DepthAfter(day.DayNumber - (LastGroomOn ?? Clearance.On).DayNumber);
        return depth <= Back ? this : WalkBack(depth, StartOf(depth, threshold));
    }

    /// <summary>Whether a clearance is in use: given, not stopped, not to be checked, not on the way back.</summary>
    public bool IsUsed => Clearance is not null && StandDown is null && CheckAgainOn is null && Back == WayBack.None;

    private bool IsUsedOn(DateOnly day) => IsUsed && (Clearance!.Limits.Until is not { } until || day <= until);

    private static WayBack DepthAfter(int days) =>
        days switch
        {
            <= 180 => WayBack.Short,
            <= 365 => WayBack.Long,
            _ => WayBack.Whole,
        };

    private Tally WalkBack(WayBack depth, int start) =>
        this with
        {
            Back = depth,
            Row = Back == WayBack.None ? start : Math.Min(Row, start),
            RatedOnRow = 0,
        };

    private Tally Remember(DateOnly day, int times = 1)
    {
        var days = RecentDays.Concat(Enumerable.Repeat(day, times)).Order().TakeLast(Threshold.MostRecentGrooms);
        return this with { RecentDays = days.ToListed() };
    }

    private Tally Solo(bool inspected) =>
        Clearance is null
            ? this
            : this with
            {
                SoloSinceClearance = SoloSinceClearance + 1,
                InspectedSinceClearance = InspectedSinceClearance + (inspected ? 1 : 0),
            };

    private Tally Rate(Step step, Threshold threshold)
    {
        var verdict = step.Verdict ?? throw new InvalidOperationException($"The rated groom {step.Id} has no verdict.");
        var seen = See(step, verdict);
        return threshold.Row is { } row ? seen.Mark(verdict, row).Watch(verdict, step.Day, row) : seen;
    }

    private Tally See(Step step, Verdict verdict)
    {
        var dot = new RatedGroom(step.Id, step.Day, step.Breed, step.Senior, verdict);
        var seen = this with
        {
            Rated = Rated + 1,
            Suitable = Suitable + (verdict == Verdict.Suitable ? 1 : 0),
            RatedOnRow = RatedOnRow + 1,
            Last = Last.Append(dot).TakeLast(Threshold.Window).ToListed(),
            RatedSinceCritical = verdict == Verdict.Critical ? 0 : RatedSinceCritical + 1,
            LastCriticalOn = verdict == Verdict.Critical ? step.Day : LastCriticalOn,
        };
        return verdict == Verdict.Suitable ? seen.Remember(step.Day) : seen;
    }

    private Tally Mark(Verdict verdict, RowProfile row) => this with { Row = Marks.Step(Row, verdict, row) };

    // Who else may judge is not the path's to know: on the short way back breadth asks for the breeds alone.
    private Tally Return(DateOnly day, Threshold threshold)
    {
        var isWalked = threshold.Row is not { } row || Marks.IsFull(Row, row) && BreedsSuitable >= threshold.Breeds;
        return Back == WayBack.Short && isWalked && IsRecentOn(day, threshold)
            ? this with
            {
                Back = WayBack.None,
                Alarm = 0,
                WatchedYet = 0,
                RatedOnRow = 0,
            }
            : this;
    }

    // The mirrored test runs while the clearance is used; on the way back the row asks instead.
    private Tally Watch(Verdict verdict, DateOnly day, RowProfile row)
    {
        if (!IsUsed)
            return this;

        var alarm = Drift.Step(Alarm, verdict, row);
        if (alarm >= Drift.CheckAgainFrom(row))
            return this with
            {
                Alarm = alarm,
                WatchedYet = 0,
                CheckAgainOn = day,
                Back = WayBack.Long,
                Row = Math.Max(0, row.MarksToFill - 8),
                RatedOnRow = 0,
            };

        return this with
        {
            Alarm = alarm,
            WatchedYet = WatchedAfter(verdict, alarm >= Drift.WatchFrom(row)),
        };
    }

    private int WatchedAfter(Verdict verdict, bool isRaised) =>
        (isRaised, verdict) switch
        {
            (true, not Verdict.Suitable) => 3,
            (true, _) => Math.Max(1, WatchedYet - 1),
            (false, _) => Math.Max(0, WatchedYet - 1),
        };

    private Tally Clear(Step step, Threshold threshold)
    {
        // Other limits for somebody who is alone are no new beginning: alarm and counts go on.
        if (step is { Kind: StepKind.Cleared, IsException: false } && Clearance is { } held && IsUsedOn(step.Day))
            return this with { Clearance = held with { Decision = step.Id, Limits = step.Limits ?? Limits.None } };

        var isDeclared = step.Kind == StepKind.Declared;
        var cleared = this with
        {
            Clearance = new(
                step.Id,
                step.Day,
                step.Limits ?? Limits.None,
                step.ThresholdVersion,
                isDeclared,
                IsException: step.IsException || isDeclared && HasPath
            ),
            StandDown = null,
            CheckAgainOn = null,
            Back = WayBack.None,
            Alarm = 0,
            WatchedYet = 0,
            RatedOnRow = 0,
            SoloSinceClearance = 0,
            InspectedSinceClearance = 0,
        };
        // Neither rests on this log's grooms, so the day itself stands for the grooms that recency asks for.
        return isDeclared || step.IsException
            ? cleared.Remember(step.Day, threshold.RecentGrooms) with
            {
                LastCriticalOn = null,
            }
            : cleared;
    }

    private Tally Stop(Step step)
    {
        var reviewed = this with
        {
            OpenReviews = OpenReviews + (step.IsReviewOpen ? 1 : 0),
            // An exception made before the incident was known did not look past it.
            LastCriticalOn = step.IsReviewOpen || step.IsTechnique ? LastCriticalOn ?? step.Day : LastCriticalOn,
        };
        if (Clearance is null)
            return reviewed;

        var isTechnique = step.IsTechnique || StandDown is { IsTechnique: true };
        var stopped = StandDown ?? new HeldStandDown(step.Id, step.Day, isTechnique);
        return reviewed with
        {
            StandDown = stopped with { IsTechnique = isTechnique },
            Back = isTechnique ? WayBack.Whole : Back,
        };
    }
}
