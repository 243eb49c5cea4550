using System.Diagnostics;
using Academy.Competence.Evidence;
using Academy.Competence.Facts;
using Academy.Competence.Quizzes;
using Academy.Competence.Quizzes.Measuring;

namespace Academy.Web.Wording;

// Modules and quizzes: how they stand, and what came of an attempt.
public static partial class Say
{
    private const int NamesShown = 3;

    /// <summary>How a module stands for a person, with its days: "Due in 9 days, by Friday 19 June".</summary>
    public static string Of(ModuleFound found, SalonTime time) =>
        found switch
        {
            { State: ModuleState.NotPassed } => "Not passed yet",
            { State: ModuleState.NotInLibrary } => "Not among the salon's modules",
            { State: ModuleState.EditionTooOld, PassedOn: { } passed } =>
                $"Passed on {time.Date(passed)}, before its last safety change",
            { State: ModuleState.Current, AsksToCatchUp: true, DueOn: { } last } =>
                $"Changed for safety: catch up by {time.Day(last)}",
            { State: ModuleState.Current, IsLastTry: true, DueOn: { } last } =>
                $"Refresher once not passed, due again by {time.Date(last)}",
            { State: ModuleState.RefresherFailed } => "Refresher twice not passed",
            { State: ModuleState.NotRenewed, PassedOn: { } passed } => $"Passed on {time.Date(passed)}, not renewed this season",
            { State: ModuleState.RefresherOverdue, DueOn: { } last } => $"Refresher overdue since {time.Date(last.AddDays(1))}",
            { State: ModuleState.Current, DueOn: { } last } when Studying.NeedOf(found, time.Today) == StudyNeed.DueSoon => last
            == time.Today
                ? "Due today"
                : $"Due {time.Ago(last)}, by {time.Day(last)}",
            { State: ModuleState.Current, PassedOn: { } passed, DueOn: { } last } =>
                $"Passed on {time.Date(passed)}, due again by {time.Date(last)}",
            { State: ModuleState.Current, PassedOn: { } passed } => $"Passed on {time.Date(passed)}",
            _ => throw new UnreachableException($"No words for {found}."),
        };

    /// <summary>"changed for safety, catch up by 24 June", for a module that holds and asks for it.</summary>
    public static string CatchUpBy(ModuleFound found, SalonTime time) =>
        $"changed for safety, catch up by {time.Date(found.DueOn ?? time.Today)}";

    /// <summary>What a second failure would do, said before it: "wool and nails pause".</summary>
    /// <param name="resting">The skills that rest on the module; none for somebody who is alone in nothing that does.</param>
    public static string LastTry(IReadOnlyList<string> resting) =>
        resting.Count == 0
            ? "One refresher was not passed. Read the module again first: a second one in a row takes the pass away until the next."
            : $"One refresher was not passed. Read the module again first: a second one in a row, and {Some(resting)} {(resting.Count == 1 ? "pauses" : "pause")} until it is passed.";

    /// <summary>The same for those who plan the day.</summary>
    public static string LastTryOf(string title) =>
        $"A refresher of {title} was not passed. A second one in a row pauses this until it is passed.";

    /// <summary>What came of an attempt, as a heading: "18 of 20, but one must-know was wrong. Not passed yet."</summary>
    public static string Result(AttemptHandedIn attempt)
    {
        var score = Counts.OutOf(attempt.Right, attempt.Of);
        var wrong = attempt.MustKnowWrong.Count == 1 ? "one must-know was" : $"{attempt.MustKnowWrong.Count} must-knows were";
        return (attempt.HasPassed, attempt.MustKnowWrong.IsEmpty, attempt.Right >= RightAsked(attempt)) switch
        {
            (true, _, _) => $"{score}. Passed.",
            (_, true, _) when IsNearly(attempt) => $"{score}. Nearly: read the reasons and try again.",
            (_, true, _) => $"{score}. Not passed yet.",
            (_, false, true) => $"{score}, but {wrong} wrong. Not passed yet.",
            _ => $"{score}, and {wrong} wrong. Not passed yet.",
        };
    }

    /// <summary>What would have passed: "16 of 20 pass, with every must-know right."</summary>
    public static string PassMark(AttemptHandedIn attempt) =>
        $"{RightAsked(attempt)} of {attempt.Of} pass, with every must-know right.";

    /// <summary>A few names of many: "wool, wire, silky and 6 more".</summary>
    public static string Some(IReadOnlyList<string> names) =>
        names.Count <= NamesShown + 1
            ? Counts.And(names)
            : $"{string.Join(", ", names.Take(NamesShown))} and {names.Count - NamesShown} more";

    /// <summary>What a kind of quiz is called.</summary>
    public static string Word(QuizKind kind) =>
        kind == QuizKind.CatchUp ? "quiz on what changed"
        : kind == QuizKind.Refresher ? "refresher"
        : "quiz";

    private static bool IsNearly(AttemptHandedIn attempt) =>
        attempt.Of > 1 && NearMark.IsNearly(attempt.Right, RightAsked(attempt), attempt.Of);

    private static int RightAsked(AttemptHandedIn attempt) =>
        attempt.RightAsked ?? Quizzing.KindOf(attempt).RightAsked(attempt.Of, []);
}
