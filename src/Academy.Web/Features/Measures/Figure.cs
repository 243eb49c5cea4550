using System.Globalization;
using Academy.Competence.Statistics;

namespace Academy.Web.Features.Measures;

/// <summary>One number with what it means and where it is explained.</summary>
/// <param name="Value">The number; what it still needs where there is none yet.</param>
/// <param name="IsGrey">Whether it is to be read with care.</param>
/// <param name="Explained">The part of the page that explains it.</param>
public sealed record Figure(string Name, string Value, string Meaning, bool IsGrey, string Explained);

/// <summary>A share with its range as a line from 0 to 1: the same numbers stand beside it in words.</summary>
public sealed record RangeLine(string Left, string Width, string Dot, string Words)
{
    /// <summary>How long the line is in the units of its drawing.</summary>
    public const int Across = 120;

    public static RangeLine? Of(double? share, RateRange? range) =>
        share is { } one && range is { } ends
            ? new(
                Written(ends.Lower),
                Written(ends.Upper - ends.Lower),
                Written(one),
                $"{Decimals(one)}, range {Decimals(ends.Lower)} to {Decimals(ends.Upper)}"
            )
            : null;

    /// <summary>Two decimals: "0.83".</summary>
    public static string Decimals(double number) => number.ToString("0.00", CultureInfo.InvariantCulture);

    private static string Written(double share) => (share * Across).ToString("0.#", CultureInfo.InvariantCulture);
}
