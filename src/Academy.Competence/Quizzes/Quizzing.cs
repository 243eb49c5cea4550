using Academy.Competence.Facts;
using Academy.Competence.Quizzes.Measuring;
using Academy.Competence.Salons;

namespace Academy.Competence.Quizzes;

/// <summary>Draws a quiz from a module, marks the answers, and says when somebody may try again.</summary>
public static class Quizzing
{
    /// <summary>How long somebody waits after a first failed attempt: long enough to read the passage again.</summary>
    public static TimeSpan FirstWait { get; } = TimeSpan.FromMinutes(10);

    /// <summary>Draws the quiz at the end of a module.</summary>
    public static Listed<Question> Draw(Module module, int seed) => Draw(module, seed, QuizKind.Whole);

    /// <summary>Draws a quiz: which questions, in which order, each with its options, steps, pairs or spots in an order of its own.</summary>
    /// <remarks>
    /// One module, seed and kind always give the same quiz. Must-know questions are drawn up to the number of the kind and never
    /// more, so a module with few other questions gives a shorter quiz.
    /// </remarks>
    public static Listed<Question> Draw(Module module, int seed, QuizKind kind)
    {
        var chance = new SplitMix64(unchecked((ulong)seed));
        var mustKnow = chance.Shuffle(module.Questions.Where(question => question.IsMustKnow)).Take(kind.MostMustKnow).ToArray();
        var others = chance
            .Shuffle(module.Questions.Where(question => !question.IsMustKnow))
            .Take(kind.Questions - mustKnow.Length);
        return
        [
            .. chance
                .Shuffle(mustKnow.Concat(others))
                .Select(question => question with { Kind = question.Kind.Shuffled(chance) }),
        ];
    }

    /// <summary>Draws a quiz of which the questions may have been chosen before.</summary>
    /// <param name="module">The edition they were chosen from.</param>
    /// <param name="seed">The seed that orders options, steps, pairs and spots.</param>
    /// <param name="kind">The kind of quiz.</param>
    /// <param name="chosen">
    /// The ids of the questions in their order, of which one that the module does not have is left out; null where the seed alone draws.
    /// </param>
    public static Listed<Question> Draw(Module module, int seed, QuizKind kind, Listed<string>? chosen)
    {
        if (chosen is not { } ids)
            return Draw(module, seed, kind);

        var chance = new SplitMix64(unchecked((ulong)seed));
        return
        [
            .. ids.Select(id => module.Questions.FirstOrDefault(question => question.Id == id))
                .OfType<Question>()
                .Select(question => question with { Kind = question.Kind.Shuffled(chance) }),
        ];
    }

    /// <summary>Which kind of quiz an attempt was.</summary>
    public static QuizKind KindOf(AttemptHandedIn attempt) => QuizKind.Of(attempt.IsRefresher, attempt.IsCatchUp == true);

    /// <summary>The questions of an attempt as they were asked.</summary>
    /// <param name="module">The edition it was taken in.</param>
    /// <param name="attempt">The attempt.</param>
    public static Listed<Question> Asked(Module module, AttemptHandedIn attempt) =>
        Draw(module, attempt.Seed, KindOf(attempt), attempt.Drawn);

    /// <summary>An attempt as marks, question by question.</summary>
    /// <param name="module">The edition it was taken in.</param>
    /// <param name="attempt">The attempt.</param>
    public static AnswerSheet Sheet(Module module, AttemptHandedIn attempt)
    {
        var given = attempt.Answers.Select(Answer.Read).ToLookup(answer => answer.QuestionId, answer => answer.Given);
        return new(
            Asked(module, attempt)
                .Select(question => (question, given: given[question.Id].LastOrDefault()))
                .Select(one => new MarkedAnswer(
                    one.question.Id,
                    one.given is { } said && one.question.IsAnsweredBy(said),
                    one.given is { } chosen ? one.question.Kind.Chosen(chosen) : []
                ))
                .ToListed()
        );
    }

    /// <summary>Marks the quiz at the end of a module.</summary>
    public static Result Mark(Module module, int seed, IReadOnlyCollection<Answer> answers) =>
        Mark(module, seed, QuizKind.Whole, answers);

    /// <summary>Marks the answers to the quiz that the same module, seed and kind drew.</summary>
    /// <remarks>
    /// A question without an answer is wrong. Where a question was answered twice, the later answer counts. An answer to a question
    /// that was not asked counts for nothing.
    /// </remarks>
    public static Result Mark(Module module, int seed, QuizKind kind, IReadOnlyCollection<Answer> answers) =>
        Mark(Draw(module, seed, kind), kind, answers, expected: []);

    /// <summary>Marks the answers to these questions.</summary>
    /// <param name="asked">The questions as they were asked.</param>
    /// <param name="kind">The kind of quiz.</param>
    /// <param name="answers">What was answered.</param>
    /// <param name="expected">For each question asked the judges' mean chance; empty where they did not judge.</param>
    public static Result Mark(
        Listed<Question> asked,
        QuizKind kind,
        IReadOnlyCollection<Answer> answers,
        IReadOnlyCollection<double> expected
    )
    {
        var given = answers.ToLookup(answer => answer.QuestionId, answer => answer.Given);
        Listed<Question> wrong = [.. asked.Where(question => !given[question.Id].TakeLast(1).Any(question.IsAnsweredBy))];
        Listed<string> mustKnowWrong = [.. wrong.Where(question => question.IsMustKnow).Select(question => question.Id)];
        var right = asked.Count - wrong.Count;

        return new(
            right,
            asked.Count,
            [.. wrong.Select(question => question.Id)],
            mustKnowWrong,
            asked.Count > 0 && right >= kind.RightAsked(asked.Count, expected) && mustKnowWrong.IsEmpty
        );
    }

    /// <summary>The moment from which somebody may try again, or null where nothing has to be waited for.</summary>
    /// <remarks>
    /// Counted since the last pass: after a first failed attempt 10 minutes, after every further one the start of the salon's next
    /// local day. The moment itself is allowed. Earlier attempts may be given in any order.
    /// </remarks>
    public static DateTimeOffset? MayTakeAgainAt(IEnumerable<Attempt> earlier, TimeZoneInfo zone)
    {
        var failed = earlier.OrderByDescending(attempt => attempt.HandedInAt).TakeWhile(attempt => !attempt.HasPassed).ToArray();
        return failed switch
        {
            [] => null,
            [var only] => only.HandedInAt + FirstWait,
            [var last, ..] => SalonDay.End(SalonDay.Of(last.HandedInAt, zone), zone),
        };
    }
}
