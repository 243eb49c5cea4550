using Academy.Competence;
using Academy.Competence.DogChecks;
using Academy.Competence.Dogs;
using Academy.Competence.Grooms;
using Academy.Competence.Salons;
using Academy.Competence.Standings;
using Academy.Storage;
using Academy.Web.Access;
using Academy.Web.Features.Shared;
using Academy.Web.Wording;
using Microsoft.AspNetCore.Authorization;
using Microsoft.AspNetCore.Mvc;

namespace Academy.Web.Features.DogChecks;

/// <summary>
/// Who may groom this dog, alone, now. Asked by address, so that the answer can be read again and gone back from; the address
/// holds ids and codes only.
/// </summary>
[Authorize(Policy = Policies.AnyoneHere)]
public sealed class CheckModel(Who who, RecordBook records, DogCheckQueries dogs, TimeProvider clock) : AcademyPage
{
    [BindProperty(SupportsGet = true)]
    public DogCheckForm Form { get; set; } = new();

    /// <summary>Words to find a dog by; posted, because a name does not belong into an address.</summary>
    [BindProperty]
    public string? Words { get; set; }

    public DogCheckView View { get; private set; } = null!;

    public async Task<IActionResult> OnGetAsync(CancellationToken stop)
    {
        var now = clock.GetUtcNow();
        if (Form.MomentIn(who.Zone, now) is not { } at)
        {
            ModelState.AddModelError(
                "Form.On",
                "Give the day and the time of a moment that has been, such as 14/7/2026 and 14:00."
            );
            return await ChooseAsync(now, unprocessable: true, stop);
        }
        if (await DogAsync(at, isPast: at < now, stop) is not { } dog)
            return Form.Dog is null ? await ChooseAsync(now, unprocessable: false, stop) : NotFound();

        await ShowAsync(dog, at, isPast: at < now, stop);
        return Page();
    }

    public Task<IActionResult> OnPostAsync(CancellationToken stop) => ChooseAsync(clock.GetUtcNow(), unprocessable: false, stop);

    private async Task<IActionResult> ChooseAsync(DateTimeOffset now, bool unprocessable, CancellationToken stop)
    {
        var found = await dogs.FindAsync(who.Salon, Words, stop);
        View = DogCheckView.ToChoose(who.Book, found, Words, now);
        return unprocessable ? Again() : Page();
    }

    private async Task<Dog?> DogAsync(DateTimeOffset at, bool isPast, CancellationToken stop)
    {
        if (Form.Dog is not { } id)
            return Form.IsDescribed ? Form.Described(who.Book, Breeds.All) : null;
        return isPast
            ? await records.DogAsKnownAsync(who.Salon, new DogId(id), at, stop)
            : (await records.DogAsync(who.Salon, new DogId(id), stop))?.Record;
    }

    private async Task ShowAsync(Dog dog, DateTimeOffset at, bool isPast, CancellationToken stop)
    {
        var book = isPast ? await records.SalonAsKnownAsync(who.Salon, at, stop) : who.Book;
        var asked = Form.AskedFor(dog, await UsualAsync(dog, stop));
        var answer = Form.IsAsked ? await AnswerAsync(asked, book, at, isPast, stop) : null;
        Form.Tick(asked, SalonDay.Of(at, book.Zone), book.House);
        View = DogCheckView.Of(book, asked, answer, Form, at, isPast);
    }

    private async Task<DogCheckAnswer> AnswerAsync(
        DogAsked asked,
        SalonBook book,
        DateTimeOffset at,
        bool isPast,
        CancellationToken stop
    )
    {
        var team = isPast ? await records.TeamAsKnownAsync(who.Salon, at, stop) : await records.TeamAsync(who.Salon, at, stop);
        var day = SalonDay.Of(at, book.Zone);
        var isIn = isPast ? await records.InOnAsync(who.Salon, day, at, stop) : await records.InOnAsync(who.Salon, day, stop);
        var reading = await records.NewestReadingAsync(who.Salon, at, stop);
        return DogCheck.Of(asked, team, isIn, reading, book.House, at, book.Zone);
    }

    // What was done last time is offered, not assumed: nothing is answered before somebody has asked.
    private async Task<Listed<SkillCode>> UsualAsync(Dog dog, CancellationToken stop)
    {
        if (Form.IsAsked || await dogs.LastGroomAsync(who.Salon, dog.Id, stop) is not { } last)
            return [];
        var groom = await records.GroomAsync(who.Salon, last, stop);
        return groom?.Record.Story?.Groom.Parts.Select(part => part.Technique).Distinct().ToListed() ?? [];
    }
}
