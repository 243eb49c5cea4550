using Academy.Competence.Quizzes;
using Academy.Competence.Salons;

namespace Academy.Competence.Evidence;

/// <summary>How much a module presses for one person on one day.</summary>
public enum StudyNeed
{
    /// <summary>It was passed once and no longer counts: what rests on it waits.</summary>
    Overdue,

    /// <summary>
    /// The pass still counts, and runs out within <see cref="Studying.SoonDays"/> days, or a safety change came after it, or one
    /// refresher was not passed.
    /// </summary>
    DueSoon,

    /// <summary>Never passed.</summary>
    ToStudy,

    /// <summary>Passed, with nothing due soon.</summary>
    Passed,
}

/// <summary>What a person does next about a module.</summary>
public static class Studying
{
    /// <summary>How many days before its last day a pass is called due; the salon's own rule, no published source.</summary>
    public const int SoonDays = 14;

    /// <summary>How much the module presses; null where the library has no such module.</summary>
    public static StudyNeed? NeedOf(ModuleFound found, DateOnly today) =>
        found.State switch
        {
            ModuleState.NotInLibrary => null,
            ModuleState.NotPassed => StudyNeed.ToStudy,
            ModuleState.Current when found.AsksToCatchUp || found.IsLastTry => StudyNeed.DueSoon,
            ModuleState.Current => found.DueOn is { } last && last.DayNumber - today.DayNumber <= SoonDays
                ? StudyNeed.DueSoon
                : StudyNeed.Passed,
            _ => StudyNeed.Overdue,
        };

    /// <summary>Whether the whole quiz is what would count, not a refresher.</summary>
    /// <remarks>
    /// A refresher keeps a pass alive; only the whole quiz passes a module for the first time, passes an edition with a safety
    /// change, and renews a module for a season. It may be renewed from the first of the month in which renewing begins.
    /// </remarks>
    public static bool AsksWholeQuiz(ModuleFound found, ModuleAsked module, DateOnly today, HouseRules house) =>
        found.State is ModuleState.NotPassed or ModuleState.EditionTooOld or ModuleState.NotRenewed
        || IsToRenew(found, module, today, house);

    private static bool IsToRenew(ModuleFound found, ModuleAsked module, DateOnly today, HouseRules house) =>
        module.RenewedEachSpring && found.PassedOn is { } passed && today >= NextSeason(passed, house);

    /// <summary>The quiz that would count next.</summary>
    /// <param name="found">Where the person stands in the module.</param>
    /// <param name="module">What the salon asks of it; null where the salon has not heard of it yet.</param>
    /// <param name="today">The salon's local day.</param>
    /// <param name="house">The house rules: when the modules of the season are renewed.</param>
    /// <remarks>
    /// A short quiz on what changed is enough where nothing else lacks, before the day to catch up by and after it. In the weeks of
    /// renewing the whole quiz does both.
    /// </remarks>
    public static QuizKind NextQuiz(ModuleFound found, ModuleAsked? module, DateOnly today, HouseRules house) =>
        module is null || IsToRenew(found, module, today, house) ? QuizKind.Whole
        : found.AsksToCatchUp ? QuizKind.CatchUp
        : AsksWholeQuiz(found, module, today, house) ? QuizKind.Whole
        : QuizKind.Refresher;

    private static DateOnly NextSeason(DateOnly passedOn, HouseRules house)
    {
        var begins = new DateOnly(passedOn.Year, house.RenewFromMonth, 1);
        return passedOn < begins ? begins : begins.AddYears(1);
    }
}
