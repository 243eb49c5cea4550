namespace Academy.Web.Features.SetUp;

/// <summary>Time zones as the IANA database names them: all that this machine knows, and the one that somebody meant.</summary>
public static class Zones
{
    private const string WhereNothingIsKnown = "Europe/London";

    /// <summary>Every zone of a region, in order.</summary>
    public static IReadOnlyList<string> All { get; } =
    [
        .. TimeZoneInfo
            .GetSystemTimeZones()
            .Select(zone => zone.Id)
            .Where(id => id.Contains('/') && !id.StartsWith("Etc/", StringComparison.Ordinal))
            .Order(StringComparer.Ordinal),
    ];

    /// <summary>This machine's own zone where that is one of a region; otherwise one to begin with.</summary>
    public static string Likely { get; } = All.Contains(TimeZoneInfo.Local.Id) ? TimeZoneInfo.Local.Id : WhereNothingIsKnown;

    /// <summary>The zone of this name, or of this town where only one has it; small letters and spaces are forgiven. Null if there is none.</summary>
    public static TimeZoneInfo? Find(string? typed)
    {
        var plain = (typed ?? "").Trim().Replace(' ', '_');
        var meant =
            All.FirstOrDefault(id => string.Equals(id, plain, StringComparison.OrdinalIgnoreCase))
            ?? OnlyOne(All.Where(id => id.EndsWith("/" + plain, StringComparison.OrdinalIgnoreCase)));
        return meant is not null && TimeZoneInfo.TryFindSystemTimeZoneById(meant, out var zone) ? zone : null;
    }

    private static string? OnlyOne(IEnumerable<string> found) => found.Take(2).ToList() is [var one] ? one : null;
}
