using Academy.Competence.Facts;
using Academy.Competence.Quizzes;
using Academy.Competence.Quizzes.Measuring;
using static Academy.Competence.Tests.Cast.TestSalon;

namespace Academy.Competence.Tests.Quizzes;

public class QuizPastTests
{
    private static readonly Module Drying = TestModule.Drying(mustKnow: 6, others: 24);

    [Fact]
    public void Somebody_who_was_never_asked_has_no_past()
    {
        var past = new QuizPast([]);

        Assert.Null(past.Passed);
        Assert.Empty(past.TimesAsked);
        Assert.Equal(1, past.ChanceKnown("air-01", Now));
        Assert.Equal(20, past.Choose(Drying, QuizKind.CatchUp, 7, Now).Count);
    }

    [Fact]
    public void What_was_asked_is_counted_right_or_wrong()
    {
        var past = new QuizPast([Read(Now.AddDays(-40), "air-01", "air-02"), Read(Now.AddDays(-10), "air-02")]);

        Assert.Equal(1, past.TimesAsked["air-01"]);
        Assert.Equal(2, past.TimesAsked["air-02"]);
    }

    [Fact]
    public void A_question_answered_wrong_is_the_first_to_be_asked_again()
    {
        // air-01 was right and air-02 was left empty, both 40 days ago
        var past = new QuizPast([Read(Now.AddDays(-40), "air-01", "air-02")]);

        Assert.Equal(Recall.Chance(2 * Recall.FirstHalfLife, 40), past.ChanceKnown("air-01", Now), 1e-9);
        Assert.Equal(Recall.Chance(Recall.FirstHalfLife / 2, 40), past.ChanceKnown("air-02", Now), 1e-9);
        Assert.Contains("air-02", past.Choose(Drying, QuizKind.Refresher, 7, Now));
        Assert.DoesNotContain("air-01", past.Choose(Drying, QuizKind.Refresher, 7, Now));
    }

    [Fact]
    public void An_attempt_whose_edition_is_gone_still_counts_as_asked()
    {
        var past = new QuizPast([Read(Now.AddDays(-40), "air-01", "air-02") with { Module = null }]);

        Assert.Equal(["air-01"], past.TimesAsked.Keys);
        Assert.Null(past.Passed);
    }

    // the first question is answered right, the others are left empty
    private static AttemptRead Read(DateTimeOffset at, params string[] asked)
    {
        var sitting = new Sitting(
            new(Number(1)),
            Pim.Id,
            Drying.Name,
            Drying.Hash,
            IsRefresher: false,
            7,
            at,
            ReadOutBy: null,
            [.. asked]
        );
        var first = sitting.Draw(Drying)[0];
        var handedIn = Assert.IsType<Granted>(sitting.HandIn(Drying, [new Answer(first.Id, first.Kind.Right)], at));
        return new((AttemptHandedIn)handedIn.Facts[0], Drying);
    }
}
