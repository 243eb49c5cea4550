using Academy.Competence;
using Academy.Competence.Evidence;
using Academy.Competence.Facts;
using Academy.Competence.People;
using Academy.Competence.Quizzes;
using Academy.Competence.Salons;
using Academy.Modules;
using Academy.Storage;
using Academy.Web.Library;
using Academy.Web.Wording;
using Paths = Academy.Web.Features.Shared.Paths;

namespace Academy.Web.Features.Quizzes;

/// <summary>An attempt with the lesson that was seen, where its text is still there, and the newest one.</summary>
/// <param name="All">Everything that the person handed in.</param>
public sealed record AttemptSeen(AttemptHandedIn Attempt, Lesson? Seen, Lesson? Newest, Listed<HandedIn> All)
{
    /// <summary>What was handed in of this module.</summary>
    public Listed<QuizTaken> Taken => All.Select(one => one.Taken).Where(one => one.Module == Attempt.Module).ToListed();

    public bool IsNewest => Taken.All(one => one.HandedInAt <= Attempt.HandedInAt);

    /// <summary>Where the module stands for the person now.</summary>
    public ModuleFound Stand(SalonBook book, SalonTime time) =>
        Knowledge.Of([Attempt.Module], [.. book.Library], Taken, time.Today, book.Zone, book.House)[0];
}

/// <summary>One part of what was answered, and whether it is part of what is right.</summary>
public sealed record SaidLine(string Words, bool IsRight);

/// <summary>One question as it was asked and answered.</summary>
/// <param name="Whose">"You said", or whose words they are.</param>
/// <param name="Said">What was answered; empty where nothing was.</param>
/// <param name="Right">What is right.</param>
/// <param name="Because">Why, as safe HTML.</param>
public sealed record AskedLine(
    int Number,
    string Text,
    bool IsMustKnow,
    bool IsRight,
    string Whose,
    IReadOnlyList<SaidLine> Said,
    IReadOnlyList<string> Right,
    string Because
);

/// <summary>What came of an attempt.</summary>
/// <param name="Sources">The sources that the explanations cite, as safe HTML; null where the text is no longer there.</param>
public sealed record ResultView(
    string Title,
    string Line,
    string Heading,
    string Lead,
    int Right,
    int Asked,
    string Mark,
    IReadOnlyList<AskedLine> Wrong,
    IReadOnlyList<AskedLine> Suited,
    string? Sources,
    string? Older,
    string? Lesson
)
{
    public static ResultView Of(AttemptSeen seen, Person viewer, SalonBook book, Names names, PathString mounted)
    {
        var attempt = seen.Attempt;
        var isOwn = viewer.Id == attempt.Person;
        var said = isOwn ? "You said" : $"{names.Of(attempt.Person)} said";
        var asked = seen.Seen is { } lesson ? AskedOf(attempt, lesson, said, mounted) : [];
        return new(
            seen.Seen?.Module.Title ?? names.Of(attempt.Module).Trim('“', '”'),
            LineOf(attempt, isOwn, names),
            Say.Result(attempt),
            LeadOf(seen, book, isOwn, names),
            attempt.Right,
            attempt.Of,
            Say.PassMark(attempt),
            [.. asked.Where(line => !line.IsRight)],
            [.. asked.Where(line => line.IsRight)],
            seen.Seen is { } sourced ? LessonPage.Sources(sourced, mounted) : null,
            OlderOf(seen),
            seen.Newest is null ? null : Paths.Module(attempt.Module.Value)
        );
    }

    private static IReadOnlyList<AskedLine> AskedOf(AttemptHandedIn attempt, Lesson lesson, string said, PathString mounted)
    {
        var given = attempt.Answers.Select(Answer.Read).ToDictionary(answer => answer.QuestionId, StringComparer.Ordinal);
        return
        [
            .. Quizzing
                .Asked(lesson.Module, attempt)
                .Select(
                    (question, place) => Line(question, place + 1, given.GetValueOrDefault(question.Id)?.Given ?? new Picked([]))
                ),
        ];

        AskedLine Line(Question question, int number, Given given) =>
            new(
                number,
                question.Text,
                question.IsMustKnow,
                question.IsAnsweredBy(given),
                said,
                [.. Say.Answer(question.Kind, given).Select(words => new SaidLine(words, IsPart(words, question, given)))],
                Say.RightAnswer(question.Kind),
                LessonPage.Explanation(lesson, question.Id, mounted)
            );
    }

    // Of an amount no part can be right; of the others each option, step or pair is right or not by itself.
    private static bool IsPart(string words, Question question, Given given) =>
        question.IsAnsweredBy(given) || (question.Kind is not Number && Say.RightAnswer(question.Kind).Contains(words));

    private static string LineOf(AttemptHandedIn attempt, bool isOwn, Names names)
    {
        var whose = isOwn ? "" : $"{names.Of(attempt.Person)}, ";
        var kind = Say.Word(Quizzing.KindOf(attempt));
        var by = attempt.ReadOutBy is { } senior ? $", read out by {names.Of(senior)}" : "";
        return $"{whose}{kind} of edition {attempt.Edition}, handed in {names.Time.At(attempt.HandedInAt)}{by}";
    }

    // When it may be taken again is said of the newest attempt only; an older one has been overtaken.
    private static string LeadOf(AttemptSeen seen, SalonBook book, bool isOwn, Names names)
    {
        var attempt = seen.Attempt;
        if (!seen.IsNewest)
            return "There is a newer attempt at this module.";
        if (attempt.HasPassed)
            return $"{Say.Of(seen.Stand(book, names.Time), names.Time)}.";
        var attempts = seen.Taken.Select(one => new Attempt(one.HandedInAt, one.HasPassed));
        var again =
            Quizzing.MayTakeAgainAt(attempts, book.Zone) is { } at && at > names.Time.Now
                ? $"It may be taken again from {names.Time.At(at)} on."
                : "It may be taken again now.";
        return attempt.MustKnowWrong.IsEmpty
            ? $"Read the reasons below first. {again}"
            : $"A must-know answer keeps a dog from being hurt: read its reason first. {again}";
    }

    private static string? OlderOf(AttemptSeen seen) =>
        (seen.Seen, seen.Newest) switch
        {
            (null, _) => "The text of that edition is no longer there, so its questions cannot be shown. The result stands.",
            (_, null) => "This module is no longer among the salon's. The questions are shown as they were.",
            var (then, now) when then.Module.Hash != now.Module.Hash =>
                $"The questions are shown as they were in edition {then.Module.Edition}. The newest edition is {now.Module.Edition}.",
            _ => null,
        };
}
