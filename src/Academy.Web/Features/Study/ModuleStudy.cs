using Academy.Competence;
using Academy.Competence.Evidence;
using Academy.Competence.Quizzes;
using Academy.Competence.Salons;
using Academy.Storage;

namespace Academy.Web.Features.Study;

/// <summary>Where one person stands with one module, and which quiz comes next.</summary>
public sealed class ModuleStudy(Module module, SalonBook book, IReadOnlyList<HandedIn> all, DateTimeOffset now)
{
    public Module Module => module;

    /// <summary>What was handed in of this module, oldest first.</summary>
    public IReadOnlyList<HandedIn> HandedIn { get; } = [.. all.Where(one => one.Taken.Module == module.Name)];

    public IReadOnlyList<Attempt> Attempts => [.. HandedIn.Select(one => new Attempt(one.Taken.HandedInAt, one.Taken.HasPassed))];

    public ModuleFound Found =>
        Knowledge.Of([module.Name], [.. book.Library], [.. HandedIn.Select(one => one.Taken)], Today, book.Zone, book.House)[0];

    /// <summary>Null where the salon has not heard of the module yet.</summary>
    public StudyNeed? Need => Studying.NeedOf(Found, Today);

    /// <summary>The quiz that comes next.</summary>
    public QuizKind Next =>
        Studying.NextQuiz(Found, book.Library.FirstOrDefault(one => one.Module == module.Name), Today, book.House);

    /// <summary>From when a quiz may be taken; null for now.</summary>
    public DateTimeOffset? NotBefore => Quizzing.MayTakeAgainAt(Attempts, book.Zone) is { } at && now < at ? at : null;

    /// <summary>The quiz that begins now.</summary>
    /// <remarks>Where the edition that was passed is no longer there to compare with, the whole quiz takes the place of the short one.</remarks>
    public Sitting Begin(AttemptId attempt, PersonId person, int seed, PersonId? readOutBy, QuizPast past)
    {
        var kind = Next == QuizKind.CatchUp && past.Passed is null ? QuizKind.Whole : Next;
        return new(
            attempt,
            person,
            module.Name,
            module.Hash,
            IsRefresher: kind == QuizKind.Refresher,
            seed,
            now,
            readOutBy,
            past.Choose(module, kind, seed, now),
            IsCatchUp: kind == QuizKind.CatchUp
        );
    }

    private DateOnly Today => SalonDay.Of(now, book.Zone);
}
