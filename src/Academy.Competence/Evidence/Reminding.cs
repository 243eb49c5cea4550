using Academy.Competence.Quizzes;
using Academy.Competence.Salons;

namespace Academy.Competence.Evidence;

/// <summary>What is asked of somebody by the last day on which a pass still counts.</summary>
public enum ReminderKind
{
    /// <summary>The refresher.</summary>
    Refresher,

    /// <summary>The short quiz on a safety change.</summary>
    CatchUp,

    /// <summary>The whole quiz, because the module is renewed for the season.</summary>
    Renewal,
}

/// <summary>A module that a person passed and the last day on which that pass counts.</summary>
/// <param name="Module">The module.</param>
/// <param name="Kind">What is asked by then.</param>
/// <param name="LastDay">The last local day on which the pass counts.</param>
/// <param name="Since">The person's newest attempt at the module: what that day follows from.</param>
public sealed record Reminder(ModuleName Module, ReminderKind Kind, DateOnly LastDay, DateTimeOffset Since);

/// <summary>What a calendar reminds a person of: every pass that runs out, with its day.</summary>
public static class Reminding
{
    /// <summary>How many days before the last day a calendar warns: common practice, no published source.</summary>
    public const int DaysAhead = 7;

    /// <summary>One reminder for each module whose pass runs out some day, also where that day is past; the earliest first.</summary>
    /// <param name="library">What the salon asks of each module today.</param>
    /// <param name="taken">Everything the person handed in, in any order.</param>
    /// <param name="today">The salon's local day.</param>
    /// <param name="zone">The salon's zone.</param>
    /// <param name="house">The house rules.</param>
    public static Listed<Reminder> Of(
        Listed<ModuleAsked> library,
        IReadOnlyCollection<QuizTaken> taken,
        DateOnly today,
        TimeZoneInfo zone,
        HouseRules house
    ) =>
        Knowledge
            .Of(library.Select(module => module.Module).ToListed(), library, taken, today, zone, house)
            .Zip(library)
            .Where(one => one.First.DueOn is not null)
            .Select(one => new Reminder(
                one.First.Module,
                KindOf(one.First, one.Second, house),
                one.First.DueOn!.Value,
                taken.Where(quiz => quiz.Module == one.First.Module).Max(quiz => quiz.HandedInAt)
            ))
            .OrderBy(reminder => reminder.LastDay)
            .ThenBy(reminder => reminder.Module.Value, StringComparer.Ordinal)
            .ToListed();

    // Asked as of the last day: by then the weeks of renewing may have begun.
    private static ReminderKind KindOf(ModuleFound found, ModuleAsked module, HouseRules house)
    {
        var next = Studying.NextQuiz(found, module, found.DueOn!.Value, house);
        return next == QuizKind.CatchUp ? ReminderKind.CatchUp
            : next == QuizKind.Whole ? ReminderKind.Renewal
            : ReminderKind.Refresher;
    }
}
