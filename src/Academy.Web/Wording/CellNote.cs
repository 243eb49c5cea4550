using Academy.Competence;
using Academy.Competence.Evidence;
using Academy.Competence.Standings;

namespace Academy.Web.Wording;

/// <summary>The small line below a standing where there is room for a few words only: a cell of the board, a line of a list.</summary>
public static class CellNote
{
    /// <summary>Whether anything is to be told: a rated groom, a decision, or a module passed for a skill that asks for modules only.</summary>
    public static bool HasBegun(Standing standing) =>
        standing.Kind != StandingKind.Learning
        || standing.Tally.Rated > 0
        || standing.Tally.Clearance is not null
        || standing.Tally.OpenReviews > 0
        || (Found<PointsFound>(standing) is null && Found<KnowledgeFound>(standing) is { } modules && Passed(modules) > 0);

    /// <summary>What is said instead of a standing where nothing has begun.</summary>
    public static string Instead(Standing standing) => IsOff(standing) ? "off" : "not begun";

    /// <summary>"11 of 15", "until 30 Sep, senior in", "since 11 Jul", "9 days left"; null where the word says it all.</summary>
    public static string? Of(Standing standing, SalonTime time) =>
        standing.Kind switch
        {
            StandingKind.Learning => OfLearning(standing),
            StandingKind.Alone => Joined(OfAlone(standing, time)),
            StandingKind.Lapsed => OfLapsed(standing, time),
            StandingKind.CheckAgain or StandingKind.StoodDown => Since(standing, time),
            _ => null,
        };

    private static string? OfLearning(Standing standing) =>
        IsOff(standing) ? "turned off"
        : Found<PointsFound>(standing) is { Holds: true } ? Joined(["row full", .. Lacking(standing).Take(2)])
        : Found<PointsFound>(standing) is { } points ? Counts.OutOf(points.Have, points.Need)
        : Found<KnowledgeFound>(standing) is { } modules
            ? $"{Counts.OutOf(Passed(modules), modules.Modules.Count)} {(modules.Modules.Count == 1 ? "module" : "modules")}"
        : null;

    // A row that is full and a person who is still learning: what else lacks, in a word each.
    private static IEnumerable<string?> Lacking(Standing standing) =>
        standing
            .Gaps.Select(gap =>
                gap switch
                {
                    ModuleLacking => "module due",
                    TooFewBreeds => "more breeds",
                    TooFewSeniors => "more seniors",
                    NoCoatAlone => "first a coat",
                    CriticalTooNear or ReviewOpen => "incident",
                    TooFewRecentGrooms => "too long ago",
                    _ => null,
                }
            )
            .Distinct(StringComparer.Ordinal);

    private static IEnumerable<string?> OfAlone(Standing standing, SalonTime time)
    {
        var limits = standing.Limits;
        yield return standing.IsWatched ? "watch" : null;
        yield return limits.Until is { } until ? $"until {time.ShortDate(until)}" : null;
        yield return limits.NotOnHotDays ? "not hot days" : null;
        yield return limits.UpToKg is { } kilos ? $"up to {kilos} kg" : null;
        yield return limits.OnlyWithSeniorIn ? "senior in" : null;
        yield return standing.IsException ? "against the rules" : null;
        yield return standing.CatchesUp() is [var change, ..] ? CatchUp(change, time) : null;
        yield return standing.OtherDaysLeft(time.Today) is { } days ? Left(days) : null;
    }

    /// <summary>"9 days left", "last day".</summary>
    public static string Left(int days) => days == 0 ? "last day" : $"{Counts.Of(days, "day")} left";

    /// <summary>"catch up by 24 Jun".</summary>
    private static string CatchUp(CatchingUp change, SalonTime time) => $"catch up by {time.ShortDate(change.By)}";

    private static string? OfLapsed(Standing standing, SalonTime time) =>
        standing.Tally.Back != WayBack.None && Found<PointsFound>(standing) is { } points ? Counts.OutOf(points.Have, points.Need)
        : Found<KnowledgeFound>(standing) is { Holds: false } ? "module due"
        : Since(standing, time);

    private static string? Since(Standing standing, SalonTime time) =>
        standing.Since is { } since ? $"since {time.ShortDate(since)}" : null;

    private static bool IsOff(Standing standing) => standing.Why.Any(gap => gap is SkillTurnedOff);

    private static int Passed(KnowledgeFound found) => found.Modules.Count(module => module.Holds);

    private static T? Found<T>(Standing standing)
        where T : Finding => standing.Findings.OfType<T>().FirstOrDefault();

    private static string? Joined(IEnumerable<string?> parts) =>
        string.Join(", ", parts.OfType<string>()) is { Length: > 0 } said ? said : null;
}
