using Academy.Competence;
using Academy.Competence.Quizzes.Measuring;
using Academy.Competence.Statistics;
using Academy.Web.Features.Shared;
using Academy.Web.Wording;
using static Academy.Web.Features.Measures.RangeLine;

namespace Academy.Web.Features.Measures;

/// <summary>One number: what it asks, what it says, and how it comes about step by step.</summary>
public sealed record ExplainedPart(string Id, string Title, string Plain, IReadOnlyList<string> Steps, string Source);

/// <summary>Every number with an example from the quiz's own answers, or from an invented quiz while there are too few.</summary>
public sealed record ExplainedView(string Module, string Title, string Lead, IReadOnlyList<ExplainedPart> Parts)
{
    public static ExplainedView Of(Measured measured)
    {
        var own = ExampleOf(measured.Sheets);
        var example = own ?? ExampleOf(Invented)!;
        var words = own is null ? "question 2" : Numbered(measured, example.Question);
        return new(
            Paths.Measure(measured.Module.Name.Value),
            measured.Module.Title,
            own is null
                ? "Too few people have taken this quiz to reckon with, so the example is invented: five people, four questions."
                : $"The example is this quiz as {Counts.Of(measured.Sheets.Count, "person", "people")} here took it first, and {words}.{(measured.Sheets.Count < QuizMeasure.GreyBelow ? " With so few it shows how the reckoning goes, and nothing about the quiz." : "")}",
            [
                Share(example, words),
                Fit(example, words),
                Ends(example, words),
                Alpha(example),
                Without(example, words),
                Error(example),
                Choices(),
            ]
        );
    }

    private sealed record Example(
        Listed<AnswerSheet> Sheets,
        string Question,
        int Right,
        int Asked,
        FitParts Fit,
        AlphaParts Alpha
    );

    /// <summary>Five people and four questions, most of them right.</summary>
    private static Listed<AnswerSheet> Invented { get; } =
        ((string[])["1111", "1110", "1011", "1100", "0001"])
            .Select(marks => new AnswerSheet(
                marks.Select((mark, place) => new MarkedAnswer($"{place + 1}", mark == '1', [])).ToListed()
            ))
            .ToListed();

    // The question that most had and that some had wrong shows most.
    private static Example? ExampleOf(Listed<AnswerSheet> sheets)
    {
        if (Reliability.PartsOf(sheets) is not { } alpha)
            return null;
        return sheets
            .SelectMany(sheet => sheet.Answers)
            .GroupBy(answer => answer.Question, StringComparer.Ordinal)
            .Select(asked => (asked.Key, Asked: asked.Count(), Right: asked.Count(answer => answer.IsRight)))
            .OrderByDescending(one => one.Right * (one.Asked - one.Right))
            .ThenBy(one => one.Key, StringComparer.Ordinal)
            .Select(one =>
                ItemAnalysis.PartsOfFit(one.Key, sheets) is { } fit
                    ? new Example(sheets, one.Key, one.Right, one.Asked, fit, alpha)
                    : null
            )
            .FirstOrDefault(one => one is not null);
    }

    private static string Numbered(Measured measured, string question) =>
        measured.Module.Questions.Index().FirstOrDefault(one => one.Item.Id == question) is (var place, { } found)
            ? $"question {place + 1} (“{found.Text}”)"
            : "a question of an older edition";

    private static ExplainedPart Share(Example example, string words)
    {
        var range = Proportion.Wilson(example.Right, example.Asked);
        return new(
            "share",
            "Right, and the share",
            "How many of those who were asked had it right. Few answers leave much room, so the range stands beside it: if the same quiz were given to many such people, the true share would lie in there 19 times in 20.",
            [
                $"Of {words}: {Counts.OutOf(example.Right, example.Asked)} right.",
                $"{example.Right} ÷ {example.Asked} = {Decimals(example.Right / (double)example.Asked)}.",
                $"Range for {example.Right} of {example.Asked}: {Decimals(range.Lower)} to {Decimals(range.Upper)}.",
            ],
            "Wilson's range; recommended for small numbers by Brown, Cai and DasGupta 2001."
        );
    }

    private static ExplainedPart Fit(Example example, string words)
    {
        var (fit, p) = (example.Fit, example.Right / (double)example.Asked);
        return new(
            "fit",
            "Fits the rest",
            "Do those who know the rest know this too? The question itself is left out of “the rest”, otherwise it would agree with itself. Under 0.10 it hardly tells; below 0 those who know most get it wrong, and the key may be.",
            [
                $"The {fit.Right} who had {words} right had on average {Decimals(fit.RestOfRight)} of the rest right.",
                $"The {fit.Wrong} who had it wrong had {Decimals(fit.RestOfWrong)} of the rest right.",
                $"All their shares of the rest spread by {Decimals(fit.Spread)}.",
                $"({Decimals(fit.RestOfRight)} − {Decimals(fit.RestOfWrong)}) ÷ {Decimals(fit.Spread)} × √({Decimals(p)} × {Decimals(1 - p)}) = {Decimals(fit.Fit)}.",
            ],
            "Corrected point-biserial correlation, a question against the rest of the quiz."
        );
    }

    private static ExplainedPart Ends(Example example, string words) =>
        new(
            "ends",
            "The best less the weakest",
            $"The share right among the best 27 in 100 less that among the weakest 27 in 100. It is shown from {QuizMeasure.HighLowFrom} answers on.",
            ItemAnalysis.HighLow(example.Question, example.Sheets) is { } apart ? [$"Of {words}: {Decimals(apart)}."] : [],
            "Kelley 1939, The selection of upper and lower groups for the validation of test items."
        );

    private static ExplainedPart Alpha(Example example)
    {
        var (alpha, k) = (example.Alpha, example.Alpha.Questions);
        return new(
            "alpha",
            "Tells the same each time: KR-20",
            "If questions ask about one thing, people who have one right have others right more often than by chance. KR-20 adds this up: 1 would put people in the same order each time, 0 is chance, and below 0 questions pull against each other. Where everybody knows nearly everything it is low, and that is no fault: a quiz about safety should be easy for those who may work alone.",
            [
                $"A quiz has {k} questions.",
                $"On average a question varies by {Small(alpha.Variance)} (its share right × its share wrong).",
                $"On average two questions vary together by {Small(alpha.Covariance)}.",
                $"{k} × {Small(alpha.Covariance)} ÷ ({Small(alpha.Variance)} + {k - 1} × {Small(alpha.Covariance)}) = {Decimals(alpha.Alpha)}.",
            ],
            "Kuder and Richardson 1937, formula 20; the range by Feldt 1965. Each pair of questions counts over the people who had both, because each quiz draws its own."
        );
    }

    private static ExplainedPart Without(Example example, string words) =>
        new(
            "without",
            "KR-20 without a question",
            "The same for a quiz that never asks this question. If it is higher, the question blurs what the others tell. A must-know may stay all the same: it is there to keep a dog from being hurt, not to tell people apart.",
            [
                $"With all questions {Decimals(example.Alpha.Alpha)}.",
                ItemAnalysis.AlphaWithout(example.Question, example.Sheets) is { } without
                    ? $"Without {words} {Decimals(without)}."
                    : $"Without {words} it cannot be computed.",
            ],
            "Cronbach 1951, alpha if an item is deleted."
        );

    private static ExplainedPart Error(Example example)
    {
        var found = Reliability.Of(example.Sheets)!;
        var spread = found.StandardError / Math.Sqrt(1 - found.Alpha);
        return new(
            "error",
            "Error of a score",
            "How far one score lies from what the same person would have on average over many such quizzes. Two scores closer than this are the same.",
            [
                $"The scores spread by {Decimals(spread)} questions.",
                $"{Decimals(spread)} × √(1 − {Decimals(found.Alpha)}) = {Decimals(found.StandardError)} questions.",
            ],
            "Standard error of measurement of classical test theory."
        );
    }

    private static ExplainedPart Choices() =>
        new(
            "choices",
            "Choices, their score and their pull",
            "For each choice: how many made it, and how they did in the whole quiz. Pull compares those who made it with those who did not, in the same way as the fit of a question. A wrong choice should draw those who know least. If its pull is above 0 it draws those who know most: the key is wrong, or the wrong choice is partly right. A wrong choice that fewer than 5 in 100 make does no work.",
            [],
            "Distractor analysis; the limits of 5 in 100 and 0 are common practice of test analysis, no published source for so small a workplace."
        );

    private static string Small(double number) => number.ToString("0.0000", System.Globalization.CultureInfo.InvariantCulture);
}
