using Academy.Competence.Grooms;
using Academy.Competence.Statistics;
using Academy.Competence.Thresholds;

namespace Academy.Competence.Evidence;

/// <summary>One person's path in one skill.</summary>
public readonly record struct PathOf(PersonId Person, SkillCode Skill);

/// <summary>What one path comes to as things stand, and what it would come to if something more were said of one groom.</summary>
/// <param name="Of">Whose path in which skill.</param>
/// <param name="Threshold">The version in force on the day asked.</param>
/// <param name="Before">The tally as things stand on that day.</param>
/// <param name="After">The tally as it would stand.</param>
public sealed record Foreseen(PathOf Of, Threshold Threshold, Tally Before, Tally After)
{
    /// <summary>Whether the row would fill that is not full now.</summary>
    public bool WouldFill => Threshold.Row is { } row && !Row.IsFull(Before.Row, row) && Row.IsFull(After.Row, row);

    /// <summary>Whether a clearance would stop that is not stopped now.</summary>
    public bool WouldStop => Before.StandDown is null && After.StandDown is not null;

    /// <summary>Whether a clearance that is stopped now would no longer be.</summary>
    public bool WouldGoOn => Before.StandDown is not null && After.StandDown is null;

    /// <summary>Whether drift would ask for a check that it does not ask for now.</summary>
    public bool WouldCheckAgain => Before.CheckAgainOn is null && After.CheckAgainOn is not null;

    /// <summary>Whether a senior would stand beside the next grooms, and does not now.</summary>
    public bool WouldWatch => Before.WatchedYet == 0 && After.WatchedYet > 0;

    /// <summary>Whether a clearance on the short way back would come back by itself.</summary>
    public bool WouldReturn => Before.Back == WayBack.Short && After.Back == WayBack.None;
}

/// <summary>
/// What more said of one groom would change, shown before it is kept: the same folds as afterwards, so that the two cannot
/// disagree, late and corrected entries included.
/// </summary>
public static class Foreseeing
{
    /// <summary>The paths that the change would touch: those whose steps from this groom would differ.</summary>
    public static Listed<PathOf> Touched(GroomStory before, GroomStory after, TimeZoneInfo zone)
    {
        var was = Paths.Of(before, zone);
        var will = Paths.Of(after, zone);
        return was.Except(will).Concat(will.Except(was)).Select(of => new PathOf(of.Person, of.Skill)).Distinct().ToListed();
    }

    /// <summary>What each path would come to.</summary>
    /// <param name="after">The story as it would stand.</param>
    /// <param name="paths">The paths as they stand; a path that is not among them is empty.</param>
    /// <param name="of">Whose paths in which skills are asked.</param>
    /// <param name="thresholds">The version in force of each skill.</param>
    /// <param name="today">The day asked.</param>
    /// <param name="zone">The salon's zone.</param>
    public static Listed<Foreseen> Of(
        GroomStory after,
        ILookup<PathOf, Step> paths,
        IEnumerable<PathOf> of,
        Func<SkillCode, Threshold> thresholds,
        DateOnly today,
        TimeZoneInfo zone
    )
    {
        var will = Paths.Of(after, zone).ToLookup(step => new PathOf(step.Person, step.Skill), step => step.Step);
        return of.Select(path => Fold(path, thresholds(path.Skill))).ToListed();

        Foreseen Fold(PathOf path, Threshold threshold) =>
            new(
                path,
                threshold,
                TallyOf(paths[path], threshold),
                TallyOf(paths[path].Where(step => !IsOf(after, step)).Concat(will[path]), threshold)
            );

        Tally TallyOf(IEnumerable<Step> steps, Threshold threshold) =>
            Tally.Of(Tally.InOrder(steps), threshold).LapsedBy(today, threshold);
    }

    private static bool IsOf(GroomStory story, Step step) =>
        step.Id == story.Groom.Id.Value || story.Incidents.Any(one => one.Incident.Id.Value == step.Id);
}
