using System.Globalization;

namespace Academy.Competence.Quizzes.Amounts;

/// <summary>A number with its unit.</summary>
/// <param name="Value">The number.</param>
/// <param name="Unit">The unit; <see cref="Unit.None"/> for a bare number.</param>
public sealed record Amount(decimal Value, Unit Unit)
{
    // Thirds and ninths have no end in decimals: a sixth of an inch written twice has to be the same.
    private const decimal Nothing = 0.000_000_001m;

    /// <summary>Whether it is at most so far from another amount, which may be in another unit of the same measure.</summary>
    /// <param name="within">The distance that still counts, in the unit of <paramref name="of"/>.</param>
    /// <param name="of">The other amount; one of another measure is never near.</param>
    public bool IsWithin(decimal within, Amount of) =>
        Unit.Measures == of.Unit.Measures
        && Math.Abs(Unit.Worth(Value) - of.Unit.Worth(of.Value)) <= of.Unit.WorthOfGap(within) + Nothing;

    /// <summary>The number with a decimal point and its unit, such as <c>3.2 mm</c>, <c>40 %</c> or <c>8</c>.</summary>
    public override string ToString() =>
        $"{Math.Round(Value, 4).ToString("0.####", CultureInfo.InvariantCulture)} {Unit.Sign}".TrimEnd();
}
