using System.Security.Cryptography;
using System.Text.Json.Nodes;
using Academy.Competence;
using Academy.Competence.Facts;
using Academy.Storage.Rows;

namespace Academy.Storage.Ledgers;

/// <summary>Writes entries at the end of one salon's chain. Held by one writer at a time, inside its transaction.</summary>
internal sealed class Pen(AcademyDb db, SalonRow salon)
{
    public Recorded Append(Fact fact, Hand hand)
    {
        var spoken = FactForms.Write(fact);
        var keys = spoken.Words.ToDictionary(words => words.Key, _ => NewKey(), StringComparer.Ordinal);
        var entry = Entry(fact, hand, spoken.Data, SealsOf(spoken, keys));
        var row = entry.After(salon.Head, salon.Id);
        db.Ledger.Add(row);
        db.Words.AddRange(spoken.Words.Select(words => Beside(entry.FactId, words.Key, words.Value, keys[words.Key])));
        salon.Head = row.Hash;
        salon.Version++;
        if (FactForms.IsOfTheBook(fact))
            salon.BookVersion = salon.Version;
        return new Recorded(fact, hand.Person, hand.Now, entry.Seq);
    }

    private Entry Entry(Fact fact, Hand hand, JsonObject data, JsonObject seals)
    {
        var form = FactForms.Of(fact);
        return new Entry(
            salon.Version,
            FactIds.Of(new SalonId(salon.Id), salon.Version),
            form.Code,
            form.SubjectOf(fact),
            fact.HappenedAt ?? hand.Now,
            hand.Now,
            hand.Person?.Value.ToString() ?? Ledgers.Entry.Portal,
            Said(hand.Device),
            Said(hand.Assurance),
            seals,
            data
        );
    }

    private static string? Said(string text) => text.Length == 0 ? null : text;

    private static JsonObject SealsOf(Spoken spoken, Dictionary<string, byte[]> keys) =>
        new(
            spoken.Words.Select(words =>
                KeyValuePair.Create<string, JsonNode?>(words.Key, Chain.Seal(keys[words.Key], words.Value))
            )
        );

    private WordsRow Beside(Guid fact, string path, string text, byte[] key) =>
        new()
        {
            SalonId = salon.Id,
            FactId = fact,
            Path = path,
            Text = text,
            Key = key,
        };

    // A secret, not a chance that anything is decided by: it must not be known beforehand nor made again.
    private static byte[] NewKey() => RandomNumberGenerator.GetBytes(Chain.HashBytes);
}
