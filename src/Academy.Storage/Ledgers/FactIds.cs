using System.Buffers.Binary;
using System.Security.Cryptography;
using Academy.Competence;

namespace Academy.Storage.Ledgers;

/// <summary>
/// The id of a salon's nth fact. It follows from the salon and the number, so tables written anew get the same ids, and it
/// sorts as the ledger does. Its form is RFC 9562's version 8.
/// </summary>
internal static class FactIds
{
    private const int BitsBehindTheNumber = 16;

    public static Guid Of(SalonId salon, long seq)
    {
        var bytes = SHA256.HashData(salon.Value.ToByteArray(bigEndian: true))[..16];
        BinaryPrimitives.WriteInt64BigEndian(bytes, seq << BitsBehindTheNumber);
        bytes[6] = 0x80;
        bytes[8] = (byte)(bytes[8] & 0x3F | 0x80);
        return new Guid(bytes, bigEndian: true);
    }

    /// <summary>An id for the nth row that one fact gives.</summary>
    public static Guid Row(Guid fact, int number)
    {
        var bytes = fact.ToByteArray(bigEndian: true);
        BinaryPrimitives.WriteInt32BigEndian(bytes.AsSpan(12), number);
        return new Guid(bytes, bigEndian: true);
    }
}
