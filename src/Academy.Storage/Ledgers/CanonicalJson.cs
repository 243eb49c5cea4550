using System.Globalization;
using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;

namespace Academy.Storage.Ledgers;

/// <summary>
/// The one spelling of a JSON value that gets hashed: RFC 8785 (JCS). The same value gives the same bytes on every machine,
/// so that a chain can be checked by anybody with any program that knows the RFC.
/// </summary>
/// <remarks>Refused, because they have no one spelling: lone surrogates, NaN, infinities, whole numbers beyond 2^53, double keys.</remarks>
public static class CanonicalJson
{
    private const long LargestExactInteger = 1L << 53;

    private static readonly JsonDocumentOptions Strict = new() { AllowDuplicateProperties = false };

    public static string Of(JsonNode? value)
    {
        var text = new StringBuilder();
        Write(text, value);
        return text.ToString();
    }

    public static JsonNode? Parse(string json) => JsonNode.Parse(json, nodeOptions: null, Strict);

    public static string Number(double number)
    {
        if (!double.IsFinite(number))
            throw new FormatException($"{number} has no JSON form.");
        if (number == 0)
            return "0";
        var (digits, point) = Shortest(Math.Abs(number));
        return (number < 0 ? "-" : "") + LaidOut(digits, point);
    }

    // The shortest digits that read back as the same number, and where the point stands: 0.digits x 10^point.
    private static (string Digits, int Point) Shortest(double positive)
    {
        var parts = positive.ToString("R", CultureInfo.InvariantCulture).Split('E');
        var mantissa = parts[0].Split('.');
        var digits = string.Concat(mantissa);
        var significant = digits.TrimStart('0');
        var exponent = parts.Length > 1 ? int.Parse(parts[1], CultureInfo.InvariantCulture) : 0;
        return (significant.TrimEnd('0'), mantissa[0].Length - (digits.Length - significant.Length) + exponent);
    }

    // ECMA-262, Number::toString with radix 10, in its own order of cases.
    private static string LaidOut(string digits, int point) =>
        point switch
        {
            > 21 or <= -6 => Scientific(digits, point - 1),
            <= 0 => "0." + new string('0', -point) + digits,
            _ when digits.Length <= point => digits.PadRight(point, '0'),
            _ => digits[..point] + "." + digits[point..],
        };

    private static string Scientific(string digits, int exponent)
    {
        var mantissa = digits.Length == 1 ? digits : digits[..1] + "." + digits[1..];
        return string.Create(CultureInfo.InvariantCulture, $"{mantissa}e{exponent:+0;-0}");
    }

    private static void Write(StringBuilder text, JsonNode? value)
    {
        switch (value)
        {
            case null:
                text.Append("null");
                break;
            case JsonObject members:
                WriteObject(text, members);
                break;
            case JsonArray items:
                WriteArray(text, items);
                break;
            case JsonValue scalar:
                WriteScalar(text, scalar);
                break;
        }
    }

    private static void WriteObject(StringBuilder text, JsonObject members)
    {
        text.Append('{');
        var first = true;
        foreach (var (name, value) in members.OrderBy(member => member.Key, StringComparer.Ordinal))
        {
            if (!first)
                text.Append(',');
            first = false;
            WriteString(text, name);
            text.Append(':');
            Write(text, value);
        }
        text.Append('}');
    }

    private static void WriteArray(StringBuilder text, JsonArray items)
    {
        text.Append('[');
        for (var i = 0; i < items.Count; i++)
        {
            if (i > 0)
                text.Append(',');
            Write(text, items[i]);
        }
        text.Append(']');
    }

    private static void WriteScalar(StringBuilder text, JsonValue scalar)
    {
        switch (scalar.GetValueKind())
        {
            case JsonValueKind.String:
                WriteString(text, StringOf(scalar));
                break;
            case JsonValueKind.Number:
                text.Append(NumberOf(scalar));
                break;
            case JsonValueKind.True:
                text.Append("true");
                break;
            case JsonValueKind.False:
                text.Append("false");
                break;
            default:
                throw new FormatException($"A JSON value of the kind {scalar.GetValueKind()} cannot be spelled.");
        }
    }

    private static string StringOf(JsonValue scalar)
    {
        try
        {
            return scalar.GetValue<string>();
        }
        catch (InvalidOperationException lone)
        {
            throw new FormatException("A text holds half a character (a lone surrogate).", lone);
        }
    }

    private static string NumberOf(JsonValue scalar)
    {
        if (scalar.TryGetValue(out double number) && !double.IsFinite(number))
            throw new FormatException($"{number} has no JSON form.");
        var written = scalar.ToJsonString();
        if (IsWhole(written) && !(long.TryParse(written, CultureInfo.InvariantCulture, out var whole) && IsExact(whole)))
            throw new FormatException($"The whole number {written} is beyond 2^53 and would lose digits.");
        return Number(double.Parse(written, CultureInfo.InvariantCulture));
    }

    private static bool IsWhole(string written) => written.AsSpan().TrimStart('-').IndexOfAnyExceptInRange('0', '9') < 0;

    private static bool IsExact(long whole) => whole is >= -LargestExactInteger and <= LargestExactInteger;

    private static void WriteString(StringBuilder text, string value)
    {
        text.Append('"');
        for (var i = 0; i < value.Length; i++)
        {
            if (char.IsSurrogate(value[i]))
                WritePair(text, value, i++);
            else
                WriteCharacter(text, value[i]);
        }
        text.Append('"');
    }

    private static void WritePair(StringBuilder text, string value, int at)
    {
        if (at + 1 >= value.Length || !char.IsSurrogatePair(value[at], value[at + 1]))
            throw new FormatException($"A text holds half a character (a lone surrogate) at {at}.");
        text.Append(value[at]).Append(value[at + 1]);
    }

    private static void WriteCharacter(StringBuilder text, char character) =>
        _ = character switch
        {
            '"' => text.Append("\\\""),
            '\\' => text.Append("\\\\"),
            '\b' => text.Append("\\b"),
            '\f' => text.Append("\\f"),
            '\n' => text.Append("\\n"),
            '\r' => text.Append("\\r"),
            '\t' => text.Append("\\t"),
            < ' ' => text.Append("\\u").Append(((int)character).ToString("x4", CultureInfo.InvariantCulture)),
            _ => text.Append(character),
        };
}
