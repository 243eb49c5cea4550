using System.Buffers.Binary;

namespace Academy.Modules.Pictures;

/// <summary>A way of writing a picture as points, known by the first bytes of the file and not by its name.</summary>
/// <param name="Word">What people call it.</param>
/// <param name="Ending">How its files end.</param>
/// <param name="ContentType">How it is served.</param>
internal abstract record PhotoKind(string Word, string Ending, string ContentType)
{
    public static readonly PhotoKind Png = new PngPhoto();
    public static readonly PhotoKind Jpeg = new JpegPhoto();
    public static readonly PhotoKind WebP = new WebPPhoto();

    public static readonly IReadOnlyList<PhotoKind> All = [Png, Jpeg, WebP];

    /// <summary>The kind that these bytes are, or null.</summary>
    public static PhotoKind? Of(ReadOnlySpan<byte> bytes)
    {
        foreach (var kind in All)
            if (kind.SizeOf(bytes) is not null)
                return kind;
        return null;
    }

    /// <summary>Width and height as the head of the file has them, without reading a single point; null where it is another kind.</summary>
    public (int Width, int Height)? SizeOf(ReadOnlySpan<byte> bytes) =>
        Head(bytes) is { Width: > 0, Height: > 0 } size
            ? ((int)Math.Min(size.Width, int.MaxValue), (int)Math.Min(size.Height, int.MaxValue))
            : null;

    /// <summary>Whether the file carries what cameras write beside the picture: where, when and with what it was taken.</summary>
    public abstract bool TellsMore(ReadOnlySpan<byte> bytes);

    protected abstract (uint Width, uint Height)? Head(ReadOnlySpan<byte> bytes);

    // ISO/IEC 15948 (PNG), 5.2 and 11.2.2: signature, then the IHDR chunk with width and height.
    private sealed record PngPhoto() : PhotoKind("PNG", ".png", "image/png")
    {
        private static readonly byte[] Start = [0x89, .. "PNG\r\n"u8, 0x1A, 0x0A, 0, 0, 0, 13, .. "IHDR"u8];

        // Files that authors draw are left as they are; those taken in through the portal are written anew.
        public override bool TellsMore(ReadOnlySpan<byte> bytes) => false;

        protected override (uint, uint)? Head(ReadOnlySpan<byte> bytes) =>
            bytes.Length >= 24 && bytes.StartsWith(Start)
                ? (BinaryPrimitives.ReadUInt32BigEndian(bytes[16..]), BinaryPrimitives.ReadUInt32BigEndian(bytes[20..]))
                : null;
    }

    // ITU-T T.81, annex B: segments of a marker and a length; the size stands in the start of the frame (SOF).
    private sealed record JpegPhoto() : PhotoKind("JPEG", ".jpg", "image/jpeg")
    {
        private const byte Application1 = 0xE1;
        private const byte Application13 = 0xED;

        public override bool TellsMore(ReadOnlySpan<byte> bytes)
        {
            for (var at = 2; Next(bytes, at) is { } segment; at = segment.End)
                if (segment.Marker is Application1 or Application13)
                    return true;
            return false;
        }

        protected override (uint, uint)? Head(ReadOnlySpan<byte> bytes)
        {
            if (!bytes.StartsWith((ReadOnlySpan<byte>)[0xFF, 0xD8, 0xFF]))
                return null;
            for (var at = 2; Next(bytes, at) is { } segment; at = segment.End)
                if (segment.Marker is >= 0xC0 and <= 0xCF and not (0xC4 or 0xC8 or 0xCC) && segment.End - at >= 9)
                    return (
                        BinaryPrimitives.ReadUInt16BigEndian(bytes[(at + 7)..]),
                        BinaryPrimitives.ReadUInt16BigEndian(bytes[(at + 5)..])
                    );
            return null;
        }

        // Null behind the head of the file, where the points begin, and where it breaks off.
        private static (byte Marker, int End)? Next(ReadOnlySpan<byte> bytes, int at)
        {
            const byte startOfScan = 0xDA;
            if (at + 4 > bytes.Length || bytes[at] != 0xFF || bytes[at + 1] is startOfScan)
                return null;
            var end = at + 2 + BinaryPrimitives.ReadUInt16BigEndian(bytes[(at + 2)..]);
            return end > at + 3 && end <= bytes.Length ? (bytes[at + 1], end) : null;
        }
    }

    // RFC 9649 (WebP), 2.3 to 2.7: a RIFF file whose first chunk is VP8, VP8L or VP8X, each with the size at its own place.
    private sealed record WebPPhoto() : PhotoKind("WebP", ".webp", "image/webp")
    {
        private const byte HasExif = 0x08;
        private const byte HasXmp = 0x04;

        public override bool TellsMore(ReadOnlySpan<byte> bytes) =>
            bytes[12..16].SequenceEqual("VP8X"u8) && (bytes[20] & (HasExif | HasXmp)) != 0;

        protected override (uint, uint)? Head(ReadOnlySpan<byte> bytes)
        {
            if (bytes.Length < 30 || !bytes.StartsWith("RIFF"u8) || !bytes[8..].StartsWith("WEBP"u8))
                return null;
            var chunk = bytes[12..16];
            if (chunk.SequenceEqual("VP8 "u8))
                return bytes[23..].StartsWith((ReadOnlySpan<byte>)[0x9D, 0x01, 0x2A])
                    ? (Low14(bytes[26..]), Low14(bytes[28..]))
                    : null;
            if (chunk.SequenceEqual("VP8X"u8))
                return (Low24(bytes[24..]) + 1, Low24(bytes[27..]) + 1);
            if (!chunk.SequenceEqual("VP8L"u8) || bytes[20] != 0x2F)
                return null;
            var sides = BinaryPrimitives.ReadUInt32LittleEndian(bytes[21..]);
            return ((sides & 0x3FFF) + 1, (sides >> 14 & 0x3FFF) + 1);
        }

        private static uint Low14(ReadOnlySpan<byte> bytes) => BinaryPrimitives.ReadUInt16LittleEndian(bytes) & 0x3FFFu;

        private static uint Low24(ReadOnlySpan<byte> bytes) => (uint)(bytes[0] | bytes[1] << 8 | bytes[2] << 16);
    }
}
