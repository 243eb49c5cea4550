using Academy.Competence;
using Academy.Competence.Facts;
using Academy.Competence.Grooms;
using Academy.Competence.Salons;
using Academy.Storage;
using Academy.Storage.Rows;
using Academy.Web.Access;
using Academy.Web.Features.Shared;
using Microsoft.EntityFrameworkCore;

namespace Academy.Web.Features.Grooms;

/// <summary>A dog to choose.</summary>
public sealed record DogChoice(Guid Id, string Name, string Breed, string Client, string? Coat);

/// <summary>A groom of today: started, or told already.</summary>
public sealed record GroomToday(
    Guid Id,
    Guid Dog,
    string Name,
    string Breed,
    string? Coat,
    Guid By,
    Guid? Watcher,
    bool IsTold,
    DateTimeOffset StartedAt,
    DateTimeOffset? EndedAt
);

/// <summary>Lays the table for a groom, and lists the dogs that it may be about.</summary>
public sealed class GroomQueries(AcademyDb db, RecordBook book, Who who, TimeProvider clock)
{
    private const int FoundAtMost = 12;

    /// <summary>
    /// The table for a groom: with the dog it is about or, where nothing is known of it yet, with <paramref name="dog"/>. Null
    /// where there is no such dog, or the groom is somebody else's to tell.
    /// </summary>
    public async Task<Table?> LayAsync(GroomId groom, DogId? dog, CancellationToken stop)
    {
        var known = await book.GroomAsync(who.Salon, groom, stop);
        if (known is not null && TellerOf(known.Record) != who.Person.Id)
            return null;
        if ((DogOf(known?.Record) ?? dog) is not { } about || await book.DogAsync(who.Salon, about, stop) is not { } told)
            return null;

        var now = clock.GetUtcNow();
        return new Table(
            groom,
            known,
            told.Record,
            await LastOfAsync(about, groom, stop),
            await book.TeamAsync(who.Salon, now, stop),
            await book.InOnAsync(who.Salon, who.Today, stop),
            await book.NewestReadingAsync(who.Salon, now, stop),
            who.Book,
            who.Person,
            now
        );
    }

    /// <summary>The same table as it stood when a groom of another day began: standings of then, who was in then.</summary>
    public async Task<Table> AsOfAsync(Table table, DateTimeOffset startedAt, CancellationToken stop)
    {
        var day = SalonDay.Of(startedAt, who.Zone);
        return day == table.Today
            ? table
            : table with
            {
                Team = await book.TeamAsync(who.Salon, startedAt, stop),
                In = await book.InOnAsync(who.Salon, day, stop),
                Newest = await book.NewestReadingAsync(who.Salon, startedAt, stop),
                Now = startedAt,
            };
    }

    /// <summary>
    /// What was known when a groom began. Today's standings answer it where they leave no doubt; only where they do is looked up
    /// what had been recorded by then.
    /// </summary>
    public async Task<KnownThen> KnownThenAsync(Table then, Groom told, CancellationToken stop)
    {
        var known = new KnownThen(then.Dog, then.Team, then.In, then.Book.House, then.Book.Zone);
        return Flagging.IsInDoubt(told, known)
            ? known with
            {
                Dog = await book.DogAsKnownAsync(who.Salon, then.Dog.Id, told.StartedAt, stop) ?? then.Dog,
                Team = await book.TeamAsKnownAsync(who.Salon, told.StartedAt, stop),
            }
            : known;
    }

    /// <summary>Grooms started or told today, newest first.</summary>
    public async Task<IReadOnlyList<GroomToday>> TodayAsync(CancellationToken stop)
    {
        var from = SalonDay.End(who.Today.AddDays(-1), who.Zone);
        return await db
            .Grooms.AsNoTracking()
            .Where(row => row.SalonId == who.Salon.Value && row.StartedAt >= from && row.State != GroomState.Abandoned)
            .OrderByDescending(row => row.StartedAt)
            .Join(
                db.Dogs,
                row => new { row.SalonId, Id = row.Dog },
                dog => new { dog.SalonId, dog.Id },
                (row, dog) =>
                    new GroomToday(
                        row.Id,
                        dog.Id,
                        dog.Name,
                        dog.Breed,
                        dog.Coat,
                        row.By,
                        row.Watcher,
                        row.State == GroomState.Told,
                        row.StartedAt,
                        row.EndedAt
                    )
            )
            .ToListAsync(stop);
    }

    /// <summary>The first dogs by name that all these words fit.</summary>
    public async Task<IReadOnlyList<DogChoice>> FindDogsAsync(string words, CancellationToken stop)
    {
        return await DogSearchQueries
            .In(db, who.Salon, words)
            .OrderBy(row => row.Search)
            .ThenBy(row => row.Id)
            .Take(FoundAtMost)
            .Select(row => new DogChoice(row.Id, row.Name, row.Breed, row.Client, row.Coat))
            .ToListAsync(stop);
    }

    /// <summary>Everything that the ledger holds about one groom, in the order recorded.</summary>
    public Task<IReadOnlyList<Recorded>> FactsOfAsync(GroomId groom, CancellationToken stop) =>
        book.FactsAboutAsync(who.Salon, groom.Value, stop);

    /// <summary>What a dog is called; null if there is none of that id.</summary>
    public Task<string?> DogNameAsync(DogId dog, CancellationToken stop) =>
        db
            .Dogs.AsNoTracking()
            .Where(row => row.SalonId == who.Salon.Value && row.Id == dog.Value)
            .Select(row => row.Name)
            .FirstOrDefaultAsync(stop);

    private async Task<Groom?> LastOfAsync(DogId dog, GroomId but, CancellationToken stop)
    {
        var last = await db
            .Grooms.AsNoTracking()
            .Where(row =>
                row.SalonId == who.Salon.Value && row.Dog == dog.Value && row.State == GroomState.Told && row.Id != but.Value
            )
            .OrderByDescending(row => row.StartedAt)
            .Select(row => (Guid?)row.Id)
            .FirstOrDefaultAsync(stop);
        return last is { } id ? GroomStories.Of(await book.FactsAboutAsync(who.Salon, id, stop))?.Groom : null;
    }

    private static PersonId? TellerOf(GroomRecord record) => record.Story?.Groom.By ?? record.Start?.By;

    private static DogId? DogOf(GroomRecord? record) => record?.Story?.Groom.Dog ?? record?.Start?.Dog;
}
