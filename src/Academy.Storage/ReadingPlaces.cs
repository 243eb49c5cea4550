using Academy.Competence;
using Academy.Storage.Rows;
using Microsoft.EntityFrameworkCore;

namespace Academy.Storage;

/// <summary>Where somebody stopped reading a module.</summary>
/// <param name="Module">The module.</param>
/// <param name="Part">The part of its page, by the id of its heading.</param>
/// <param name="At">When.</param>
public sealed record ReadingPlace(ModuleName Module, string Part, DateTimeOffset At);

/// <summary>
/// The place in each module at which a person stopped reading, so that another device goes on there. It is a bookmark and no fact:
/// nothing rests on it, nobody else sees it, and the newest is all there is.
/// </summary>
public sealed class ReadingPlaces(AcademyDb db)
{
    /// <summary>A person's places, the newest first.</summary>
    public async Task<IReadOnlyList<ReadingPlace>> OfAsync(SalonId salon, PersonId person, CancellationToken stop)
    {
        var places = await Rows(salon, person)
            .AsNoTracking()
            .Select(row => new ReadingPlace(new(row.Module), row.Part, row.At))
            .ToListAsync(stop);
        return [.. places.OrderByDescending(place => place.At)];
    }

    /// <summary>A person's place in a module; null where she has none.</summary>
    public Task<ReadingPlace?> FindAsync(SalonId salon, PersonId person, ModuleName module, CancellationToken stop) =>
        Rows(salon, person)
            .AsNoTracking()
            .Where(row => row.Module == module.Value)
            .Select(row => new ReadingPlace(new(row.Module), row.Part, row.At))
            .SingleOrDefaultAsync(stop);

    /// <summary>Keeps a place; one that was kept later already stays.</summary>
    public Task KeepAsync(SalonId salon, PersonId person, ReadingPlace place) =>
        db.WriteAsync(async () =>
        {
            var row = await Rows(salon, person).SingleOrDefaultAsync(row => row.Module == place.Module.Value);
            if (row is null)
                db.ReadingPlaces.Add(
                    row = new ReadingPlaceRow
                    {
                        SalonId = salon.Value,
                        Person = person.Value,
                        Module = place.Module.Value,
                    }
                );
            if (row.At <= place.At)
                (row.Part, row.At) = (place.Part, place.At);
            return await db.SaveChangesAsync();
        });

    private IQueryable<ReadingPlaceRow> Rows(SalonId salon, PersonId person) =>
        db.ReadingPlaces.Where(row => row.SalonId == salon.Value && row.Person == person.Value);
}
