using Academy.Competence;
using Academy.Competence.People;
using Academy.Competence.Salons;
using Academy.Storage;
using Academy.Web.Access;

namespace Academy.Web.Features.SignIn;

/// <summary>What the cover says of the salon of this installation.</summary>
public sealed class SignInQueries(FirstRun first, RecordBook records, TimeProvider clock)
{
    public async Task<SalonBook> BookAsync(CancellationToken stop) =>
        await first.SalonAsync(stop) is { } salon ? Here(await records.SalonAsync(salon, stop)) : new SalonBook();

    public async Task<(SalonId Salon, Person Person)?> PersonAsync(PersonId person, CancellationToken stop) =>
        await first.SalonAsync(stop) is { } salon && (await BookAsync(stop)).Find(person) is { } found ? (salon, found) : null;

    private SalonBook Here(SalonBook book)
    {
        var today = SalonDay.Of(clock.GetUtcNow(), book.Zone);
        return book with { People = book.People.Where(person => person.WorksOn(today)).ToListed() };
    }
}
