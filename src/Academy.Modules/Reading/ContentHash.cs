using System.Buffers.Binary;
using System.Security.Cryptography;
using System.Text;
using Academy.Modules.Pictures;

namespace Academy.Modules.Reading;

/// <summary>The fingerprint of everything that a person studied and was asked.</summary>
/// <remarks>
/// SHA-256 over module.md and then each picture that the lesson shows, in the order of their names by code point: for each the
/// length of its name in UTF-8 (4 bytes, big end first), the name, the length of its content (8 bytes), the content. Text is UTF-8
/// without byte order mark and with line feeds, so the same module has the same hash on every kind of machine.
/// </remarks>
internal static class ContentHash
{
    public static string Of(string moduleText, IEnumerable<Picture> pictures)
    {
        using var hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        Add(hash, "module.md", Encoding.UTF8.GetBytes(moduleText));
        foreach (var picture in pictures.OrderBy(picture => picture.File, StringComparer.Ordinal))
            Add(hash, picture.File, picture.Bytes.Span);
        return Convert.ToHexStringLower(hash.GetHashAndReset());
    }

    private static void Add(IncrementalHash hash, string name, ReadOnlySpan<byte> content)
    {
        var encoded = Encoding.UTF8.GetBytes(name);
        Span<byte> lengths = stackalloc byte[12];
        BinaryPrimitives.WriteInt32BigEndian(lengths, encoded.Length);
        BinaryPrimitives.WriteInt64BigEndian(lengths[4..], content.Length);
        hash.AppendData(lengths[..4]);
        hash.AppendData(encoded);
        hash.AppendData(lengths[4..]);
        hash.AppendData(content);
    }
}
