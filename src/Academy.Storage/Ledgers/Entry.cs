using System.Text.Json.Nodes;
using Academy.Storage.Rows;

namespace Academy.Storage.Ledgers;

/// <summary>
/// What is hashed of one fact: ids, codes and numbers, and the seals of the words kept beside it. Nobody's name and nothing
/// that anybody typed.
/// </summary>
public sealed record Entry(
    long Seq,
    Guid FactId,
    string Kind,
    Guid? Subject,
    DateTimeOffset At,
    DateTimeOffset RecordedAt,
    string Actor,
    string? Device,
    string? Assurance,
    JsonObject Seals,
    JsonObject Data
)
{
    /// <summary>Who acts where nobody does: the portal itself.</summary>
    public const string Portal = "portal";

    private const int Form = 1;

    public string Canonical()
    {
        var entry = new JsonObject
        {
            ["v"] = Form,
            ["seq"] = Seq,
            ["id"] = FactId.ToString(),
            ["type"] = Kind,
            ["at"] = Moments.Write(At),
            ["recordedAt"] = Moments.Write(RecordedAt),
            ["actor"] = Actor,
            ["data"] = Data.DeepClone(),
        };
        if (Subject is { } subject)
            entry["subject"] = subject.ToString();
        if (Device is not null)
            entry["device"] = Device;
        if (Assurance is not null)
            entry["assurance"] = Assurance;
        if (Seals.Count > 0)
            entry["words"] = Seals.DeepClone();
        return CanonicalJson.Of(entry);
    }

    public static Entry Read(string canonical)
    {
        var entry = CanonicalJson.Parse(canonical)!.AsObject();
        if (entry["v"]!.GetValue<int>() != Form)
            throw new FormatException($"A ledger entry of the form {entry["v"]} cannot be read by this version.");
        return new Entry(
            entry["seq"]!.GetValue<long>(),
            entry["id"]!.GetValue<Guid>(),
            entry["type"]!.GetValue<string>(),
            entry["subject"]?.GetValue<Guid>(),
            Moments.Read(entry["at"]!.GetValue<string>()),
            Moments.Read(entry["recordedAt"]!.GetValue<string>()),
            entry["actor"]!.GetValue<string>(),
            entry["device"]?.GetValue<string>(),
            entry["assurance"]?.GetValue<string>(),
            entry["words"]?.AsObject() ?? [],
            entry["data"]!.AsObject()
        );
    }

    /// <summary>The row that stands after one with this hash.</summary>
    public LedgerRow After(byte[] before, Guid salon)
    {
        var canonical = Canonical();
        return new LedgerRow
        {
            SalonId = salon,
            Seq = Seq,
            FactId = FactId,
            Kind = Kind,
            Subject = Subject,
            At = At,
            RecordedAt = RecordedAt,
            Actor = Actor,
            Device = Device,
            Canonical = canonical,
            PrevHash = before,
            Hash = Chain.Next(before, canonical),
        };
    }

    /// <summary>Whether the row's columns say what its canonical text says.</summary>
    public bool Matches(LedgerRow row) =>
        (row.Seq, row.FactId, row.Kind, row.Subject, row.At, row.RecordedAt, row.Actor, row.Device)
        == (Seq, FactId, Kind, Subject, At, RecordedAt, Actor, Device);
}
