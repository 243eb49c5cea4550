using Academy.Competence;
using Academy.Competence.Facts;
using Academy.Storage.Ledgers;
using Academy.Storage.Rows;
using Microsoft.EntityFrameworkCore;

namespace Academy.Storage.Projections;

/// <summary>How often each groom, dog and person was told something about: what a stale form is noticed by.</summary>
internal sealed class RecordVersions(AcademyDb db, SalonId salon)
{
    private readonly Dictionary<Guid, RecordVersionRow> _known = [];

    /// <summary>Reads what is known of the records of these facts; none is raised that was not looked up.</summary>
    public async Task LookUpAsync(IEnumerable<Fact> facts)
    {
        var records = facts.Select(RecordOf).OfType<Guid>().ToHashSet();
        if (records.Count == 0)
            return;
        var rows = db.RecordVersions.Where(row => row.SalonId == salon.Value && records.Contains(row.Record));
        foreach (var row in await rows.ToListAsync())
            _known.Add(row.Record, row);
    }

    /// <summary>Whether nothing was ever told about the fact's record before: then there is nothing else to look up either.</summary>
    public bool Raise(Fact fact)
    {
        if (RecordOf(fact) is not { } record)
            return false;
        if (!_known.TryGetValue(record, out var row))
            _known.Add(record, row = NewRow(record));
        return ++row.Version == 1;
    }

    private static Guid? RecordOf(Fact fact) => FactForms.Of(fact).SubjectOf(fact);

    private RecordVersionRow NewRow(Guid record) =>
        db.RecordVersions.Add(new RecordVersionRow { SalonId = salon.Value, Record = record }).Entity;
}
