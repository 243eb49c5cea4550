using Academy.Competence.Skills;
using Academy.Competence.Statistics;
using Academy.Competence.Thresholds;
using static Academy.Competence.Tests.Cast.PathWords;
using static Academy.Competence.Tests.Cast.TestSalon;

namespace Academy.Competence.Tests.Thresholds;

public class ThresholdTests
{
    // what could never be met or means nothing
    [Theory]
    [InlineData(0, 3, 2, 3, 120)] // versions count from 1
    [InlineData(1, -1, 2, 3, 120)]
    [InlineData(1, 21, 2, 3, 120)] // 21 breeds among 20 grooms
    [InlineData(1, 3, -1, 3, 120)]
    [InlineData(1, 3, 7, 3, 120)] // seven seniors with three ratings each are 21
    [InlineData(1, 3, 2, -1, 120)]
    [InlineData(1, 3, 2, 11, 120)] // the tally remembers ten days
    [InlineData(1, 3, 2, 3, 0)] // a window of no days
    [InlineData(1, 3, 2, 3, 3661)]
    public void Nonsense_is_refused_when_a_threshold_is_made_and_when_it_is_changed(
        int version,
        int breeds,
        int seniors,
        int grooms,
        int days
    )
    {
        Assert.Throws<ArgumentOutOfRangeException>(() =>
            new Threshold(SkillBook.Double, version, Today, RowProfile.Standard, breeds, seniors, grooms, days)
        );
        Assert.Throws<ArgumentOutOfRangeException>(() =>
            Standard with
            {
                Version = version,
                Breeds = breeds,
                Seniors = seniors,
                RecentGrooms = grooms,
                RecentDays = days,
            }
        );
    }

    [Theory]
    [InlineData(1, 0, 0, 0, 1)]
    [InlineData(int.MaxValue, 20, 6, 10, 3660)]
    public void The_widest_numbers_are_accepted(int version, int breeds, int seniors, int grooms, int days) =>
        Assert.Equal(
            new Threshold(SkillBook.Double, version, Today, RowProfile.Standard, breeds, seniors, grooms, days),
            Standard with
            {
                Version = version,
                FromDay = Today,
                Breeds = breeds,
                Seniors = seniors,
                RecentGrooms = grooms,
                RecentDays = days,
            }
        );

    [Fact]
    public void A_row_whose_marks_mean_nothing_cannot_be_put_into_a_threshold() =>
        Assert.Throws<ArgumentOutOfRangeException>(() =>
            Standard with
            {
                Row = new RowProfile(p0: .5, marksTaken: 4, marksToFill: 15),
            }
        );
}
