using Academy.Competence;
using Academy.Storage;
using Academy.Storage.Ledgers;
using Academy.Storage.Projections;
using Microsoft.EntityFrameworkCore;

namespace Academy.Web.Features.Ledgers;

/// <summary>Reads all of a salon's records, to compare them with each other.</summary>
public sealed class NightQueries(AcademyDb db)
{
    public async Task<IReadOnlyList<SalonId>> SalonsAsync(CancellationToken stop) =>
        await db.Salons.AsNoTracking().OrderBy(row => row.Id).Select(row => new SalonId(row.Id)).ToListAsync(stop);

    public async Task<(LedgerChecked Ledger, StandingsChecked Standings)> CheckAsync(SalonId salon, CancellationToken stop) =>
        (await new LedgerCheck(db).CheckAsync(salon.Value, stop), await new StandingsCheck(db).CheckAsync(salon, stop));
}
