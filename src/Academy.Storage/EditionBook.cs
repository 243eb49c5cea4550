using Academy.Competence;
using Academy.Competence.Facts;
using Academy.Competence.Quizzes;
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
        var told = await ToldAsync(salon, FactForms.CodeOf<ModuleEditionSeen>(), stop);
        return told.Select(one => one.Fact)
            .OfType<ModuleEditionSeen>()
            .GroupBy(seen => seen.Module)
            .ToDictionary(seen => seen.Key, seen => seen.Last().ContentHash);
    }

    /// <summary>Every edition of a module that the salon studied, the newest in force.</summary>
    public async Task<EditionHistory> HistoryAsync(SalonId salon, ModuleName module, CancellationToken stop)
    {
        var seen = await ToldAsync(salon, FactForms.CodeOf<ModuleEditionSeen>(), stop);
        var published = await ToldAsync(salon, FactForms.CodeOf<ModulePublished>(), stop);
        return EditionHistory.Of(seen.Concat(published).OrderBy(told => told.Seq), module);
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

    private Task<IReadOnlyList<Recorded>> ToldAsync(SalonId salon, string kind, CancellationToken stop) =>
        db.Ledger.Where(row => row.SalonId == salon.Value && row.Kind == kind).ReadAsync(db, stop);

    private IQueryable<EditionTextRow> Of(ModuleName module, string hash) =>
        db.EditionTexts.AsNoTracking().Where(row => row.Module == module.Value && row.ContentHash == hash);
}
