using Academy.Competence;
using Academy.Competence.Quizzes;
using Academy.Competence.Quizzes.Measuring;
using Academy.Competence.Salons;
using Academy.Storage;
using Academy.Web.Features.Shared;
using Academy.Web.Library;
using Academy.Web.Wording;

namespace Academy.Web.Features.Measures;

/// <summary>One quiz in the list.</summary>
public sealed record QuizLine(string Title, string Href, string Tries, string Mark, string? Judges);

/// <summary>The quizzes, those with the most first tries on top.</summary>
public sealed record MeasuresView(string Heading, IReadOnlyList<QuizLine> Lines)
{
    public static MeasuresView Of(Shelf library, SalonBook book, IReadOnlyDictionary<ModuleName, FirstTries> tries)
    {
        var people = library.Modules.Sum(module => Of(tries, module).People);
        return new(
            people == 0 ? "Nobody has taken a quiz yet" : $"{Counts.Of(people, "first try", "first tries")} to learn from",
            [
                .. library
                    .Modules.OrderByDescending(module => Of(tries, module).People)
                    .ThenBy(module => module.Title, StringComparer.Ordinal)
                    .Select(module => Line(module, book, Of(tries, module))),
            ]
        );
    }

    private static FirstTries Of(IReadOnlyDictionary<ModuleName, FirstTries> tries, Module module) =>
        tries.TryGetValue(module.Name, out var found) ? found : new(0, 0);

    private static QuizLine Line(Module module, SalonBook book, FirstTries tries) =>
        new(
            module.Title,
            Paths.Measure(module.Name.Value),
            tries.People == 0
                ? "Nobody has taken it yet."
                : $"{Counts.OutOf(tries.Passed, tries.People)} passed at the first try.",
            MarkOf(module, book),
            Judging.Of(book, module).Any() ? Paths.JudgePanel(module.Name.Value) : null
        );

    private static string MarkOf(Module module, SalonBook book) =>
        Judging.Cut(book, module) is { } cut && Judging.InAWholeQuiz(module, cut) is var expected
            ? $"{Counts.Of(Judging.Of(book, module).Count(), "judge")} ask for about {Counts.OutOf(expected.RightAsked, expected.Of)}."
            : $"{Counts.Of(Judging.Of(book, module).Count(), "judge")} so far; from {CutScore.FewestJudges} on they set the pass mark.";
}
