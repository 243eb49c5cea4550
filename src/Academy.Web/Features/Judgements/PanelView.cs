using Academy.Competence.People;
using Academy.Competence.Quizzes;
using Academy.Competence.Quizzes.Measuring;
using Academy.Competence.Salons;
using Academy.Modules;
using Academy.Web.Wording;

namespace Academy.Web.Features.Judgements;

/// <summary>What the judges said of one question.</summary>
/// <param name="Said">Each judge's groomers of ten, the lowest first.</param>
/// <param name="Own">What the reader said; empty where nothing.</param>
/// <param name="Apart">How far they lie apart, in words.</param>
/// <param name="IsFar">Whether that is worth talking about.</param>
public sealed record SpreadLine(int Number, string Text, bool IsMustKnow, string Said, string Own, string Apart, bool IsFar);

/// <summary>One number with what it means.</summary>
public sealed record FigureLine(string Name, string Value, string Meaning);

/// <summary>What all judges say of a module together.</summary>
public sealed record PanelView(
    string Heading,
    string Lead,
    string Judges,
    IReadOnlyList<FigureLine> Figures,
    IReadOnlyList<SpreadLine> Apart
)
{
    /// <summary>From so many groomers of ten the judges lie far apart (common practice, no published source).</summary>
    private const int FarApart = 3;

    public static PanelView Of(Lesson lesson, SalonBook book, Person reader, Names names)
    {
        var module = lesson.Module;
        var judges = Judging.Of(book, module).Select(one => names.Of(one.By)).ToList();
        var cut = Judging.Cut(book, module);
        var own = JudgementQueries.Percents(Judging.By(book, module, reader.Id));
        return new(
            HeadingOf(module, cut),
            cut is null
                ? "Until then the salon's own share is asked: 16 of 20, with every must-know right."
                : "It holds for every quiz on this edition that is handed in from now on. It never falls below 16 of 20, and each must-know has to be right as well.",
            judges.Count == 0 ? "Nobody has judged this edition yet." : $"{Counts.And(judges)} judged edition {module.Edition}.",
            cut is null ? [] : FiguresOf(module, cut),
            judges.Count == 0 ? [] : [.. Judging.Apart(book, module).Select(one => Line(one, module, own))]
        );
    }

    private static string HeadingOf(Module module, CutScore? cut)
    {
        if (cut is null)
            return $"Fewer than {CutScore.FewestJudges} judges: no pass mark of theirs yet";
        var expected = Judging.InAWholeQuiz(module, cut);
        return $"The judges ask for about {Counts.OutOf(expected.RightAsked, expected.Of)}";
    }

    private static IReadOnlyList<FigureLine> FiguresOf(Module module, CutScore cut)
    {
        var (expected, bank) = (Judging.InAWholeQuiz(module, cut), module.Questions.Count);
        var scale = expected.Of / (double)bank;
        var floor = CutScore.RightAsked(new double[expected.Of], QuizKind.Whole.PassPercent);
        return
        [
            new(
                "Cut score",
                $"{Say.Tenths(cut.Score)} of {bank}",
                $"So many of all {Counts.Of(bank, "question")} would somebody answer rightly who is only just safe to work alone, by the judges' mean."
            ),
            new(
                "Its error",
                $"± {Say.Tenths(cut.StandardError!.Value)}",
                $"Other judges of the same kind would land about so far off; 19 in 20 such panels between {Say.Tenths(Math.Max(0, cut.Range!.Value.Lower))} and {Say.Tenths(Math.Min(bank, cut.Range.Value.Upper))}."
            ),
            new(
                "In a quiz",
                $"{Say.Tenths(expected.Right)} of {expected.Of}",
                $"The same in the questions of one quiz, give or take {Say.Tenths(cut.StandardError.Value * scale)}. Each quiz adds up the questions that it drew, rounds up, and asks for no fewer than {floor}: usually {expected.RightAsked}."
            ),
        ];
    }

    private static SpreadLine Line(QuestionJudged one, Module module, IReadOnlyDictionary<string, int> own)
    {
        var apart = one.Spread / 10;
        return new(
            module.Questions.Index().First(question => question.Item.Id == one.Question.Id).Index + 1,
            one.Question.Text,
            one.Question.IsMustKnow,
            string.Join(", ", one.Percents.Select(percent => percent / 10)),
            own.TryGetValue(one.Question.Id, out var percent) ? $"{percent / 10}" : "",
            one.Percents.Count < 2 ? "one judge"
                : apart == 0 ? "all the same"
                : $"{apart} apart",
            apart >= FarApart
        );
    }
}
