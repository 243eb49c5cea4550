using Academy.Competence.Decisions;
using Academy.Competence.Evidence;
using Academy.Competence.People;
using Academy.Competence.Salons;
using Academy.Competence.Skills;
using Academy.Competence.Standings;
using Academy.Competence.Statistics;
using Academy.Competence.Thresholds;
using static Academy.Competence.Tests.Cast.TestSalon;

namespace Academy.Competence.Tests.Cast;

/// <summary>Small words for one person's path in one skill, and for where it stands.</summary>
internal static class PathWords
{
    private static readonly string[] s_breeds = ["Border Terrier", "Airedale Terrier", "Schnauzer"];

    /// <summary>Double coats: 15 marks, -4, 3 breeds, 2 seniors, 3 grooms in 120 days.</summary>
    public static readonly Threshold Standard = ThresholdOf(SkillBook.Double);

    public static Step Rated(DateOnly day, Verdict verdict, string breed = "Border Terrier", Person? senior = null) =>
        Of(day, StepKind.Rated) with
        {
            Verdict = verdict,
            Breed = breed,
            Senior = (senior ?? Rosa).Id,
        };

    public static Step Suitable(DateOnly day) => Rated(day, Verdict.Suitable);

    public static Step Unsuitable(DateOnly day) => Rated(day, Verdict.Unsuitable);

    public static Step Critical(DateOnly day) => Rated(day, Verdict.Critical);

    public static Step Inspected(DateOnly day, Verdict verdict) => Rated(day, verdict) with { Kind = StepKind.Inspected };

    public static Step GroomedAlone(DateOnly day) => Of(day, StepKind.Alone);

    public static Step Watched(DateOnly day) => Of(day, StepKind.Watched);

    public static Step Elsewhere(DateOnly day) => Of(day, StepKind.Elsewhere);

    public static Step Declared(DateOnly day) => Of(day, StepKind.Declared) with { ThresholdVersion = 1 };

    public static Step Cleared(DateOnly day, Limits? limits = null) =>
        Of(day, StepKind.Cleared) with
        {
            Limits = limits ?? Limits.None,
            ThresholdVersion = 1,
        };

    public static Step ClearedAgainstTheRules(DateOnly day) => Cleared(day) with { IsException = true };

    public static Step StoodDown(DateOnly day) => Of(day, StepKind.StoodDown);

    public static Step Reported(DateOnly day) => StoodDown(day) with { IsReviewOpen = true };

    public static Step ReviewedAsTechnique(DateOnly day) => StoodDown(day) with { IsTechnique = true };

    public static Step Lifted(DateOnly day) => Of(day, StepKind.Lifted);

    /// <summary>Suitable grooms, one a day, the last on this day: three breeds in turn, Rosa and Dora in turn.</summary>
    public static IEnumerable<Step> FullRow(DateOnly last, int grooms = 15) =>
        Enumerable
            .Range(0, grooms)
            .Select(n => Rated(last.AddDays(n - grooms + 1), Verdict.Suitable, s_breeds[n % 3], n % 2 == 0 ? Rosa : Dora));

    /// <summary>A junior whom the owner cleared on this day with a full row behind her.</summary>
    public static IEnumerable<Step> Alone(DateOnly clearedOn, Limits? limits = null) =>
        [.. FullRow(clearedOn), Cleared(clearedOn, limits)];

    public static Tally Fold(params IEnumerable<Step> path) => Tally.Of(path, Standard);

    public static Case Case(params IEnumerable<Step> path) => CaseOf(Standard, path);

    public static Case CaseOf(Threshold threshold, params IEnumerable<Step> path) =>
        new(
            Pim,
            SkillOf(threshold.Skill),
            threshold,
            Tally.Of(path, threshold),
            Modules: [],
            OthersEntitled: 2,
            IsAloneInACoat: true
        );

    public static Standing On(this Case asked, DateOnly day) => Standing.Of(asked, day, House);

    public static Standing StandingNow(params IEnumerable<Step> path) => Case(path).On(Today);

    private static Step Of(DateOnly day, StepKind kind) =>
        new(
            new DateTimeOffset(day.ToDateTime(new TimeOnly(12, 0)), TimeSpan.Zero),
            new Guid(day.DayNumber, (short)kind, 0, new byte[8]),
            kind,
            day
        );
}
