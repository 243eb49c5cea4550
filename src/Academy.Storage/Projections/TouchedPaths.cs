using Academy.Competence;
using Academy.Competence.Evidence;

namespace Academy.Storage.Projections;

/// <summary>What some facts did to one person's path in one skill.</summary>
internal sealed class TouchedPath
{
    private readonly List<Step> _added = [];

    /// <summary>Steps put on, in the order of the path.</summary>
    public IEnumerable<Step> Added => Tally.InOrder(_added);

    /// <summary>The earliest place at which anything was put on or taken off; null if nothing was.</summary>
    public PathPlace? Earliest { get; private set; }

    /// <summary>Whether anything was taken off: steps already folded in no longer hold.</summary>
    public bool HasLost { get; private set; }

    /// <summary>Whether the path must be folded from its beginning: the rules changed, or the tables are written anew.</summary>
    public bool MustRefold { get; set; }

    public void Add(Step step)
    {
        _added.Add(step);
        Reach(PathPlace.Of(step));
    }

    public void Lose(Step step)
    {
        HasLost = true;
        Reach(PathPlace.Of(step));
    }

    private void Reach(PathPlace place) => Earliest = Earliest is null || place.IsBefore(Earliest) ? place : Earliest;
}

/// <summary>Every path that some facts touched: its tally is moved when they are all in.</summary>
internal sealed class TouchedPaths
{
    private readonly Dictionary<(PersonId Person, SkillCode Skill), TouchedPath> _paths = [];

    public IEnumerable<KeyValuePair<(PersonId Person, SkillCode Skill), TouchedPath>> All => _paths;

    public TouchedPath Of(PersonId person, SkillCode skill)
    {
        if (!_paths.TryGetValue((person, skill), out var path))
            _paths.Add((person, skill), path = new TouchedPath());
        return path;
    }

    public void RefoldAll()
    {
        foreach (var path in _paths.Values)
            path.MustRefold = true;
    }
}
