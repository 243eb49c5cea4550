using System.Globalization;

namespace Academy.Storage.Ledgers;

/// <summary>Moments as the ledger spells them: RFC 3339 in UTC.</summary>
internal static class Moments
{
    // Milliseconds where that is all there is, else every tick: a moment must read back as it was.
    public static string Write(DateTimeOffset moment) =>
        moment
            .ToUniversalTime()
            .ToString(
                moment.Ticks % TimeSpan.TicksPerMillisecond == 0
                    ? "yyyy-MM-dd'T'HH:mm:ss.fff'Z'"
                    : "yyyy-MM-dd'T'HH:mm:ss.fffffff'Z'",
                CultureInfo.InvariantCulture
            );

    public static DateTimeOffset Read(string written) =>
        DateTimeOffset.Parse(written, CultureInfo.InvariantCulture, DateTimeStyles.RoundtripKind);
}
