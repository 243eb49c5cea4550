using Academy.Competence.Judges;

namespace Academy.Competence.Tests.Judges;

public class LevelAgreementTests
{
    // data/competence/icc.json: Shrout and Fleiss 1979, six grooms by four judges (published .29, .71, .62); an invented round
    // of 30 grooms by two judges; values computed, equal to R's psych
    [Theory]
    [InlineData("shrout_fleiss")]
    [InlineData("calibration5")]
    public void Agreement_on_levels_is_that_of_the_published_example(string set)
    {
        var check = CheckFigures.Read("competence/icc.json").GetProperty(set);
        var expected = check.GetProperty("results");
        var found = LevelAgreement.Of(check.Rows("data"))!;

        Assert.Equal((expected.Number("n"), expected.Number("k")), (found.Grooms, found.Judges));
        Assert.Equal(expected.Number("ICC2_1"), found.Same, 1e-9);
        Assert.Equal(expected.Number("ICC3_1"), found.SameOrder, 1e-9);
        Assert.Equal(expected.Number("ICC2_k"), found.SameOfMean, 1e-9);
        Assert.Equal(expected.Numbers("ci_ICC2_1")[0], found.Range.Lower, 1e-8);
        Assert.Equal(expected.Numbers("ci_ICC2_1")[1], found.Range.Upper, 1e-8);
    }

    [Fact]
    public void Judges_who_differ_by_one_level_each_time_see_one_order_and_not_one_level()
    {
        var found = LevelAgreement.Of([
            [1, 2],
            [2, 3],
            [3, 4],
            [4, 5],
        ])!;

        Assert.Equal(1, found.SameOrder, 1e-12);
        Assert.True(found.Same < .8);
    }

    [Fact]
    public void One_groom_one_judge_or_no_difference_has_no_value()
    {
        Assert.Null(
            LevelAgreement.Of([
                [3, 4],
            ])
        );
        Assert.Null(
            LevelAgreement.Of([
                [3],
                [4],
            ])
        );
        Assert.Null(
            LevelAgreement.Of([
                [3, 3],
                [3, 3],
            ])
        );
        Assert.Null(LevelAgreement.Of([]));
    }
}
