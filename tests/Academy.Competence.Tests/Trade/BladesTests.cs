using Academy.Competence.Trade;

namespace Academy.Competence.Tests.Trade;

// Numbers and teeth: the sizes that the trade shares; skip-tooth numbers and the surgical lengths are common practice, no
// published source for salons.
public class BladesTests
{
    [Fact]
    public void Skip_tooth_blades_are_those_without_a_letter_from_7_down() =>
        Assert.Equal(["7", "5", "4", "3"], Blades.Common.Where(Blades.IsSkipTooth));

    [Fact]
    public void The_surgical_lengths_are_40_and_30() => Assert.Equal(["40", "30"], Blades.Common.Where(Blades.IsSurgical));

    [Fact]
    public void The_common_blades_are_listed_once_and_stand_from_short_to_long()
    {
        var numbers = Blades.Common.Where(blade => blade != Blades.Comb).Select(Number).ToList();

        Assert.Equal(numbers.OrderDescending(), numbers);
        Assert.Equal(Blades.Common.Count, Blades.Common.Distinct().Count());
    }

    private static decimal Number(string blade) =>
        decimal.Parse(blade.TrimEnd('F'), System.Globalization.CultureInfo.InvariantCulture);
}
