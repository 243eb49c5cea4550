using Academy.Competence;
using Academy.Competence.Evidence;

namespace Academy.Storage.Projections;

/// <summary>What some facts did to one person's path in one skill.</summary>
internal sealed class TouchedPath
{
    // More than these are not held in memory: the path is then folded from its beginning.
    private const int MostAdded = 256;

    private readonly List<Step> _added = [];

    /// <summary>Steps put on, in the order of the path.</summary>
    public IEnumerable<Step> Added => Tally.InOrder(_added);

    /// <summary>The earliest place at which anything was put on or taken off; null if nothing was.</summary>
    public PathPlace? Earliest { get; private set; }

    /// <summary>Whether anything was taken off: steps already folded in no longer hold.</summary>
    public bool HasLost { get; private set; }

    /// <summary>Whether the path must be folded from its beginning: the rules changed, or the tables are written anew.</summary>
    public bool MustRefold { get; private set; }

    /// <summary>When the newest of the facts was recorded that touched it: the rules of that day hold.</summary>
    public DateTimeOffset TouchedAt { get; private set; }

    public TouchedPath At(DateTimeOffset now)
    {
        TouchedAt = now;
        return this;
    }

    public void Add(Step step)
    {
        if (_added.Count == MostAdded)
            Refold();
        if (!MustRefold)
            _added.Add(step);
        Reach(PathPlace.Of(step));
    }

    public void Lose(Step step)
    {
        HasLost = true;
        Reach(PathPlace.Of(step));
    }

    public void Refold()
    {
        MustRefold = true;
        _added.Clear();
    }

    private void Reach(PathPlace place) => Earliest = Earliest is null || place.IsBefore(Earliest) ? place : Earliest;
}

/// <summary>Every path that some facts touched: its tally is moved when they are all in.</summary>
internal sealed class TouchedPaths
{
    private readonly Dictionary<(PersonId Person, SkillCode Skill), TouchedPath> _paths = [];

    public IEnumerable<KeyValuePair<(PersonId Person, SkillCode Skill), TouchedPath>> All => _paths;

    /// <summary>The path, touched by a fact recorded now.</summary>
    public TouchedPath Of(PersonId person, SkillCode skill, DateTimeOffset now)
    {
        if (!_paths.TryGetValue((person, skill), out var path))
            _paths.Add((person, skill), path = new TouchedPath());
        return path.At(now);
    }

    /// <summary>The people whose paths in a skill were touched so far.</summary>
    public IEnumerable<PersonId> PeopleIn(SkillCode skill) =>
        _paths.Keys.Where(path => path.Skill == skill).Select(path => path.Person);

    /// <summary>Has all of them folded from the beginning, under the rules of this moment.</summary>
    public void RefoldAll(DateTimeOffset now)
    {
        foreach (var path in _paths.Values)
            path.At(now).Refold();
    }
}
