using Academy.Competence.Quizzes;
using Academy.Competence.Salons;

namespace Academy.Competence.Evidence;

/// <summary>What the salon asks of one module today.</summary>
/// <param name="Module">The module.</param>
/// <param name="Edition">The newest edition.</param>
/// <param name="SafetyCriticalSince">The edition in which the last safety-critical change came; a pass in an older one no longer counts.</param>
/// <param name="RefresherDays">The longest gap between refreshers in days; null for none.</param>
/// <param name="RenewedEachSpring">Whether it must be passed again each spring.</param>
public sealed record ModuleAsked(
    ModuleName Module,
    int Edition,
    int SafetyCriticalSince,
    int? RefresherDays,
    bool RenewedEachSpring
)
{
    /// <summary>The safety changes that this salon saw after its first edition, oldest first, each with its day to catch up by.</summary>
    public Listed<SafetyChange> Changes { get; init; }

    /// <summary>The module after the salon saw one more edition of it.</summary>
    /// <param name="seen">What is asked from now on.</param>
    /// <param name="catchUpBy">Where it changes something that can hurt: the last day on which an older pass still counts.</param>
    public ModuleAsked Then(ModuleAsked seen, DateOnly? catchUpBy) =>
        seen with
        {
            Changes =
                seen.SafetyCriticalSince > SafetyCriticalSince ? Changes.With(new(seen.SafetyCriticalSince, catchUpBy)) : Changes,
        };

    /// <summary>
    /// The last day on which a pass of this edition counts in spite of safety changes after it; null where there were none.
    /// </summary>
    /// <remarks>The earliest day of all changes since; a change without a day ends older passes at once.</remarks>
    public DateOnly? CatchUpBy(int edition)
    {
        if (edition >= SafetyCriticalSince)
            return null;
        var since = Changes.Where(change => change.Edition > edition).Select(change => change.LastDay).ToArray();
        return since.Length == 0 ? DateOnly.MinValue : since.Min();
    }
}

/// <summary>A change of a module that a dog or a person can be hurt by.</summary>
/// <param name="Edition">The edition that brought it.</param>
/// <param name="CatchUpBy">The last day on which a pass of an older edition still counts; null for none.</param>
public sealed record SafetyChange(int Edition, DateOnly? CatchUpBy)
{
    internal DateOnly LastDay => CatchUpBy ?? DateOnly.MinValue;
}

/// <summary>One attempt at a module's quiz or refresher, handed in.</summary>
/// <param name="Module">The module.</param>
/// <param name="Edition">The edition it was taken in.</param>
/// <param name="HandedInAt">When.</param>
/// <param name="HasPassed">Whether it was passed.</param>
/// <param name="IsRefresher">A refresher: it keeps a pass alive, but neither passes a newer edition nor renews for a season.</param>
public sealed record QuizTaken(ModuleName Module, int Edition, DateTimeOffset HandedInAt, bool HasPassed, bool IsRefresher);

/// <summary>Where one person stands in one module on one day.</summary>
public enum ModuleState
{
    /// <summary>Passed, in an edition that still counts, nothing overdue.</summary>
    Current,

    /// <summary>Never passed.</summary>
    NotPassed,

    /// <summary>Passed in an edition older than the last safety-critical one.</summary>
    EditionTooOld,

    /// <summary>Passed, and the refresher is overdue.</summary>
    RefresherOverdue,

    /// <summary>Two refreshers failed in a row: what rests on it pauses until the next pass.</summary>
    RefresherFailed,

    /// <summary>Passed before this spring, and the day by which it is renewed has come.</summary>
    NotRenewed,

    /// <summary>No such module is in the library, so nobody can have passed it.</summary>
    NotInLibrary,
}

/// <summary>What was found for one module that a skill asks for.</summary>
/// <param name="Module">The module.</param>
/// <param name="State">Where the person stands in it.</param>
/// <param name="PassedOn">The newest pass, if any.</param>
/// <param name="DueOn">The last day on which the newest pass still counts; null if it never runs out or there is none.</param>
/// <param name="AsksToCatchUp">
/// Whether the newest pass lacks nothing but a safety change after it: a short quiz on what changed is asked, by
/// <paramref name="DueOn"/> where it still counts. A pass that has run out by itself is not caught up with.
/// </param>
/// <param name="IsLastTry">
/// Whether the pass still counts, one refresher after it was not passed, and a second one in a row would pause what rests on the
/// module.
/// </param>
public sealed record ModuleFound(
    ModuleName Module,
    ModuleState State,
    DateOnly? PassedOn,
    DateOnly? DueOn,
    bool AsksToCatchUp = false,
    bool IsLastTry = false
)
{
    /// <summary>Whether the module holds.</summary>
    public bool Holds => State == ModuleState.Current;
}

/// <summary>What a person's quizzes say about the modules a skill asks for.</summary>
public static class Knowledge
{
    /// <summary>Each module asked for, in the order asked, with what was found on this day.</summary>
    /// <param name="asked">The modules a skill asks for.</param>
    /// <param name="library">What the salon asks of each module today.</param>
    /// <param name="taken">Everything the person handed in, in any order.</param>
    /// <param name="today">The salon's local day.</param>
    /// <param name="zone">The salon's zone.</param>
    /// <param name="house">The house rules: when the modules of the season are renewed.</param>
    public static Listed<ModuleFound> Of(
        Listed<ModuleName> asked,
        IReadOnlyCollection<ModuleAsked> library,
        IReadOnlyCollection<QuizTaken> taken,
        DateOnly today,
        TimeZoneInfo zone,
        HouseRules house
    ) =>
        asked
            .Select(name =>
                Of(
                    name,
                    library.FirstOrDefault(module => module.Module == name),
                    [.. taken.Where(one => one.Module == name)],
                    today,
                    zone,
                    house
                )
            )
            .ToListed();

    private static ModuleFound Of(
        ModuleName name,
        ModuleAsked? module,
        QuizTaken[] taken,
        DateOnly today,
        TimeZoneInfo zone,
        HouseRules house
    )
    {
        if (module is null)
            return new(name, ModuleState.NotInLibrary, PassedOn: null, DueOn: null);
        if (NewestPass(taken, module) is not { } newest)
            return new(name, ModuleState.NotPassed, PassedOn: null, DueOn: null);

        var passedOn = SalonDay.Of(newest.HandedInAt, zone);
        var refresher = module.RefresherDays is { } longest
            ? Refreshing.After(taken.Select(one => new Attempt(one.HandedInAt, one.HasPassed)), longest, zone)
            : null;
        var overdue = Earlier(refresher?.DueOn, refresher?.ExpiresOn);
        var renewal = module.RenewedEachSpring ? LastDayBeforeRenewal(passedOn, house) : (DateOnly?)null;
        var catchUp = module.CatchUpBy(newest.Edition);
        var isPaused = refresher is { IsPaused: true };
        var state = StateOf(catchUp, isPaused, overdue, renewal, today);
        return new(
            name,
            state,
            passedOn,
            Earlier(Earlier(overdue?.AddDays(-1), renewal), catchUp == DateOnly.MinValue ? null : catchUp),
            catchUp is not null && StateOf(catchUp: null, isPaused, overdue, renewal, today) == ModuleState.Current,
            IsLastTry: state == ModuleState.Current && refresher is { HasFailedOnce: true }
        );
    }

    // A quiz drawn before the newer edition came may be handed in after a pass in that one: it takes nothing away.
    private static QuizTaken? NewestPass(IEnumerable<QuizTaken> taken, ModuleAsked module) =>
        taken
            .Where(one => one is { HasPassed: true, IsRefresher: false })
            .OrderBy(one => one.Edition >= module.SafetyCriticalSince)
            .ThenBy(one => one.HandedInAt)
            .LastOrDefault();

    private static ModuleState StateOf(DateOnly? catchUp, bool isPaused, DateOnly? overdue, DateOnly? renewal, DateOnly today)
    {
        if (catchUp < today)
            return ModuleState.EditionTooOld;
        if (isPaused)
            return ModuleState.RefresherFailed;
        if (renewal < today)
            return ModuleState.NotRenewed;
        return overdue <= today ? ModuleState.RefresherOverdue : ModuleState.Current;
    }

    private static DateOnly? Earlier(DateOnly? one, DateOnly? other) =>
        (one, other) switch
        {
            ({ } first, { } second) => first < second ? first : second,
            _ => one ?? other,
        };

    /// <summary>The last day on which a pass of this day counts: the day before the renewals of the next season are due.</summary>
    /// <remarks>A pass on or after the first of the month in which renewing begins already counts for that year's season.</remarks>
    private static DateOnly LastDayBeforeRenewal(DateOnly passedOn, HouseRules house)
    {
        var season = passedOn.Month >= house.RenewFromMonth ? passedOn.Year + 1 : passedOn.Year;
        var yearOfDue = house.RenewByMonth >= house.RenewFromMonth ? season : season + 1;
        return new DateOnly(yearOfDue, house.RenewByMonth, 1).AddDays(-1);
    }
}
