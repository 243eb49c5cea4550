using Academy.Competence.Facts;
using Academy.Competence.People;
using Academy.Competence.Salons;

namespace Academy.Competence.Quizzes;

/// <summary>A quiz that somebody began: what was drawn, not yet what was answered.</summary>
/// <param name="Id">Made once: handing in twice is one attempt.</param>
/// <param name="Person">Who takes it.</param>
/// <param name="Module">The module.</param>
/// <param name="ContentHash">The edition drawn from; it stays the one taken even if the module is edited meanwhile.</param>
/// <param name="IsRefresher">A refresher, not the whole quiz.</param>
/// <param name="Seed">The seed of the draw.</param>
/// <param name="StartedAt">When.</param>
/// <param name="ReadOutBy">A senior who reads it out to the person, if one does.</param>
/// <param name="Drawn">The questions chosen, in their order; null for a quiz that its seed alone draws.</param>
/// <param name="IsCatchUp">A quiz on what changed, not the whole one.</param>
public sealed record Sitting(
    AttemptId Id,
    PersonId Person,
    ModuleName Module,
    string ContentHash,
    bool IsRefresher,
    int Seed,
    DateTimeOffset StartedAt,
    PersonId? ReadOutBy,
    Listed<string>? Drawn = null,
    bool IsCatchUp = false
)
{
    /// <summary>The kind of quiz drawn.</summary>
    public QuizKind Kind => QuizKind.Of(IsRefresher, IsCatchUp);

    /// <summary>The questions as they are asked.</summary>
    /// <param name="module">The edition of <see cref="ContentHash"/>.</param>
    public Listed<Question> Draw(Module module) => Quizzing.Draw(module, Seed, Kind, Drawn);

    /// <summary>Whether a new quiz may begin, or every reason against.</summary>
    public static Listed<Reason> AgainstBeginning(
        IEnumerable<Attempt> earlier,
        Person person,
        Person? readOutBy,
        DateTimeOffset now,
        TimeZoneInfo zone
    )
    {
        return Against().ToListed();

        IEnumerable<Reason> Against()
        {
            if (!person.WorksOn(SalonDay.Of(now, zone)))
                yield return new NotWorkingHere(person.Id);
            if (readOutBy is { MayJudgeByRole: false })
                yield return new SeniorOrOwnerOnly(readOutBy.Role);
            if (Quizzing.MayTakeAgainAt(earlier, zone) is { } at && now < at)
                yield return new TakeAgainLater(at);
        }
    }

    /// <summary>Hands it in: the attempt as a fact. What is not answered is wrong.</summary>
    /// <param name="module">The edition of <see cref="ContentHash"/>.</param>
    /// <param name="answers">What was answered.</param>
    /// <param name="now">When it is handed in.</param>
    /// <param name="judged">For each question the judges' mean chance; null where they did not judge.</param>
    public Decision HandIn(
        Module module,
        IReadOnlyCollection<Answer> answers,
        DateTimeOffset now,
        IReadOnlyDictionary<string, double>? judged = null
    )
    {
        var asked = Draw(module);
        double[] expected =
            judged is not null && asked.All(question => judged.ContainsKey(question.Id))
                ? [.. asked.Select(question => judged[question.Id])]
                : [];
        var result = Quizzing.Mark(asked, Kind, answers, expected);
        return Decision.Of(
            module.Hash == ContentHash ? [] : [new NotTheEditionDrawn(module.Name)],
            new AttemptHandedIn(
                Id,
                Person,
                Module,
                module.Edition,
                ContentHash,
                IsRefresher,
                Seed,
                StartedAt,
                now,
                answers.Select(answer => answer.Written).ToListed(),
                result.Right,
                result.Of,
                result.MustKnowWrong,
                result.HasPassed,
                ReadOutBy,
                Drawn,
                IsCatchUp ? true : null,
                expected.Length > 0 ? Kind.RightAsked(asked.Count, expected) : null
            )
        );
    }
}
