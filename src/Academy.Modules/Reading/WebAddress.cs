namespace Academy.Modules.Reading;

/// <summary>Which addresses a module may point at.</summary>
internal static class WebAddress
{
    /// <summary>A whole address of the public web.</summary>
    public static bool IsPublic(string address) =>
        Uri.TryCreate(address, UriKind.Absolute, out var uri)
        && uri.Scheme is "https" or "http"
        && uri.UserInfo.Length == 0
        && address.StartsWith($"{uri.Scheme}://", StringComparison.OrdinalIgnoreCase);

    /// <summary>The public web, a telephone number, a part of this page, or a page of this portal.</summary>
    public static bool IsAllowed(string address) =>
        IsPublic(address)
        || address.StartsWith('#')
        || address.StartsWith("tel:+", StringComparison.Ordinal)
        || (
            address.StartsWith('/')
            && !address.StartsWith("//", StringComparison.Ordinal)
            && !address.Contains('\\', StringComparison.Ordinal)
        );
}
