using Academy.Competence.Statistics;

namespace Academy.Competence.Thresholds;

/// <summary>A salon's rules for one skill, in one version, from a day on. A decision names the version it was taken under.</summary>
/// <remarks>Every number is checked as it is set: neither a new threshold nor a <c>with</c> can hold nonsense.</remarks>
public sealed record Threshold
{
    /// <summary>The most grooms that recency can ask for: the tally remembers no more days than that.</summary>
    public const int MostRecentGrooms = 10;

    /// <summary>The rated grooms that breadth and safety look back over.</summary>
    public const int Window = 20;

    /// <summary>After this many rated grooms on one row without filling it, the case goes to a talk, not to a failure.</summary>
    public const int TalkAfter = 50;

    /// <summary>How many ratings each of the seniors asked for must have given within the window.</summary>
    public const int RatingsPerSenior = 3;

    /// <summary>A critical incident is far enough back after this many further rated grooms, if as many days as below have passed too.</summary>
    public const int FewerAfterCritical = 10;

    /// <summary>Days that go with <see cref="FewerAfterCritical"/>.</summary>
    public const int DaysAfterCritical = 180;

    /// <summary>Makes a threshold.</summary>
    /// <exception cref="ArgumentOutOfRangeException">A number asks for something that could never be met or means nothing.</exception>
    public Threshold(
        SkillCode skill,
        int version,
        DateOnly fromDay,
        RowProfile? row,
        int breeds,
        int seniors,
        int recentGrooms,
        int recentDays,
        bool onFullCoat = false,
        bool isOn = true
    )
    {
        Skill = skill;
        Version = version;
        FromDay = fromDay;
        Row = row;
        Breeds = breeds;
        Seniors = seniors;
        RecentGrooms = recentGrooms;
        RecentDays = recentDays;
        OnFullCoat = onFullCoat;
        IsOn = isOn;
    }

    /// <summary>The skill it is about.</summary>
    public SkillCode Skill { get; init; }

    /// <summary>1 for the salon's first, then counting up per skill.</summary>
    public int Version
    {
        get;
        init => field = Between(value, 1, int.MaxValue);
    }

    /// <summary>The first local day on which it holds.</summary>
    public DateOnly FromDay { get; init; }

    /// <summary>How the row is counted; null where only modules are asked (cooling clip, hot day).</summary>
    public RowProfile? Row { get; init; }

    /// <summary>Different breeds asked among the suitable of the last 20 rated grooms; 0 to 20.</summary>
    public int Breeds
    {
        get;
        init => field = Between(value, 0, Window);
    }

    /// <summary>Seniors asked, each with 3 ratings in the last 20; 0 to 6.</summary>
    public int Seniors
    {
        get;
        init => field = Between(value, 0, Window / RatingsPerSenior);
    }

    /// <summary>Grooms asked for recency; 0 asks for none, at most 10.</summary>
    public int RecentGrooms
    {
        get;
        init => field = Between(value, 0, MostRecentGrooms);
    }

    /// <summary>The days within which they must lie; the window is half-open: today minus the day of the groom is less than this.</summary>
    public int RecentDays
    {
        get;
        init => field = Between(value, 1, 3660);
    }

    /// <summary>Whether the skill comes on top of a coat: the person must be alone in at least one.</summary>
    public bool OnFullCoat { get; init; }

    /// <summary>Off: nobody may, whatever the evidence (cabinet drying until the owner turns it on).</summary>
    public bool IsOn { get; init; }

    /// <summary>Whether only modules are asked: no row, no breadth.</summary>
    public bool IsModulesOnly => Row is null;

    private static int Between(int value, int least, int most)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(value, least);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(value, most);
        return value;
    }
}
