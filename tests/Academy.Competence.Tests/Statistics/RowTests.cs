using Academy.Competence.Statistics;
using static Academy.Competence.Statistics.Verdict;

namespace Academy.Competence.Tests.Statistics;

public class RowTests
{
    [Theory]
    [InlineData(0, Suitable, 1)]
    [InlineData(14, Suitable, 15)]
    [InlineData(15, Suitable, 15)] // a full row does not grow
    [InlineData(15, Unsuitable, 11)]
    [InlineData(4, Unsuitable, 0)]
    [InlineData(3, Unsuitable, 0)] // never below none
    [InlineData(15, Critical, 0)]
    [InlineData(0, Critical, 0)]
    public void One_rated_groom_moves_the_standard_row(int before, Verdict verdict, int after) =>
        Assert.Equal(after, Row.Step(before, verdict, RowProfile.Standard));

    [Fact]
    public void Nothing_that_is_not_a_verdict_moves_a_row() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Row.Step(3, (Verdict)7, RowProfile.Standard));
}
