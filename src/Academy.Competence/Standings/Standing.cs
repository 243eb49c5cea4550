using Academy.Competence.Decisions;
using Academy.Competence.Evidence;
using Academy.Competence.People;
using Academy.Competence.Salons;
using Academy.Competence.Skills;
using Academy.Competence.Thresholds;

namespace Academy.Competence.Standings;

/// <summary>What evidence and decisions add up to, for one person and one skill, at one moment.</summary>
public enum StandingKind
{
    /// <summary>Grooms with a senior.</summary>
    Learning,

    /// <summary>Rules 1 to 5 hold; waits for the owner.</summary>
    Ready,

    /// <summary>Responsible for such a dog without a senior watching, within her limits.</summary>
    Alone,

    /// <summary>Drift asked for a check: with a senior until the row is walked back.</summary>
    CheckAgain,

    /// <summary>Too long ago, a module overdue, or past its last day: with a senior until that is mended.</summary>
    Lapsed,

    /// <summary>Stopped after an incident, by the owner or by rule.</summary>
    StoodDown,
}

/// <summary>Everything a standing is made of, gathered for one person and one skill.</summary>
/// <param name="Person">Who.</param>
/// <param name="Skill">In what.</param>
/// <param name="Threshold">The version in force on the day asked.</param>
/// <param name="Tally">The path's tally under that version.</param>
/// <param name="Modules">What was found for each module the skill asks for.</param>
/// <param name="OthersEntitled">Other people entitled to judge this skill.</param>
/// <param name="IsAloneInACoat">Whether the person is alone in at least one coat.</param>
public sealed record Case(
    Person Person,
    Skill Skill,
    Threshold Threshold,
    Tally Tally,
    Listed<ModuleFound> Modules,
    int OthersEntitled,
    bool IsAloneInACoat
);

/// <summary>Where one person stands in one skill at one moment, with every rule that was asked.</summary>
/// <remarks>
/// A groom counts for recency on the salon's local day: with 120 days, one of 1 March still counts on 28 June and no
/// longer on 29 June. Grooms found unsuitable are remembered but not counted. Source of the shape: 14 CFR 61.57(a).
/// A permission is never stored: it is what <see cref="Of"/> says of the facts.
/// </remarks>
/// <param name="Person">Who.</param>
/// <param name="Skill">In what.</param>
/// <param name="Kind">The standing.</param>
/// <param name="Since">Its day, where the path knows one: of the clearance, the stand-down or the check.</param>
/// <param name="Limits">What <see cref="StandingKind.Alone"/> is limited to, those for under-18s included.</param>
/// <param name="IsWatched">A limit of its own: a senior beside for the next three.</param>
/// <param name="IsException">The clearance was given against the rules.</param>
/// <param name="Why">What the standing rests on, where it is not plainly the rules: run out, stopped, on the way back, not decided.</param>
/// <param name="Findings">Every rule asked.</param>
/// <param name="Tally">The tally it was read from, as of the day asked.</param>
/// <param name="ThresholdVersion">The version it was read under.</param>
public sealed record Standing(
    PersonId Person,
    SkillCode Skill,
    StandingKind Kind,
    DateOnly? Since,
    Limits Limits,
    bool IsWatched,
    bool IsException,
    Listed<Gap> Why,
    Listed<Finding> Findings,
    Tally Tally,
    int ThresholdVersion
)
{
    /// <summary>Whether the person may judge others in this skill: alone in it (watched or not), and a senior or the owner.</summary>
    public static bool MayJudge(Person person, StandingKind kind) => person.MayJudgeByRole && kind == StandingKind.Alone;

    /// <summary>What lacks by the rules, all of it, in the order of the rules.</summary>
    public Listed<Gap> Gaps => Findings.SelectMany(finding => finding.Gaps).ToListed();

    /// <summary>The standing of this case on this day.</summary>
    public static Standing Of(Case asked, DateOnly today, HouseRules house)
    {
        var tally = asked.Tally.LapsedBy(today, asked.Threshold);
        var findings = Rules(asked, tally, today, house);
        var (kind, since, why) = Settle(asked, tally, findings, today);
        return new Standing(
            asked.Person.Id,
            asked.Skill.Code,
            kind,
            since,
            LimitsOf(asked.Person, tally, house),
            IsWatched: kind == StandingKind.Alone && tally.WatchedYet > 0,
            IsException: tally.Clearance is { IsException: true },
            why,
            findings,
            tally,
            asked.Threshold.Version
        );
    }

    private static Listed<Finding> Rules(Case asked, Tally tally, DateOnly today, HouseRules house)
    {
        List<Finding> found = [KnowledgeOf(asked, tally, today, house)];
        if (asked.Threshold.Row is { } row)
        {
            found.Add(PointsOf(tally, row));
            found.Add(BreadthOf(asked, tally));
        }
        if (asked.Threshold.OnFullCoat)
            found.Add(new CoatFound(asked.IsAloneInACoat));
        found.Add(SafetyOf(tally, today));
        if (asked.Threshold.RecentGrooms > 0)
            found.Add(RecencyOf(asked.Threshold, tally, today));
        if (asked.Threshold.Row is { } drifting && tally.Clearance is not null)
            found.Add(DriftOf(tally, drifting));
        return found.ToListed();
    }

    private static KnowledgeFound KnowledgeOf(Case asked, Tally tally, DateOnly today, HouseRules house)
    {
        var lacking = asked.Modules.Where(module => !module.Holds).ToList();
        var days = lacking.Select(module =>
            TimeFor(module.Module, asked.Skill, tally.Clearance)?.AddDays(house.ModulesDueInDays)
        );
        return new KnowledgeFound(
            asked.Modules,
            EarliestOf([.. days]) is { } until && until >= today ? until : null,
            FailuresPause: tally.Clearance is { IsDeclared: true } or { IsException: false }
        );
    }

    // From when there is time to pass a module: it is newer than the clearance, or the clearance came before any module.
    private static DateOnly? TimeFor(ModuleName module, Skill skill, HeldClearance? held) =>
        held is null ? null
        : skill.AddedOn(module) is { } added && added > held.On ? added
        : held.IsDeclared || held.IsException ? held.On
        : null;

    private static DateOnly? EarliestOf(DateOnly?[] days) => days.Contains(null) ? null : days.Min();

    private static PointsFound PointsOf(Tally tally, Statistics.RowProfile row) =>
        new(
            tally.Row,
            row.MarksToFill,
            tally.RatedOnRow,
            IsTalkDue: tally.RatedOnRow >= Threshold.TalkAfter && tally.Row < row.MarksToFill && !tally.IsUsed
        );

    private static BreadthFound BreadthOf(Case asked, Tally tally) =>
        new(
            tally.BreedsSuitable,
            asked.Threshold.Breeds,
            tally.SeniorsWithEnough,
            SeniorsAsked: Math.Min(asked.Threshold.Seniors, asked.OthersEntitled)
        );

    private static SafetyFound SafetyOf(Tally tally, DateOnly today)
    {
        var since = tally.RatedSinceCritical;
        var days = tally.LastCriticalOn is { } on ? today.DayNumber - on.DayNumber : int.MaxValue;
        var isFarEnough =
            since >= Threshold.Window || since >= Threshold.FewerAfterCritical && days >= Threshold.DaysAfterCritical;
        return new SafetyFound(tally.LastCriticalOn, since, tally.LastCriticalOn is null || isFarEnough, tally.OpenReviews);
    }

    private static RecencyFound RecencyOf(Threshold threshold, Tally tally, DateOnly today) =>
        new(
            tally.RecentOn(today, threshold),
            threshold.RecentGrooms,
            threshold.RecentDays,
            tally.LastGroomOn,
            tally.RecentUntil(today, threshold)
        );

    private static DriftFound DriftOf(Tally tally, Statistics.RowProfile row) =>
        new(
            tally.Alarm,
            Statistics.Drift.WatchFrom(row),
            Statistics.Drift.CheckAgainFrom(row),
            tally.CheckAgainOn,
            tally.WatchedYet
        );

    private static (StandingKind Kind, DateOnly? Since, Listed<Gap> Why) Settle(
        Case asked,
        Tally tally,
        Listed<Finding> findings,
        DateOnly today
    )
    {
        var isReady = findings.All(finding => finding.Holds || finding is DriftFound);
        if (!asked.Threshold.IsOn)
            return (StandingKind.Learning, null, [new SkillTurnedOff()]);
        if (tally.Clearance is not { } held)
            return isReady ? (StandingKind.Ready, null, [new NotDecided()]) : (StandingKind.Learning, null, []);
        if (tally.StandDown is { } stop)
            return isReady && stop.IsTechnique
                ? (StandingKind.Ready, null, [new NotDecided(), new StoodDownSince(stop.On, stop.IsTechnique)])
                : (StandingKind.StoodDown, stop.On, [new StoodDownSince(stop.On, stop.IsTechnique)]);
        if (tally.CheckAgainOn is { } checkedOn)
            return isReady ? (StandingKind.Ready, null, [new NotDecided()]) : (StandingKind.CheckAgain, checkedOn, []);
        if (held.Limits.Until is { } until && today > until)
            return isReady
                ? (StandingKind.Ready, null, [new NotDecided(), new ClearanceRanOut(until)])
                : (StandingKind.Lapsed, until.AddDays(1), [new ClearanceRanOut(until)]);
        if (tally.Back != WayBack.None)
            return isReady && tally.Back != WayBack.Short
                ? (StandingKind.Ready, null, [new NotDecided()])
                : (StandingKind.Lapsed, null, [new OnTheWayBack(tally.Back, tally.Row, asked.Threshold.Row?.MarksToFill ?? 0)]);
        return StaysAlone(findings) ? (StandingKind.Alone, held.On, []) : (StandingKind.Lapsed, null, []);
    }

    private static bool StaysAlone(Listed<Finding> findings) =>
        findings.All(finding => finding.Holds || !finding.IsAskedEveryDay);

    private static Limits LimitsOf(Person person, Tally tally, HouseRules house)
    {
        var limits = tally.Clearance?.Limits ?? Limits.None;
        return person.IsUnder18 && house.Under18OnlyWithSeniorIn ? limits with { OnlyWithSeniorIn = true } : limits;
    }
}
