using Academy.Competence.Evidence;

namespace Academy.Competence.Standings;

/// <summary>A safety change that somebody has still to catch up with.</summary>
/// <param name="Module">The module that changed.</param>
/// <param name="By">The last day on which the pass of an older edition still counts.</param>
public sealed record CatchingUp(ModuleName Module, DateOnly By);

/// <summary>When somebody who is alone today is alone no longer, if nothing more happens.</summary>
public static class RunningOut
{
    /// <summary>So many days before its last day a standing is worth a word to the owner.</summary>
    public const int SoonDays = 14;

    /// <summary>
    /// The last day on which it still holds: the earliest of recency's, the modules' and the clearance's own; null for
    /// everybody who is not alone, and where nothing runs out.
    /// </summary>
    /// <remarks>Modules that are still to be passed run out with the days that a declaration or an exception gives for them.</remarks>
    public static DateOnly? LastDay(this Standing standing) =>
        standing.Kind == StandingKind.Alone ? LastDays(standing).Min() : null;

    /// <summary>Whether more grooms would keep it: recency is what runs out first.</summary>
    public static bool IsKeptByGrooms(this Standing standing) =>
        standing.LastDay() is { } last && standing.Findings.OfType<RecencyFound>().Any(found => found.Until == last);

    /// <summary>Days until the last one, 0 on the day itself, where it is at most <see cref="SoonDays"/> away; otherwise null.</summary>
    public static int? DaysLeft(this Standing standing, DateOnly today) =>
        standing.LastDay() is { } last && last.DayNumber - today.DayNumber <= SoonDays ? last.DayNumber - today.DayNumber : null;

    /// <summary>
    /// The safety changes that somebody who is alone has still to catch up with, the most pressing first; none for everybody else.
    /// </summary>
    /// <remarks>They are told from the day on which the edition came, however far off the last day is.</remarks>
    public static Listed<CatchingUp> CatchesUp(this Standing standing) =>
        standing.Kind == StandingKind.Alone
            ? Modules(standing)
                .Where(found => found is { Holds: true, AsksToCatchUp: true })
                .Select(found => new CatchingUp(found.Module, found.DueOn ?? DateOnly.MaxValue))
                .OrderBy(change => change.By)
                .ToListed()
            : [];

    /// <summary>
    /// The modules of which somebody who is alone did not pass a refresher, and of which a second failure in a row would pause this
    /// standing; none for everybody else.
    /// </summary>
    public static Listed<ModuleName> LastTries(this Standing standing) =>
        standing.Kind == StandingKind.Alone
            ? Modules(standing).Where(found => found.IsLastTry).Select(found => found.Module).ToListed()
            : [];

    /// <summary>Days left where something else than catching up with a safety change runs out first; otherwise null.</summary>
    public static int? OtherDaysLeft(this Standing standing, DateOnly today) =>
        standing.CatchesUp() is [var first, ..] && first.By <= standing.LastDay() ? null : standing.DaysLeft(today);

    /// <summary>
    /// Whether a standing is worth a word in the morning: stopped, to be checked, alone with a senior beside, or soon alone no
    /// longer.
    /// </summary>
    /// <remarks>Catching up is left out: one module may concern every skill of a person, and is told once, by <see cref="CatchesUp"/>.</remarks>
    public static bool IsToMind(this Standing standing, DateOnly today) =>
        standing.Kind is StandingKind.CheckAgain or StandingKind.StoodDown
        || standing is { Kind: StandingKind.Alone, IsWatched: true }
        || standing.OtherDaysLeft(today) is not null;

    private static IEnumerable<ModuleFound> Modules(Standing standing) =>
        standing.Findings.OfType<KnowledgeFound>().SelectMany(knowledge => knowledge.Modules);

    private static IEnumerable<DateOnly?> LastDays(Standing standing) =>
        standing
            .Findings.SelectMany(finding =>
                finding switch
                {
                    RecencyFound recency => [recency.Until],
                    KnowledgeFound knowledge => knowledge
                        .Modules.Where(module => module.Holds)
                        .Select(module => module.DueOn)
                        .Append(knowledge.DueUntil),
                    _ => Enumerable.Empty<DateOnly?>(),
                }
            )
            .Append(standing.Limits.Until);
}
