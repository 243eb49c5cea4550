using System.Collections.Immutable;
using Academy.Competence;
using Academy.Storage.Rows;
using Microsoft.EntityFrameworkCore;

namespace Academy.Storage;

/// <summary>A module that is being written in a salon.</summary>
/// <param name="Module">Its name.</param>
/// <param name="Text">The words of its file as last saved.</param>
/// <param name="Author">Who saved it last.</param>
/// <param name="SavedAt">When.</param>
/// <param name="AskedAt">Since when somebody else is asked to read it; null while it is being written.</param>
/// <param name="Change">What changed, in the author's words.</param>
/// <param name="CatchUpBy">Where it is a safety change: the last day on which an older pass still counts.</param>
/// <param name="Returned">Who gave it back unpublished, with which words; null where nobody did.</param>
/// <param name="Version">Which save this is; 0 for one that was never saved.</param>
public sealed record Draft(
    ModuleName Module,
    string Text,
    PersonId Author,
    DateTimeOffset SavedAt,
    DateTimeOffset? AskedAt,
    string Change,
    DateOnly? CatchUpBy,
    Returned? Returned,
    long Version
);

/// <summary>A draft that was given back.</summary>
public sealed record Returned(PersonId By, string Says);

/// <summary>A draft in a list.</summary>
/// <param name="IsReturned">Whether somebody gave it back and it was not asked for again.</param>
public sealed record DraftLine(
    ModuleName Module,
    PersonId Author,
    DateTimeOffset SavedAt,
    DateTimeOffset? AskedAt,
    bool IsReturned = false
);

/// <summary>
/// Modules that are being written. They are work in progress and not facts: nothing rests on them until they are published, and
/// what is thrown away is gone.
/// </summary>
public sealed class DraftBook(AcademyDb db)
{
    /// <summary>Everything that is being written in a salon, by name.</summary>
    public async Task<IReadOnlyList<DraftLine>> AllAsync(SalonId salon, CancellationToken stop) =>
        await db
            .Drafts.AsNoTracking()
            .Where(row => row.SalonId == salon.Value)
            .OrderBy(row => row.Module)
            .Select(row => new DraftLine(new(row.Module), new(row.Author), row.SavedAt, row.AskedAt, row.ReturnedBy != null))
            .ToListAsync(stop);

    /// <summary>The draft of a module; null where nobody is writing it.</summary>
    public async Task<Draft?> FindAsync(SalonId salon, ModuleName module, CancellationToken stop) =>
        await Of(salon, module).AsNoTracking().SingleOrDefaultAsync(stop) is { } row ? Read(row) : null;

    /// <summary>The pictures of a draft by file name.</summary>
    public async Task<ImmutableSortedDictionary<string, ReadOnlyMemory<byte>>> PicturesAsync(
        SalonId salon,
        ModuleName module,
        CancellationToken stop
    )
    {
        var rows = await PicturesOf(salon, module).AsNoTracking().ToListAsync(stop);
        return rows.ToImmutableSortedDictionary(row => row.File, row => (ReadOnlyMemory<byte>)row.Bytes, StringComparer.Ordinal);
    }

    /// <summary>Begins a draft with its pictures; one that is there already stays as it is.</summary>
    /// <returns>False where somebody is writing it already.</returns>
    public Task<bool> BeginAsync(SalonId salon, Draft draft, IReadOnlyDictionary<string, ReadOnlyMemory<byte>> pictures) =>
        db.WriteAsync(async () =>
        {
            if (await Of(salon, draft.Module).AnyAsync())
                return false;
            db.Drafts.Add(Write(new DraftRow { SalonId = salon.Value, Module = draft.Module.Value }, draft, version: 1));
            db.DraftPictures.AddRange(pictures.Select(picture => RowOf(salon, draft.Module, picture.Key, picture.Value)));
            await db.SaveChangesAsync();
            return true;
        });

    /// <summary>Saves a draft over the version that its author saw.</summary>
    /// <returns>False where somebody saved, published or threw it away meanwhile: nothing is changed then.</returns>
    public Task<bool> SaveAsync(SalonId salon, Draft draft) =>
        db.WriteAsync(async () =>
        {
            if (await Of(salon, draft.Module).SingleOrDefaultAsync() is not { } row || row.Version != draft.Version)
                return false;
            Write(row, draft, draft.Version + 1);
            await db.SaveChangesAsync();
            return true;
        });

    /// <summary>Puts a picture into a draft, in place of an earlier one of that name.</summary>
    /// <returns>False where there is no such draft.</returns>
    public Task<bool> PutPictureAsync(SalonId salon, ModuleName module, string file, ReadOnlyMemory<byte> bytes) =>
        db.WriteAsync(async () =>
        {
            if (!await Of(salon, module).AnyAsync())
                return false;
            await PicturesOf(salon, module).Where(row => row.File == file).ExecuteDeleteAsync();
            db.DraftPictures.Add(RowOf(salon, module, file, bytes));
            await db.SaveChangesAsync();
            return true;
        });

    /// <summary>Takes a picture out of a draft; one that is not there is no harm.</summary>
    public Task TakePictureAsync(SalonId salon, ModuleName module, string file) =>
        db.WriteAsync(() => PicturesOf(salon, module).Where(row => row.File == file).ExecuteDeleteAsync());

    /// <summary>Throws a draft away in the version that was seen: it was published, or is not wanted.</summary>
    /// <returns>False where it is gone, or somebody saved it meanwhile: then it stays.</returns>
    public Task<bool> EndAsync(SalonId salon, ModuleName module, long version) =>
        db.WriteAsync(async () =>
        {
            if (await Of(salon, module).Where(row => row.Version == version).ExecuteDeleteAsync() == 0)
                return false;
            await PicturesOf(salon, module).ExecuteDeleteAsync();
            return true;
        });

    private IQueryable<DraftRow> Of(SalonId salon, ModuleName module) =>
        db.Drafts.Where(row => row.SalonId == salon.Value && row.Module == module.Value);

    private IQueryable<DraftPictureRow> PicturesOf(SalonId salon, ModuleName module) =>
        db.DraftPictures.Where(row => row.SalonId == salon.Value && row.Module == module.Value);

    private static DraftPictureRow RowOf(SalonId salon, ModuleName module, string file, ReadOnlyMemory<byte> bytes) =>
        new()
        {
            SalonId = salon.Value,
            Module = module.Value,
            File = file,
            Bytes = bytes.ToArray(),
        };

    private static DraftRow Write(DraftRow row, Draft draft, long version)
    {
        row.Text = draft.Text;
        row.Author = draft.Author.Value;
        row.SavedAt = draft.SavedAt;
        row.AskedAt = draft.AskedAt;
        row.Change = draft.Change;
        row.CatchUpBy = draft.CatchUpBy;
        row.ReturnedBy = draft.Returned?.By.Value;
        row.Returned = draft.Returned?.Says ?? "";
        row.Version = version;
        return row;
    }

    private static Draft Read(DraftRow row) =>
        new(
            new(row.Module),
            row.Text,
            new(row.Author),
            row.SavedAt,
            row.AskedAt,
            row.Change,
            row.CatchUpBy,
            row.ReturnedBy is { } by ? new Returned(new(by), row.Returned) : null,
            row.Version
        );
}
