using Academy.Competence.Salons;

namespace Academy.Competence.Evidence;

/// <summary>What the salon asks of one module today.</summary>
/// <param name="Module">The module.</param>
/// <param name="Edition">The newest edition.</param>
/// <param name="SafetyCriticalSince">The edition in which the last safety-critical change came; a pass in an older one no longer counts.</param>
/// <param name="RefresherDays">Days after a pass at which a refresher comes due; null for never.</param>
/// <param name="RenewedEachSpring">Whether it must be passed again each spring.</param>
public sealed record ModuleAsked(
    ModuleName Module,
    int Edition,
    int SafetyCriticalSince,
    int? RefresherDays,
    bool RenewedEachSpring
);

/// <summary>A passed quiz.</summary>
/// <param name="Module">The module.</param>
/// <param name="Edition">The edition it was taken in.</param>
/// <param name="On">The salon's local day.</param>
public sealed record QuizPass(ModuleName Module, int Edition, DateOnly On);

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
public sealed record ModuleFound(ModuleName Module, ModuleState State, DateOnly? PassedOn, DateOnly? DueOn)
{
    /// <summary>Whether the module holds.</summary>
    public bool Holds => State == ModuleState.Current;
}

/// <summary>What a person's passed quizzes say about the modules a skill asks for.</summary>
public static class Knowledge
{
    /// <summary>Each module asked for, in the order asked, with what was found on this day.</summary>
    public static Listed<ModuleFound> Of(
        Listed<ModuleName> asked,
        IReadOnlyCollection<ModuleAsked> library,
        IReadOnlyCollection<QuizPass> passes,
        DateOnly today,
        HouseRules house
    ) => asked.Select(name => Of(name, library.FirstOrDefault(module => module.Module == name), passes, today, house)).ToListed();

    private static ModuleFound Of(
        ModuleName name,
        ModuleAsked? module,
        IReadOnlyCollection<QuizPass> passes,
        DateOnly today,
        HouseRules house
    )
    {
        if (module is null)
            return new(name, ModuleState.NotInLibrary, PassedOn: null, DueOn: null);

        var newest = passes.Where(pass => pass.Module == name && pass.On <= today).MaxBy(pass => (pass.On, pass.Edition));
        if (newest is null)
            return new(name, ModuleState.NotPassed, PassedOn: null, DueOn: null);

        var refresherDue = module.RefresherDays is { } days ? newest.On.AddDays(days) : (DateOnly?)null;
        var renewalDue = module.RenewedEachSpring ? LastDayBeforeRenewal(newest.On, house) : (DateOnly?)null;
        var due =
            refresherDue is { } first && renewalDue is { } second
                ? (first < second ? first : second)
                : refresherDue ?? renewalDue;
        return new(name, StateOf(newest, module, refresherDue, renewalDue, today), newest.On, due);
    }

    private static ModuleState StateOf(
        QuizPass pass,
        ModuleAsked module,
        DateOnly? refresherDue,
        DateOnly? renewalDue,
        DateOnly today
    )
    {
        if (pass.Edition < module.SafetyCriticalSince)
            return ModuleState.EditionTooOld;
        if (renewalDue < today)
            return ModuleState.NotRenewed;
        return refresherDue < today ? ModuleState.RefresherOverdue : ModuleState.Current;
    }

    /// <summary>The last day on which a pass of this day counts: the day before the renewals of the next season are due.</summary>
    /// <remarks>A pass on or after the first of the month in which renewing begins already counts for that year's season.</remarks>
    private static DateOnly LastDayBeforeRenewal(DateOnly passedOn, HouseRules house)
    {
        var season = passedOn.Month >= house.RenewFromMonth ? passedOn.Year + 1 : passedOn.Year;
        var yearOfDue = house.RenewByMonth >= house.RenewFromMonth ? season : season + 1;
        return new DateOnly(yearOfDue, house.RenewByMonth, 1).AddDays(-1);
    }
}
