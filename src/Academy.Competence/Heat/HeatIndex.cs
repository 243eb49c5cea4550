namespace Academy.Competence.Heat;

/// <summary>How hot the air of a room feels to people, by temperature and humidity.</summary>
/// <remarks>
/// <para>
/// The full algorithm of the US National Weather Service: Rothfusz 1990 (SR 90-23) after Steadman 1979, with both
/// adjustments; wpc.ncep.noaa.gov/html/heatindex_equation.shtml. The polynomial's own error is about 1.3 °F.
/// </para>
/// <para>
/// The index is made for people, who sweat. A dog loses heat by panting, and humidity bites harder: take it as a trigger
/// for checks, never as a promise of safety. In dry air it falls by up to 3 °F where the simple formula hands over to the
/// polynomial, a little above 80 °F; so a rule that uses the index asks for the room's temperature as well.
/// </para>
/// </remarks>
public static class HeatIndex
{
    /// <summary>The coldest room reading that is taken, 32 °F (0 °C). Our own bound: below it a salon reading is a mistake.</summary>
    public const double LowestFahrenheit = 32;

    /// <summary>The hottest room reading that is taken, 122 °F (50 °C). Our own bound; the printed chart ends at 110 °F.</summary>
    public const double HighestFahrenheit = 122;

    /// <summary>The coldest room reading that is taken, in °C.</summary>
    public const double LowestCelsius = 0;

    /// <summary>The hottest room reading that is taken, in °C.</summary>
    public const double HighestCelsius = 50;

    private const double PolynomialFrom = 80;

    /// <summary>The heat index in °C.</summary>
    /// <param name="temperatureCelsius">The room's temperature in °C, <see cref="LowestCelsius"/> to <see cref="HighestCelsius"/>.</param>
    /// <param name="relativeHumidityPercent">The relative humidity, 0 to 100.</param>
    /// <exception cref="ArgumentOutOfRangeException">The reading is none that a room can have.</exception>
    public static double InCelsius(double temperatureCelsius, double relativeHumidityPercent)
    {
        CheckRange(temperatureCelsius, LowestCelsius, HighestCelsius, nameof(temperatureCelsius));
        CheckHumidity(relativeHumidityPercent);
        return ToCelsius(FullAlgorithm(ToFahrenheit(temperatureCelsius), relativeHumidityPercent));
    }

    /// <summary>The heat index in °F.</summary>
    /// <param name="temperatureFahrenheit">The room's temperature in °F, <see cref="LowestFahrenheit"/> to <see cref="HighestFahrenheit"/>.</param>
    /// <param name="relativeHumidityPercent">The relative humidity, 0 to 100.</param>
    /// <exception cref="ArgumentOutOfRangeException">The reading is none that a room can have.</exception>
    /// <remarks>
    /// The simple formula is averaged with the temperature; from 80 °F of that average the polynomial and its adjustments
    /// answer, below it the average itself. The published words leave open whether the 0.5 printed in the simple formula
    /// already is the averaging. We read them as one more averaging: it is the later step that the page describes, and it
    /// misses the published chart in no more cells than the other reading.
    /// </remarks>
    public static double InFahrenheit(double temperatureFahrenheit, double relativeHumidityPercent)
    {
        CheckRange(temperatureFahrenheit, LowestFahrenheit, HighestFahrenheit, nameof(temperatureFahrenheit));
        CheckHumidity(relativeHumidityPercent);
        return FullAlgorithm(temperatureFahrenheit, relativeHumidityPercent);
    }

    /// <summary>Rothfusz' polynomial alone, in °F: what the published chart prints, rounded half up.</summary>
    /// <param name="temperatureFahrenheit">The room's temperature in °F; it means something from 80 °F.</param>
    /// <param name="relativeHumidityPercent">The relative humidity, 0 to 100.</param>
    /// <remarks>The chart holds no adjustment for humid air: at 80 °F and 100 % it prints 87 where the full algorithm says 89.29.</remarks>
    public static double PolynomialInFahrenheit(double temperatureFahrenheit, double relativeHumidityPercent)
    {
        CheckRange(temperatureFahrenheit, LowestFahrenheit, HighestFahrenheit, nameof(temperatureFahrenheit));
        CheckHumidity(relativeHumidityPercent);
        return Polynomial(temperatureFahrenheit, relativeHumidityPercent);
    }

    /// <summary>A temperature in °F, given in °C.</summary>
    public static double ToFahrenheit(double celsius) => (celsius * 9 / 5) + 32;

    /// <summary>A temperature in °C, given in °F.</summary>
    public static double ToCelsius(double fahrenheit) => (fahrenheit - 32) * 5 / 9;

    private static double FullAlgorithm(double t, double rh)
    {
        var averaged = (Simple(t, rh) + t) / 2;
        return averaged < PolynomialFrom ? averaged : Polynomial(t, rh) - DryAir(t, rh) + HumidAir(t, rh);
    }

    private static double Simple(double t, double rh) => 0.5 * (t + 61.0 + ((t - 68.0) * 1.2) + (rh * 0.094));

    private static double Polynomial(double t, double rh) =>
        -42.379
        + (2.04901523 * t)
        + (10.14333127 * rh)
        - (0.22475541 * t * rh)
        - (0.00683783 * t * t)
        - (0.05481717 * rh * rh)
        + (0.00122874 * t * t * rh)
        + (0.00085282 * t * rh * rh)
        - (0.00000199 * t * t * rh * rh);

    private static double DryAir(double t, double rh) =>
        rh < 13 && t is >= 80 and <= 112 ? (13 - rh) / 4 * Math.Sqrt((17 - Math.Abs(t - 95)) / 17) : 0;

    private static double HumidAir(double t, double rh) => rh > 85 && t is >= 80 and <= 87 ? (rh - 85) / 10 * ((87 - t) / 5) : 0;

    private static void CheckHumidity(double percent) => CheckRange(percent, 0, 100, "relativeHumidityPercent");

    private static void CheckRange(double reading, double lowest, double highest, string name)
    {
        if (!(reading >= lowest && reading <= highest))
            throw new ArgumentOutOfRangeException(name, reading, $"A reading here lies from {lowest} to {highest}.");
    }
}
