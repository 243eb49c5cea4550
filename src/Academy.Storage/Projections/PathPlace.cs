using Academy.Competence.Evidence;

namespace Academy.Storage.Projections;

/// <summary>A place on a path. Paths are ordered by time, then by what a step comes from, then by its kind.</summary>
internal sealed record PathPlace(DateTimeOffset At, Guid Source, int Kind)
{
    public static PathPlace Of(Step step) => new(step.At, step.Id, (int)step.Kind);

    public bool IsBefore(PathPlace other) => (At, Source, Kind).CompareTo((other.At, other.Source, other.Kind)) < 0;

    public bool IsAfter(PathPlace other) => other.IsBefore(this);
}
