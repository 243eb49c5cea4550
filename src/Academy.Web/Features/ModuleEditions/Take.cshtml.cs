using Academy.Competence;
using Academy.Competence.Quizzes;
using Academy.Modules;
using Academy.Storage.Ledgers;
using Academy.Web.Access;
using Academy.Web.Features.Shared;
using Academy.Web.Shell;
using Academy.Web.Wording;
using Microsoft.AspNetCore.Authorization;
using Microsoft.AspNetCore.Mvc;

namespace Academy.Web.Features.ModuleEditions;

/// <summary>Taking the library's edition in place of the salon's own: its text becomes the next edition here.</summary>
[Authorize(Policy = Policies.Writer)]
public sealed class TakeModel(Who who, Ledger ledger, TakeQueries library, Ids ids, TimeProvider clock) : KeepingPage(who, ledger)
{
    [BindProperty]
    public TakeForm Form { get; set; } = new();

    public TakeView View { get; private set; } = null!;

    public async Task<IActionResult> OnGetAsync(string module, CancellationToken stop)
    {
        if (await FindAsync(module, stop) is not { } taking)
            return NotFound();
        if (taking.IsTakenAlready)
            return Done(Paths.ModuleEditions(module), "The salon’s edition has the library’s words already.");
        Form = TakeForm.Fresh(taking, ids.New());
        return Page();
    }

    public async Task<IActionResult> OnPostAsync(string module, CancellationToken stop)
    {
        if (await FindAsync(module, stop) is not { } taking)
            return NotFound();
        if (Form.Next != taking.Next)
            return await StaleAsync(module, stop);
        if (!ModelState.IsValid)
            return Again();

        var (written, findings) = taking.Written(Form.IsSafety);
        if (written is null)
            return Again([$"The library’s edition cannot be read as the salon’s next: {findings[0].Message}"]);
        var offered = taking.Offered(written, findings, Form, Who.Person);
        return taking.Readers.Count == 0
            ? await PublishAsync(written, offered, stop)
            : await AskAsync(taking, written, offered, stop);
    }

    private async Task<IActionResult> PublishAsync(Lesson written, EditionOffered offered, CancellationToken stop)
    {
        var decision = Publishing.Publish(offered, Who.Book, Who.Today);
        if (decision is Granted)
            await library.KeepAsync(written);
        return await KeepAsync(
            decision,
            Form.Operation,
            Paths.ModuleEditions(written.Module.Name.Value),
            $"Edition {written.Module.Edition} is the library’s, and in force.",
            stop
        );
    }

    // Somebody else could read it, so somebody else does: it waits for her like any other draft.
    private async Task<IActionResult> AskAsync(Taking taking, Lesson written, EditionOffered offered, CancellationToken stop)
    {
        if (Publishing.AgainstAsking(offered, Who.Book, Who.Today) is { IsEmpty: false } against)
            return Again(Say.Reasons(against, Who.Names));

        return await library.BeginAsync(taking.Draft(written, offered, clock.GetUtcNow()), taking, stop)
            ? Done(
                Paths.ModuleEditions(written.Module.Name.Value),
                $"The library’s edition waits for a second reader: {taking.Names}."
            )
            : Again(["The module is being written already. Publish that draft or throw it away, then take the library’s."]);
    }

    private async Task<IActionResult> StaleAsync(string module, CancellationToken stop)
    {
        if (await HasKeptAsync(Form.Operation, stop))
            return LocalRedirect(Paths.ModuleEditions(module));
        Form.Next = View.Next;
        ModelState.Remove($"{nameof(Form)}.{nameof(Form.Next)}");
        ModelState.AddModelError(
            "",
            "Another edition was published in between. Look at what it would change now, and send it again"
        );
        return MovedOn();
    }

    private async Task<Taking?> FindAsync(string module, CancellationToken stop)
    {
        var taking = await library.FindAsync(module, stop);
        if (taking is not null)
            View = TakeView.Of(taking);
        return taking;
    }
}
