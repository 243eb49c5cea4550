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
    LastTryQueries lastTry,
    ReadingPlaces places,
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

    /// <summary>The part at which somebody stops reading.</summary>
    [BindProperty]
    public string? Part { get; set; }

    /// <summary>Whether the page itself keeps the place while somebody reads, and wants no answer.</summary>
    [BindProperty]
    public bool IsQuiet { get; set; }

    /// <summary>The other form of the page begins another quiz.</summary>
    public Guid OtherOperation { get; } = ids.New();

    public ReadView View { get; private set; } = null!;

    /// <summary>Where the reader stopped; null where there is no place to go on from.</summary>
    public GoOnLine? GoOn { get; private set; }

    /// <summary>What a second failure would do; null where none was before.</summary>
    public string? LastTry { get; private set; }

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

    /// <summary>Keeps the place for another device and another day.</summary>
    public async Task<IActionResult> OnPostPlaceAsync(string module)
    {
        if (library.Find(module) is not { } lesson || lesson.Parts.FirstOrDefault(one => one.Id == Part) is not { } part)
            return NotFound();
        await places.KeepAsync(who.Salon, who.Person.Id, new(lesson.Module.Name, part.Id, clock.GetUtcNow()));
        return IsQuiet
            ? new NoContentResult()
            : Done($"{Paths.Module(module)}#{part.Id}", $"Your place is kept: “{part.Title}”.");
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
        var place = await places.FindAsync(who.Salon, who.Person.Id, lesson.Module.Name, stop);
        GoOn = GoOnLine.Of(place, lesson, study.HandedIn is [.., var last] ? last.Taken.HandedInAt : null, who.Time);
        LastTry = await lastTry.OfAsync(who.Person.Id, study.Found, stop);
        return answer();
    }

    private IEnumerable<Person> Juniors => ReadView.Juniors(who.Book, who.Person, who.Today);

    private Names Named(DateTimeOffset now) => Names.Of(who.Book, now, titles.All);
}
