using Academy.Competence;
using Academy.Modules;
using Academy.Storage;
using Academy.Web.Access;
using Academy.Web.Features.Shared;
using Academy.Web.Library;
using Academy.Web.Wording;
using Microsoft.AspNetCore.Authorization;
using Microsoft.AspNetCore.Mvc;

namespace Academy.Web.Features.Quizzes;

/// <summary>What came of an attempt, with every question as it was asked, in the edition that was seen.</summary>
[Authorize(Policy = Policies.Junior)]
public sealed class ResultModel(
    Who who,
    QuizBook quizzes,
    Editions editions,
    Shelf library,
    Titles titles,
    LastTryQueries lastTry,
    TimeProvider clock
) : AcademyPage
{
    /// <summary>What a second failure would do; null where this is not the newest attempt, or was passed.</summary>
    public string? LastTry { get; private set; }

    public ResultView View { get; private set; } = null!;

    public async Task<IActionResult> OnGetAsync(Guid id, CancellationToken stop)
    {
        if (
            await quizzes.HandedInAsync(who.Salon, new AttemptId(id), stop) is not { } attempt
            || who.Book.Find(attempt.Person) is not { } person
            || !who.Person.MaySee(person)
        )
            return NotFound();

        var seen = await editions.FindAsync(attempt.Module, attempt.ContentHash, stop);
        var all = await quizzes.HandedInByAsync(who.Salon, person.Id, stop);
        var found = new AttemptSeen(attempt, seen, library.Find(attempt.Module.Value), [.. all]);
        var names = Names.Of(who.Book, clock.GetUtcNow(), titles.All);
        View = ResultView.Of(found, who.Person, who.Book, names, Request.PathBase);
        LastTry = found.IsNewest ? await lastTry.OfAsync(person.Id, found.Stand(who.Book, names.Time), stop) : null;
        return Page();
    }
}
