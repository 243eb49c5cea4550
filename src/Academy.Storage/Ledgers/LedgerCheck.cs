using System.Text.Json.Nodes;
using Academy.Storage.Rows;
using Microsoft.EntityFrameworkCore;

namespace Academy.Storage.Ledgers;

/// <summary>
/// Walks a salon's ledger in order and stops at the first thing that is not as it was written. It believes nothing but the
/// canonical texts: numbers, hashes, columns and words are all worked out again.
/// </summary>
public sealed class LedgerCheck(AcademyDb db)
{
    private const int Stretch = 1000;

    public async Task<IReadOnlyList<LedgerChecked>> CheckAllAsync(CancellationToken stop)
    {
        var salons = await db.Salons.Select(salon => salon.Id).Union(db.Ledger.Select(entry => entry.SalonId)).ToArrayAsync(stop);
        var found = new List<LedgerChecked>();
        foreach (var salon in salons)
            found.Add(await CheckAsync(salon, stop));
        return found;
    }

    public async Task<LedgerChecked> CheckAsync(Guid salon, CancellationToken stop)
    {
        var walk = new Walk();
        while (walk.First is null)
        {
            var rows = await StretchAsync(salon, walk.Entries, stop);
            if (rows.Length == 0)
                break;
            walk.Over(rows, await WordsAsync(salon, rows, stop));
        }
        if (walk.First is null)
            walk.EndAt(await db.Salons.AsNoTracking().SingleOrDefaultAsync(one => one.Id == salon, stop));
        return new LedgerChecked(salon, walk.Entries, walk.Words, walk.Erased, walk.First);
    }

    private Task<LedgerRow[]> StretchAsync(Guid salon, long from, CancellationToken stop) =>
        db
            .Ledger.AsNoTracking()
            .Where(row => row.SalonId == salon && row.Seq >= from)
            .OrderBy(row => row.Seq)
            .Take(Stretch)
            .ToArrayAsync(stop);

    private async Task<ILookup<Guid, WordsRow>> WordsAsync(Guid salon, LedgerRow[] rows, CancellationToken stop)
    {
        var (first, last) = (rows[0].Seq, rows[^1].Seq);
        var facts = db.Ledger.Where(row => row.SalonId == salon && row.Seq >= first && row.Seq <= last).Select(row => row.FactId);
        var words = await db
            .Words.AsNoTracking()
            .Where(row => row.SalonId == salon && facts.Contains(row.FactId))
            .ToArrayAsync(stop);
        return words.ToLookup(row => row.FactId);
    }

    private sealed class Walk
    {
        private byte[] _head = Chain.Genesis;

        public long Entries { get; private set; }

        public long Words { get; private set; }

        public long Erased { get; private set; }

        public LedgerFault? First { get; private set; }

        public void Over(IEnumerable<LedgerRow> rows, ILookup<Guid, WordsRow> words)
        {
            foreach (var row in rows)
            {
                First = FaultOf(row) ?? FaultOf(row, words[row.FactId]);
                if (First is not null)
                    return;
                _head = row.Hash;
                Entries++;
            }
        }

        public void EndAt(SalonRow? salon)
        {
            if (salon is null || salon.Version != Entries || !salon.Head.AsSpan().SequenceEqual(_head))
                First = new LedgerFault(Entries, LedgerFaultKind.TailMissing);
        }

        private LedgerFault? FaultOf(LedgerRow row)
        {
            if (row.Seq != Entries)
                return new LedgerFault(Entries, LedgerFaultKind.EntryMissing);
            if (!row.PrevHash.AsSpan().SequenceEqual(_head))
                return new LedgerFault(row.Seq, LedgerFaultKind.ChainBroken);
            if (!row.Hash.AsSpan().SequenceEqual(Chain.Next(_head, row.Canonical)))
                return new LedgerFault(row.Seq, LedgerFaultKind.EntryAltered);
            return Entry.Read(row.Canonical).Matches(row) ? null : new LedgerFault(row.Seq, LedgerFaultKind.ColumnsAltered);
        }

        private LedgerFault? FaultOf(LedgerRow row, IEnumerable<WordsRow> words)
        {
            var beside = words.ToDictionary(one => one.Path, StringComparer.Ordinal);
            var seals = Entry.Read(row.Canonical).Seals;
            foreach (var (path, seal) in seals)
            {
                if (!beside.Remove(path, out var kept))
                    return new LedgerFault(row.Seq, LedgerFaultKind.WordsMissing, path);
                if (!Holds(kept, seal!))
                    return new LedgerFault(row.Seq, LedgerFaultKind.WordsAltered, path);
            }
            return beside.Count == 0 ? null : new LedgerFault(row.Seq, LedgerFaultKind.WordsAltered, beside.Keys.First());
        }

        private bool Holds(WordsRow kept, JsonNode seal)
        {
            Words++;
            if (kept is not { Text: { } text, Key: { } key })
            {
                Erased++;
                return kept.Text is null && kept.Key is null;
            }
            return Chain.Seal(key, text) == seal.GetValue<string>();
        }
    }
}
