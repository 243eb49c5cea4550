using Academy.Competence;
using Academy.Competence.Quizzes;
using Academy.Storage;
using Academy.Storage.Ledgers;
using Academy.Web.Access;
using Academy.Web.Features.Shared;
using Academy.Web.Wording;
using Microsoft.AspNetCore.Authorization;
using Microsoft.AspNetCore.Mvc;

namespace Academy.Web.Features.Quizzes;

/// <summary>A quiz looked over before it is handed in. Handing in twice is one attempt.</summary>
[Authorize(Policy = Policies.Junior)]
public sealed class HandInModel(
    Who who,
    QuizTableQueries table,
    QuizBook quizzes,
    Ledger ledger,
    LastTryQueries lastTry,
    TimeProvider clock
) : AcademyPage
{
    /// <summary>What a second failure would do; null where none was before.</summary>
    public string? LastTry { get; private set; }

    public HandInView View { get; private set; } = null!;

    public async Task<IActionResult> OnGetAsync(string module, Guid attempt, CancellationToken stop)
    {
        var found = await table.FindAsync(module, attempt, stop);
        if (found is not AtTheTable.Goes(var quiz))
            return Elsewhere(found);

        View = HandInView.Of(quiz, Names.Of(who.Book, clock.GetUtcNow()));
        var taken = await quizzes.HandedInByAsync(who.Salon, quiz.Sitting.Person, stop);
        LastTry = await lastTry.OfAsync(quiz.Sitting.Person, quiz.Stand(who.Book, [.. taken], who.Today), stop);
        return Page();
    }

    public async Task<IActionResult> OnPostAsync(string module, Guid attempt, CancellationToken stop)
    {
        var found = await table.FindAsync(module, attempt, stop);
        if (found is not AtTheTable.Goes(var quiz))
            return Elsewhere(found);
        var judged = Judging.MeanChances(who.Book, quiz.Lesson.Module);
        if (quiz.Sitting.HandIn(quiz.Lesson.Module, quiz.Answers, clock.GetUtcNow(), judged) is not Granted granted)
            return Elsewhere(new AtTheTable.Changed(quiz.Sitting));

        await ledger.KeepAsync(who.Salon, granted, who.Hand, new OperationId(attempt));
        await quizzes.EndAsync(who.Salon, quiz.Sitting.Id);
        return LocalRedirect(Paths.Attempt(attempt));
    }

    private IActionResult Elsewhere(AtTheTable found) => found.Leads is { } path ? LocalRedirect(path) : NotFound();
}
