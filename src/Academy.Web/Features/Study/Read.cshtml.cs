using Academy.Competence;
using Academy.Competence.People;
using Academy.Competence.Quizzes;
using Academy.Modules;
using Academy.Storage;
using Academy.Web.Access;
using Academy.Web.Features.Shared;
using Academy.Web.Library;
using Academy.Web.Shell;
using Academy.Web.Wording;
using Microsoft.AspNetCore.Authorization;
using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;

namespace Academy.Web.Features.Study;

/// <summary>One lesson, and the way into its quiz: for oneself, or read out to a junior.</summary>
[Authorize(Policy = Policies.Junior)]
public sealed class ReadModel(
    Who who,
    QuizBook quizzes,
    PastQueries past,
    BesideQueries beside,
    Shelf library,
    Titles titles,
    Ids ids,
    TimeProvider clock
) : AcademyPage
{
    /// <summary>Made when the page is shown: the quiz that it begins, however often it is sent.</summary>
    [BindProperty]
    public Guid Operation { get; set; } = ids.New();

    /// <summary>The junior to whom it is read out; nobody where somebody takes it herself.</summary>
    [BindProperty]
    public Guid? ReadTo { get; set; }

    /// <summary>The other form of the page begins another quiz.</summary>
    public Guid OtherOperation { get; } = ids.New();

    public ReadView View { get; private set; } = null!;

    public Beside Beside { get; private set; } = null!;

    public async Task<IActionResult> OnGetAsync(string module, CancellationToken stop) =>
        library.Find(module) is { } lesson ? await ShowAsync(lesson, Page, stop) : NotFound();

    public async Task<IActionResult> OnPostAsync(string module, CancellationToken stop)
    {
        if (library.Find(module) is not { } lesson || Operation == Guid.Empty)
            return NotFound();
        return await BeginAsync(lesson, who.Person, readOutBy: null, stop);
    }

    public async Task<IActionResult> OnPostReadOutAsync(string module, CancellationToken stop)
    {
        if (library.Find(module) is not { } lesson || Operation == Guid.Empty)
            return NotFound();
        if (Juniors.FirstOrDefault(one => one.Id.Value == ReadTo) is { } junior)
            return await BeginAsync(lesson, junior, who.Person, stop);

        ModelState.AddModelError(nameof(ReadTo), "Read it out to: choose one of them");
        return await ShowAsync(lesson, Again, stop);
    }

    /// <summary>Keeps the place for another device and another day; the page itself, which does so quietly, wants no answer.</summary>
    public async Task<IActionResult> OnPostPlaceAsync(string module, [FromForm] string? part, [FromForm] bool isQuiet)
    {
        if (await beside.StopAtAsync(library.Find(module), part) is not { } kept)
            return NotFound();
        return isQuiet
            ? new NoContentResult()
            : Done($"{Paths.Module(module)}#{kept.Id}", $"Your place is kept: “{kept.Title}”.");
    }

    private async Task<IActionResult> BeginAsync(Lesson lesson, Person person, Person? readOutBy, CancellationToken stop)
    {
        var now = clock.GetUtcNow();
        var study = new ModuleStudy(lesson.Module, who.Book, await quizzes.HandedInByAsync(who.Salon, person.Id, stop), now);

        var against = Sitting.AgainstBeginning(study.Attempts, person, readOutBy, now, who.Zone);
        if (!against.IsEmpty)
            return await ShowAsync(lesson, () => Again(Say.Reasons(against, Named(now))), stop);

        var begun = await quizzes.BeginAsync(
            who.Salon,
            study.Begin(
                new AttemptId(Operation),
                person.Id,
                ids.Seed(),
                readOutBy?.Id,
                await past.OfAsync(person.Id, lesson.Module.Name, stop)
            )
        );
        return LocalRedirect(Paths.Quiz(lesson.Module.Name.Value, begun.Value));
    }

    private async Task<IActionResult> ShowAsync(Lesson lesson, Func<PageResult> answer, CancellationToken stop)
    {
        var now = clock.GetUtcNow();
        var study = new ModuleStudy(lesson.Module, who.Book, await quizzes.HandedInByAsync(who.Salon, who.Person.Id, stop), now);
        var underWay = await quizzes.UnderWayAsync(who.Salon, who.Person.Id, stop);
        View = ReadView.Of(lesson, study, underWay, who.Book, who.Person, Juniors, Named(now), Request.PathBase);
        Beside = await beside.OfAsync(lesson, study, stop);
        return answer();
    }

    private IEnumerable<Person> Juniors => ReadView.Juniors(who.Book, who.Person, who.Today);

    private Names Named(DateTimeOffset now) => Names.Of(who.Book, now, titles.All);
}
