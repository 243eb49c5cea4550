using Academy.Competence;
using Microsoft.EntityFrameworkCore;

namespace Academy.Storage.Projections;

/// <summary>Brings tallies that an earlier version wrote in another form into today's, by folding their paths again.</summary>
public sealed class Refolding(AcademyDb db)
{
    /// <summary>How many there were. Asked when the portal starts, so that no page folds one that nobody touches any more.</summary>
    public async Task<int> RefoldOldFormsAsync(DateTimeOffset now, CancellationToken stop)
    {
        var (shelf, old) = (new BookShelf(), await OldFormsAsync(stop));
        foreach (var salon in old)
        {
            var book = await new RecordBook(db, shelf).SalonAsync(salon.Key, stop);
            var touched = new TouchedPaths();
            foreach (var (_, person, skill) in salon)
                touched.Of(person, skill, now).Refold();
            await db.WriteAloneAsync(async () =>
            {
                await new Tallies(db, salon.Key, book).MoveAsync(touched);
                await db.SaveManyAsync();
                return true;
            });
        }
        return old.Sum(salon => salon.Count());
    }

    private async Task<List<IGrouping<SalonId, (SalonId Salon, PersonId Person, SkillCode Skill)>>> OldFormsAsync(
        CancellationToken stop
    )
    {
        var old = new List<(SalonId Salon, PersonId Person, SkillCode Skill)>();
        await foreach (var row in db.Tallies.AsNoTracking().AsAsyncEnumerable().WithCancellation(stop))
            if (!TallyForm.IsNewest(row.Tally))
                old.Add((new(row.SalonId), new(row.Person), new(row.Skill)));
        return [.. old.GroupBy(one => one.Salon)];
    }
}
