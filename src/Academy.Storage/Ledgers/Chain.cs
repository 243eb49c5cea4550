using System.Security.Cryptography;
using System.Text;

namespace Academy.Storage.Ledgers;

/// <summary>
/// The chain that ties each entry of a ledger to all before it: SHA-256 over the hash before and the entry's canonical bytes.
/// It shows any edit, gap or change of order. It cannot show a cut-off tail: for that a hash must be kept outside.
/// </summary>
public static class Chain
{
    public const int HashBytes = 32;

    // Half a character has no UTF-8: it is refused and not kept as something else than was said.
    internal static readonly UTF8Encoding Strict = new(encoderShouldEmitUTF8Identifier: false, throwOnInvalidBytes: true);

    /// <summary>What stands before the first entry of a salon: 32 zero bytes.</summary>
    public static byte[] Genesis => new byte[HashBytes];

    public static byte[] Next(ReadOnlySpan<byte> before, string canonical)
    {
        if (before.Length != HashBytes)
            throw new ArgumentException("A hash of the chain has 32 bytes.", nameof(before));
        var bytes = Strict.GetBytes(canonical);
        return SHA256.HashData([.. before, .. bytes]);
    }

    /// <summary>
    /// What the entry says about words kept beside it: HMAC-SHA256 under a key of their own. With the key gone nobody can
    /// guess short words from it, so words may be erased and the chain still holds.
    /// </summary>
    public static string Seal(ReadOnlySpan<byte> key, string words) =>
        Convert.ToHexStringLower(HMACSHA256.HashData(key, Strict.GetBytes(words)));
}
