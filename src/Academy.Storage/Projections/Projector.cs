using Academy.Competence;
using Academy.Competence.Facts;
using Academy.Competence.Salons;

namespace Academy.Storage.Projections;

/// <summary>
/// Carries each fact, in the order of the ledger, into everything that is read instead of the ledger. The same code runs when a
/// fact is kept and when the tables are written anew from the ledger, so both give the same rows.
/// </summary>
internal sealed class Projector(AcademyDb db, SalonId salon, SalonBook book, TouchedPaths touched)
{
    private readonly RecordVersions _versions = new(db, salon);
    private readonly Lists _lists = new(db, salon);
    private readonly PathSteps _steps = new(db, salon, touched);

    /// <summary>The salon's book after the facts so far.</summary>
    public SalonBook Book { get; private set; } = book;

    /// <summary>Asks at once what is already known of the records of these facts, which are then to be projected.</summary>
    public Task LookUpAsync(IEnumerable<Fact> facts) => _versions.LookUpAsync(facts);

    public async Task ProjectAsync(Recorded told)
    {
        Book = Book.After(told.Fact, told.RecordedAt);
        var isNew = _versions.Raise(told.Fact);
        await _lists.ProjectAsync(told, isNew);
        await _steps.ProjectAsync(told, Book, isNew);
    }
}
