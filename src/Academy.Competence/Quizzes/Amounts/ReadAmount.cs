using System.Globalization;
using System.Text.RegularExpressions;

namespace Academy.Competence.Quizzes.Amounts;

/// <summary>What came of reading an amount that somebody typed: the amount, or what keeps it from being one.</summary>
/// <remarks>
/// A comma and a point both mark decimals, so there are none between thousands. Fractions are read (<c>1/8 in</c>,
/// <c>3 1/8 in</c>, <c>3-1/8 in</c>, <c>½ in</c>), also without a space before the unit. At most nine digits stand before and nine behind the point.
/// </remarks>
public abstract partial record ReadAmount
{
    private ReadAmount() { }

    /// <summary>The amount.</summary>
    public sealed record Whole(Amount Amount) : ReadAmount;

    /// <summary>There is no number that can be read.</summary>
    public sealed record NoNumber : ReadAmount;

    /// <summary>The number can be read, but its unit is missing.</summary>
    public sealed record NoUnit : ReadAmount;

    /// <summary>The number can be read, but its unit is not known, or measures something else.</summary>
    public sealed record OtherUnit(string Unit) : ReadAmount;

    /// <summary>The longest text that is looked at.</summary>
    public const int Longest = 40;

    /// <summary>Reads an amount of what is asked for.</summary>
    public static ReadAmount Of(string typed, Measure measure)
    {
        if (Split(typed) is not var (value, unit))
            return new NoNumber();
        if (unit.Length == 0 && measure != Measure.Nothing)
            return new NoUnit();
        return Unit.Find(unit) is { } known && known.Measures == measure ? new Whole(new(value, known)) : new OtherUnit(unit);
    }

    /// <summary>Reads an amount of anything, as an author writes it; null where it is none.</summary>
    public static Amount? OfAnything(string written) =>
        Split(written) is var (value, unit) && Unit.Find(unit) is { } known ? new(value, known) : null;

    private static (decimal Value, string Unit)? Split(string typed)
    {
        if (typed.Length > Longest || Written().Match(Spaced(typed)) is not { Success: true } match)
            return null;
        var value = match.Groups["plain"].Success ? Plain(match.Groups["plain"].Value) : Fraction(match);
        return value is { } number ? (match.Groups["minus"].Success ? -number : number, match.Groups["unit"].Value) : null;
    }

    private static decimal Plain(string digits) => decimal.Parse(digits.Replace(',', '.'), CultureInfo.InvariantCulture);

    private static decimal? Fraction(Match match)
    {
        var (top, bottom) = (Digits(match, "top"), Digits(match, "bottom"));
        return bottom == 0 ? null : Digits(match, "whole") + top / bottom;
    }

    private static decimal Digits(Match match, string group) =>
        match.Groups[group].Success ? decimal.Parse(match.Groups[group].ValueSpan, CultureInfo.InvariantCulture) : 0;

    // "3⅛" is three and an eighth, not thirty-one eighths.
    private static string Spaced(string typed) =>
        VulgarFraction()
            .Replace(typed.Trim(), fraction => $" {fraction.Value.Normalize(System.Text.NormalizationForm.FormKC)} ")
            .Replace('\u00A0', ' ')
            .Replace('\u202F', ' ')
            .Trim();

    [GeneratedRegex("[¼½¾⅓⅔⅛⅜⅝⅞]", RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 1000)]
    private static partial Regex VulgarFraction();

    [GeneratedRegex(
        @"^(?<minus>[-−]\s*)?(((?<whole>[0-9]{1,9})(\s+|-))?(?<top>[0-9]{1,9})\s*[/⁄]\s*(?<bottom>[0-9]{1,9})|(?<plain>[0-9]{0,9}[.,][0-9]{1,9}|[0-9]{1,9}))(?![0-9.,/⁄])\s*(?<unit>([^0-9\s].*)?)$",
        RegexOptions.ExplicitCapture,
        matchTimeoutMilliseconds: 1000
    )]
    private static partial Regex Written();
}
