using Academy.Competence;
using Academy.Competence.Skills;

namespace Academy.Web.Features.Thresholds;

/// <summary>What the owner lets skills ask for: each a skill's code and a module's name, as <c>bath:drying</c>.</summary>
public sealed class SuggestedForm : BookForm
{
    public string[] Chosen { get; set; } = [];

    internal static string Key(Suggestion suggestion) => $"{suggestion.Skill.Value}:{suggestion.Module.Value}";

    /// <summary>What is ticked before anybody has looked.</summary>
    internal static IEnumerable<string> First(Listed<Suggestion> found) => found.Where(one => one.IsAmongFirst).Select(Key);

    /// <summary>What is ticked among what is suggested still; anything else that was sent is nothing.</summary>
    internal IReadOnlyList<Suggestion> Read(Listed<Suggestion> found) =>
        [.. found.Where(one => Chosen.Contains(Key(one), StringComparer.Ordinal))];
}
