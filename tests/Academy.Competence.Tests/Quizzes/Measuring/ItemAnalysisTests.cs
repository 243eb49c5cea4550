using Academy.Competence.Quizzes.Measuring;

namespace Academy.Competence.Tests.Quizzes.Measuring;

public class ItemAnalysisTests
{
    // data/competence/kr20.json: two published sets, values by psych 2.2.9 and base R
    [Theory]
    [InlineData("wuensch", 10, 10)]
    [InlineData("lsat6", 1000, 5)]
    public void Alpha_its_range_and_its_error_agree_with_the_published_sets(string set, int people, int questions)
    {
        var published = Set(set);
        Assert.Equal((people, questions), (published.Sheets.Count, published.Items.Length));
        var found = Reliability.Of(published.Sheets)!;

        Assert.Equal(published.Figure("kr20"), found.Alpha, 1e-9);
        Assert.Equal(published.Figure("psych_raw_alpha"), found.Alpha, 1e-9);
        Assert.Equal(published.Figure("sem_sample"), found.StandardError, 1e-9);
        var range = published.Results.GetProperty("feldt_ci95");
        Assert.Equal(range[0].GetDouble(), found.Range.Lower, 1e-9);
        Assert.Equal(range[1].GetDouble(), found.Range.Upper, 1e-9);
    }

    // data/competence/kr20.json and point_biserial.json: r.drop and alpha.drop of psych 2.2.9
    [Theory]
    [InlineData("wuensch")]
    [InlineData("lsat6")]
    public void Fit_and_alpha_without_a_question_agree_with_the_published_sets(string set)
    {
        var published = Set(set);
        for (var place = 0; place < published.Items.Length; place++)
        {
            var (question, item) = (PublishedSheets.QuestionAt(place), published.Items[place]);

            Assert.Equal(item.GetProperty("psych_r_drop").GetDouble(), ItemAnalysis.Fit(question, published.Sheets)!.Value, 1e-9);
            Assert.Equal(
                item.GetProperty("psych_alpha_if_deleted").GetDouble(),
                ItemAnalysis.AlphaWithout(question, published.Sheets)!.Value,
                1e-9
            );
        }
    }

    // The parts that a page shows give the same figures, so whoever reckons along comes to the same end.
    [Theory]
    [InlineData("wuensch")]
    [InlineData("lsat6")]
    public void The_parts_of_fit_and_alpha_come_to_the_published_figures(string set)
    {
        var published = Set(set);
        Assert.Equal(published.Figure("kr20"), Reliability.PartsOf(published.Sheets)!.Alpha, 1e-9);
        for (var place = 0; place < published.Items.Length; place++)
        {
            var parts = ItemAnalysis.PartsOfFit(PublishedSheets.QuestionAt(place), published.Sheets)!;

            Assert.Equal(published.Items[place].GetProperty("psych_r_drop").GetDouble(), parts.Fit, 1e-9);
            Assert.Equal(published.Sheets.Count, parts.Right + parts.Wrong);
        }
    }

    [Fact]
    public void Where_nobody_differs_there_are_no_parts()
    {
        AnswerSheet[] same = [PublishedSheets.SheetOf("11"), PublishedSheets.SheetOf("11")];

        Assert.Null(ItemAnalysis.PartsOfFit("q-1", same));
        Assert.Null(Reliability.PartsOf(same));
        Assert.Null(Reliability.PartsOf([]));
    }

    // data/competence/kr20.json, base R: groups of round(.27 n), ties by the order of the rows
    [Fact]
    public void The_best_less_the_weakest_agree_with_the_published_set()
    {
        var published = PublishedSheets.Wuensch;
        for (var place = 0; place < published.Items.Length; place++)
            Assert.Equal(
                published.Items[place].GetProperty("discrimination_D27").GetDouble(),
                ItemAnalysis.HighLow(PublishedSheets.QuestionAt(place), published.Sheets)!.Value,
                1e-9
            );
    }

    // data/competence/point_biserial.json, distractor: 20 invented people, one question with key B, values by base R
    [Theory]
    [InlineData("A", 3, 3.0, -.4964848502628)]
    [InlineData("B", 9, 7.222222222222, .6342533984426)]
    [InlineData("C", 5, 5.2, -.1158712912728)]
    [InlineData("D", 3, 4.333333333333, -.2466811520174)]
    public void A_choice_is_counted_and_its_pull_is_its_correlation_with_the_score(
        string choice,
        int chosen,
        double mean,
        double pull
    )
    {
        var sheets = PublishedSheets
            .File("point_biserial.json")
            .GetProperty("distractor")
            .GetProperty("data")
            .EnumerateArray()
            .Select(row => SheetWith(row.GetProperty("choice").GetString()!, row.GetProperty("total").GetInt32()))
            .ToArray();
        Assert.Equal(20, sheets.Length);
        var found = QuizMeasure
            .Of([Key("B", "A", "B", "C", "D")], sheets)
            .Questions[0]
            .Choices.Single(one => one.Choice == choice);

        Assert.Equal((chosen, chosen / 20.0), (found.Chosen, found.Share));
        Assert.Equal(mean, found.MeanScore!.Value * 10, 1e-9);
        Assert.Null(found.Pull); // 20 people are too few to be shown it
        Assert.Equal(pull, ItemAnalysis.Pull("key", choice, sheets)!.Value, 1e-9);
    }

    [Fact]
    public void Where_nobody_differs_there_is_no_value_and_never_a_nought()
    {
        AnswerSheet[] alike = [.. Enumerable.Repeat(PublishedSheets.SheetOf("1110"), 40)];

        Assert.Null(Reliability.Of(alike));
        Assert.Null(ItemAnalysis.Fit("q-1", alike));
        Assert.Null(ItemAnalysis.Pull("q-1", "anything", alike));
        Assert.Null(Reliability.Of([]));
    }

    [Fact]
    public void Drawn_quizzes_give_the_alpha_of_the_whole_bank_stepped_down_to_their_length()
    {
        // 1,000 people of the law school test, each seen in four of the five questions only
        var drawn = PublishedSheets
            .Lsat6.Sheets.Select((sheet, person) => new AnswerSheet([.. sheet.Answers.Where((_, place) => place != person % 5)]))
            .ToArray();
        // Spearman and Brown: alpha of four fifths of a test with alpha a is .8 a / (1 - .2 a)
        var whole = PublishedSheets.Lsat6.Figure("kr20");

        Assert.Equal(.8 * whole / (1 - (.2 * whole)), Reliability.Of(drawn)!.Alpha, .06);
    }

    private static PublishedSheets Set(string name) => name == "wuensch" ? PublishedSheets.Wuensch : PublishedSheets.Lsat6;

    private static MeasuredQuestion Key(string right, params string[] choices) =>
        new("key", IsMustKnow: false, [.. choices.Select(choice => new MeasuredChoice(choice, choice == right))]);

    // a sheet of ten questions with the score of the table, of which the first is the question looked at
    private static AnswerSheet SheetWith(string choice, int total)
    {
        var isRight = choice == "B";
        var others = Enumerable
            .Range(1, 9)
            .Select(place => new MarkedAnswer($"other-{place}", place <= total - (isRight ? 1 : 0), []));
        return new([new MarkedAnswer("key", isRight, [choice]), .. others]);
    }
}
