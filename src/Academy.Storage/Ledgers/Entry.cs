using System.Globalization;
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
    DateTimeOffset At,
    DateTimeOffset RecordedAt,
    string Actor,
    string? Device,
    JsonObject Seals,
    JsonObject Data
)
{
    private const int Form = 1;

    public string Canonical()
    {
        var entry = new JsonObject
        {
            ["v"] = Form,
            ["seq"] = Seq,
            ["id"] = FactId.ToString(),
            ["type"] = Kind,
            ["at"] = Moment(At),
            ["recordedAt"] = Moment(RecordedAt),
            ["actor"] = Actor,
            ["data"] = Data.DeepClone(),
        };
        if (Device is not null)
            entry["device"] = Device;
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
            Moment(entry["at"]!.GetValue<string>()),
            Moment(entry["recordedAt"]!.GetValue<string>()),
            entry["actor"]!.GetValue<string>(),
            entry["device"]?.GetValue<string>(),
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
        (row.Seq, row.FactId, row.Kind, row.At, row.RecordedAt, row.Actor, row.Device)
        == (Seq, FactId, Kind, At, RecordedAt, Actor, Device);

    // RFC 3339 in UTC. Milliseconds where that is all there is, else every tick: a moment must read back as it was.
    private static string Moment(DateTimeOffset moment) =>
        moment
            .ToUniversalTime()
            .ToString(
                moment.Ticks % TimeSpan.TicksPerMillisecond == 0
                    ? "yyyy-MM-dd'T'HH:mm:ss.fff'Z'"
                    : "yyyy-MM-dd'T'HH:mm:ss.fffffff'Z'",
                CultureInfo.InvariantCulture
            );

    private static DateTimeOffset Moment(string written) =>
        DateTimeOffset.Parse(written, CultureInfo.InvariantCulture, DateTimeStyles.RoundtripKind);
}
