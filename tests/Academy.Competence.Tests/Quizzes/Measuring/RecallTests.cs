using Academy.Competence.Quizzes.Measuring;

namespace Academy.Competence.Tests.Quizzes.Measuring;

public class RecallTests
{
    private static readonly DateTimeOffset Learned = new(2026, 3, 1, 12, 0, 0, TimeSpan.Zero);

    // data/competence/refreshers.csv: the half-life formula (as described of Settles and Meeder 2016), values computed
    [Fact]
    public void Recall_and_the_days_until_it_has_sunk_agree_with_the_check_values() =>
        Assert.All(
            CheckValues.Read("competence/refreshers.csv", rows: 42),
            row =>
            {
                var halfLife = row.Number("halflife_days");

                Assert.Equal(row.Number("recall"), Recall.Chance(halfLife, row.Number("days")), 1e-9);
                Assert.Equal(row.Number("due_days_target_0.90"), Recall.DaysUntil(halfLife, .9), 1e-9);
                Assert.Equal(row.Number("due_days_target_0.80"), Recall.DaysUntil(halfLife, .8), 1e-9);
            }
        );

    [Fact]
    public void Nine_in_ten_still_know_when_the_first_refresher_is_due() =>
        Assert.Equal(.9, Recall.ChanceNow([], Learned, Learned.AddDays(28)), .0005);

    [Fact]
    public void A_right_answer_doubles_the_half_life_and_a_wrong_one_halves_it()
    {
        var asked = Learned.AddDays(28);
        var later = asked.AddDays(30);

        Assert.Equal(Recall.Chance(368, 30), Recall.ChanceNow([(asked, true)], Learned, later), 1e-12);
        Assert.Equal(Recall.Chance(92, 30), Recall.ChanceNow([(asked, false)], Learned, later), 1e-12);
        Assert.Equal(Recall.Chance(184, 30), Recall.ChanceNow([(asked, true), (Learned, false)], Learned, later), 1e-12);
    }

    [Fact]
    public void An_answer_after_the_moment_asked_about_does_not_count() =>
        Assert.Equal(
            Recall.ChanceNow([], Learned, Learned.AddDays(5)),
            Recall.ChanceNow([(Learned.AddDays(6), false)], Learned, Learned.AddDays(5))
        );
}
