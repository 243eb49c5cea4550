using System.Text;
using System.Text.Json.Nodes;
using Academy.Storage.Ledgers;

namespace Academy.Storage.Tests.Ledgers;

/// <summary>Checked against the golden chain made for this project (data/README.md) and RFC 4231.</summary>
public sealed class ChainTests
{
    [Fact]
    public void The_golden_chain_comes_out_canonical_and_hash_for_hash()
    {
        var before = Chain.Genesis;
        var entries = Golden();

        foreach (var golden in entries)
        {
            var canonical = CanonicalJson.Of(golden["entry"]);
            before = Chain.Next(before, canonical);

            Assert.Equal(golden["canonical"]!.GetValue<string>(), canonical);
            Assert.Equal(golden["chainHashHex"]!.GetValue<string>(), Convert.ToHexStringLower(before));
        }
        Assert.Equal(3, entries.Length);
    }

    [Fact]
    public void One_changed_letter_changes_every_hash_after_it()
    {
        var texts = Golden().Select(golden => golden["canonical"]!.GetValue<string>()).ToArray();
        string[] changed = [texts[0].Replace("direct", "remote", StringComparison.Ordinal), texts[1], texts[2]];

        Assert.Empty(Hashes(texts).Intersect(Hashes(changed), StringComparer.Ordinal));
    }

    [Fact]
    public void Words_are_sealed_with_a_key_of_their_own() =>
        // RFC 4231, test case 2.
        Assert.Equal(
            "5bdcc146bf60754e6a042426089575c75a003f089d2739839dec58b964ec3843",
            Chain.Seal(Encoding.ASCII.GetBytes("Jefe"), "what do ya want for nothing?")
        );

    [Fact]
    public void A_hash_of_another_length_is_refused() => Assert.Throws<ArgumentException>(() => Chain.Next(new byte[31], "{}"));

    private static JsonNode[] Golden() =>
        [.. TestFiles.Json("own-audit-chain-golden.json")["entries"]!.AsArray().OfType<JsonNode>()];

    private static IEnumerable<string> Hashes(IEnumerable<string> texts)
    {
        var before = Chain.Genesis;
        foreach (var text in texts)
            yield return Convert.ToHexStringLower(before = Chain.Next(before, text));
    }
}
