namespace Academy.Modules.Pictures;

/// <summary>One picture of a module, looked through and safe to serve.</summary>
/// <param name="File">Its file name in the module's folder.</param>
/// <param name="ContentType"><c>image/svg+xml</c>, <c>image/png</c>, <c>image/jpeg</c> or <c>image/webp</c>.</param>
/// <param name="Bytes">The bytes to serve; line endings of an SVG are made one.</param>
/// <param name="Width">Its width in its own units, for the page to keep room.</param>
/// <param name="Height">Its height in the same units.</param>
/// <remarks>Serve it with <c>Content-Security-Policy: default-src 'none'; style-src 'unsafe-inline'; sandbox</c> and <c>X-Content-Type-Options: nosniff</c>.</remarks>
public sealed record Picture(string File, string ContentType, ReadOnlyMemory<byte> Bytes, int Width, int Height)
{
    /// <summary>Where its units begin, left and top: 0 and 0 unless the viewBox of an SVG says otherwise.</summary>
    public (decimal Left, decimal Top) Origin { get; init; }
}
