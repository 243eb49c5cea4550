using Academy.Competence;
using Academy.Competence.Quizzes;
using Academy.Storage;
using Academy.Web.Access;
using Academy.Web.Library;

namespace Academy.Web.Features.Study;

/// <summary>What a person was asked of a module before, each attempt with the edition it was taken in.</summary>
public sealed class PastQueries(Who who, QuizBook quizzes, Editions editions)
{
    public async Task<QuizPast> OfAsync(PersonId person, ModuleName module, CancellationToken stop)
    {
        List<AttemptRead> attempts = [];
        foreach (var attempt in await quizzes.AttemptsAsync(who.Salon, person, module, stop))
            attempts.Add(new(attempt, (await editions.FindAsync(module, attempt.ContentHash, stop))?.Module));
        return new(attempts);
    }
}
