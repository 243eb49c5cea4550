using System.Globalization;
using Academy.Competence.Quizzes.Amounts;
using CsCheck;

namespace Academy.Competence.Tests.Quizzes.Amounts;

/// <summary>Amounts as people type them, and units that stand for each other.</summary>
public class AmountTests
{
    // typed                     value, unit
    [Theory]
    [InlineData("3.2 mm", 3.2, "mm")]
    [InlineData("3.2mm", 3.2, "mm")]
    [InlineData("3,2 MM", 3.2, "mm")]
    [InlineData("0,32 cm", 0.32, "cm")]
    [InlineData(",5 cm", 0.5, "cm")]
    [InlineData(".5cm", 0.5, "cm")]
    [InlineData("1/8 in", 0.125, "in")]
    [InlineData("1 / 8 inches", 0.125, "in")]
    [InlineData("3 1/8 in", 3.125, "in")]
    [InlineData("3-1/8 in", 3.125, "in")]
    [InlineData("3⅛ in", 3.125, "in")]
    [InlineData("½\"", 0.5, "in")]
    [InlineData("1/8″", 0.125, "in")]
    [InlineData("3.2 mm.", 3.2, "mm")]
    [InlineData("  7   millimetres  ", 7, "mm")]
    [InlineData("7\u00A0mm", 7, "mm")] // a space that does not break the line
    [InlineData("1000 mm", 1000, "mm")]
    [InlineData("-3 mm", -3, "mm")]
    [InlineData("−3 mm", -3, "mm")]
    public void A_length_is_read_as_people_write_it(string typed, double value, string unit) =>
        AssertRead(typed, Measure.Length, value, unit);

    [Theory]
    [InlineData("26 °C", Measure.Temperature, 26, "°C")]
    [InlineData("26°c", Measure.Temperature, 26, "°C")]
    [InlineData("26 º C", Measure.Temperature, 26, "°C")]
    [InlineData("26 degrees C", Measure.Temperature, 26, "°C")]
    [InlineData("-40F", Measure.Temperature, -40, "°F")]
    [InlineData("25 kg", Measure.Weight, 25, "kg")]
    [InlineData("55 lbs", Measure.Weight, 55, "lb")]
    [InlineData("500 G", Measure.Weight, 500, "g")]
    [InlineData("1.5 L", Measure.Volume, 1.5, "l")]
    [InlineData("250 mL", Measure.Volume, 250, "ml")]
    [InlineData("1 1/2 hours", Measure.Duration, 1.5, "h")]
    [InlineData("90 secs", Measure.Duration, 90, "s")]
    [InlineData("10min", Measure.Duration, 10, "min")]
    [InlineData("28 d", Measure.Duration, 28, "days")]
    [InlineData("1 day", Measure.Duration, 1, "days")]
    [InlineData("40 %", Measure.Share, 40, "%")]
    [InlineData("40 per cent", Measure.Share, 40, "%")]
    [InlineData("8", Measure.Nothing, 8, "")]
    public void So_is_everything_else(string typed, Measure measure, double value, string unit) =>
        AssertRead(typed, measure, value, unit);

    [Theory]
    [InlineData("")]
    [InlineData("   ")]
    [InlineData("mm")]
    [InlineData("three mm")]
    [InlineData("3.2.1 mm")]
    [InlineData("1,000.5 mm")] // a comma marks decimals, so there are none between thousands
    [InlineData("3..2 mm")]
    [InlineData("1/0 in")]
    [InlineData("1//8 in")]
    [InlineData("1/8/2 in")]
    [InlineData("3-4 mm")] // a range is no number
    [InlineData("about 3 mm")]
    [InlineData("1 h 30 min")]
    [InlineData("9999999999 mm")] // more digits than any answer has
    [InlineData("١٢ mm")] // digits of another script
    [InlineData("1e5 mm")]
    [InlineData("3\nmm\n3")]
    public void What_is_no_number_says_so(string typed) =>
        Assert.IsNotType<ReadAmount.Whole>(ReadAmount.Of(typed, Measure.Length));

    [Theory]
    [InlineData("3.2")]
    [InlineData("1/8")]
    [InlineData(" 3 ")]
    public void A_number_without_its_unit_says_so(string typed) =>
        Assert.Equal(new ReadAmount.NoUnit(), ReadAmount.Of(typed, Measure.Length));

    [Theory]
    [InlineData("3.2 m", Measure.Length, "m")]
    [InlineData("3.2 kg", Measure.Length, "kg")]
    [InlineData("3.2 mm mm", Measure.Length, "mm mm")]
    [InlineData("3 <b>", Measure.Length, "<b>")]
    [InlineData("8 dogs", Measure.Nothing, "dogs")]
    public void A_unit_that_does_not_fit_says_so(string typed, Measure measure, string unit) =>
        Assert.Equal(new ReadAmount.OtherUnit(unit), ReadAmount.Of(typed, measure));

    [Fact]
    public void A_text_of_any_length_is_looked_at_in_no_time() =>
        Assert.Equal(new ReadAmount.NoNumber(), ReadAmount.Of(new string('1', 1 << 20), Measure.Length));

    [Fact]
    public void Nothing_that_can_be_typed_gives_the_reader_up() =>
        Gen.String[0, 45].Sample(typed => Enum.GetValues<Measure>().All(measure => ReadAmount.Of(typed, measure) is not null));

    [Fact]
    public void What_is_written_out_is_read_back() =>
        Gen.Select(Gen.Int[-99_999_999, 99_999_999], Gen.Int[0, Units.Length - 1].Select(place => Units[place]))
            .Sample(
                (tenthousandths, unit) =>
                {
                    Amount amount = new(tenthousandths / 10_000m, unit);
                    return new ReadAmount.Whole(amount).Equals(ReadAmount.Of(amount.ToString(), unit.Measures));
                }
            );

    [Fact]
    public void A_comma_is_worth_a_point() =>
        Gen.Select(Gen.Int[0, 9999], Gen.Int[0, 9999])
            .Sample(
                (whole, part) =>
                    ReadAmount.Of($"{whole},{part} mm", Measure.Length) == ReadAmount.Of($"{whole}.{part} mm", Measure.Length)
            );

    [Fact]
    public void A_fraction_is_worth_its_decimals() =>
        Gen.Select(Gen.Int[0, 99], Gen.Int[0, 63], Gen.Int[1, 6].Select(power => 1 << power))
            .Sample(
                (whole, top, bottom) =>
                    new ReadAmount.Whole(new(whole + top / (decimal)bottom, Unit.Find("in")!)).Equals(
                        ReadAmount.Of($"{whole} {top}/{bottom} in", Measure.Length)
                    )
            );

    // NIST Special Publication 811 (2008), appendix B.8 (factors in bold are exact) and table 6 for the times.
    [Theory]
    [InlineData("1 in", "25.4 mm")]
    [InlineData("1 in", "2.54 cm")]
    [InlineData("1/8 in", "3.175 mm")]
    [InlineData("1 lb", "0.45359237 kg")]
    [InlineData("1 lb", "453.59237 g")]
    [InlineData("32 °F", "0 °C")]
    [InlineData("212 °F", "100 °C")]
    [InlineData("-40 °F", "-40 °C")]
    [InlineData("80 °F", "26.666666667 °C")]
    [InlineData("1 l", "1000 ml")]
    [InlineData("1 min", "60 s")]
    [InlineData("1 h", "60 min")]
    [InlineData("1 days", "24 h")]
    [InlineData("1 days", "86400 s")]
    public void Units_stand_for_each_other_exactly(string one, string other)
    {
        Assert.True(Amount(one).IsWithin(0, of: Amount(other)));
        Assert.True(Amount(other).IsWithin(0, of: Amount(one)));
    }

    [Theory]
    [InlineData("25.400001 mm", "1 in")]
    [InlineData("32.0001 °F", "0 °C")]
    [InlineData("1 mm", "1 g")]
    [InlineData("1", "1 mm")]
    public void And_nothing_else_does(string one, string other) => Assert.False(Amount(one).IsWithin(0, of: Amount(other)));

    // asked for 26 °C, within 1 °C: a gap of 1 °C is one of 1.8 °F, whatever the zeros are
    [Theory]
    [InlineData("80.6 °F", true)] // 27 °C
    [InlineData("80.7 °F", false)]
    [InlineData("77 °F", true)] // 25 °C
    [InlineData("76.9 °F", false)]
    public void How_far_off_counts_in_the_unit_of_the_answer(string given, bool near) =>
        Assert.Equal(near, Amount(given).IsWithin(1, of: Amount("26 °C")));

    [Fact]
    public void An_amount_is_as_near_as_the_gap_and_no_nearer() =>
        Gen.Select(Gen.Int[-10_000, 10_000], Gen.Int[1, 10_000])
            .Sample(
                (value, gap) =>
                {
                    Amount right = new(value / 100m, Unit.Find("mm")!);
                    Amount off = right with { Value = right.Value + gap / 100m };
                    return off.IsWithin(gap / 100m, right)
                        && right.IsWithin(gap / 100m, off)
                        && !off.IsWithin((gap - 1) / 100m, right);
                }
            );

    [Fact]
    public void A_third_is_a_third_however_it_is_written() => Assert.True(Amount("1/3 in").IsWithin(0, of: Amount("2/6 in")));

    [Theory]
    [InlineData("3.20 mm", "3.2 mm")]
    [InlineData("1/8 in", "0.125 in")]
    [InlineData("1/3 in", "0.3333 in")]
    [InlineData("8", "8")]
    [InlineData("40%", "40 %")]
    public void An_amount_is_shown_with_a_point_and_its_unit(string typed, string shown) =>
        Assert.Equal(shown, Amount(typed).ToString());

    private static readonly Unit[] Units = [.. Enum.GetValues<Measure>().SelectMany(Unit.Measuring)];

    private static Amount Amount(string written) => ReadAmount.OfAnything(written)!;

    private static void AssertRead(string typed, Measure measure, double value, string unit) =>
        Assert.Equal(
            new ReadAmount.Whole(
                new(decimal.Parse(value.ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture), Unit.Find(unit)!)
            ),
            ReadAmount.Of(typed, measure)
        );
}
