using System.Collections.Immutable;

namespace Academy.Modules.Lessons;

/// <summary>The pages of a lesson as they were written, let through the gate once, when the first of them is asked for.</summary>
/// <param name="lesson">The lesson.</param>
/// <param name="sources">The numbered sources.</param>
/// <param name="explanations">The explanation of each question by its id.</param>
internal sealed class WrittenPages(string lesson, string sources, ImmutableDictionary<string, string> explanations)
{
    private readonly Lazy<(string Lesson, string Sources)> _page = new(() =>
    {
        var safe = SafeHtml.Of(sources);
        return (SafeHtml.Of(lesson) + safe, safe);
    });

    private readonly Lazy<ImmutableDictionary<string, string>> _explanations = new(() =>
        explanations.ToImmutableDictionary(one => one.Key, one => SafeHtml.Of(one.Value), StringComparer.Ordinal)
    );

    public string Lesson => _page.Value.Lesson;

    public string Sources => _page.Value.Sources;

    public ImmutableDictionary<string, string> Explanations => _explanations.Value;
}
