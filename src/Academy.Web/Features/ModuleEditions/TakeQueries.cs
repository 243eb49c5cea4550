using Academy.Competence;
using Academy.Modules;
using Academy.Storage;
using Academy.Web.Access;
using Academy.Web.Library;

namespace Academy.Web.Features.ModuleEditions;

/// <summary>The library's edition beside the salon's own, and where it is laid down on its way.</summary>
public sealed class TakeQueries(Who who, EditionQueries history, EditionBook kept, DraftBook drafts, Shelf shelf)
{
    /// <summary>Null where the salon has no edition of its own, or the library has none.</summary>
    public async Task<Taking?> FindAsync(string module, CancellationToken stop) =>
        shelf.FindInLibrary(module) is { } librarys && shelf.Own.GetValueOrDefault(module) is { } own
            ? new Taking(librarys, own, await history.HistoryAsync(module, stop), who.Book, who.Person, who.Today)
            : null;

    /// <summary>Keeps the text before the ledger names it.</summary>
    public Task KeepAsync(Lesson written) =>
        kept.KeepAsync(written.Module.Name, written.Module.Hash, () => KeptEdition.Of(written));

    /// <summary>Begins the draft; false where somebody is writing the module already, in other words.</summary>
    public async Task<bool> BeginAsync(Draft draft, Taking taking, CancellationToken stop) =>
        await drafts.BeginAsync(who.Salon, draft, taking.Pictures)
        || (await drafts.FindAsync(who.Salon, draft.Module, stop))?.Text == draft.Text;
}
