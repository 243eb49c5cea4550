namespace Academy.Competence.Quizzes;

/// <summary>Chooses the questions of a quiz from what the person was asked before.</summary>
/// <remarks>
/// What was chosen is kept with the quiz, because it cannot be worked out again from the seed. The seed breaks ties and gives the
/// order; one seed and one past always give the same quiz.
/// </remarks>
public static class Choosing
{
    /// <summary>The whole quiz: what this person was asked least often comes first, so that a retake is another quiz.</summary>
    /// <param name="module">The module.</param>
    /// <param name="seed">The seed of the draw.</param>
    /// <param name="timesAsked">How often this person was asked a question, whatever the edition; 0 where it is not named.</param>
    public static Listed<string> Whole(Module module, int seed, IReadOnlyDictionary<string, int> timesAsked)
    {
        var chance = new SplitMix64(unchecked((ulong)seed));
        var inOrder = chance.Shuffle(module.Questions).OrderBy(question => timesAsked.GetValueOrDefault(question.Id)).ToArray();
        var mustKnow = inOrder.Where(question => question.IsMustKnow).Take(QuizKind.Whole.MostMustKnow).ToArray();
        var others = inOrder.Where(question => !question.IsMustKnow).Take(QuizKind.Whole.Questions - mustKnow.Length);
        return [.. chance.Shuffle(mustKnow.Concat(others)).Select(question => question.Id)];
    }

    /// <summary>A refresher: what is most likely forgotten comes first.</summary>
    /// <param name="module">The module.</param>
    /// <param name="seed">The seed of the draw.</param>
    /// <param name="chanceKnown">How likely the person still knows a question, 0 to 1: <see cref="Measuring.Recall"/>.</param>
    public static Listed<string> Refresher(Module module, int seed, Func<string, double> chanceKnown)
    {
        var chance = new SplitMix64(unchecked((ulong)seed));
        var inOrder = chance.Shuffle(module.Questions).OrderBy(question => chanceKnown(question.Id)).ToArray();
        var tooMany = inOrder.Where(question => question.IsMustKnow).Skip(QuizKind.Refresher.MostMustKnow);
        return [.. chance.Shuffle(inOrder.Except(tooMany).Take(QuizKind.Refresher.Questions)).Select(question => question.Id)];
    }

    /// <summary>A quiz on what changed: every must-know question that is new or says something else, then the others that are.</summary>
    /// <param name="module">The edition to catch up with.</param>
    /// <param name="passed">The edition that the person passed.</param>
    /// <param name="seed">The seed of the draw.</param>
    /// <remarks>
    /// With fewer than <see cref="FewestToCatchUp"/> changed questions it is filled with others, must-know ones first: a change of
    /// words in the lesson alone is asked about too.
    /// </remarks>
    public static Listed<string> CatchUp(Module module, Module passed, int seed)
    {
        var before = passed.Questions.ToDictionary(question => question.Id, StringComparer.Ordinal);
        var chance = new SplitMix64(unchecked((ulong)seed));
        var inOrder = chance
            .Shuffle(module.Questions)
            .OrderBy(question => IsAsBefore(question, before))
            .ThenByDescending(question => question.IsMustKnow)
            .ToArray();
        var changed = inOrder.Count(question => !IsAsBefore(question, before));
        var asked = Math.Clamp(changed, FewestToCatchUp, QuizKind.CatchUp.Questions);
        return [.. chance.Shuffle(inOrder.Take(asked)).Select(question => question.Id)];
    }

    /// <summary>The fewest questions of a quiz on what changed.</summary>
    public const int FewestToCatchUp = 4;

    private static bool IsAsBefore(Question question, Dictionary<string, Question> before) =>
        before.TryGetValue(question.Id, out var old)
        && old.Text == question.Text
        && old.IsMustKnow == question.IsMustKnow
        && old.Kind.Equals(question.Kind);
}
