using Academy.Competence.Facts;
using Academy.Competence.Quizzes.Measuring;

namespace Academy.Competence.Quizzes;

/// <summary>One attempt with the edition it was taken in.</summary>
/// <param name="Attempt">The attempt.</param>
/// <param name="Module">Its edition; null where its text is no longer there.</param>
public sealed record AttemptRead(AttemptHandedIn Attempt, Module? Module);

/// <summary>What one person was asked of one module so far, for choosing what comes next.</summary>
public sealed class QuizPast
{
    private readonly Listed<AttemptRead> _attempts;
    private readonly ILookup<string, (DateTimeOffset At, bool IsRight)> _asked;

    /// <summary>The past that these attempts make, in any order.</summary>
    public QuizPast(IEnumerable<AttemptRead> attempts)
    {
        _attempts = attempts.OrderBy(one => one.Attempt.HandedInAt).ToListed();
        _asked = _attempts
            .SelectMany(Asked, (one, answer) => (answer.Question, one.Attempt.HandedInAt, answer.IsRight))
            .ToLookup(one => one.Question, one => (one.HandedInAt, one.IsRight), StringComparer.Ordinal);
    }

    /// <summary>The edition that the person passed last; null where there is none, or its text is no longer there.</summary>
    public Module? Passed => _attempts.LastOrDefault(one => one.Attempt is { HasPassed: true, IsRefresher: false })?.Module;

    /// <summary>How often each question was asked.</summary>
    public IReadOnlyDictionary<string, int> TimesAsked =>
        _asked.ToDictionary(answers => answers.Key, answers => answers.Count(), StringComparer.Ordinal);

    /// <summary>How likely the person still knows a question, by <see cref="Recall"/>.</summary>
    public double ChanceKnown(string question, DateTimeOffset now) =>
        Recall.ChanceNow(_asked[question], _attempts is [var first, ..] ? first.Attempt.HandedInAt : now, now);

    /// <summary>The questions of a quiz: whole, refresher or to catch up, as far as the past allows.</summary>
    /// <param name="module">The edition to be asked about.</param>
    /// <param name="kind">Which quiz.</param>
    /// <param name="seed">The seed of the draw.</param>
    /// <param name="now">When it is drawn.</param>
    public Listed<string> Choose(Module module, QuizKind kind, int seed, DateTimeOffset now) =>
        kind == QuizKind.CatchUp && Passed is { } passed ? Choosing.CatchUp(module, passed, seed)
        : kind == QuizKind.Refresher ? Choosing.Refresher(module, seed, question => ChanceKnown(question, now))
        : Choosing.Whole(module, seed, TimesAsked);

    private static IEnumerable<MarkedAnswer> Asked(AttemptRead one) =>
        one.Module is { } module
            ? Quizzing.Sheet(module, one.Attempt).Answers
            : one.Attempt.Answers.Select(Answer.Read).Select(answer => new MarkedAnswer(answer.QuestionId, IsRight: false, []));
}
