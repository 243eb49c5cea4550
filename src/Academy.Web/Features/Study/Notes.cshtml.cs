using Academy.Competence;
using Academy.Competence.Quizzes;
using Academy.Storage.Ledgers;
using Academy.Web.Access;
using Academy.Web.Features.Shared;
using Academy.Web.Library;
using Academy.Web.Shell;
using Academy.Web.Wording;
using Microsoft.AspNetCore.Authorization;
using Microsoft.AspNetCore.Mvc;

namespace Academy.Web.Features.Study;

/// <summary>What seniors add to a module: how it is done in this salon.</summary>
[Authorize(Policy = Policies.Senior)]
public sealed class NotesModel(Who who, Ledger ledger, Shelf library, Ids ids, TimeProvider clock) : KeepingPage(who, ledger)
{
    /// <summary>Made when the page is shown; it names the note too, so that a second sending is the same note.</summary>
    [BindProperty]
    public Guid Operation { get; set; } = ids.New();

    [BindProperty]
    public string? Says { get; set; }

    public string Title { get; private set; } = "";

    public string Lesson { get; private set; } = "";

    public IReadOnlyList<NoteLine> Notes { get; private set; } = [];

    public IActionResult OnGet(string module) => Show(module) ? Page() : NotFound();

    public async Task<IActionResult> OnPostAsync(string module, CancellationToken stop)
    {
        if (!Show(module))
            return NotFound();

        var noted = Noting.Note(new NoteId(Operation), new(module), Who.Person, Says?.Trim() ?? "", Who.Today);
        return await KeepAsync(noted, Operation, Paths.Module(module), "The note stands under the module.", stop);
    }

    public async Task<IActionResult> OnPostTakeBackAsync(string module, Guid note, CancellationToken stop)
    {
        if (!Show(module) || Who.Book.Notes.FirstOrDefault(one => one.Note.Value == note) is not { } noted)
            return NotFound();

        return await KeepAsync(
            Noting.TakeBack(noted, Who.Person),
            Operation,
            Paths.ModuleNotes(module),
            "The note is taken back.",
            stop
        );
    }

    private bool Show(string module)
    {
        if (library.Find(module) is not { } lesson)
            return false;

        Title = lesson.Module.Title;
        Lesson = Paths.Module(module);
        Notes = NoteLine.Of(Who.Book, lesson.Module.Name, Who.Person, Names.Of(Who.Book, clock.GetUtcNow()));
        return true;
    }
}
