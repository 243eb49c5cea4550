using Academy.Competence.People;
using Academy.Competence.Quizzes;
using Academy.Web.Access;
using Academy.Web.Features.Shared;
using Academy.Web.Library;
using Microsoft.AspNetCore.Authorization;
using Microsoft.AspNetCore.Mvc;

namespace Academy.Web.Features.Judgements;

/// <summary>What all judges say of a module together: for judges who gave theirs, and for the owner.</summary>
[Authorize(Policy = Policies.Senior)]
public sealed class PanelModel(Who who, Shelf library, TimeProvider clock) : AcademyPage
{
    /// <summary>An owner who has not judged says that she looks all the same.</summary>
    [BindProperty(SupportsGet = true)]
    public bool Look { get; set; }

    public PanelView? View { get; private set; }

    public string Title { get; private set; } = "";

    public string Judge { get; private set; } = "";

    public string LookHref { get; private set; } = "";

    public IActionResult OnGet(string module)
    {
        if (library.Find(module) is not { } lesson)
            return NotFound();
        var hasGiven = Judging.By(who.Book, lesson.Module, who.Person.Id) is not null;
        if (!hasGiven && who.Person.Role != Role.Owner)
            return LocalRedirect(Paths.JudgeModule(module));

        (Title, Judge, LookHref) = (lesson.Module.Title, Paths.JudgeModule(module), Paths.JudgePanel(module) + "?look=true");
        View =
            hasGiven || Look
                ? PanelView.Of(lesson, who.Book, who.Person, who.Names with { Time = new(who.Zone, clock.GetUtcNow()) })
                : null;
        return Page();
    }
}
