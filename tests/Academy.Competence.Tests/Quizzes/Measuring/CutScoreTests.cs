using Academy.Competence.Quizzes.Measuring;

namespace Academy.Competence.Tests.Quizzes.Measuring;

public class CutScoreTests
{
    // data/competence/angoff.json: four invented judges, eight questions, computed
    [Fact]
    public void The_cut_of_a_panel_its_error_and_its_range_agree_with_the_check_values()
    {
        var check = PublishedSheets.File("angoff.json");
        double[][] judges =
        [
            .. check
                .GetProperty("ratings")
                .EnumerateArray()
                .Select(judge => judge.EnumerateArray().Select(chance => chance.GetDouble()).ToArray()),
        ];
        var cut = CutScore.Of(judges);

        Assert.Equal(check.GetProperty("cut_score").GetDouble(), cut.Score, 1e-9);
        Assert.Equal(check.GetProperty("se").GetDouble(), cut.StandardError!.Value, 1e-9);
        Assert.Equal(check.GetProperty("ci95")[0].GetDouble(), cut.Range!.Value.Lower, 1e-9);
        Assert.Equal(check.GetProperty("ci95")[1].GetDouble(), cut.Range.Value.Upper, 1e-9);
        Assert.Equal(8, cut.ByQuestion.Count);
        foreach (var (expected, found) in check.GetProperty("item_means").EnumerateArray().Zip(cut.ByQuestion))
            Assert.Equal(expected.GetDouble(), found, 1e-9);
        // without a floor, 6 of these 8 have to be right
        Assert.Equal(check.GetProperty("pass_if_raw_at_least").GetInt32(), CutScore.RightAsked(cut.ByQuestion, floorPercent: 0));
    }

    [Fact]
    public void One_judge_has_a_cut_and_no_error()
    {
        var cut = CutScore.Of([
            [.9, .8],
        ]);

        Assert.Equal(1.7, cut.Score, 1e-12);
        Assert.Null(cut.StandardError);
        Assert.Null(cut.Range);
    }

    [Theory]
    [InlineData(.70, 20, 16)] // the salon's own 80 in 100 stays
    [InlineData(.80, 20, 16)] // exactly as much
    [InlineData(.85, 20, 17)]
    [InlineData(.86, 20, 18)] // 17.2 is rounded up
    [InlineData(1.0, 20, 20)] // never more than were asked
    [InlineData(.50, 8, 7)] // 6.4 is rounded up
    public void Judges_may_ask_for_more_than_the_floor_and_not_for_less(double chance, int questions, int right) =>
        Assert.Equal(right, CutScore.RightAsked([.. Enumerable.Repeat(chance, questions)], floorPercent: 80));

    [Fact]
    public void A_panel_without_judges_or_with_a_chance_above_1_is_refused()
    {
        Assert.Throws<ArgumentException>(() => CutScore.Of([]));
        Assert.Throws<ArgumentException>(() =>
            CutScore.Of([
                [1.1],
            ])
        );
        Assert.Throws<ArgumentException>(() =>
            CutScore.Of([
                [.5],
                [.5, .5],
            ])
        );
    }

    // Lord 1955: the root of x (n - x) / (n - 1); 15 of 20 gives the root of 75 / 19
    [Theory]
    [InlineData(15, 20, 1.98680)]
    [InlineData(14, 20, 2.10263)]
    [InlineData(20, 20, 0)]
    [InlineData(5, 8, 1.46385)]
    public void The_error_of_one_score_follows_from_the_score(int right, int of, double error) =>
        Assert.Equal(error, NearMark.StandardError(right, of), 5e-6);

    [Theory]
    [InlineData(16, false)] // passed
    [InlineData(15, true)]
    [InlineData(14, true)] // two below, and the error is 2.1
    [InlineData(13, false)] // three below, and the error is 2.2
    public void Within_one_error_below_the_mark_is_nearly(int right, bool nearly) =>
        Assert.Equal(nearly, NearMark.IsNearly(right, asked: 16, of: 20));
}
