namespace Academy.Competence.Quizzes.Amounts;

/// <summary>What a unit measures.</summary>
public enum Measure
{
    /// <summary>Nothing: a bare number.</summary>
    Nothing,

    /// <summary>How long something is.</summary>
    Length,

    /// <summary>How warm it is.</summary>
    Temperature,

    /// <summary>How heavy it is.</summary>
    Weight,

    /// <summary>How much of a liquid there is.</summary>
    Volume,

    /// <summary>How long something lasts.</summary>
    Duration,

    /// <summary>A share of a whole.</summary>
    Share,
}

/// <summary>A unit, and what it is worth in the unit that its measure is reckoned in: (amount - zero) * times / by.</summary>
/// <remarks>
/// Reckoned in mm, °C, g, ml and s. All conversions are exact: inch 25.4 mm, pound (avoirdupois) 453.592 37 g, degree Fahrenheit
/// t/°C = (t/°F - 32)/1.8; minute 60 s, hour 3600 s, day 86 400 s. NIST Special Publication 811 (2008), table 6 for the times and
/// appendix B.8, where exact factors stand in bold, for the others; which table has the times is from memory.
/// </remarks>
public sealed record Unit
{
    private readonly string[] _names;

    private Unit(Measure measures, string sign, decimal times, string[] names)
    {
        Measures = measures;
        Sign = sign;
        Times = times;
        _names = names;
    }

    /// <summary>No unit at all.</summary>
    public static Unit None { get; } = new(Measure.Nothing, "", 1, []);

    private static Unit[] All { get; } =
    [
        None,
        new(Measure.Length, "mm", 1, ["millimetre", "millimetres", "millimeter", "millimeters"]),
        new(Measure.Length, "cm", 10, ["centimetre", "centimetres", "centimeter", "centimeters"]),
        new(Measure.Length, "in", 25.4m, ["inch", "inches", "\"", "″", "''"]),
        new(Measure.Temperature, "°C", 1, ["c", "deg c", "degree c", "degrees c", "celsius", "degrees celsius"]),
        new(Measure.Temperature, "°F", 5, ["f", "deg f", "degree f", "degrees f", "fahrenheit", "degrees fahrenheit"])
        {
            Zero = 32,
            By = 9,
        },
        new(Measure.Weight, "g", 1, ["gram", "grams", "gramme", "grammes"]),
        new(Measure.Weight, "kg", 1000, ["kilo", "kilos", "kilogram", "kilograms"]),
        new(Measure.Weight, "lb", 453.59237m, ["lbs", "pound", "pounds"]),
        new(Measure.Volume, "ml", 1, ["millilitre", "millilitres", "milliliter", "milliliters"]),
        new(Measure.Volume, "l", 1000, ["litre", "litres", "liter", "liters"]),
        new(Measure.Duration, "s", 1, ["sec", "secs", "second", "seconds"]),
        new(Measure.Duration, "min", 60, ["mins", "minute", "minutes"]),
        new(Measure.Duration, "h", 3600, ["hr", "hrs", "hour", "hours"]),
        new(Measure.Duration, "days", 86_400, ["d", "day"]),
        new(Measure.Share, "%", 1, ["percent", "per cent"]),
    ];

    /// <summary>What it measures.</summary>
    public Measure Measures { get; }

    /// <summary>As it is written, such as <c>mm</c>; empty for <see cref="None"/>.</summary>
    public string Sign { get; }

    private decimal Times { get; }

    private decimal By { get; init; } = 1;

    private decimal Zero { get; init; }

    /// <summary>The units of one measure.</summary>
    public static IEnumerable<Unit> Measuring(Measure measure) => All.Where(unit => unit.Measures == measure);

    /// <summary>The unit that people write so, in capitals or not, with a full stop or not; null where it is none of these.</summary>
    public static Unit? Find(string written)
    {
        var name = written.Trim().TrimEnd('.').Replace('º', '°').Replace("° ", "°", StringComparison.Ordinal);
        return All.FirstOrDefault(unit => unit.Sign.Equals(name, StringComparison.OrdinalIgnoreCase))
            ?? All.FirstOrDefault(unit => unit._names.Contains(name, StringComparer.OrdinalIgnoreCase));
    }

    internal decimal Worth(decimal amount) => WorthOfGap(amount - Zero);

    internal decimal WorthOfGap(decimal gap) => gap * Times / By;
}
