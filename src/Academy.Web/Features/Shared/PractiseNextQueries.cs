using Academy.Competence;
using Academy.Competence.Grooms;
using Academy.Storage;
using Academy.Web.Wording;
using Microsoft.EntityFrameworkCore;

namespace Academy.Web.Features.Shared;

/// <summary>The newest sign-offs of one person, for whoever shows what she practises next.</summary>
public sealed class PractiseNextQueries(AcademyDb db, RecordBook records)
{
    /// <summary>The newest first; as many as asked, or fewer.</summary>
    public async Task<IReadOnlyList<PractiseNext>> OfAsync(
        SalonId salon,
        PersonId person,
        int count,
        Names names,
        CancellationToken stop
    )
    {
        var signed = await db
            .GroomDoers.AsNoTracking()
            .Where(row => row.SalonId == salon.Value && row.Person == person.Value && row.SignOff != null)
            .OrderByDescending(row => row.SignedAt)
            .Take(count)
            .Join(
                db.Grooms,
                row => new { row.SalonId, Id = row.Groom },
                groom => new { groom.SalonId, groom.Id },
                (row, groom) => new { row, groom }
            )
            .Select(both => new
            {
                both.row.Groom,
                both.row.SignedAt,
                Dog = db.Dogs.Where(dog => dog.SalonId == both.row.SalonId && dog.Id == both.groom.Dog)
                    .Select(dog => dog.Name)
                    .FirstOrDefault()
                    ?? both.groom.Breed,
            })
            .ToListAsync(stop);
        var stories = await records.StoriesAsync(salon, [.. signed.Select(one => new GroomId(one.Groom))], stop);
        return
        [
            .. from one in signed
            orderby one.SignedAt descending
            let story = stories[new GroomId(one.Groom)]
            select PractiseNext.Of(story.SignOffOf(person)!, story, one.Dog, names),
        ];
    }
}
