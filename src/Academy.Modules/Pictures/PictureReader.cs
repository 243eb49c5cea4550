using System.Buffers.Binary;
using System.Text;
using Academy.Modules.Reading;

namespace Academy.Modules.Pictures;

/// <summary>Reads a module's pictures and refuses those that are not plain pictures.</summary>
internal static class PictureReader
{
    public const int LargestFile = 512 * 1024;
    private const int LargestSide = 8000;
    private static readonly byte[] PngStart =
    [
        0x89,
        0x50,
        0x4E,
        0x47,
        0x0D,
        0x0A,
        0x1A,
        0x0A,
        0,
        0,
        0,
        13,
        0x49,
        0x48,
        0x44,
        0x52,
    ];

    public static Picture? Of(string name, byte[] bytes, Findings findings)
    {
        if (!Slug.Is(Path.GetFileNameWithoutExtension(name)))
            findings.Fault(0, $"The name of a picture has to be {Slug.Words}.");
        var picture = Path.GetExtension(name) == ".svg" ? Svg(name, bytes, findings) : Png(name, bytes, findings);
        if (picture is { Width: > LargestSide } or { Height: > LargestSide })
            findings.Fault(0, $"The picture is {picture.Width} by {picture.Height}; {LargestSide} is the most. Make it smaller.");
        return findings.Any ? null : picture;
    }

    private static Picture? Png(string name, byte[] bytes, Findings findings)
    {
        if (bytes.Length < 24 || !bytes.AsSpan().StartsWith(PngStart))
        {
            findings.Fault(0, "The file is not a PNG picture, whatever its name says. Save it as PNG.");
            return null;
        }
        var (width, height) = (
            BinaryPrimitives.ReadUInt32BigEndian(bytes.AsSpan(16)),
            BinaryPrimitives.ReadUInt32BigEndian(bytes.AsSpan(20))
        );
        return new(name, "image/png", bytes, (int)Math.Min(width, int.MaxValue), (int)Math.Min(height, int.MaxValue));
    }

    private static Picture? Svg(string name, byte[] bytes, Findings findings)
    {
        if (FileText.Of(bytes, findings) is not { } text || SvgCheck.Of(text, findings) is not { } size)
            return null;
        return new(name, "image/svg+xml", Encoding.UTF8.GetBytes(text), size.Width, size.Height) { Origin = size.Origin };
    }
}
