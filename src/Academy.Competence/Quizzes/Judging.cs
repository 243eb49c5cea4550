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

    private static string Written(string question, int percent) =>
        string.Create(CultureInfo.InvariantCulture, $"{question}:{percent}");
}
