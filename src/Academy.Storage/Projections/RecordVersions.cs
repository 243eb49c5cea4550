using Academy.Competence;
using Academy.Competence.Facts;
using Academy.Storage.Ledgers;
using Academy.Storage.Rows;

namespace Academy.Storage.Projections;

/// <summary>How often each groom, dog and person was told something about: what a stale form is noticed by.</summary>
internal sealed class RecordVersions(AcademyDb db, SalonId salon)
{
    /// <summary>Whether nothing was ever told about the fact's record before: then there is nothing to look up either.</summary>
    public async Task<bool> RaiseAsync(Fact fact)
    {
        if (FactForms.Of(fact).SubjectOf(fact) is not { } record)
            return false;
        if (await db.RecordVersions.FindAsync(salon.Value, record) is { } row)
            row.Version++;
        else
            row = db
                .RecordVersions.Add(
                    new RecordVersionRow
                    {
                        SalonId = salon.Value,
                        Record = record,
                        Version = 1,
                    }
                )
                .Entity;
        return row.Version == 1;
    }
}
