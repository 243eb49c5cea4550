using Academy.Competence.Quizzes.Measuring;

namespace Academy.Competence.Tests.Quizzes.Measuring;

public class QuizMeasureTests
{
    private static readonly MeasuredQuestion[] Questions =
    [
        .. Enumerable
            .Range(1, 5)
            .Select(number => new MeasuredQuestion(
                $"q-{number}",
                IsMustKnow: number == 1,
                [new("right", true), new("wrong", false)]
            )),
    ];

    [Theory]
    [InlineData(9, false, false, false)] // counts and nothing else
    [InlineData(10, true, false, false)] // a share, with its range
    [InlineData(29, true, false, false)]
    [InlineData(30, true, true, false)] // how questions hang together
    [InlineData(39, true, true, false)]
    [InlineData(40, true, true, true)] // the best against the weakest
    public void What_is_said_depends_on_how_many_answered(int people, bool share, bool fit, bool ends)
    {
        var measure = QuizMeasure.Of(Questions, Sheets(people));
        var first = measure.Questions[0];

        Assert.Equal((people, people), (measure.People, first.Asked));
        Assert.Equal(share, first.Easiness is not null);
        Assert.Equal(share, first.EasinessRange is not null);
        Assert.Equal(fit, first.Fit is not null);
        Assert.Equal(fit, first.AlphaWithout is not null);
        Assert.Equal(fit, first.Choices[0].Pull is not null);
        Assert.Equal(fit, measure.Reliability is not null);
        Assert.Equal(ends, first.HighLow is not null);
        Assert.True(measure.IsTentative);
    }

    [Fact]
    public void A_quiz_that_nobody_took_lists_its_questions_with_noughts()
    {
        var measure = QuizMeasure.Of(Questions, []);

        Assert.Equal(0, measure.People);
        Assert.Equal(["q-1", "q-2", "q-3", "q-4", "q-5"], measure.Questions.Select(question => question.Question));
        Assert.All(measure.Questions, question => Assert.Equal((0, 0), (question.Asked, question.Right)));
        Assert.All(measure.Questions, question => Assert.Empty(question.Doubts));
    }

    [Fact]
    public void A_question_that_the_better_people_get_wrong_has_its_key_checked()
    {
        var turned = Sheets(60).Select(sheet => Turned(sheet, "q-5")).ToArray();
        var question = QuizMeasure.Of(Questions, turned).Questions[4];

        Assert.True(question.Fit < 0);
        Assert.Equal([QuestionDoubt.CheckTheKey, QuestionDoubt.WrongChoiceDrawsTheBest], question.Doubts);
    }

    [Fact]
    public void An_easy_question_is_doubted_unless_it_is_must_know()
    {
        var easy = Sheets(60).Select(sheet => AllRight(sheet, "q-1", "q-2")).ToArray();
        var measure = QuizMeasure.Of(Questions, easy);

        Assert.DoesNotContain(QuestionDoubt.Easy, measure.Questions[0].Doubts);
        Assert.Contains(QuestionDoubt.Easy, measure.Questions[1].Doubts);
        Assert.Contains(QuestionDoubt.ChoiceNobodyBelieves, measure.Questions[1].Doubts);
    }

    [Fact]
    public void A_hard_question_is_doubted()
    {
        var hard = Sheets(60).Select(sheet => sheet with { Answers = [.. sheet.Answers.Select(Hard)] }).ToArray();

        Assert.Contains(QuestionDoubt.Hard, QuizMeasure.Of(Questions, hard).Questions[2].Doubts);

        static MarkedAnswer Hard(MarkedAnswer answer) =>
            answer.Question == "q-3" ? answer with { IsRight = false, Chose = ["wrong"] } : answer;
    }

    // people of six kinds, who know none to all of the five questions, the easy ones first
    private static AnswerSheet[] Sheets(int people) =>
        [
            .. Enumerable
                .Range(0, people)
                .Select(person => new AnswerSheet([
                    .. Enumerable.Range(1, 5).Select(number => Answer(number, isRight: (person % 6) >= number)),
                ])),
        ];

    private static MarkedAnswer Answer(int number, bool isRight) => new($"q-{number}", isRight, [isRight ? "right" : "wrong"]);

    private static AnswerSheet Turned(AnswerSheet sheet, string question) =>
        new([.. sheet.Answers.Select(answer => answer.Question == question ? Turned(answer) : answer)]);

    private static MarkedAnswer Turned(MarkedAnswer answer) =>
        answer with
        {
            IsRight = !answer.IsRight,
            Chose = [answer.IsRight ? "wrong" : "right"],
        };

    private static AnswerSheet AllRight(AnswerSheet sheet, params string[] questions) =>
        new([
            .. sheet.Answers.Select(answer =>
                questions.Contains(answer.Question) ? answer with { IsRight = true, Chose = ["right"] } : answer
            ),
        ]);
}
