using Academy.Competence;
using Academy.Competence.Facts;
using Academy.Storage.Ledgers;
using Academy.Storage.Rows;
using Microsoft.EntityFrameworkCore;

namespace Academy.Storage;

/// <summary>Which editions of modules each salon has seen, and the texts of editions: these are no salon's own.</summary>
public sealed class EditionBook(AcademyDb db)
{
    /// <summary>Every salon of this database.</summary>
    public async Task<IReadOnlyList<SalonId>> SalonsAsync(CancellationToken stop) =>
        await db.Salons.AsNoTracking().Select(row => new SalonId(row.Id)).ToListAsync(stop);

    /// <summary>The hash of the edition that the salon saw last, for each module that it ever saw.</summary>
    public async Task<IReadOnlyDictionary<ModuleName, string>> SeenAsync(SalonId salon, CancellationToken stop)
    {
        var kind = FactForms.CodeOf<ModuleEditionSeen>();
        var told = await db.Ledger.Where(row => row.SalonId == salon.Value && row.Kind == kind).ReadAsync(db, stop);
        return told.Select(one => one.Fact)
            .OfType<ModuleEditionSeen>()
            .GroupBy(seen => seen.Module)
            .ToDictionary(seen => seen.Key, seen => seen.Last().ContentHash);
    }

    /// <summary>Keeps the text of an edition; one that is kept already stays as it is.</summary>
    public Task KeepAsync(ModuleName module, string hash, Func<string> text) =>
        db.WriteAsync(async () =>
        {
            if (await Of(module, hash).AnyAsync())
                return false;
            db.EditionTexts.Add(
                new EditionTextRow
                {
                    Module = module.Value,
                    ContentHash = hash,
                    Source = text(),
                }
            );
            await db.SaveChangesAsync();
            return true;
        });

    /// <summary>The text of an edition; null where it was never kept.</summary>
    public Task<string?> TextAsync(ModuleName module, string hash, CancellationToken stop) =>
        Of(module, hash).Select(row => row.Source).SingleOrDefaultAsync(stop);

    private IQueryable<EditionTextRow> Of(ModuleName module, string hash) =>
        db.EditionTexts.AsNoTracking().Where(row => row.Module == module.Value && row.ContentHash == hash);
}
