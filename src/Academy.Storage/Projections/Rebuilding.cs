using Academy.Competence;
using Academy.Competence.Facts;
using Academy.Competence.Salons;
using Microsoft.EntityFrameworkCore;

namespace Academy.Storage.Projections;

/// <summary>Writes everything that is read instead of the ledger anew, from the ledger. It changes no fact and loses none.</summary>
public sealed class Rebuilding(AcademyDb db)
{
    private const int Stretch = 1000;

    /// <summary>How many facts were carried over again.</summary>
    public Task<long> RebuildAsync(SalonId salon, DateTimeOffset now) =>
        db.WriteAloneAsync(async () =>
        {
            await ClearAsync(salon);
            return await CarryOverAsync(salon, now);
        });

    private async Task<long> CarryOverAsync(SalonId salon, DateTimeOffset now)
    {
        var (book, touched, next) = (new SalonBook(), new TouchedPaths(), 0L);
        while (await StretchAsync(salon, next) is { Count: > 0 } facts)
        {
            var projector = new Projector(db, salon, book, touched);
            await projector.LookUpAsync(facts.Select(told => told.Fact));
            foreach (var told in facts)
                await projector.ProjectAsync(told);
            await db.SaveManyAsync();
            (book, next) = (projector.Book, facts[^1].Seq + 1);
        }
        touched.RefoldAll(now);
        await new Tallies(db, salon, book).MoveAsync(touched);
        await db.SaveManyAsync();
        return next;
    }

    private Task<IReadOnlyList<Recorded>> StretchAsync(SalonId salon, long from) =>
        db
            .Ledger.Where(row => row.SalonId == salon.Value && row.Seq >= from && row.Seq < from + Stretch)
            .ReadAsync(db, CancellationToken.None);

    private async Task ClearAsync(SalonId salon)
    {
        await db.RecordVersions.Where(row => row.SalonId == salon.Value).ExecuteDeleteAsync();
        await db.Dogs.Where(row => row.SalonId == salon.Value).ExecuteDeleteAsync();
        await db.Grooms.Where(row => row.SalonId == salon.Value).ExecuteDeleteAsync();
        await db.GroomDoers.Where(row => row.SalonId == salon.Value).ExecuteDeleteAsync();
        await db.Incidents.Where(row => row.SalonId == salon.Value).ExecuteDeleteAsync();
        await db.Disputes.Where(row => row.SalonId == salon.Value).ExecuteDeleteAsync();
        await db.Flags.Where(row => row.SalonId == salon.Value).ExecuteDeleteAsync();
        await db.Presences.Where(row => row.SalonId == salon.Value).ExecuteDeleteAsync();
        await db.Readings.Where(row => row.SalonId == salon.Value).ExecuteDeleteAsync();
        await db.Attempts.Where(row => row.SalonId == salon.Value).ExecuteDeleteAsync();
        await db.Steps.Where(row => row.SalonId == salon.Value).ExecuteDeleteAsync();
        await db.Tallies.Where(row => row.SalonId == salon.Value).ExecuteDeleteAsync();
    }
}
