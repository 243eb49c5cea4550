using Academy.Competence.Quizzes;
using CsCheck;

namespace Academy.Competence.Tests.Quizzes;

public class DrawingTests
{
    [Theory]
    [InlineData(6, 20, 4, 20)]
    [InlineData(2, 30, 2, 20)] // fewer must-know questions than four: all of them
    [InlineData(0, 30, 0, 20)]
    [InlineData(3, 9, 3, 12)] // fewer than 20 questions: all of them
    [InlineData(9, 10, 4, 14)] // a fifth must-know question never makes up the number
    [InlineData(0, 0, 0, 0)]
    public void A_quiz_has_twenty_questions_of_which_four_are_must_know(int mustKnow, int others, int drawnMustKnow, int drawn)
    {
        var quiz = Quizzing.Draw(TestModule.Drying(mustKnow, others), seed: 1);

        Assert.Equal(drawn, quiz.Count);
        Assert.Equal(drawnMustKnow, quiz.Count(question => question.IsMustKnow));
    }

    [Fact]
    public void A_refresher_has_eight_questions_of_which_four_are_must_know()
    {
        var quiz = Quizzing.Draw(TestModule.Drying(), seed: 1, QuizKind.Refresher);

        Assert.Equal(8, quiz.Count);
        Assert.Equal(4, quiz.Count(question => question.IsMustKnow));
    }

    [Fact]
    public void One_seed_always_draws_the_same_quiz() =>
        Gen.Int.Sample(seed => Shown(TestModule.Drying(), seed) == Shown(TestModule.Drying(), seed));

    [Fact]
    public void Another_seed_draws_another_quiz() =>
        Assert.Equal(100, Enumerable.Range(-50, 100).Select(seed => Shown(TestModule.Drying(), seed)).Distinct().Count());

    [Fact]
    public void No_question_comes_twice_and_every_option_stays() =>
        Gen.Select(Gen.Int, Gen.Int[0, 30], Gen.Int[0, 40])
            .Sample(
                (seed, mustKnow, others) =>
                {
                    var module = TestModule.Drying(mustKnow, others);
                    var quiz = Quizzing.Draw(module, seed);
                    return quiz.DistinctBy(question => question.Id).Count() == quiz.Count
                        && quiz.All(drawn =>
                            TestModule
                                .Options(module.Questions.Single(question => question.Id == drawn.Id))
                                .ToHashSet()
                                .SetEquals(TestModule.Options(drawn))
                        );
                }
            );

    // With 1000 quizzes and 4 options the standard error is 14 (binomial distribution); 60 is more than four of them.
    [Fact]
    public void The_right_option_stands_in_every_place_as_often()
    {
        var module = TestModule.Drying(mustKnow: 0, others: 1);
        var places = Enumerable
            .Range(0, 1000)
            .Select(seed => Quizzing.Draw(module, seed).Single())
            .CountBy(question => TestModule.Places(question, right: true).Single());

        Assert.All(places, place => Assert.InRange(place.Value, 190, 310));
    }

    [Fact]
    public void Every_question_of_a_module_is_asked_sooner_or_later() =>
        Assert.Equal(
            26,
            Enumerable
                .Range(0, 60)
                .SelectMany(seed => Quizzing.Draw(TestModule.Drying(), seed))
                .DistinctBy(question => question.Id)
                .Count()
        );

    private static string Shown(Module module, int seed) =>
        string.Join(
            '\n',
            Quizzing.Draw(module, seed).Select(question => $"{question.Id}: {string.Join(", ", TestModule.Options(question))}")
        );
}
