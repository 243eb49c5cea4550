using Academy.Web.Features.Shared;
using Academy.Web.Wording;

namespace Academy.Web.Features.Judgements;

/// <summary>One question with what was said of it.</summary>
public sealed record SaidLine(int Number, string Text, string Said, string Href);

/// <summary>A judgement before it is given.</summary>
public sealed record GiveView(
    string Module,
    string Heading,
    string Lead,
    IReadOnlyList<SaidLine> Open,
    IReadOnlyList<SaidLine> Said,
    string Back
)
{
    public static GiveView Of(Bench bench)
    {
        var (count, open) = (bench.Module.Questions.Count, bench.Open);
        var right = bench.Said.Where(one => bench.Module.Questions.Any(question => question.Id == one.Key)).Sum(one => one.Value);
        return new(
            bench.Module.Title,
            open.Count == 0
                ? $"All {count} questions are judged"
                : $"{Counts.OutOf(count - open.Count, count)} questions are judged",
            open.Count == 0
                ? $"By you, somebody who is only just safe answers {Say.Tenths(right / 100.0)} of all {count} rightly. Change what you like, or give it."
                : "Judge the others first: only a whole judgement counts.",
            [.. open.Select(number => Line(bench, number))],
            [.. Enumerable.Range(1, count).Except(open).Select(number => Line(bench, number))],
            Paths.JudgeModule(bench.Module.Name.Value, open is [var first, ..] ? first : 1)
        );
    }

    private static SaidLine Line(Bench bench, int number) =>
        new(
            number,
            bench.Module.Questions[number - 1].Text,
            bench.At(number) is { } ofTen ? Counts.OutOf(ofTen, 10) : "",
            Paths.JudgeModule(bench.Module.Name.Value, number)
        );
}
