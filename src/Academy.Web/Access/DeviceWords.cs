namespace Academy.Web.Access;

/// <summary>
/// A few fixed words for what somebody holds in her hand, told from what the browser says of itself. Fixed, because they end in
/// the ledger, where nothing stands that anybody could type.
/// </summary>
public static class DeviceWords
{
    // In this order: browsers name those that they want to be taken for.
    private static readonly (string Mark, string Words)[] Browsers =
    [
        ("Edg", "Edge"),
        ("OPR", "Opera"),
        ("Firefox", "Firefox"),
        ("Chrome", "Chrome"),
        ("Safari", "Safari"),
    ];

    private static readonly (string Mark, string Words)[] Systems =
    [
        ("iPhone", "iPhone"),
        ("iPad", "iPad"),
        ("Android", "Android"),
        ("Windows", "Windows"),
        ("Mac OS", "Mac"),
        ("CrOS", "Chromebook"),
        ("Linux", "Linux"),
    ];

    public static string Of(string? agent) =>
        $"{Named(agent, Browsers) ?? "a browser"} on {Named(agent, Systems) ?? "some device"}";

    private static string? Named(string? agent, (string Mark, string Words)[] known) =>
        known.FirstOrDefault(one => agent?.Contains(one.Mark, StringComparison.Ordinal) is true).Words;
}
