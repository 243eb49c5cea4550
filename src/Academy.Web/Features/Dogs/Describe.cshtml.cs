using Academy.Competence;
using Academy.Competence.Dogs;
using Academy.Competence.People;
using Academy.Storage;
using Academy.Storage.Ledgers;
using Academy.Web.Access;
using Academy.Web.Features.Shared;
using Academy.Web.Shell;
using Academy.Web.Wording;
using Microsoft.AspNetCore.Authorization;
using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;

namespace Academy.Web.Features.Dogs;

/// <summary>One dog: what the salon knows of it, its grooms, and the form in which it is described anew.</summary>
[Authorize(Policy = Policies.AnyoneHere)]
public sealed class DescribeModel(Who who, RecordBook book, DogQueries dogs, Ledger ledger, Ids ids) : AcademyPage, IDogPage
{
    [BindProperty]
    public DogForm Form { get; set; } = new();

    /// <summary>Grooms that began before this moment, in ticks; none for the newest.</summary>
    [BindProperty(SupportsGet = true)]
    public long? Before { get; set; }

    public DogFormView View { get; private set; } = DogFormView.Nothing;

    public DogView Dog { get; private set; } = DogView.Nothing;

    /// <summary>The other form of the page is another operation.</summary>
    public Guid OtherOperation { get; } = ids.New();

    /// <summary>Whether the form stands open: somebody is at it.</summary>
    public bool IsAtIt { get; private set; }

    public async Task<IActionResult> OnGetAsync(Guid id, CancellationToken stop)
    {
        if (await book.DogAsync(who.Salon, new(id), stop) is not { } known)
            return NotFound();

        Form = DogForm.Of(known.Record, known.Version, ids.New());
        return await ShowAsync(known, stop);
    }

    public async Task<IActionResult> OnPostSuggestAsync(Guid id, CancellationToken stop)
    {
        if (await book.DogAsync(who.Salon, new(id), stop) is not { } known)
            return NotFound();

        Form.TakeSuggestion();
        ModelState.Clear();
        await ShowAsync(known, stop, wasAsked: true);
        return Page();
    }

    public async Task<IActionResult> OnPostAsync(Guid id, CancellationToken stop)
    {
        if (await book.DogAsync(who.Salon, new(id), stop) is not { } known)
            return NotFound();

        Form.Dog = id;
        var told = Form.Read(who.Book, known.Record.IsGone, ModelState);
        return ModelState.IsValid
            ? await KeepAsync(told, known, $"{told.Name} is described anew.", stop)
            : await ShowAsync(known, stop, Again);
    }

    /// <summary>The dog no longer comes, or is back.</summary>
    public async Task<IActionResult> OnPostGoneAsync(Guid id, bool gone, CancellationToken stop)
    {
        if (await book.DogAsync(who.Salon, new(id), stop) is not { } known)
            return NotFound();

        var told = known.Record with { IsGone = gone };
        return await KeepAsync(told, known, gone ? $"{told.Name} no longer comes." : $"{told.Name} is back.", stop);
    }

    private async Task<IActionResult> KeepAsync(Dog told, Known<Dog> known, string done, CancellationToken stop)
    {
        var decision = DogKeeping.Describe(told, who.Today);
        if (decision is not Granted granted)
            return await ShowAsync(
                known,
                stop,
                () => Again(Say.Reasons(((Refused)decision).Reasons, Names.Of(who.Book, who.Hand.Now)))
            );

        var expected = new Expected(told.Id.Value, Form.Version);
        var kept = await ledger.KeepAsync(who.Salon, granted, who.Hand, new(Form.Operation), expected);
        return kept is Kept.RecordMovedOn ? await MovedOnAsync(told.Id, stop) : Done(Paths.Dog(told.Id.Value), done);
    }

    private async Task<IActionResult> MovedOnAsync(DogId dog, CancellationToken stop)
    {
        var now = (await book.DogAsync(who.Salon, dog, stop))!;
        ModelState.AddModelError("", DogView.MovedOn(now.Record, who.Book));
        ModelState.Remove($"{nameof(Form)}.{nameof(Form.Version)}");
        Form.Version = now.Version;
        return await ShowAsync(now, stop, MovedOn);
    }

    private async Task<PageResult> ShowAsync(
        Known<Dog> known,
        CancellationToken stop,
        Func<PageResult>? answer = null,
        bool wasAsked = false
    )
    {
        var only = who.Person.Role == Role.Junior ? who.Person.Id : (PersonId?)null;
        var before = Before is { } ticks ? new DateTimeOffset(ticks, TimeSpan.Zero) : (DateTimeOffset?)null;
        var grooms = await dogs.GroomsOfAsync(who.Salon, known.Record.Id, only, before, stop);
        Dog = DogView.Of(known.Record, grooms, who.Book, who.Hand.Now);
        View = DogFormView.Of(Form, who.Book, wasAsked);
        IsAtIt = wasAsked || answer is not null;
        return answer is null ? Page() : answer();
    }
}
