using System.Diagnostics;
using System.Text.RegularExpressions;
using Academy.Competence.Quizzes;
using Academy.Modules.Measures;

namespace Academy.Modules.Reading;

/// <summary>What every quiz has to hold to.</summary>
internal static partial class QuizCheck
{
    public const int LongestQuestion = 25;
    public const int FewestQuestions = 24;
    public const int FewestForAnAim = 3;

    public static void Of(
        FrontMatter front,
        IReadOnlyList<(Question Question, int Line)> questions,
        int quizLine,
        Findings findings
    )
    {
        HashSet<string> ids = new(StringComparer.Ordinal);
        foreach (var (question, line) in questions)
        {
            if (!Slug.Is(question.Id))
                findings.Broken(line, $"The short name \"{question.Id}\" has to be {Slug.Words}.");
            if (!ids.Add(question.Id))
                findings.Broken(line, $"The short name \"{question.Id}\" is there twice. Give each question its own.");
            if (!front.AimLines.ContainsKey(question.Aim))
                findings.Broken(
                    line,
                    $"The aim \"{question.Aim}\" is not in the front matter. Write \"Aim: \" and one of its short names."
                );
            CheckWords(question, line, findings);
        }
        CheckNumbers(front, [.. questions.Select(entry => entry.Question)], quizLine, findings);
    }

    private static void CheckWords(Question question, int line, Findings findings)
    {
        var words = ReadingGrade.WordsOf(question.Text).Count;
        if (words == 0)
            findings.Broken(line, "The question has no words. Write it after the line \"Aim: \".");
        if (words > LongestQuestion)
            findings.Fault(line, $"The question has {words} words; {LongestQuestion} are the most. Shorten it.");
        if (question.Explanation.Length == 0)
            findings.Broken(line, "There is no reason. Write \"Because: \" and why the right answer is right.");
        if (Shown(question).Any(text => Markup().IsMatch(text)))
            findings.Fault(line, "Questions and options are plain words. Take out stars, backticks, links and source marks.");
    }

    private static IEnumerable<string> Shown(Question question) =>
        [
            question.Text,
            .. question.Kind switch
            {
                Choice choice => choice.Options.Select(option => option.Text),
                InOrder order => order.Steps.Select(step => step.Text),
                Matching match => [.. match.Pairs.Select(pair => pair.Left), .. match.Sides],
                OnPicture picture => picture.Spots.Select(spot => spot.Words),
                TrueOrFalse or Number => [],
                _ => throw new UnreachableException(),
            },
        ];

    private static void CheckNumbers(FrontMatter front, Question[] questions, int quizLine, Findings findings)
    {
        var counts = questions.CountBy(question => question.Aim).ToDictionary(StringComparer.Ordinal);
        foreach (var (aim, line) in front.AimLines.Where(aim => counts.GetValueOrDefault(aim.Key) < FewestForAnAim))
            findings.Fault(
                line,
                $"The aim \"{aim}\" has {counts.GetValueOrDefault(aim)} questions; write at least {FewestForAnAim}."
            );
        if (questions.Length < FewestQuestions)
            findings.Fault(quizLine, $"The quiz has {questions.Length} questions; write at least {FewestQuestions}.");
        var others = questions.Count(question => !question.IsMustKnow);
        if (others < QuizKind.Whole.Questions - QuizKind.Whole.MostMustKnow)
            findings.Fault(
                quizLine,
                $"{others} questions are not must-know; write at least {QuizKind.Whole.Questions - QuizKind.Whole.MostMustKnow}, "
                    + "because a quiz asks 20 and at most 4 of them are must-know."
            );
    }

    [GeneratedRegex(@"\*\*|`|\]\(|\[(\d|common)|__", RegexOptions.ExplicitCapture, Patience.Milliseconds)]
    private static partial Regex Markup();
}
