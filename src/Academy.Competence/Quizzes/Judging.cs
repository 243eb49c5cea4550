using System.Globalization;
using Academy.Competence.Facts;
using Academy.Competence.People;
using Academy.Competence.Quizzes.Measuring;
using Academy.Competence.Salons;

namespace Academy.Competence.Quizzes;

/// <summary>Seniors as judges of questions: how likely somebody who is only just safe to work alone has each right.</summary>
public static class Judging
{
    /// <summary>A senior judges every question of an edition.</summary>
    /// <param name="module">The edition.</param>
    /// <param name="by">Who judges: a senior or the owner.</param>
    /// <param name="percent">For each question's id the chance in percent, 0 to 100.</param>
    /// <param name="today">The salon's local day.</param>
    public static Decision Judge(Module module, Person by, IReadOnlyDictionary<string, int> percent, DateOnly today)
    {
        return Decision.Of(
            Against(),
            () =>
                [
                    new QuestionsJudged(
                        module.Name,
                        module.Hash,
                        by.Id,
                        module.Questions.Select(question => Written(question.Id, percent[question.Id])).ToListed()
                    ),
                ]
        );

        IEnumerable<Reason> Against()
        {
            if (!by.WorksOn(today))
                yield return new NotWorkingHere(by.Id);
            if (!by.MayJudgeByRole)
                yield return new SeniorOrOwnerOnly(by.Role);
            var left = module.Questions.Count(question =>
                !percent.TryGetValue(question.Id, out var chance) || chance is < 0 or > 100
            );
            if (left > 0)
                yield return new QuestionsNotJudged(left);
        }
    }

    /// <summary>The chances of one judgement by question.</summary>
    public static IReadOnlyDictionary<string, double> Chances(QuestionsJudged judged) =>
        judged.Chances.ToDictionary(
            one => one[..one.LastIndexOf(':')],
            one => int.Parse(one[(one.LastIndexOf(':') + 1)..], CultureInfo.InvariantCulture) / 100.0,
            StringComparer.Ordinal
        );

    /// <summary>Everybody's judgement of this edition.</summary>
    public static IEnumerable<QuestionsJudged> Of(SalonBook book, Module module) =>
        book.Judgements.Where(one => one.ContentHash == module.Hash);

    /// <summary>The cut of the salon's judges for the whole bank; null below <see cref="CutScore.FewestJudges"/> of them.</summary>
    public static CutScore? Cut(SalonBook book, Module module)
    {
        var judges = Of(book, module).Select(Chances).ToArray();
        return judges.Length < CutScore.FewestJudges
            ? null
            : CutScore.Of([.. judges.Select(judge => module.Questions.Select(question => judge[question.Id]).ToArray())]);
    }

    /// <summary>For each question the judges' mean chance; null while too few have judged this edition.</summary>
    public static IReadOnlyDictionary<string, double>? MeanChances(SalonBook book, Module module) =>
        Cut(book, module) is { } cut
            ? module.Questions.Zip(cut.ByQuestion).ToDictionary(one => one.First.Id, one => one.Second, StringComparer.Ordinal)
            : null;

    /// <summary>What this judge said of this edition; null where she has not given hers.</summary>
    public static QuestionsJudged? By(SalonBook book, Module module, PersonId judge) =>
        Of(book, module).FirstOrDefault(one => one.By == judge);

    /// <summary>What each judge said of each question, those first on which they lie furthest apart.</summary>
    public static Listed<QuestionJudged> Apart(SalonBook book, Module module)
    {
        var judges = Of(book, module).Select(Chances).ToArray();
        return module
            .Questions.Select(question => new QuestionJudged(
                question,
                judges.Select(judge => (int)Math.Round(judge[question.Id] * 100)).Order().ToListed()
            ))
            .OrderByDescending(one => one.Spread)
            .ThenByDescending(one => one.Percents.Count)
            .ToListed();
    }

    /// <summary>How many of a whole quiz's questions a borderline groomer has right on average, by the judges of this cut.</summary>
    /// <param name="module">The edition that they judged.</param>
    /// <param name="cut">Their cut for its whole bank.</param>
    /// <remarks>
    /// A quiz draws must-know questions and others apart, so each kind stands with its own mean. One draw may ask a little more or
    /// less than this: <see cref="CutScore.RightAsked"/> sums the questions that it drew.
    /// </remarks>
    public static ExpectedScore InAWholeQuiz(Module module, CutScore cut)
    {
        var chances = module.Questions.Zip(cut.ByQuestion).ToLookup(one => one.First.IsMustKnow, one => one.Second);
        var mustKnow = Math.Min(QuizKind.Whole.MostMustKnow, chances[true].Count());
        var others = Math.Min(QuizKind.Whole.Questions - mustKnow, chances[false].Count());
        return new(Sum(chances[true], mustKnow) + Sum(chances[false], others), mustKnow + others);
    }

    private static double Sum(IEnumerable<double> chances, int drawn) => drawn == 0 ? 0 : drawn * chances.Average();

    private static string Written(string question, int percent) =>
        string.Create(CultureInfo.InvariantCulture, $"{question}:{percent}");
}

/// <summary>What the judges said of one question.</summary>
/// <param name="Question">The question.</param>
/// <param name="Percents">Each judge's chance in percent, the lowest first.</param>
public sealed record QuestionJudged(Question Question, Listed<int> Percents)
{
    /// <summary>How far the lowest and the highest lie apart, in percent; 0 for one judge or none.</summary>
    public int Spread => Percents.IsEmpty ? 0 : Percents[^1] - Percents[0];
}

/// <summary>A score that is expected on average.</summary>
/// <param name="Right">How many questions right.</param>
/// <param name="Of">Of how many.</param>
public sealed record ExpectedScore(double Right, int Of)
{
    /// <summary>How many have to be right in a draw that asks for just this: rounded up, and never below the floor.</summary>
    public int RightAsked =>
        Of == 0 ? 0 : CutScore.RightAsked(Enumerable.Repeat(Right / Of, Of).ToArray(), QuizKind.Whole.PassPercent);
}
