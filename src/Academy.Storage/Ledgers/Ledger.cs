using System.Globalization;
using Academy.Competence;
using Academy.Competence.Facts;
using Academy.Competence.Salons;
using Academy.Storage.Projections;
using Academy.Storage.Rows;
using Microsoft.EntityFrameworkCore;

namespace Academy.Storage.Ledgers;

/// <summary>
/// Keeps what was decided. One call is one transaction: the entries, the words beside them, everything that is read instead of
/// the ledger, and the salon's version. Nothing can be kept that the trade has not granted.
/// </summary>
/// <remarks>No call takes a cancellation: a browser that goes away must not leave open whether its write was kept.</remarks>
public sealed class Ledger(AcademyDb db, BookShelf shelf)
{
    private const int GrantsAtOnce = 500;

    /// <summary>
    /// Keeps the facts, or says why not: this operation was done before, or somebody told the expected record anew in between.
    /// </summary>
    public async Task<Kept> KeepAsync(SalonId salon, Granted granted, Hand hand, OperationId operation, Expected? expected = null)
    {
        var kept = await KeepInOneGoAsync(salon, granted, hand, operation, expected);
        if (granted.Facts.Any(fact => fact is WordsErased))
            await db.LetGoAsync();
        return kept;
    }

    private Task<Kept> KeepInOneGoAsync(SalonId salon, Granted granted, Hand hand, OperationId operation, Expected? expected) =>
        db.WriteAloneAsync(async () =>
        {
            await LockAsync(salon);
            if (await DoneBeforeAsync(salon, operation) is { } before)
                return before;
            if (
                expected is not null
                && await VersionOfAsync(salon, expected.Record) is var version
                && version != expected.Version
            )
                return new Kept.RecordMovedOn(version);

            var touched = new TouchedPaths();
            var book = await WriteAsync(salon, await BookAsync(salon), [(granted, hand)], touched);
            await SaveAsync();
            await new Tallies(db, salon, book).MoveAsync(touched);
            var kept = new Kept.Done(db.Salons.Local.Single().Version);
            db.Operations.Add(Remember(salon, operation, hand, kept));
            await SaveAsync();
            return (Kept)kept;
        });

    /// <summary>Whether this operation was kept before: a form that comes twice is answered as it was the first time.</summary>
    public Task<bool> HasKeptAsync(SalonId salon, OperationId operation, CancellationToken stop) =>
        db.Operations.AsNoTracking().AnyAsync(row => row.SalonId == salon.Value && row.Id == operation.Value, stop);

    /// <summary>Keeps many grants in their order, all or none: for setting up and for moving in from elsewhere.</summary>
    public Task KeepAllAsync(SalonId salon, IReadOnlyList<(Granted Granted, Hand Hand)> batch) =>
        db.WriteAloneAsync(async () =>
        {
            await LockAsync(salon);
            var (book, touched) = (await BookAsync(salon), new TouchedPaths());
            foreach (var some in batch.Chunk(GrantsAtOnce))
            {
                book = await WriteAsync(salon, book, some, touched);
                await db.SaveManyAsync();
            }
            await new Tallies(db, salon, book).MoveAsync(touched);
            await db.SaveManyAsync();
            return batch.Count;
        });

    private Task<int> SaveAsync()
    {
        db.ChangeTracker.DetectChanges();
        return db.SaveChangesAsync();
    }

    // Where several may write at once, the salon's row is what they queue for: chain and tallies are read only behind it.
    private Task<int> LockAsync(SalonId salon) =>
        db
            .Salons.Where(row => row.Id == salon.Value)
            .ExecuteUpdateAsync(set => set.SetProperty(row => row.Version, row => row.Version));

    private async Task<Kept?> DoneBeforeAsync(SalonId salon, OperationId operation)
    {
        var done = await db
            .Operations.AsNoTracking()
            .SingleOrDefaultAsync(row => row.SalonId == salon.Value && row.Id == operation.Value);
        return done is null ? null : new Kept.AlreadyDone(long.Parse(done.Answer, CultureInfo.InvariantCulture));
    }

    private static OperationRow Remember(SalonId salon, OperationId operation, Hand hand, Kept.Done kept) =>
        new()
        {
            SalonId = salon.Value,
            Id = operation.Value,
            DoneAt = hand.Now,
            Answer = kept.Version.ToString(CultureInfo.InvariantCulture),
        };

    private Task<long> VersionOfAsync(SalonId salon, Guid record) =>
        record == salon.Value
            ? db.Salons.Where(row => row.Id == record).Select(row => row.BookVersion).SingleOrDefaultAsync()
            : db
                .RecordVersions.Where(row => row.SalonId == salon.Value && row.Record == record)
                .Select(row => row.Version)
                .SingleOrDefaultAsync();

    // Read before anything is written: a book of a transaction that is then taken back must not get onto the shelf.
    private async Task<SalonBook> BookAsync(SalonId salon) =>
        await db.Salons.AnyAsync(row => row.Id == salon.Value)
            ? await new RecordBook(db, shelf).SalonAsync(salon, CancellationToken.None)
            : new SalonBook();

    private async Task<SalonBook> WriteAsync(
        SalonId salon,
        SalonBook book,
        IReadOnlyCollection<(Granted Granted, Hand Hand)> grants,
        TouchedPaths touched
    )
    {
        var pen = new Pen(db, await SalonRowAsync(salon, grants.First().Granted));
        var projector = new Projector(db, salon, book, touched);
        await projector.LookUpAsync(grants.SelectMany(one => one.Granted.Facts));
        foreach (var (granted, hand) in grants)
        foreach (var fact in granted.Facts)
            await projector.ProjectAsync(pen.Append(fact, hand));
        return projector.Book;
    }

    private async Task<SalonRow> SalonRowAsync(SalonId salon, Granted first)
    {
        if (await db.Salons.FindAsync(salon.Value) is { } there)
            return there;
        if (first.Facts[0] is not SalonOpened)
            throw new InvalidOperationException($"There is no salon {salon.Value}: its first fact is that it opened.");
        return db.Salons.Add(new SalonRow { Id = salon.Value }).Entity;
    }
}
