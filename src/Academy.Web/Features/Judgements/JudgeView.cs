using Academy.Competence;
using Academy.Competence.People;
using Academy.Competence.Quizzes;
using Academy.Competence.Quizzes.Measuring;
using Academy.Competence.Salons;
using Academy.Web.Features.Shared;
using Academy.Web.Library;
using Academy.Web.Wording;

namespace Academy.Web.Features.Judgements;

/// <summary>One module with how far its judging has come.</summary>
/// <param name="Own">What the reader has said of it.</param>
/// <param name="Judges">How many judges gave theirs, and what that means.</param>
/// <param name="Panel">Where all judges are put together; null for whoever may not see them yet.</param>
public sealed record JudgeLine(string Title, string Own, string Judges, string Href, string Act, string? Panel);

/// <summary>The modules to judge, those first that the reader has not given yet.</summary>
public sealed record JudgeView(string Heading, IReadOnlyList<JudgeLine> Lines)
{
    public static JudgeView Of(
        Shelf library,
        SalonBook book,
        Person judge,
        IReadOnlyDictionary<ModuleName, (string Hash, int Questions)> underWay
    )
    {
        var left = library.Modules.Count(module => Judging.By(book, module, judge.Id) is null);
        return new(
            library.Modules.IsEmpty ? "There is no module to judge yet"
                : left == 0 ? "You have judged every module"
                : $"{Counts.Of(left, "module")} to judge",
            [
                .. library
                    .Modules.OrderBy(module => Judging.By(book, module, judge.Id) is not null)
                    .ThenBy(module => module.Title, StringComparer.Ordinal)
                    .Select(module => Line(module, book, judge, underWay)),
            ]
        );
    }

    /// <summary>How many judges there are, and what that does to the pass mark.</summary>
    public static string JudgesOf(SalonBook book, Module module) =>
        Judging.Of(book, module).Count() switch
        {
            0 => $"No judge yet. From {CutScore.FewestJudges} on they set the pass mark.",
            < CutScore.FewestJudges and var few =>
                $"{Counts.Of(few, "judge")} so far. From {CutScore.FewestJudges} on they set the pass mark.",
            var enough => $"{enough} judges set the pass mark together.",
        };

    private static JudgeLine Line(
        Module module,
        SalonBook book,
        Person judge,
        IReadOnlyDictionary<ModuleName, (string Hash, int Questions)> underWay
    )
    {
        var hasGiven = Judging.By(book, module, judge.Id) is not null;
        var said = underWay.TryGetValue(module.Name, out var kept) && kept.Hash == module.Hash ? kept.Questions : 0;
        return new(
            module.Title,
            (hasGiven, said) switch
            {
                (true, 0) => "You gave yours.",
                (true, _) => "You gave yours, and are going through it again.",
                (_, 0) => $"{Counts.Of(module.Questions.Count, "question")}, none judged yet.",
                _ => $"{Counts.OutOf(said, module.Questions.Count)} questions judged, not given yet.",
            },
            JudgesOf(book, module),
            Paths.JudgeModule(module.Name.Value),
            hasGiven ? "Go through it again"
                : said > 0 ? "Go on"
                : "Judge",
            hasGiven || judge.Role == Role.Owner ? Paths.JudgePanel(module.Name.Value) : null
        );
    }
}
