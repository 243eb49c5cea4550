using Academy.Competence;
using Academy.Competence.Facts;
using Academy.Storage.Ledgers;
using Academy.Storage.Rows;

namespace Academy.Storage.Projections;

/// <summary>How often each groom, dog and person was told something about: what a stale form is noticed by.</summary>
internal sealed class RecordVersions(AcademyDb db, SalonId salon)
{
    public async Task RaiseAsync(Fact fact)
    {
        if (FactForms.Of(fact).SubjectOf(fact) is not { } record)
            return;
        var row =
            await db.RecordVersions.FindAsync(salon.Value, record)
            ?? db.RecordVersions.Add(new RecordVersionRow { SalonId = salon.Value, Record = record }).Entity;
        row.Version++;
    }
}
