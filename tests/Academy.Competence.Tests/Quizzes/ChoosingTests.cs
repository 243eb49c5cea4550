using Academy.Competence.Facts;
using Academy.Competence.Quizzes;
using CsCheck;
using static Academy.Competence.Tests.Cast.TestSalon;

namespace Academy.Competence.Tests.Quizzes;

public class ChoosingTests
{
    private static readonly Module Drying = TestModule.Drying(mustKnow: 6, others: 24);
    private static readonly Dictionary<string, int> NeverAsked = [];

    [Fact]
    public void One_seed_and_one_past_give_one_quiz_and_another_seed_another()
    {
        Assert.Equal(Choosing.Whole(Drying, 7, NeverAsked), Choosing.Whole(Drying, 7, NeverAsked));
        Assert.NotEqual(Choosing.Whole(Drying, 7, NeverAsked), Choosing.Whole(Drying, 8, NeverAsked));
    }

    [Fact]
    public void A_whole_quiz_has_twenty_questions_of_which_at_most_four_are_must_know() =>
        Gen.Int.Sample(seed =>
        {
            var chosen = Choosing.Whole(Drying, seed, NeverAsked);
            Assert.Equal(20, chosen.Distinct().Count());
            Assert.Equal(4, chosen.Count(id => id.StartsWith("must", StringComparison.Ordinal)));
        });

    [Fact]
    public void A_retake_asks_first_what_was_not_asked_before()
    {
        var first = Choosing.Whole(Drying, 7, NeverAsked);
        var second = Choosing.Whole(Drying, 8, first.ToDictionary(id => id, _ => 1));

        // eight of the twenty-four others and two of the six must-know were not in the first
        Assert.Equal(10, second.Except(first).Count());
        Assert.Equal(Drying.Questions.Select(question => question.Id).Order(), first.Union(second).Order());
    }

    [Fact]
    public void A_refresher_asks_first_what_is_most_likely_forgotten()
    {
        var forgotten = new[] { "must-02", "air-03", "air-05", "air-08", "air-13", "air-21" };
        var chosen = Choosing.Refresher(Drying, 7, id => forgotten.Contains(id) ? .4 : .9);

        Assert.Equal(8, chosen.Count);
        Assert.Superset(forgotten.ToHashSet(), chosen.ToHashSet());
    }

    [Fact]
    public void A_refresher_has_at_most_four_must_know_questions_even_where_all_are_forgotten() =>
        Gen.Int.Sample(seed =>
            Assert.Equal(
                4,
                Choosing
                    .Refresher(Drying, seed, id => id.StartsWith("must", StringComparison.Ordinal) ? .1 : .9)
                    .Count(id => id.StartsWith("must", StringComparison.Ordinal))
            )
        );

    [Fact]
    public void To_catch_up_every_changed_must_know_question_is_asked()
    {
        var module = Drying with
        {
            Edition = 2,
            Questions =
            [
                .. Drying.Questions.Select(question =>
                    question.Id is "must-01" or "must-02" or "must-03" or "must-04" or "must-05" or "air-01" or "air-02"
                        ? question with
                        {
                            Text = "Said anew?",
                        }
                        : question
                ),
                TestModule.Question("must-new", isMustKnow: true),
                TestModule.Question("air-new", isMustKnow: false),
            ],
        };

        var chosen = Choosing.CatchUp(module, Drying, 7);

        Assert.Equal(8, chosen.Count);
        Assert.Superset(
            new HashSet<string>(["must-01", "must-02", "must-03", "must-04", "must-05", "must-new"]),
            chosen.ToHashSet()
        );
        Assert.Subset(
            new HashSet<string>([
                "must-01",
                "must-02",
                "must-03",
                "must-04",
                "must-05",
                "must-new",
                "air-01",
                "air-02",
                "air-new",
            ]),
            chosen.ToHashSet()
        );
    }

    [Fact]
    public void A_change_of_the_lesson_alone_is_asked_about_with_four_must_know_questions()
    {
        var chosen = Choosing.CatchUp(Drying with { Edition = 2 }, Drying, 7);

        Assert.Equal(4, chosen.Count);
        Assert.All(chosen, id => Assert.StartsWith("must", id, StringComparison.Ordinal));
    }

    [Fact]
    public void What_was_chosen_is_asked_marked_and_kept_with_the_attempt()
    {
        var module = Drying with { Hash = new('1', 64) };
        Listed<string> chosen = ["air-03", "must-01", "air-07", "air-09"];
        var sitting = new Sitting(
            new(Number(1)),
            Pim.Id,
            module.Name,
            module.Hash,
            IsRefresher: false,
            7,
            Now,
            ReadOutBy: null,
            chosen,
            IsCatchUp: true
        );
        Answer[] right = [.. sitting.Draw(module).Select(question => new Answer(question.Id, question.Kind.Right))];

        Assert.Equal(chosen, sitting.Draw(module).Select(question => question.Id));
        var attempt = Assert.IsType<AttemptHandedIn>(
            Assert.Single(Assert.IsType<Granted>(sitting.HandIn(module, right, Now)).Facts)
        );
        Assert.Equal(
            (4, 4, true, chosen, true),
            (attempt.Right, attempt.Of, attempt.HasPassed, attempt.Drawn, attempt.IsCatchUp)
        );
    }

    // the judges' mean chance for each of 20 questions, how many were right
    [Theory]
    [InlineData(.5, 16, true)] // the floor of 80 in 100 stays
    [InlineData(.9, 17, false)]
    [InlineData(.9, 18, true)]
    public void Where_judges_ask_for_more_than_the_floor_more_has_to_be_right(double chance, int right, bool hasPassed)
    {
        var module = TestModule.Drying(mustKnow: 0, others: 20);
        var sitting = new Sitting(new(Number(1)), Pim.Id, module.Name, module.Hash, IsRefresher: false, 7, Now, ReadOutBy: null);
        Answer[] answers = [.. sitting.Draw(module).Take(right).Select(question => new Answer(question.Id, question.Kind.Right))];
        var judged = module.Questions.ToDictionary(question => question.Id, _ => chance);

        var attempt = Assert.IsType<AttemptHandedIn>(
            Assert.Single(Assert.IsType<Granted>(sitting.HandIn(module, answers, Now, judged)).Facts)
        );

        Assert.Equal((right, hasPassed), (attempt.Right, attempt.HasPassed));
        Assert.Equal(chance == .5 ? 16 : 18, attempt.RightAsked);
    }

    [Fact]
    public void A_question_that_nobody_judged_leaves_the_pass_mark_as_it_is()
    {
        var module = TestModule.Drying(mustKnow: 0, others: 20);
        var sitting = new Sitting(new(Number(1)), Pim.Id, module.Name, module.Hash, IsRefresher: false, 7, Now, ReadOutBy: null);
        var judged = module.Questions.Skip(1).ToDictionary(question => question.Id, _ => .95);

        var attempt = Assert.IsType<AttemptHandedIn>(
            Assert.Single(Assert.IsType<Granted>(sitting.HandIn(module, [], Now, judged)).Facts)
        );

        Assert.Null(attempt.RightAsked);
    }
}
