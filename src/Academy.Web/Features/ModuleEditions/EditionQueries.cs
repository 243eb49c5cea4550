using Academy.Competence;
using Academy.Competence.Quizzes;
using Academy.Modules;
using Academy.Modules.Parcels;
using Academy.Storage;
using Academy.Web.Access;
using Academy.Web.Library;

namespace Academy.Web.Features.ModuleEditions;

/// <summary>The editions of a module that this salon may look at: those it studied, the library's, and its draft.</summary>
public sealed class EditionQueries(Who who, EditionBook editions, DraftBook drafts, Shelf shelf)
{
    public Task<EditionHistory> HistoryAsync(string module, CancellationToken stop) =>
        editions.HistoryAsync(who.Salon, new ModuleName(module), stop);

    public Task<Draft?> DraftAsync(string module, CancellationToken stop) =>
        drafts.FindAsync(who.Salon, new ModuleName(module), stop);

    /// <summary>The files of the draft; null where nobody is writing the module.</summary>
    public async Task<ModuleFiles?> DraftFilesAsync(string module, CancellationToken stop) =>
        await DraftAsync(module, stop) is { } draft
            ? new ModuleFiles(module, draft.Text, await drafts.PicturesAsync(who.Salon, draft.Module, stop))
            : null;

    /// <summary>The files of an edition by its fingerprint; null where it is none of this salon's and not the library's.</summary>
    /// <remarks>Texts belong to no salon, so a fingerprint alone opens none: it has to stand in this salon's ledger.</remarks>
    public async Task<ModuleFiles?> FilesAsync(EditionHistory history, string hash, CancellationToken stop) =>
        shelf.FindInLibrary(history.Module.Value) is { } lesson && lesson.Module.Hash == hash ? ModuleFiles.Of(lesson)
        : history.Find(hash) is not null && await editions.TextAsync(history.Module, hash, stop) is { } kept
            ? KeptEdition.Files(history.Module, kept)
        : null;
}
