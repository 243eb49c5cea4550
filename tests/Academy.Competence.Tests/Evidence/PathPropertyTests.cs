using Academy.Competence.Evidence;
using Academy.Competence.People;
using Academy.Competence.Skills;
using Academy.Competence.Standings;
using Academy.Competence.Statistics;
using Academy.Competence.Tests.Cast;
using Academy.Competence.Thresholds;
using CsCheck;
using static Academy.Competence.Tests.Cast.PathWords;
using static Academy.Competence.Tests.Cast.TestSalon;

namespace Academy.Competence.Tests.Evidence;

/// <summary>What holds of any path whatever happened on it.</summary>
public class PathPropertyTests
{
    private static readonly Gen<Threshold> AnyThreshold = OneOf(
        ThresholdOf(SkillBook.Double),
        ThresholdOf(SkillBook.Wire),
        ThresholdOf(SkillBook.HandStripping),
        ThresholdOf(SkillBook.HotDay),
        ThresholdOf(SkillBook.HotDay) with
        {
            RecentGrooms = 1,
        }
    );

    private static readonly Gen<Func<DateOnly, Step>> AnyGroom = OneOf<Func<DateOnly, Step>>(
        Suitable,
        day => Rated(day, Verdict.Suitable, "Schnauzer", Dora),
        day => Rated(day, Verdict.Suitable, "Cairn Terrier", Dora),
        Unsuitable,
        Critical,
        GroomedAlone,
        day => Watched(day),
        Elsewhere,
        day => Inspected(day, Verdict.Suitable),
        day => Inspected(day, Verdict.Unsuitable)
    );

    private static readonly Gen<Func<DateOnly, Step>> AnyDecision = OneOf<Func<DateOnly, Step>>(
        Declared,
        day => Cleared(day),
        ClearedAgainstTheRules,
        StoodDown,
        Reported,
        ReviewedAsTechnique,
        Lifted
    );

    private static readonly Gen<Func<DateOnly, Step>> AnyStep = Gen.Frequency((6, AnyGroom), (1, AnyDecision));

    // Mostly days between two steps, now and then half a year or more.
    private static readonly Gen<int> AnyGap = Gen.Frequency((8, Gen.Int[0, 5]), (1, Gen.Int[100, 400]));

    private static readonly Gen<Step[]> AnyPath = from steps in Gen.Select(AnyGap, AnyStep).List[0, 60] select InDays(steps);

    [Fact]
    public void Folding_a_path_at_once_is_folding_it_step_by_step_from_anywhere() =>
        Gen.Select(AnyPath, AnyThreshold, Gen.Int[0, 60])
            .Sample(
                (path, threshold, cut) =>
                    Tally.Of(path, threshold)
                    == path.Skip(cut).Aggregate(Tally.Of(path.Take(cut), threshold), (tally, step) => tally.Add(step, threshold))
            );

    [Fact]
    public void The_same_facts_in_any_order_are_the_same_path() =>
        Gen.Select(AnyPath, Gen.Int)
            .Sample(
                (path, seed) =>
                    Tally
                        .InOrder(path)
                        .SequenceEqual(Tally.InOrder(path.OrderBy(step => HashCode.Combine(step.Id, step.Kind, seed))))
            );

    [Fact]
    public void A_tally_stays_small_and_its_counts_stay_within_their_bounds() =>
        Gen.Select(AnyPath, AnyThreshold)
            .Sample(
                (path, threshold) =>
                {
                    var tally = Tally.Of(path, threshold);
                    return tally.Last.Count <= Threshold.Window
                        && tally.RecentDays.Count <= Threshold.MostRecentGrooms
                        && tally.RecentDays.SequenceEqual(tally.RecentDays.Order())
                        && tally.Row >= 0
                        && tally.Row <= (threshold.Row?.MarksToFill ?? 0)
                        && tally.Suitable <= tally.Rated
                        && tally.RatedSinceCritical <= tally.Rated
                        && tally.InspectedSinceClearance <= tally.SoloSinceClearance
                        && tally.WatchedYet is >= 0 and <= 3
                        && tally.Alarm >= 0;
                }
            );

    [Fact]
    public void The_same_case_on_the_same_day_is_the_same_standing() =>
        Gen.Select(AnyPath, AnyThreshold, Gen.Int[0, 500])
            .Sample(
                (path, threshold, days) =>
                    CaseOf(threshold, path).On(After(path, days)) == CaseOf(threshold, path).On(After(path, days))
            );

    [Fact]
    public void Asking_on_a_day_between_changes_nothing_about_a_later_day() =>
        Gen.Select(AnyPath, AnyThreshold, Gen.Int[0, 500], Gen.Int[0, 500])
            .Sample(
                (path, threshold, first, more) =>
                {
                    var tally = Tally.Of(path, threshold);
                    var later = After(path, first + more);
                    return tally.LapsedBy(After(path, first), threshold).LapsedBy(later, threshold)
                        == tally.LapsedBy(later, threshold);
                }
            );

    // Breadth looks at the last twenty: a groom more may push the only Cairn Terrier out. Everything else can only gain.
    [Fact]
    public void A_suitable_watched_groom_more_never_adds_a_gap_but_breadth() =>
        Gen.Select(AnyPath, AnyThreshold, Gen.Int[0, 500])
            .Sample(
                (path, threshold, days) =>
                {
                    var day = After(path, days);
                    return !NewGaps(CaseOf(threshold, path).On(day), CaseOf(threshold, [.. path, Suitable(day)]).On(day))
                        .Any(gap => gap != typeof(TooFewBreeds) && gap != typeof(TooFewSeniors));
                }
            );

    [Fact]
    public void A_suitable_watched_groom_more_never_adds_a_gap_while_the_last_twenty_are_all_there_are() =>
        Gen.Select(AnyPath, AnyThreshold)
            .Where(one => one.Item1.Count(step => step.Verdict is not null) < Threshold.Window)
            .Sample(
                (path, threshold) =>
                {
                    var day = After(path, 0);
                    return !NewGaps(CaseOf(threshold, path).On(day), CaseOf(threshold, [.. path, Suitable(day)]).On(day)).Any();
                }
            );

    // A critical incident alone may grow old enough by the days that pass: ten grooms and 180 days.
    [Fact]
    public void A_later_day_never_removes_a_gap_but_an_old_critical_incident() =>
        Gen.Select(AnyPath, AnyThreshold, Gen.Int[0, 400], Gen.Int[0, 400])
            .Sample(
                (path, threshold, days, more) =>
                {
                    var asked = CaseOf(threshold, path);
                    return !NewGaps(asked.On(After(path, days + more)), asked.On(After(path, days)))
                        .Any(gap => gap != typeof(CriticalTooNear));
                }
            );

    [Fact]
    public void Whoever_is_alone_has_a_clearance_in_use_no_open_review_and_recent_grooms() =>
        Gen.Select(AnyPath, AnyThreshold, Gen.Int[0, 200])
            .Sample(
                (path, threshold, days) =>
                {
                    var standing = CaseOf(threshold, path).On(After(path, days));
                    return standing.Kind != StandingKind.Alone
                        || standing.Tally is { IsUsed: true, OpenReviews: 0 }
                            && standing.Tally.IsRecentOn(After(path, days), threshold);
                }
            );

    [Fact]
    public void Nobody_is_alone_without_a_decision_of_the_owner() =>
        Gen.Select(Gen.Select(AnyGap, AnyGroom).List[0, 60], AnyThreshold)
            .Sample(
                (steps, threshold) =>
                    CaseOf(threshold, InDays(steps)).On(After(InDays(steps), 0)).Kind
                        is StandingKind.Learning
                            or StandingKind.Ready
            );

    private static Gen<T> OneOf<T>(params T[] all) => Gen.Int[0, all.Length - 1].Select(n => all[n]);

    private static IEnumerable<Type> NewGaps(Standing before, Standing after) =>
        after.Gaps.Select(gap => gap.GetType()).Except(before.Gaps.Select(gap => gap.GetType()));

    private static DateOnly After(Step[] path, int days) => (path.Length == 0 ? Today : path[^1].Day).AddDays(days);

    private static Step[] InDays(IEnumerable<(int Gap, Func<DateOnly, Step> Make)> steps)
    {
        var day = new DateOnly(2020, 1, 1);
        return
        [
            .. steps.Select(
                (one, n) =>
                {
                    day = day.AddDays(one.Gap);
                    return one.Make(day) with { Id = Number(n) };
                }
            ),
        ];
    }
}
