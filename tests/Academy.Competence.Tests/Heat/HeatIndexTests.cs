using Academy.Competence.Heat;
using CsCheck;

namespace Academy.Competence.Tests.Heat;

// data/trade/heat-index-vectors.csv: 135 cells of the weather service's chart (published) and 26 pairs for the branches,
// computed from its published equation by another program.
public class HeatIndexTests
{
    // From here up the averaged simple formula is at 80 or more even in air without any water.
    private const double PolynomialEverywhereFrom = 81.1;

    private static IReadOnlyList<CheckRow> Pairs => CheckValues.Read("trade/heat-index-vectors.csv", rows: 161);

    private static IEnumerable<CheckRow> Chart => Pairs.Where(row => row.Has("hi_f_chart"));

    [Fact]
    public void The_full_algorithm_agrees_with_every_pair() =>
        Assert.All(Pairs, row => Assert.Equal(row.Number("hi_f_full"), Full(row), .00051));

    [Fact]
    public void The_same_room_in_Celsius_gives_the_same_index() =>
        Assert.All(
            Pairs,
            row =>
                Assert.Equal(
                    row.Number("hi_c_full"),
                    HeatIndex.InCelsius(HeatIndex.ToCelsius(Fahrenheit(row)), Humidity(row)),
                    .0051
                )
        );

    [Fact]
    public void The_polynomial_alone_agrees_with_every_pair() =>
        Assert.All(Pairs, row => Assert.Equal(row.Number("hi_f_regression"), Polynomial(row), .00051));

    [Fact]
    public void The_published_chart_prints_the_polynomial_in_all_cells_but_one()
    {
        var other = Chart.Where(row => row.Whole("hi_f_chart") != HalfUp(Polynomial(row)));

        Assert.Equal(135, Chart.Count());
        Assert.Equal(["90/45"], other.Select(Cell));
    }

    [Fact]
    public void The_full_algorithm_leaves_the_chart_in_the_humid_corner_by_at_most_two_and_a_half_degrees()
    {
        var other = Chart.Where(row => row.Whole("hi_f_chart") != HalfUp(Full(row)));

        Assert.Equal(["80/95", "80/100", "82/90", "82/95", "82/100", "84/95", "84/100", "86/95", "90/45"], other.Select(Cell));
        Assert.All(Chart, row => Assert.Equal(row.Number("hi_f_chart"), Full(row), 2.5));
    }

    [Fact]
    public void The_simple_formula_is_averaged_once_more_with_the_temperature()
    {
        var apart = Pairs.Where(row => row.Text("hi_f_full") != row.Text("hi_f_full_noavg")).ToList();

        Assert.NotEmpty(apart);
        Assert.All(apart, row => Assert.NotEqual(row.Number("hi_f_full_noavg"), Full(row), .01));
    }

    // The three checks to keep when all others go: the chart twice, and the humid adjustment that it lacks
    [Theory]
    [InlineData(90, 70, 105.92)]
    [InlineData(110, 40, 135.66)]
    [InlineData(80, 100, 89.29)]
    [InlineData(70, 40, 69.29)]
    public void A_room_has_the_published_index(double fahrenheit, double humidity, double index) =>
        Assert.Equal(index, HeatIndex.InFahrenheit(fahrenheit, humidity), .005);

    [Theory]
    [InlineData(31.9, 50)]
    [InlineData(122.1, 50)]
    [InlineData(double.NaN, 50)]
    [InlineData(80, -.1)]
    [InlineData(80, 100.1)]
    [InlineData(80, double.NaN)]
    public void A_reading_that_no_salon_has_is_refused(double fahrenheit, double humidity)
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => HeatIndex.InFahrenheit(fahrenheit, humidity));
        Assert.Throws<ArgumentOutOfRangeException>(() => HeatIndex.PolynomialInFahrenheit(fahrenheit, humidity));
        Assert.Throws<ArgumentOutOfRangeException>(() => HeatIndex.InCelsius(HeatIndex.ToCelsius(fahrenheit), humidity));
    }

    [Fact]
    public void A_refusal_names_the_reading_and_its_range()
    {
        var refusal = Assert.Throws<ArgumentOutOfRangeException>(() => HeatIndex.InCelsius(85, 40));

        Assert.Equal("temperatureCelsius", refusal.ParamName);
        Assert.StartsWith("A reading here lies from 0 to 50.", refusal.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(32, 0)]
    [InlineData(80, 26.666666666666668)]
    [InlineData(122, 50)]
    public void Fahrenheit_and_Celsius_are_the_same_temperature(double fahrenheit, double celsius)
    {
        Assert.Equal(celsius, HeatIndex.ToCelsius(fahrenheit), 1e-12);
        Assert.Equal(fahrenheit, HeatIndex.ToFahrenheit(celsius), 1e-12);
    }

    [Fact]
    public void A_hotter_room_has_a_higher_index_wherever_the_polynomial_answers() =>
        Gen.Select(
                Gen.Double[PolynomialEverywhereFrom, HeatIndex.HighestFahrenheit],
                Gen.Double[PolynomialEverywhereFrom, HeatIndex.HighestFahrenheit],
                Gen.Double[0, 100]
            )
            .Where((one, other, _) => Math.Abs(one - other) > .001)
            .Sample(
                (one, other, humidity) =>
                    HeatIndex.InFahrenheit(Math.Min(one, other), humidity)
                    < HeatIndex.InFahrenheit(Math.Max(one, other), humidity)
            );

    [Fact]
    public void Below_eighty_the_index_stays_within_a_few_degrees_of_the_room() =>
        Gen.Select(Gen.Double[HeatIndex.LowestFahrenheit, 75], Gen.Double[0, 100])
            .Sample((room, humidity) => Math.Abs(HeatIndex.InFahrenheit(room, humidity) - room) < 5);

    private static double Fahrenheit(CheckRow row) => row.Number("t_f");

    private static double Humidity(CheckRow row) => row.Number("rh_pct");

    private static double Full(CheckRow row) => HeatIndex.InFahrenheit(Fahrenheit(row), Humidity(row));

    private static double Polynomial(CheckRow row) => HeatIndex.PolynomialInFahrenheit(Fahrenheit(row), Humidity(row));

    private static int HalfUp(double index) => (int)Math.Floor(index + .5);

    private static string Cell(CheckRow row) => $"{row.Text("t_f")}/{row.Text("rh_pct")}";
}
