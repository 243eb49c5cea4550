using Academy.Competence;
using Academy.Competence.Evidence;

namespace Academy.Storage.Projections;

/// <summary>What some facts did to one person's path in one skill.</summary>
internal sealed class TouchedPath
{
    /// <summary>Steps put on, in the order of the facts.</summary>
    public List<Step> Added { get; } = [];

    /// <summary>Whether any step was taken off, or the rules changed: the path must be folded again from its beginning.</summary>
    public bool MustRefold { get; set; }
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
