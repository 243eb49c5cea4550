using Academy.Competence;
using Academy.Competence.Quizzes;
using Academy.Storage;
using Academy.Web.Access;
using Academy.Web.Features.Shared;
using Academy.Web.Library;
using Academy.Web.Wording;
using Microsoft.AspNetCore.Authorization;
using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;

namespace Academy.Web.Features.Writing;

/// <summary>A draft is finished: somebody else is asked to read it, or where nobody else could, it goes on to publishing.</summary>
[Authorize(Policy = Policies.Writer)]
public sealed class AskModel(Who who, DraftBook drafts, DraftQueries desk, Shelf shelf, TimeProvider clock)
    : DraftPage(who, desk, shelf, clock)
{
    [BindProperty]
    public EditionForm Form { get; set; } = new();

    public AskView View { get; private set; } = null!;

    public async Task<IActionResult> OnGetAsync(CancellationToken stop)
    {
        if (await FindAsync(stop) is not { } draft)
            return NotFound();
        if (draft.AskedAt is not null)
            return LocalRedirect(Paths.ReadOver(Module));

        Form = EditionForm.Of(draft, Who.Today);
        ModelState.Clear();
        return await ShowAsync(draft, Page, stop);
    }

    public async Task<IActionResult> OnPostAsync(CancellationToken stop)
    {
        if (await FindAsync(stop) is not { } draft)
            return Gone();
        if (draft.AskedAt is not null)
            return Asked();

        var finished = Form.Over(draft, Who.Book);
        var read = await Desk.ReadAsync(finished, stop);
        Check(read);
        if (!ModelState.IsValid)
            return await ShowAsync(draft, Again, stop);

        var asked = finished with { Author = Who.Person.Id, AskedAt = Now, Returned = null, Version = Form.Version };
        return await drafts.SaveAsync(Who.Salon, asked) ? Asked() : await MovedOnAsync(stop);
    }

    private void Check(DraftRead read)
    {
        Form.Check(AskView.IsFirstEdition(Who.Book, read.Draft.Module), ModelState);
        if (read.Lesson is null)
            ModelState.AddModelError("", AskView.CannotBeRead);
        else
            EditionForm.Tell(Publishing.AgainstAsking(Offer(read, read.Lesson.Module), Who.Book, Who.Today), Named, ModelState);
    }

    private EditionOffered Offer(DraftRead read, Module module) =>
        new(module, read.ToPutRight, Who.Person, ReviewedBy: null, new Words(read.Draft.Change), read.Draft.CatchUpBy);

    private LocalRedirectResult Asked()
    {
        var could = Publishing.CouldReview(Who.Book, Who.Person.Id, Who.Today).ToListed();
        return could.IsEmpty
            ? LocalRedirect(Paths.ReadOver(Module))
            : Done(Paths.ReadOver(Module), $"{DraftWords.Readers(could)} can read it now, and is told so on the first page.");
    }

    private async Task<IActionResult> MovedOnAsync(CancellationToken stop)
    {
        if (await FindAsync(stop) is not { } there)
            return Gone();

        Form.Version = there.Version;
        ModelState.Clear();
        ModelState.AddModelError("", AskView.MovedOn(there, Named));
        return await ShowAsync(there, MovedOn, stop);
    }

    private async Task<PageResult> ShowAsync(Draft draft, Func<PageResult> answer, CancellationToken stop)
    {
        var read = await Desk.ReadAsync(draft.Numbered(Who.Book, Form.IsSafety), stop);
        View = AskView.Of(read, Desk.TitleOf(read), Who, Named);
        return answer();
    }
}
