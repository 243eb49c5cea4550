using Academy.Competence.Evidence;
using Academy.Competence.SignOffs;

namespace Academy.Competence.Tests.SignOffs;

/// <summary>
/// Which grooms alone are looked at. The schedule, first ten all and then at least 1 in 3, is our own choice for the mirrored
/// test; no published schedule for salons.
/// </summary>
public sealed class InspectingTests
{
    [Theory]
    [InlineData(0, 0, false)] // nothing groomed alone yet
    [InlineData(1, 0, true)]
    [InlineData(10, 9, true)] // one of the first ten was left out
    [InlineData(10, 10, false)]
    [InlineData(11, 10, true)] // the eleventh begins the first three
    [InlineData(11, 11, false)]
    [InlineData(13, 11, false)] // eleventh to thirteenth: one is enough
    [InlineData(14, 11, true)]
    [InlineData(40, 20, false)] // ten, and one in three of thirty
    [InlineData(41, 20, true)]
    public void The_first_ten_grooms_alone_are_all_inspected_and_then_one_in_three(int alone, int inspected, bool isDue)
    {
        var tally = Tally.Empty with { SoloSinceClearance = alone, InspectedSinceClearance = inspected };

        Assert.Equal(isDue, Inspecting.IsDue(tally));
    }
}
