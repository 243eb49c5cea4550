using Academy.Competence.Evidence;

namespace Academy.Competence.Standings;

/// <summary>One rule of a threshold: what it asks, what was found, whether it holds.</summary>
public abstract record Finding
{
    private protected Finding() { }

    /// <summary>What lacks; empty where the rule holds.</summary>
    public abstract Listed<Gap> Gaps { get; }

    /// <summary>Whether the rule holds.</summary>
    public bool Holds => Gaps.IsEmpty;

    /// <summary>Whether somebody who is alone is asked it every day; points, breadth and the coat are asked at the decision and on the way back.</summary>
    public bool IsAskedEveryDay => this is not (PointsFound or BreadthFound or CoatFound);
}

/// <summary>Rule 1, knowledge: the named modules are passed in an edition that counts, and no refresher is overdue.</summary>
/// <param name="Modules">Each module asked for.</param>
/// <param name="DueUntil">
/// Where there is time for what lacks, because a clearance was declared or is an exception, or because the skill asks for the
/// module only since the clearance was given: the last day of it. Null where none is left.
/// </param>
/// <param name="FailuresPause">
/// Whether a refresher twice not passed pauses in spite of that time: time is given to pass what was never asked, not for what was
/// asked twice. An exception is the owner's own signature, and what she knew does not undo it.
/// </param>
public sealed record KnowledgeFound(Listed<ModuleFound> Modules, DateOnly? DueUntil, bool FailuresPause = false) : Finding
{
    /// <inheritdoc/>
    public override Listed<Gap> Gaps =>
        DueUntil is null ? Lacking
        : FailuresPause ? Lacking.Where(gap => gap is ModuleLacking { State: ModuleState.RefresherFailed }).ToListed()
        : [];

    /// <summary>What is lacking, also while there is still time for it.</summary>
    public Listed<Gap> Lacking =>
        Modules
            .Where(found => !found.Holds)
            .Select(found => (Gap)new ModuleLacking(found.Module, found.State, found.PassedOn))
            .ToListed();
}

/// <summary>Rule 2, points: the row.</summary>
/// <param name="Have">Marks now.</param>
/// <param name="Need">Marks that fill it.</param>
/// <param name="RatedOnRow">Rated grooms since it began.</param>
/// <param name="IsTalkDue">50 rated grooms without a full row: the case goes to a talk, not to a failure.</param>
public sealed record PointsFound(int Have, int Need, int RatedOnRow, bool IsTalkDue) : Finding
{
    /// <inheritdoc/>
    public override Listed<Gap> Gaps => Have >= Need ? [] : [new RowNotFull(Have, Need)];
}

/// <summary>Rule 3, breadth, over the last 20 rated grooms.</summary>
/// <param name="Breeds">Different breeds among the suitable.</param>
/// <param name="BreedsAsked">Breeds asked.</param>
/// <param name="Seniors">Seniors with 3 ratings each.</param>
/// <param name="SeniorsAsked">The smaller of the threshold's number and of the other people entitled to judge the skill.</param>
public sealed record BreadthFound(int Breeds, int BreedsAsked, int Seniors, int SeniorsAsked) : Finding
{
    /// <inheritdoc/>
    public override Listed<Gap> Gaps
    {
        get
        {
            Listed<Gap> breeds = Breeds >= BreedsAsked ? [] : [new TooFewBreeds(Breeds, BreedsAsked)];
            return Seniors >= SeniorsAsked ? breeds : breeds.With(new TooFewSeniors(Seniors, SeniorsAsked));
        }
    }
}

/// <summary>Rule 4, safety: no critical incident in the last 20 rated grooms (or in the last 10 and 180 days), and no open review.</summary>
/// <param name="LastCriticalOn">The last critical groom; null if there was none.</param>
/// <param name="RatedSince">Rated grooms since then.</param>
/// <param name="IsFarEnough">Whether it is far enough back.</param>
/// <param name="OpenReviews">Incidents that wait for review.</param>
public sealed record SafetyFound(DateOnly? LastCriticalOn, int RatedSince, bool IsFarEnough, int OpenReviews) : Finding
{
    /// <inheritdoc/>
    public override Listed<Gap> Gaps
    {
        get
        {
            Listed<Gap> near = IsFarEnough || LastCriticalOn is not { } on ? [] : [new CriticalTooNear(on, RatedSince)];
            return OpenReviews == 0 ? near : near.With(new ReviewOpen(OpenReviews));
        }
    }
}

/// <summary>Rule 5, recency.</summary>
/// <param name="Have">Grooms that count within the window.</param>
/// <param name="Need">Grooms asked.</param>
/// <param name="WithinDays">The window.</param>
/// <param name="LastOn">The newest groom that counts.</param>
/// <param name="Until">The last day on which it still holds if nothing more is groomed.</param>
public sealed record RecencyFound(int Have, int Need, int WithinDays, DateOnly? LastOn, DateOnly? Until) : Finding
{
    /// <inheritdoc/>
    public override Listed<Gap> Gaps => Have >= Need ? [] : [new TooFewRecentGrooms(Have, Need, WithinDays, LastOn)];
}

/// <summary>Rule 6, drift, since the clearance.</summary>
/// <param name="Alarm">The mirrored test now.</param>
/// <param name="WatchFrom">From here a senior stands beside for the next three.</param>
/// <param name="CheckAgainFrom">From here the clearance stops until it is walked back.</param>
/// <param name="CheckAgainOn">The day that happened, until a new decision.</param>
/// <param name="WatchedYet">Rated grooms for which a senior still stands beside.</param>
public sealed record DriftFound(int Alarm, int WatchFrom, int CheckAgainFrom, DateOnly? CheckAgainOn, int WatchedYet) : Finding
{
    /// <inheritdoc/>
    public override Listed<Gap> Gaps => CheckAgainOn is { } on ? [new DriftedTooFar(Alarm, CheckAgainFrom, on)] : [];

    /// <summary>Whether a senior stands beside the next grooms.</summary>
    public bool IsWatched => WatchedYet > 0;
}

/// <summary>For a skill that comes on top of a coat: whether the person is alone in one.</summary>
public sealed record CoatFound(bool IsAloneInOne) : Finding
{
    /// <inheritdoc/>
    public override Listed<Gap> Gaps => IsAloneInOne ? [] : [new NoCoatAlone()];
}
