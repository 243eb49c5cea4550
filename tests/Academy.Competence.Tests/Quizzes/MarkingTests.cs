using System.Globalization;
using Academy.Competence.Quizzes;
using CsCheck;
using CsvHelper;
using CsvHelper.Configuration;
using MathNet.Numerics.Distributions;

namespace Academy.Competence.Tests.Quizzes;

public class MarkingTests
{
    private static readonly Module Drying = TestModule.Drying();

    [Fact]
    public void All_right_passes() => Assert.Equal(new(20, 20, [], [], HasPassed: true), Marked());

    [Theory]
    [InlineData(16, true)] // 80 % is enough
    [InlineData(15, false)]
    [InlineData(0, false)]
    public void Sixteen_of_twenty_pass(int right, bool passed)
    {
        var module = TestModule.Drying(mustKnow: 0);
        var wrong = Quizzing.Draw(module, 5).Take(20 - right).Select(question => question.Id).ToArray();
        var mark = Quizzing.Mark(module, 5, TestModule.Answers(module, 5, QuizKind.Whole, wrong));

        Assert.Equal((right, passed), (mark.Right, mark.HasPassed));
    }

    [Fact]
    public void One_wrong_must_know_question_fails_whatever_the_score()
    {
        var mustKnow = Asked().First(question => question.IsMustKnow).Id;

        Assert.Equal(new(19, 20, [mustKnow], [mustKnow], HasPassed: false), Marked(mustKnow));
    }

    [Theory]
    [InlineData(8, true)]
    [InlineData(6, true)]
    [InlineData(5, false)]
    public void Six_of_eight_pass_a_refresher(int right, bool passed)
    {
        var module = TestModule.Drying(mustKnow: 0);
        var wrong = Quizzing.Draw(module, 5, QuizKind.Refresher).Take(8 - right).Select(question => question.Id).ToArray();
        var mark = Quizzing.Mark(module, 5, QuizKind.Refresher, TestModule.Answers(module, 5, QuizKind.Refresher, wrong));

        Assert.Equal(passed, mark.HasPassed);
    }

    [Fact]
    public void An_empty_quiz_is_never_passed() =>
        Assert.Equal(new(0, 0, [], [], HasPassed: false), Quizzing.Mark(TestModule.Drying(0, 0), 1, []));

    [Fact]
    public void A_question_without_an_answer_is_wrong()
    {
        var mark = Quizzing.Mark(Drying, 5, []);

        Assert.Equal((0, 20, 20, 4), (mark.Right, mark.Of, mark.Wrong.Count, mark.MustKnowWrong.Count));
    }

    [Theory]
    [InlineData("0 1", true)]
    [InlineData("1 0", true)]
    [InlineData("0 1 1", true)] // picking one twice is picking it
    [InlineData("0", false)] // one of two
    [InlineData("0 1 2", false)] // one too many
    [InlineData("", false)]
    [InlineData("0 1 99", false)] // a place that does not exist
    [InlineData("-1 0 1", false)]
    public void A_question_with_several_right_options_asks_for_exactly_those(string picked, bool right)
    {
        var question = TestModule.Question("pads", isMustKnow: false, right: 2);

        Assert.True(((Choice)question.Kind).SeveralRight);
        Assert.Equal(right, question.IsAnsweredBy(new Picked([.. Places(picked)])));
    }

    [Fact]
    public void A_question_with_one_right_option_does_not_say_several() =>
        Assert.False(((Choice)TestModule.Question("pads", isMustKnow: false).Kind).SeveralRight);

    [Fact]
    public void The_later_of_two_answers_to_one_question_counts()
    {
        var first = Asked()[0];
        Answer wrong = new(first.Id, [.. TestModule.Places(first, right: false)]);
        var right = TestModule.Answers(Drying, 5, QuizKind.Whole);

        Assert.Equal(20, Quizzing.Mark(Drying, 5, [wrong, .. right]).Right);
        Assert.Equal([first.Id], Quizzing.Mark(Drying, 5, [.. right, wrong]).Wrong);
    }

    [Fact]
    public void An_answer_to_a_question_that_was_not_asked_counts_for_nothing()
    {
        var notAsked = Drying.Questions.Select(question => question.Id).Except(Asked().Select(question => question.Id)).First();

        Assert.Equal(0, Quizzing.Mark(Drying, 5, [new(notAsked, [0])]).Right);
    }

    [Fact]
    public void Answers_to_another_draw_are_not_worth_the_same() =>
        Assert.False(Quizzing.Mark(Drying, 6, TestModule.Answers(Drying, 5, QuizKind.Whole)).HasPassed);

    [Fact]
    public void The_number_right_and_the_number_wrong_make_up_the_quiz() =>
        Gen.Select(Gen.Int, Gen.Int[0, 20])
            .Sample(
                (seed, wrong) =>
                {
                    string[] missed = [.. Quizzing.Draw(Drying, seed).Take(wrong).Select(question => question.Id)];
                    var mark = Quizzing.Mark(Drying, seed, TestModule.Answers(Drying, seed, QuizKind.Whole, missed));
                    return mark.Right == 20 - wrong && mark.Wrong.SequenceEqual(missed);
                }
            );

    // data/competence/quiz_false_pass.csv, binomial distribution computed with scipy 1.10: the reason for 20 questions and 80 %.
    [Theory]
    [MemberData(nameof(PassesByKnowledge))]
    public void The_pass_mark_lets_through_what_the_binomial_distribution_says(
        int questions,
        int passAt,
        double knows,
        double passes
    )
    {
        QuizKind kind = new(questions, MostMustKnow: 0, PassPercent: 80);
        var mark = Enumerable.Range(0, questions + 1).First(right => kind.IsPassMark(right, questions));

        Assert.Equal(passAt, mark);
        Assert.Equal(passes, 1 - Binomial.CDF(knows, questions, mark - 1), 9);
    }

    public static TheoryData<int, int, double, double> PassesByKnowledge()
    {
        using StreamReader file = new(Path.Combine(AppContext.BaseDirectory, "data", "competence", "quiz_false_pass.csv"));
        using CsvReader csv = new(file, new CsvConfiguration(CultureInfo.InvariantCulture) { AllowComments = true });
        return
        [
            .. csv.GetRecords(
                    new
                    {
                        n_items = 0,
                        pass_at = 0,
                        p_true = 0d,
                        P_pass = 0d,
                    }
                )
                .Where(row => row.pass_at * 5 == row.n_items * 4)
                .Select(row => (row.n_items, row.pass_at, row.p_true, row.P_pass)),
        ];
    }

    private static Listed<Question> Asked() => Quizzing.Draw(Drying, seed: 5);

    private static Result Marked(params string[] wrong) =>
        Quizzing.Mark(Drying, 5, TestModule.Answers(Drying, 5, QuizKind.Whole, wrong));

    private static IEnumerable<int> Places(string words) =>
        words.Split(' ', StringSplitOptions.RemoveEmptyEntries).Select(word => int.Parse(word, CultureInfo.InvariantCulture));
}
