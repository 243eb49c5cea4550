using Academy.Competence.Quizzes.Measuring;
using Academy.Web.Features.Shared;
using Academy.Web.Wording;

namespace Academy.Web.Features.Measures;

/// <summary>One question in the table.</summary>
/// <param name="Doubts">What to look at, in a few words each.</param>
public sealed record QuestionLine(
    int Number,
    string Text,
    string Href,
    bool IsMustKnow,
    string Right,
    RangeLine? Range,
    string Fit,
    string Without,
    bool IsGrey,
    IReadOnlyList<string> Doubts
);

/// <summary>A question that somebody should look at, and why.</summary>
public sealed record DoubtLine(string Text, string Href, IReadOnlyList<string> Advice);

/// <summary>One quiz as its answers show it.</summary>
public sealed record MeasureView(
    string Module,
    string Title,
    string Heading,
    string Lead,
    string? LeftOut,
    IReadOnlyList<Figure> Figures,
    IReadOnlyList<DoubtLine> Doubts,
    IReadOnlyList<QuestionLine> Questions,
    string Explained
)
{
    /// <summary>What stands where there is no number.</summary>
    public const string None = "–";

    public static MeasureView Of(Measured measured)
    {
        var (module, measure) = (measured.Module, measured.Measure);
        var lines = module.Questions.Zip(measure.Questions).ToList();
        return new(
            module.Name.Value,
            module.Title,
            measure.People == 0
                ? "Nobody has taken this quiz yet"
                : $"{Counts.Of(measure.People, "first try", "first tries")} at this quiz",
            LeadOf(measure),
            measured.LeftOut == 0
                ? null
                : $"{Counts.Of(measured.LeftOut, "first try is", "first tries are")} left out: the text of that edition is no longer there.",
            [.. FiguresOf(measured)],
            [
                .. lines
                    .Where(line => !line.Second.Doubts.IsEmpty)
                    .Select(line => new DoubtLine(
                        line.First.Text,
                        Paths.MeasureQuestion(module.Name.Value, line.First.Id),
                        [.. line.Second.Doubts.Select(doubt => Say.Advice(doubt, line.Second))]
                    )),
            ],
            [.. lines.Select((line, place) => LineOf(place + 1, line.First, line.Second, module.Name.Value))],
            Paths.MeasuresExplained(module.Name.Value)
        );
    }

    private static string LeadOf(QuizMeasure measure) =>
        measure.People switch
        {
            0 => "Its questions are listed below; numbers come with the first people who take it.",
            < QuizMeasure.CountsOnlyBelow =>
                $"With fewer than {QuizMeasure.CountsOnlyBelow} answers a question has counts and nothing else: anything more would be chance.",
            < QuizMeasure.GreyBelow =>
                $"Shares are shown in grey with their range. How questions hang together needs {QuizMeasure.GreyBelow} people.",
            < QuizMeasure.FirmFrom =>
                $"Below {QuizMeasure.FirmFrom} people these numbers move: read them as a hint where to look.",
            _ => "Enough people to take these numbers as they stand.",
        };

    private static IEnumerable<Figure> FiguresOf(Measured measured)
    {
        var (measure, page) = (measured.Measure, Paths.MeasuresExplained(measured.Module.Name.Value));
        if (measure.People == 0)
            yield break;
        if (measure.Reliability is not { } found)
        {
            yield return new(
                "Tells the same each time (KR-20)",
                measure.People < QuizMeasure.GreyBelow ? $"from {QuizMeasure.GreyBelow} people on" : "cannot be computed",
                measure.People < QuizMeasure.GreyBelow
                    ? $"So far {Counts.Of(measure.People, "person", "people")}."
                    : "Everybody answered alike, so there is nothing to tell people apart by.",
                IsGrey: true,
                $"{page}#alpha"
            );
            yield break;
        }
        yield return new(
            "Tells the same each time (KR-20)",
            RangeLine.Decimals(found.Alpha),
            $"1 would put people in the same order each time, 0 is chance. With so many people it may lie anywhere from {RangeLine.Decimals(found.Range.Lower)} to {RangeLine.Decimals(found.Range.Upper)} (19 in 20).",
            measure.IsTentative,
            $"{page}#alpha"
        );
        yield return new(
            "Error of a score",
            $"± {RangeLine.Decimals(found.StandardError)} questions",
            "So far a score lies from what the same person would have on average. One question more or less says nothing about a person.",
            measure.IsTentative,
            $"{page}#error"
        );
    }

    private static QuestionLine LineOf(
        int number,
        Competence.Quizzes.Question question,
        QuestionMeasure measure,
        string module
    ) =>
        new(
            number,
            question.Text,
            Paths.MeasureQuestion(module, question.Id),
            question.IsMustKnow,
            measure.Asked == 0 ? "not asked" : Counts.OutOf(measure.Right, measure.Asked),
            RangeLine.Of(measure.Easiness, measure.EasinessRange),
            measure.Fit is { } fit ? RangeLine.Decimals(fit) : None,
            measure.AlphaWithout is { } without ? RangeLine.Decimals(without) : None,
            measure.Asked < QuizMeasure.GreyBelow,
            [.. measure.Doubts.Select(Say.Word)]
        );
}
