using Academy.Competence.Trade;
using CsCheck;

namespace Academy.Competence.Tests.Trade;

// HSE leaflet INDG143 as reprinted by councils; the 25 kg near the waist are from memory
public class LiftingTests
{
    // times a minute, what is left of 25 kg
    [Theory]
    [InlineData("0", "25")]
    [InlineData(".9", "25")]
    [InlineData("1", "17.5")] // published: 30 % off at 1 to 2
    [InlineData("2", "17.5")]
    [InlineData("3", "12.5")] // between the published bands: the stricter neighbour, our own reading
    [InlineData("5", "12.5")] // published: 50 % off at 5 to 8
    [InlineData("8", "12.5")]
    [InlineData("9", "5")] // our own reading again
    [InlineData("13", "5")] // published: 80 % off above 12
    public void Lifting_often_leaves_less(decimal timesAMinute, decimal kilograms) =>
        Assert.Equal(kilograms, Lifting.LimitKilograms(liftsPerMinute: timesAMinute));

    // degrees, what is left of 25 kg; published: 10 % off past 45, 20 % off past 90
    [Theory]
    [InlineData("0", "25")]
    [InlineData("45", "25")]
    [InlineData("46", "22.5")]
    [InlineData("90", "22.5")]
    [InlineData("91", "20")]
    public void Turning_in_the_lift_leaves_less(decimal degrees, decimal kilograms) =>
        Assert.Equal(kilograms, Lifting.LimitKilograms(twistDegrees: degrees));

    [Fact]
    public void Both_at_once_leave_less_than_either() =>
        Assert.Equal(15.75m, Lifting.LimitKilograms(liftsPerMinute: 2, twistDegrees: 60));

    [Fact]
    public void A_salon_may_set_a_limit_of_its_own() =>
        Assert.Equal(11.2m, Lifting.LimitKilograms(nearWaistKilograms: 16, liftsPerMinute: 1));

    [Theory]
    [InlineData("24.9", false)]
    [InlineData("25", false)] // at the limit one person may
    [InlineData("25.1", true)]
    public void A_dog_above_the_limit_needs_two_people(decimal kilograms, bool two) =>
        Assert.Equal(two, Lifting.NeedsTwoPeople(kilograms));

    [Fact]
    public void Weights_and_turns_that_cannot_be_are_refused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => Lifting.NeedsTwoPeople(0));
        Assert.Throws<ArgumentOutOfRangeException>(() => Lifting.LimitKilograms(nearWaistKilograms: 0));
        Assert.Throws<ArgumentOutOfRangeException>(() => Lifting.LimitKilograms(liftsPerMinute: -1));
        Assert.Throws<ArgumentOutOfRangeException>(() => Lifting.LimitKilograms(twistDegrees: -1));
        Assert.Throws<ArgumentOutOfRangeException>(() => Lifting.LimitKilograms(twistDegrees: 181));
    }

    [Fact]
    public void Harder_conditions_never_allow_more() =>
        Gen.Select(Gen.Decimal[0, 20], Gen.Decimal[0, 20], Gen.Decimal[0, 180])
            .Sample(
                (one, other, degrees) =>
                    Lifting.LimitKilograms(liftsPerMinute: Math.Max(one, other), twistDegrees: degrees)
                    <= Lifting.LimitKilograms(liftsPerMinute: Math.Min(one, other), twistDegrees: degrees)
            );
}
