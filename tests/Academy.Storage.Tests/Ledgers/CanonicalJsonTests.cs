using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using System.Text.Json.Nodes;
using Academy.Storage.Ledgers;

namespace Academy.Storage.Tests.Ledgers;

/// <summary>Checked against RFC 8785: its published test data and number pairs (data/README.md).</summary>
public sealed class CanonicalJsonTests
{
    public static TheoryData<string> PublishedCases => [.. Published().Select(pair => pair["name"]!.GetValue<string>())];

    [Theory]
    [MemberData(nameof(PublishedCases))]
    public void The_published_pairs_come_out_byte_for_byte(string name)
    {
        var pair = Published().Single(one => one["name"]!.GetValue<string>() == name);
        var input = Encoding.UTF8.GetString(Convert.FromBase64String(pair["inputBase64"]!.GetValue<string>()));

        var bytes = Encoding.UTF8.GetBytes(CanonicalJson.Of(CanonicalJson.Parse(input)));

        Assert.Equal(pair["outputHex"]!.GetValue<string>(), Convert.ToHexStringLower(bytes));
    }

    [Fact]
    public void All_ten_thousand_published_numbers_are_spelled_as_ECMAScript_spells_them()
    {
        var lines = File.ReadAllLines(TestFiles.Path("es6numbers-10000.txt"));

        var wrong = lines.Select(line => line.Split(',')).Where(pair => CanonicalJson.Number(FromBits(pair[0])) != pair[1]);

        Assert.Equal(10_000, lines.Length);
        Assert.Empty(wrong);
    }

    [Fact]
    public void The_file_of_numbers_is_the_published_one() =>
        Assert.StartsWith(
            "b9f7a8e7",
            Convert.ToHexStringLower(SHA256.HashData(File.ReadAllBytes(TestFiles.Path("es6numbers-10000.txt")))),
            StringComparison.Ordinal
        );

    [Theory]
    [InlineData(0.0, "0")]
    [InlineData(-1e-323, "-1e-323")]
    [InlineData(1e21, "1e+21")] // RFC 8785 appendix B: the first that needs an exponent
    [InlineData(1e-7, "1e-7")]
    [InlineData(0.000001, "0.000001")] // the last that needs none
    [InlineData(5e-324, "5e-324")]
    [InlineData(1.7976931348623157e308, "1.7976931348623157e+308")]
    [InlineData(9007199254740992, "9007199254740992")]
    [InlineData(-333333333.33333329, "-333333333.3333333")]
    public void The_edges_of_the_number_form_hold(double number, string spelled) =>
        Assert.Equal(spelled, CanonicalJson.Number(number));

    [Fact]
    public void Nought_below_zero_is_nought() => Assert.Equal("0", CanonicalJson.Number(-0.0));

    [Fact]
    public void Keys_stand_in_the_order_of_their_UTF16_units_not_of_their_code_points()
    {
        var members = new JsonObject
        {
            ["\uFB33"] = 1,
            ["\U0001F600"] = 2,
            ["\u20AC"] = 3,
        };

        Assert.Equal("{\"\u20AC\":3,\"\U0001F600\":2,\"\uFB33\":1}", CanonicalJson.Of(members));
    }

    [Fact]
    public void The_order_in_which_members_were_added_makes_no_difference() =>
        Assert.Equal(
            CanonicalJson.Of(
                new JsonObject
                {
                    ["a"] = 1,
                    ["b"] = new JsonObject { ["c"] = 2, ["d"] = 3L },
                }
            ),
            CanonicalJson.Of(
                new JsonObject
                {
                    ["b"] = new JsonObject { ["d"] = 3.0, ["c"] = 2m },
                    ["a"] = (byte)1,
                }
            )
        );

    [Fact]
    public void Control_characters_are_escaped_and_nothing_else_is() =>
        Assert.Equal(
            "\"\\u0000\\b\\t\\n\\f\\r\\u001f\\\"\\\\/\u007f\u00e9<>&'\"",
            CanonicalJson.Of("\0\b\t\n\f\r\u001f\"\\/\u007f\u00e9<>&'")
        );

    [Fact]
    public void Half_a_character_is_refused()
    {
        Assert.Throws<FormatException>(() => CanonicalJson.Of("clip\uD83D"));
        Assert.Throws<FormatException>(() => CanonicalJson.Of("\uDE00\uD83D"));
        Assert.Throws<FormatException>(() => CanonicalJson.Of(new JsonObject { ["\uD83D!"] = 1 }));
        Assert.Throws<FormatException>(() => CanonicalJson.Of(CanonicalJson.Parse("\"\\ud83d\"")));
    }

    [Fact]
    public void What_is_no_number_is_refused()
    {
        Assert.Throws<FormatException>(() => CanonicalJson.Of(double.NaN));
        Assert.Throws<FormatException>(() => CanonicalJson.Of(new JsonArray(double.PositiveInfinity)));
        Assert.Throws<FormatException>(() => CanonicalJson.Number(double.NegativeInfinity));
    }

    [Theory]
    [InlineData("9007199254740992", true)]
    [InlineData("-9007199254740992", true)]
    [InlineData("9007199254740993", false)] // would be read back as ...992
    [InlineData("-9007199254740993", false)]
    [InlineData("18446744073709551616", false)]
    public void Whole_numbers_are_kept_only_as_far_as_they_are_exact(string written, bool kept)
    {
        var value = CanonicalJson.Parse(written);

        if (kept)
            Assert.Equal(written, CanonicalJson.Of(value));
        else
            Assert.Throws<FormatException>(() => CanonicalJson.Of(value));
    }

    [Fact]
    public void A_key_that_stands_twice_is_refused() =>
        Assert.ThrowsAny<System.Text.Json.JsonException>(() => CanonicalJson.Parse("{\"a\":1,\"a\":2}"));

    private static IEnumerable<JsonNode> Published() =>
        TestFiles.Json("rfc8785-testdata.json")["cases"]!.AsArray().OfType<JsonNode>();

    private static double FromBits(string hex) =>
        BitConverter.UInt64BitsToDouble(ulong.Parse(hex, NumberStyles.HexNumber, CultureInfo.InvariantCulture));
}
