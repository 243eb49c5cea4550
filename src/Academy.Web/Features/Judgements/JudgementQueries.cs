using Academy.Competence.Quizzes;
using Academy.Modules;
using Academy.Storage;
using Academy.Web.Access;
using Academy.Web.Library;

namespace Academy.Web.Features.Judgements;

/// <summary>An edition before a judge, with what she has said of its questions so far.</summary>
/// <param name="Lesson">The newest edition.</param>
/// <param name="Said">For each question judged its chance in percent.</param>
/// <param name="HasGiven">Whether her whole judgement of this edition was given.</param>
public sealed record Bench(Lesson Lesson, IReadOnlyDictionary<string, int> Said, bool HasGiven)
{
    public Module Module => Lesson.Module;

    /// <summary>The groomers of ten that were said of the question of this number, counted from 1; null where nothing was.</summary>
    public int? At(int number) => Said.TryGetValue(Module.Questions[number - 1].Id, out var percent) ? percent / 10 : null;

    /// <summary>Numbers of the questions of which nothing was said.</summary>
    public IReadOnlyList<int> Open => [.. Enumerable.Range(1, Module.Questions.Count).Where(number => At(number) is null)];
}

/// <summary>Finds what a judge has before her, and nothing of the other judges.</summary>
public sealed class JudgementQueries(Who who, JudgingBook judgings, Shelf library)
{
    /// <summary>Null where the salon has no module of that name.</summary>
    public async Task<Bench?> FindAsync(string module, CancellationToken stop)
    {
        if (library.Find(module) is not { } lesson)
            return null;
        var given = Judging.By(who.Book, lesson.Module, who.Person.Id);
        var said = await judgings.FindAsync(who.Salon, who.Person.Id, lesson.Module.Name, lesson.Module.Hash, stop);
        return new(lesson, said.Count > 0 ? said : Percents(given), given is not null);
    }

    /// <summary>What was given, in percent; empty where nothing was.</summary>
    public static IReadOnlyDictionary<string, int> Percents(Competence.Facts.QuestionsJudged? given) =>
        given is null
            ? new Dictionary<string, int>()
            : Judging.Chances(given).ToDictionary(one => one.Key, one => (int)Math.Round(one.Value * 100));
}
