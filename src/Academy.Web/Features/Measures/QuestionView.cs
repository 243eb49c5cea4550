using System.Globalization;
using Academy.Competence.Quizzes;
using Academy.Competence.Quizzes.Measuring;
using Academy.Web.Features.Shared;
using Academy.Web.Library;
using Academy.Web.Wording;

namespace Academy.Web.Features.Measures;

/// <summary>One choice of a question.</summary>
/// <param name="Bar">How long its bar is, of <see cref="RangeLine.Across"/>.</param>
public sealed record ChoiceLine(string Words, bool IsRight, string Chosen, string Bar, string Score, string Pull);

/// <summary>One question as its answers show it.</summary>
/// <param name="Because">The explanation as safe HTML.</param>
public sealed record QuestionView(
    string Title,
    string Module,
    int Number,
    string Text,
    bool IsMustKnow,
    IReadOnlyList<string> Right,
    string Because,
    string Sources,
    IReadOnlyList<string> Advice,
    IReadOnlyList<Figure> Figures,
    IReadOnlyList<ChoiceLine> Choices,
    string Explained,
    string Judge
)
{
    /// <summary>Null where the module has no question of that name.</summary>
    public static QuestionView? Of(Measured measured, string id, PathString mounted)
    {
        var module = measured.Module;
        if (module.Questions.Index().FirstOrDefault(one => one.Item.Id == id) is not (var place, { } question))
            return null;
        var measure = measured.Measure.Questions[place];
        var page = Paths.MeasuresExplained(module.Name.Value);
        return new(
            module.Title,
            Paths.Measure(module.Name.Value),
            place + 1,
            question.Text,
            question.IsMustKnow,
            Say.RightAnswer(question.Kind),
            LessonPage.Explanation(measured.Lesson, id, mounted),
            LessonPage.Sources(measured.Lesson, mounted),
            [.. measure.Doubts.Select(doubt => Say.Advice(doubt, measure))],
            [.. FiguresOf(measure, measured.Measure, page)],
            [.. measure.Choices.Select(choice => Line(choice, measure.Asked))],
            page,
            Paths.JudgeModule(module.Name.Value, place + 1)
        );
    }

    private static IEnumerable<Figure> FiguresOf(QuestionMeasure question, QuizMeasure quiz, string page)
    {
        var isGrey = question.Asked < QuizMeasure.GreyBelow;
        yield return new(
            "Right",
            question.Asked == 0 ? "not asked yet" : Counts.OutOf(question.Right, question.Asked),
            question is { Easiness: { } share, EasinessRange: { } range }
                ? $"A share of {RangeLine.Decimals(share)}. With so many answers the true share may lie anywhere from {RangeLine.Decimals(range.Lower)} to {RangeLine.Decimals(range.Upper)} (19 in 20)."
                : $"A share is shown from {QuizMeasure.CountsOnlyBelow} answers on.",
            isGrey,
            $"{page}#share"
        );
        yield return Of(
            "Fits the rest",
            question.Fit,
            QuizMeasure.GreyBelow,
            question.Asked,
            "Above 0: those who know the rest know this too. Around 0 it tells nothing; below 0 they get it wrong.",
            $"{page}#fit"
        );
        yield return Of(
            "The best less the weakest",
            question.HighLow,
            QuizMeasure.HighLowFrom,
            question.Asked,
            "The share right among the best quarter less that among the weakest. At 0 both know it equally often.",
            $"{page}#ends"
        );
        yield return Of(
            "KR-20 without it",
            question.AlphaWithout,
            QuizMeasure.GreyBelow,
            question.Asked,
            quiz.Reliability is { } whole
                ? $"The whole quiz has {RangeLine.Decimals(whole.Alpha)}. If it is higher without this question, the question blurs."
                : "If it is higher than that of the whole quiz, the question blurs.",
            $"{page}#without"
        );
    }

    private static Figure Of(string name, double? value, int from, int asked, string meaning, string explained) =>
        new(
            name,
            value is { } number ? RangeLine.Decimals(number)
                : asked < from ? $"from {from} answers on"
                : "cannot be computed",
            value is not null || asked < from ? meaning : "Everybody answered alike here, so there is nothing to compare.",
            value is null || asked < QuizMeasure.FirmFrom,
            explained
        );

    private static ChoiceLine Line(ChoiceMeasure choice, int asked) =>
        new(
            choice.Choice,
            choice.IsRight,
            asked == 0 ? "not asked" : Counts.OutOf(choice.Chosen, asked),
            (choice.Share * RangeLine.Across).ToString("0.#", CultureInfo.InvariantCulture),
            asked >= QuizMeasure.CountsOnlyBelow && choice.MeanScore is { } score ? RangeLine.Decimals(score) : MeasureView.None,
            choice.Pull is { } pull ? RangeLine.Decimals(pull) : MeasureView.None
        );
}
