using System.Diagnostics;
using Academy.Competence;
using Academy.Competence.Decisions;
using Academy.Competence.DogChecks;
using Academy.Competence.Evidence;
using Academy.Competence.Standings;
using Academy.Competence.Statistics;
using Academy.Competence.Thresholds;
using Academy.Web.Features.Shared;

namespace Academy.Web.Wording;

/// <summary>One rule on the why-page.</summary>
/// <param name="Rule">Its name.</param>
/// <param name="Asks">What it asks.</param>
/// <param name="Found">What was found.</param>
/// <param name="Holds">Whether it holds, in words.</param>
/// <param name="Mark">The mark's name in the swatch book: holds, not-yet, fails.</param>
public sealed record RuleWords(string Rule, string Asks, string Found, string Holds, string Mark);

// Standings, their rules, and the answer of the dog check.
public static partial class Say
{
    /// <summary>"alone since 3 March", "ready, waits for the owner", "learning".</summary>
    public static string Standing(Standing standing, Names names) =>
        Word(standing.Kind)
        + (standing.Kind == StandingKind.Ready ? ", waits for the owner" : "")
        + (standing.Since is { } day ? " " + names.Time.Since(day) : "")
        + (IsWatchedAlone(standing) ? ", watched" : "")
        + (standing is { IsException: true, Kind: StandingKind.Alone } ? ", against the rules" : "");

    /// <summary>The state of things as a heading: "Priya, wool: alone since 3 March".</summary>
    public static string Heading(Standing standing, Names names) =>
        $"{Capital(names.Of(standing.Person))}, {names.Of(standing.Skill)}: {Standing(standing, names)}";

    /// <summary>Everything that stands in the way or behind the standing, each sentence once.</summary>
    /// <remarks>Of somebody who is alone only what is still due: her row and her breeds are asked again at the next decision.</remarks>
    public static IReadOnlyList<string> Why(Standing standing, Names names) =>
        standing.Kind == StandingKind.Alone
            ? Reasons(standing.Why.Concat(standing.Findings.OfType<KnowledgeFound>().SelectMany(found => found.Lacking)), names)
            : Reasons(standing.Why.Concat(standing.Gaps.Where(gap => gap is not RowNotFull || !IsOnTheWayBack(standing))), names);

    // The way back says the marks and what they are for.
    private static bool IsOnTheWayBack(Standing standing) =>
        standing.Why.Concat(standing.Gaps).Any(gap => gap is OnTheWayBack { Need: > 0 });

    /// <summary>What a clearance is limited to, each limit in a few words; none for no limit.</summary>
    public static IReadOnlyList<string> Limits(Limits limits, Names names)
    {
        return [.. Each()];

        IEnumerable<string> Each()
        {
            if (limits.Until is { } day)
                yield return $"until {names.Time.Date(day)}";
            if (limits.NotOnHotDays)
                yield return "not on hot days";
            if (limits.UpToKg is { } kilos)
                yield return $"up to {kilos} kg";
            if (limits.OnlyWithSeniorIn)
                yield return "only with a senior in the building";
        }
    }

    /// <summary>Every rule asked, and the decision as the last one.</summary>
    public static IReadOnlyList<RuleWords> Rules(Standing standing, Names names) =>
        [.. standing.Findings.Select(finding => Finding(finding, standing, names)), Decision(standing, names)];

    private static RuleWords Finding(Finding finding, Standing standing, Names names) =>
        standing.Kind == StandingKind.Alone && finding is { Holds: false, IsAskedEveryDay: false }
            ? Finding(finding, names) with
            {
                Holds = "not asked now",
            }
            : Finding(finding, names);

    /// <summary>A rule: what it asks, what was found, whether it holds.</summary>
    public static RuleWords Finding(Finding finding, Names names) =>
        finding switch
        {
            KnowledgeFound found => OfKnowledge(found, names),
            PointsFound found => OfPoints(found),
            BreadthFound found => Rule(
                "Breadth",
                $"{Counts.Of(found.BreedsAsked, "breed")} that suited and {Counts.Of(found.SeniorsAsked, "senior")} with {Threshold.RatingsPerSenior} ratings each, in the last {Threshold.Window} rated grooms",
                $"{Counts.Of(found.Breeds, "breed")}, {Counts.Of(found.Seniors, "senior")}",
                found.Holds
            ),
            SafetyFound found => OfSafety(found, names),
            RecencyFound found => OfRecency(found, names),
            DriftFound found => OfDrift(found, names),
            CoatFound found => Rule(
                "Coat",
                "alone in at least 1 coat",
                found.IsAloneInOne ? "alone in one" : "alone in none",
                found.Holds
            ),
            _ => throw new UnreachableException($"No words for {finding.GetType().Name}."),
        };

    /// <summary>The owner's decision, said like a rule.</summary>
    public static RuleWords Decision(Standing standing, Names names) =>
        standing.Tally.Clearance is { } held
            ? Rule("Decision", "the owner's signature", OfClearance(held, names), standing.Kind == StandingKind.Alone)
            : Rule("Decision", "the owner's signature", "none", holds: false);

    /// <summary>One of the last rated grooms as a dot that links to it.</summary>
    public static Dot Dot(RatedGroom rated, Names names) =>
        new(
            rated.Verdict switch
            {
                Verdict.Suitable => DotVerdict.Suited,
                Verdict.Unsuitable => DotVerdict.NeededFixing,
                Verdict.Critical => DotVerdict.CriticalIncident,
                _ => throw Unknown(rated.Verdict),
            },
            names.Time.ShortDate(rated.Day),
            $"/grooms/{rated.Groom}"
        );

    /// <summary>The answer of the dog check as a headline: "Old Tansy: Rosa or Imre, alone".</summary>
    public static string Headline(DogCheckAnswer answer, string dog, Names names)
    {
        var alone = answer.Alone.Select(one => names.Of(one.Person)).ToList();
        var beside = answer.People.FirstOrDefault(one => one.Place == Place.Beside);
        return $"{dog}: "
            + answer switch
            {
                { Nobody.IsEmpty: false } => "nobody, now",
                { Unknown.IsEmpty: false } => "nobody before something more is known",
                _ when alone.Count > 0 => $"{Counts.Or(alone)}, alone",
                { TwoPeople.IsEmpty: false } when beside is not null => "two people, one of them a senior",
                _ when beside is not null => $"nobody alone; {names.Of(beside.Person)} {Beside(beside, names)}",
                _ => "nobody who is in today",
            };
    }

    /// <summary>"with Ines or Ruben beside".</summary>
    public static string Beside(PersonAnswer answer, Names names) =>
        $"with {Counts.Or([.. answer.With.Select(names.Of)])} beside";

    /// <summary>"Pim may, alone", "Pim may, with Ines beside", "Pim: not this dog".</summary>
    public static string Answer(PersonAnswer answer, Names names) =>
        answer.Place switch
        {
            Place.Alone => $"{names.Of(answer.Person)} may, alone",
            Place.Beside => $"{names.Of(answer.Person)} may, {Beside(answer, names)}",
            Place.Not => $"{names.Of(answer.Person)}: not this dog",
            _ => throw Unknown(answer.Place),
        };

    /// <summary>What a row lets through, said before it is saved.</summary>
    public static IReadOnlyList<string> Promise(RowProfile row, RowPromise promise) =>
        [
            $"{row.MarksToFill} marks fill the row; each groom that suits adds 1, each that needed fixing takes {row.MarksTaken}, a critical incident takes all.",
            $"Someone who needs fixing 1 groom in 3 has a chance of {Counts.Chance(promise.OneInThreeThrough)} of filling it by luck within {RowPromise.Horizon}.",
            $"Someone who needs fixing 1 groom in 5 has a chance of {Counts.Chance(promise.OneInFiveThrough)} of filling it within {RowPromise.Horizon}.",
            $"Someone who needs fixing 1 groom in {Math.Round(1 / row.P0, MidpointRounding.AwayFromZero)} fills it in about {Math.Round(promise.MeanGroomsWhenFine, MidpointRounding.AwayFromZero)} rated grooms, and has a chance of {Counts.Chance(promise.FineThrough)} of filling it within {RowPromise.Horizon}.",
        ];

    /// <summary>Each safety change that is still to be caught up with: "Catch up with “Heat” by Wednesday 24 June: it changed for safety."</summary>
    public static IEnumerable<string> CatchUps(Standing standing, Names names) =>
        standing.CatchesUp().Select(change => CatchUp(change, names));

    /// <summary>One of them.</summary>
    public static string CatchUp(CatchingUp change, Names names) =>
        $"Catch up with {names.Of(change.Module)} by {names.Time.Day(change.By)}: it changed for safety.";

    private static bool IsWatchedAlone(Standing standing) => standing is { IsWatched: true, Kind: StandingKind.Alone };

    // "Not yet" is ink: only what stops somebody who was alone wears the colour of risk.
    private static RuleWords Rule(string rule, string asks, string found, bool holds, bool isRisk = false) =>
        new(
            rule,
            asks,
            found,
            holds ? "holds"
                : isRisk ? "does not hold"
                : "not yet",
            holds ? "holds"
                : isRisk ? "fails"
                : "not-yet"
        );

    private static RuleWords OfKnowledge(KnowledgeFound found, Names names)
    {
        var asked = found.Modules.Count;
        var passed = found.Modules.Count(module => module.Holds);
        var count = asked == 0 ? "none asked" : $"{Counts.OutOf(passed, asked)} hold";
        var lacking = found
            .Modules.Where(module => !module.Holds)
            .Select(module => $"{names.Of(module.Module)} {Word(module.State)}");
        var changed = found
            .Modules.Where(module => module is { Holds: true, AsksToCatchUp: true })
            .Select(module => $"{names.Of(module.Module)} {CatchUpBy(module, names.Time)}");
        var due = found.DueUntil is { } day ? $"due until {names.Time.Date(day)}" : null;
        return Rule(
            "Knowledge",
            $"{Counts.Of(asked, "module")} passed, in an edition since the last safety change, with no refresher overdue",
            string.Join("; ", new[] { count }.Concat(lacking).Concat(changed).Concat(due is null ? [] : [due])),
            found.Holds
        );
    }

    private static RuleWords OfPoints(PointsFound found) =>
        Rule(
            "Points",
            Counts.Of(found.Need, "mark"),
            $"{Counts.OutOf(found.Have, found.Need)}, after {Counts.Of(found.RatedOnRow, "rated groom")} on this row"
                + (found.IsTalkDue ? $"; {Threshold.TalkAfter} without a full row: time to talk it over" : ""),
            found.Holds
        );

    private static RuleWords OfSafety(SafetyFound found, Names names)
    {
        var critical = found.LastCriticalOn is { } day
            ? $"the last critical incident on {names.Time.Date(day)}, {Counts.Of(found.RatedSince, "rated groom")} since"
            : "no critical incident";
        return Rule(
            "Safety",
            $"no critical incident in the last {Threshold.Window} rated grooms (or in the last {Threshold.FewerAfterCritical} and {Threshold.DaysAfterCritical} days), and no open review",
            $"{critical}; {(found.OpenReviews == 0 ? "no open review" : Counts.Of(found.OpenReviews, "open review"))}",
            found.Holds,
            isRisk: true
        );
    }

    private static RuleWords OfRecency(RecencyFound found, Names names)
    {
        var last = found.LastOn is { } day ? $", the last one {names.Time.Date(day)}, {names.Time.Ago(day)}" : "";
        var until = found.Until is { } end ? $"; holds until {names.Time.Date(end)} if nothing more is groomed" : "";
        return Rule(
            "Recency",
            $"{Counts.Of(found.Need, "groom")} in {found.WithinDays} days, those that needed fixing not counted",
            $"{found.Have}{last}{until}",
            found.Holds
        );
    }

    private static RuleWords OfDrift(DriftFound found, Names names)
    {
        var check = found.CheckAgainOn is { } day ? $"; asked for a check on {names.Time.Date(day)}" : "";
        var watch = found.IsWatched ? $"; {NextOnes(found.WatchedYet)}" : "";
        return Rule(
            "Drift",
            $"a drift count under {found.CheckAgainFrom}; from {found.WatchFrom} a senior watches",
            $"{found.Alarm}{check}{watch}",
            found.Holds,
            isRisk: true
        );
    }

    private static string OfClearance(HeldClearance held, Names names)
    {
        var how = held switch
        {
            { IsDeclared: true } => "experience declared",
            { IsException: true } => "cleared against the rules",
            _ => "cleared",
        };
        var limits = Limits(held.Limits, names);
        return $"{how} on {names.Time.Date(held.On)}, under version {held.ThresholdVersion}"
            + (limits.Count == 0 ? "" : $"; {string.Join(", ", limits)}");
    }

    /// <summary>"9 days left, until 3 October: too few grooms after that".</summary>
    public static string Soon(Standing standing, Names names) =>
        $"{Capital(CellNote.Left(standing.DaysLeft(names.Time.Today)!.Value))}, {Until(standing, names)}.";

    /// <summary>"until 3 October: too few grooms after that", of somebody who is alone until a day.</summary>
    public static string Until(Standing standing, Names names)
    {
        var last = standing.LastDay()!.Value;
        var why =
            standing.CatchesUp() is [var change, ..] && change.By == last
                ? $"{names.Of(change.Module)} changed for safety, and a short quiz on what changed is asked"
            : standing.Limits.Until == last ? "your limit"
            : standing.Findings.OfType<RecencyFound>().Any(found => found.Until == last) ? "too few grooms after that"
            : "a module is due";
        return $"until {names.Time.Date(last)}: {why}";
    }
}
