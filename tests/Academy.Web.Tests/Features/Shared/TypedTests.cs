using Academy.Web.Features.Shared;

namespace Academy.Web.Tests.Features.Shared;

public sealed class TypedTests
{
    [Theory]
    [InlineData("25", 250)]
    [InlineData("25,5", 255)]
    [InlineData("25.5", 255)]
    [InlineData(" 25.5 °C", 255)]
    [InlineData("25 c", 250)]
    [InlineData("−3", -30)] // a typeset minus
    [InlineData("25,55", 256)]
    [InlineData("0", 0)]
    [InlineData("", null)]
    [InlineData(null, null)]
    [InlineData("warm", null)]
    [InlineData("2 5,5,5", null)]
    [InlineData("77 °F", null)] // another scale is no number of ours
    [InlineData("1e1", null)]
    [InlineData("2550", null)]
    public void Temperatures_are_read_with_a_comma_or_a_point(string? typed, int? tenths) =>
        Assert.Equal(tenths, Typed.TenthsC(typed));

    [Theory]
    [InlineData("61", 61)]
    [InlineData("61 %", 61)]
    [InlineData("60,6", 61)]
    [InlineData("100", 100)]
    [InlineData("101", null)]
    [InlineData("-1", null)]
    [InlineData("damp", null)]
    public void Humidity_is_a_percentage(string typed, int? percent) => Assert.Equal(percent, Typed.Percent(typed));

    [Theory]
    [InlineData("31", 31)]
    [InlineData("31 kg", 31)]
    [InlineData("30,4", 31)] // never lighter than it is
    [InlineData("30.0", 30)]
    [InlineData("0", 0)] // a number; the rules say that it is no dog's
    [InlineData("-4", null)]
    [InlineData("heavy", null)]
    [InlineData("70 lb", null)]
    public void Weights_are_whole_kilograms_and_rounded_up(string typed, int? kilos) => Assert.Equal(kilos, Typed.Kilos(typed));

    [Theory]
    [InlineData("75", 75)]
    [InlineData("75 min", 75)]
    [InlineData("1:15", 75)]
    [InlineData("1 h 15", 75)]
    [InlineData("1h15min", 75)]
    [InlineData("1h", 60)]
    [InlineData("1,5 h", 90)]
    [InlineData("2 hours", 120)]
    [InlineData("0", 0)]
    [InlineData("1:75", null)]
    [InlineData("1441", null)]
    [InlineData("long", null)]
    public void Minutes_may_be_typed_as_hours(string typed, int? minutes) => Assert.Equal(minutes, Typed.Minutes(typed));

    [Theory]
    [InlineData("9:02", "09:02")]
    [InlineData("09:02:41", "09:02")]
    [InlineData("9.02", "09:02")]
    [InlineData("0902", "09:02")]
    [InlineData("902", "09:02")]
    [InlineData("9 h 02", "09:02")]
    [InlineData("23:59", "23:59")]
    [InlineData("24:00", null)]
    [InlineData("9:60", null)]
    [InlineData("nine", null)]
    public void Times_are_read_as_people_write_them(string typed, string? clock) =>
        Assert.Equal(
            clock is null ? null : TimeOnly.Parse(clock, System.Globalization.CultureInfo.InvariantCulture),
            Typed.Clock(typed)
        );

    [Theory]
    [InlineData("2026-07-14", "2026-07-14")]
    [InlineData("14.7.2026", "2026-07-14")]
    [InlineData("14/7/2026", "2026-07-14")]
    [InlineData("14 July 2026", "2026-07-14")]
    [InlineData("31.2.2026", null)]
    [InlineData("7/14/2026", null)]
    [InlineData("soon", null)]
    public void Days_are_read_day_first(string typed, string? day) =>
        Assert.Equal(
            day is null ? null : DateOnly.Parse(day, System.Globalization.CultureInfo.InvariantCulture),
            Typed.Day(typed)
        );
}
