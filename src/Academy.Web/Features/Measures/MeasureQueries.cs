using Academy.Competence;
using Academy.Competence.Facts;
using Academy.Competence.Quizzes;
using Academy.Competence.Quizzes.Measuring;
using Academy.Modules;
using Academy.Storage;
using Academy.Web.Access;
using Academy.Web.Library;

namespace Academy.Web.Features.Measures;

/// <summary>A module with what the salon's answers say about its quiz.</summary>
/// <param name="Lesson">Its newest edition, whose questions are shown.</param>
/// <param name="Sheets">The first whole quiz of each person.</param>
/// <param name="Measure">What they say.</param>
/// <param name="LeftOut">How many first tries are left out because the text of their edition is no longer there.</param>
public sealed record Measured(Lesson Lesson, Listed<AnswerSheet> Sheets, QuizMeasure Measure, int LeftOut)
{
    public Module Module => Lesson.Module;
}

/// <summary>Reads the first tries at a module, each in the edition that was seen.</summary>
public sealed class MeasureQueries(Who who, QuizBook quizzes, Editions editions, Shelf library)
{
    /// <summary>Null where the salon has no module of that name.</summary>
    public async Task<Measured?> OfAsync(string module, CancellationToken stop)
    {
        if (library.Find(module) is not { } lesson)
            return null;
        var tries = await quizzes.FirstTriesAsync(who.Salon, lesson.Module.Name, stop);
        List<AnswerSheet> sheets = [];
        foreach (var attempt in tries)
            if (await SheetAsync(attempt, stop) is { } sheet)
                sheets.Add(sheet);
        return new(
            lesson,
            sheets.ToListed(),
            QuizMeasure.Of(lesson.Module.Questions.Select(Asked), sheets),
            tries.Count - sheets.Count
        );
    }

    private async Task<AnswerSheet?> SheetAsync(AttemptHandedIn attempt, CancellationToken stop) =>
        await editions.FindAsync(attempt.Module, attempt.ContentHash, stop) is { } seen
            ? Quizzing.Sheet(seen.Module, attempt)
            : null;

    private static MeasuredQuestion Asked(Question question) => new(question.Id, question.IsMustKnow, question.Kind.Choices);
}
