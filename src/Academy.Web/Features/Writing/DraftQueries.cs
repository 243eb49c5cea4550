using System.Collections.Immutable;
using Academy.Competence;
using Academy.Modules;
using Academy.Modules.Parcels;
using Academy.Storage;
using Academy.Web.Access;
using Academy.Web.Library;

namespace Academy.Web.Features.Writing;

/// <summary>A draft as it reads.</summary>
/// <param name="Draft">What is written.</param>
/// <param name="Lesson">What it would be; null where it is broken.</param>
/// <param name="Findings">What its author should know.</param>
/// <param name="Pictures">The pictures that lie beside it.</param>
public sealed record DraftRead(
    Draft Draft,
    Lesson? Lesson,
    Listed<Finding> Findings,
    ImmutableSortedDictionary<string, ReadOnlyMemory<byte>> Pictures
)
{
    /// <summary>How many things have to be put right before it may be published.</summary>
    public int ToPutRight => Findings.Count(finding => finding.Severity > Severity.Hint);
}

/// <summary>The drafts of the salon, as whoever is signed in finds and reads them.</summary>
public sealed class DraftQueries(Who who, DraftBook drafts, Shelf shelf)
{
    // A text that means harm may take seconds to read: one at a time, and nobody reads for somebody who has gone away meanwhile.
    private static readonly SemaphoreSlim OneAtATime = new(1, 1);

    public Task<Draft?> FindAsync(string module, CancellationToken stop) => drafts.FindAsync(who.Salon, new(module), stop);

    /// <summary>Saves a draft over the one that was seen; one of which nothing was there begins.</summary>
    /// <returns>False where somebody saved, began, published or threw it away meanwhile.</returns>
    public Task<bool> SaveAsync(Draft draft) =>
        draft.Version == 0
            ? drafts.BeginAsync(who.Salon, draft, PicturesOnShelf(draft.Module))
            : drafts.SaveAsync(who.Salon, draft);

    /// <summary>The draft and how it reads, with the pictures that lie beside it.</summary>
    public async Task<DraftRead> ReadAsync(Draft draft, CancellationToken stop)
    {
        var pictures =
            draft.Version == 0 ? PicturesOnShelf(draft.Module) : await drafts.PicturesAsync(who.Salon, draft.Module, stop);
        await OneAtATime.WaitAsync(stop);
        try
        {
            var (lesson, findings) = new ModuleFiles(draft.Module.Value, draft.Text, pictures).Read();
            return new(draft, lesson, findings, pictures);
        }
        finally
        {
            OneAtATime.Release();
        }
    }

    /// <summary>The pictures that a draft of this module begins with.</summary>
    public ImmutableSortedDictionary<string, ReadOnlyMemory<byte>> PicturesOnShelf(ModuleName module) =>
        shelf.Find(module.Value) is { } lesson
            ? ModuleFiles.Of(lesson).Pictures
            : ImmutableSortedDictionary.Create<string, ReadOnlyMemory<byte>>(StringComparer.Ordinal);

    /// <summary>What a draft is called: by its own title while it can be read, otherwise as it is called here.</summary>
    public string TitleOf(DraftRead read) => read.Lesson?.Module.Title ?? TitleOf(read.Draft.Module);

    public string TitleOf(ModuleName module) => shelf.Find(module.Value)?.Module.Title ?? module.Value;
}
