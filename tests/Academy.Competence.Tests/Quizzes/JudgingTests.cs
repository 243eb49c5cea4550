using Academy.Competence.Facts;
using Academy.Competence.People;
using Academy.Competence.Quizzes;
using Academy.Competence.Quizzes.Measuring;
using Academy.Competence.Salons;
using static Academy.Competence.Tests.Cast.TestSalon;

namespace Academy.Competence.Tests.Quizzes;

public class JudgingTests
{
    private static readonly Module Drying = TestModule.Drying(mustKnow: 1, others: 2);

    [Fact]
    public void A_senior_judges_every_question_in_percent() =>
        Assert.Equal(
            [new QuestionsJudged(Drying.Name, Drying.Hash, Rosa.Id, ["must-01:95", "air-01:80", "air-02:70"])],
            Assert.IsType<Granted>(Judging.Judge(Drying, Rosa, Percent(95, 80, 70), Today)).Facts
        );

    [Fact]
    public void A_question_without_a_chance_or_with_one_above_a_hundred_is_not_judged()
    {
        var percent = Percent(101, 80, 70);
        percent.Remove("air-02");

        Assert.Equal([new QuestionsNotJudged(2)], Assert.IsType<Refused>(Judging.Judge(Drying, Rosa, percent, Today)).Reasons);
    }

    [Fact]
    public void A_junior_and_somebody_who_left_do_not_judge()
    {
        Assert.Equal(
            [new SeniorOrOwnerOnly(Role.Junior)],
            Assert.IsType<Refused>(Judging.Judge(Drying, Pim, Percent(95, 80, 70), Today)).Reasons
        );
        Assert.Equal(
            [new NotWorkingHere(Gus.Id), new SeniorOrOwnerOnly(Role.Junior)],
            Assert.IsType<Refused>(Judging.Judge(Drying, Gus, Percent(95, 80, 70), Today)).Reasons
        );
    }

    [Fact]
    public void Two_judges_move_no_pass_mark_and_three_do()
    {
        var two = Judged(Judged(new SalonBook(), Olga, Percent(100, 90, 80)), Rosa, Percent(100, 80, 60));
        var three = Judged(two, Dora, Percent(100, 100, 70));

        Assert.Null(Judging.Cut(two, Drying));
        Assert.Null(Judging.MeanChances(two, Drying));
        Assert.Equal(2.6, Judging.Cut(three, Drying)!.Score, 1e-12);
        Assert.Equal(.9, Judging.MeanChances(three, Drying)!["air-01"], 1e-12);
    }

    [Fact]
    public void Who_judges_again_is_counted_once_and_another_edition_has_no_judges_yet()
    {
        var book = Judged(
            Judged(Judged(new SalonBook(), Olga, Percent(100, 90, 80)), Rosa, Percent(1, 1, 1)),
            Rosa,
            Percent(100, 80, 60)
        );
        book = Judged(book, Dora, Percent(100, 100, 70));

        Assert.Equal(2.6, Judging.Cut(book, Drying)!.Score, 1e-12);
        Assert.Null(Judging.Cut(book, Drying with { Hash = new('9', 64) }));
    }

    [Fact]
    public void The_questions_on_which_judges_lie_furthest_apart_come_first()
    {
        var book = Judged(Judged(new SalonBook(), Olga, Percent(100, 90, 30)), Rosa, Percent(90, 90, 80));

        Assert.Equal(
            [("air-02", 50), ("must-01", 10), ("air-01", 0)],
            Judging.Apart(book, Drying).Select(one => (one.Question.Id, one.Spread))
        );
        Assert.Equal([30, 80], Judging.Apart(book, Drying)[0].Percents);
        Assert.Equal(Rosa.Id, Judging.By(book, Drying, Rosa.Id)!.By);
        Assert.Null(Judging.By(book, Drying, Dora.Id));
    }

    [Fact]
    public void In_a_whole_quiz_must_know_questions_and_others_stand_with_their_own_means()
    {
        // 8 must-know at .9, of which 4 are drawn; 30 others at .7, of which 16: 3.6 + 11.2.
        var module = TestModule.Drying(mustKnow: 8, others: 30);
        var cut = Measuring(module, mustKnow: .9, others: .7);

        var expected = Judging.InAWholeQuiz(module, cut);

        Assert.Equal((14.8, 20), (Math.Round(expected.Right, 9), expected.Of));
        Assert.Equal(16, expected.RightAsked);
        Assert.Equal(19, Judging.InAWholeQuiz(module, Measuring(module, mustKnow: 1, others: .9)).RightAsked);
    }

    [Fact]
    public void A_note_says_how_it_is_done_here_and_is_taken_back_by_its_author_or_the_owner()
    {
        var note = Assert.IsType<ModuleNoted>(
            Assert.Single(Assert.IsType<Granted>(Noting.Note(new(Number(9)), Drying.Name, Rosa, "Towels first.", Today)).Facts)
        );
        var book = new SalonBook().After(note, default);

        Assert.Equal([note], book.Notes);
        Assert.Equal([new NotHerNote()], Assert.IsType<Refused>(Noting.TakeBack(note, Dora)).Reasons);
        foreach (var person in new[] { Rosa, Olga })
            Assert.Empty(
                Assert
                    .IsType<Granted>(Noting.TakeBack(note, person))
                    .Facts.Aggregate(book, (so, fact) => so.After(fact, default))
                    .Notes
            );
    }

    [Fact]
    public void A_note_needs_words_and_not_too_many_and_a_senior()
    {
        Assert.Equal(
            [new SeniorOrOwnerOnly(Role.Junior), new WordsNeeded(WordsFor.Note)],
            Assert.IsType<Refused>(Noting.Note(new(Number(9)), Drying.Name, Pim, " ", Today)).Reasons
        );
        Assert.Equal(
            [new TooManyWords(601, 600)],
            Assert.IsType<Refused>(Noting.Note(new(Number(9)), Drying.Name, Rosa, new string('a', 601), Today)).Reasons
        );
    }

    private static CutScore Measuring(Module module, double mustKnow, double others) =>
        CutScore.Of([
            [.. module.Questions.Select(question => question.IsMustKnow ? mustKnow : others)],
        ]);

    private static SalonBook Judged(SalonBook book, Person by, Dictionary<string, int> percent) =>
        Assert
            .IsType<Granted>(Judging.Judge(Drying, by, percent, Today))
            .Facts.Aggregate(book, (so, fact) => so.After(fact, default));

    private static Dictionary<string, int> Percent(int must, int first, int second) =>
        new(StringComparer.Ordinal)
        {
            ["must-01"] = must,
            ["air-01"] = first,
            ["air-02"] = second,
        };
}
