namespace Academy.Web.Access;

/// <summary>
/// How long somebody waits who got a password wrong: five tries are free, then half a minute that doubles up to a quarter of an
/// hour; at fifty nothing is tried any more until the owner says so. Half of the hundred that NIST SP 800-63B-4 allows.
/// </summary>
public static class Patience
{
    public const int Free = 5;
    public const int StopsAt = 50;

    /// <summary>So long after its last failure a source (a house, a network) is taken for new: it may be a whole salon's.</summary>
    public static readonly TimeSpan SourceForgottenAfter = TimeSpan.FromHours(1);

    /// <summary>So long after its last failure a name is forgotten, unless it was stopped.</summary>
    public static readonly TimeSpan NameForgottenAfter = TimeSpan.FromDays(30);

    private static readonly TimeSpan First = TimeSpan.FromSeconds(30);
    private static readonly TimeSpan Longest = TimeSpan.FromMinutes(15);

    /// <summary>The wait after so many failures in a row.</summary>
    public static TimeSpan After(int failures)
    {
        if (failures < Free)
            return TimeSpan.Zero;
        var doubled = First * Math.Pow(2, Math.Min(failures - Free, Free));
        return doubled < Longest ? doubled : Longest;
    }

    /// <summary>What is left of the wait; zero when the next try is free.</summary>
    public static TimeSpan Left(int failures, DateTimeOffset lastAt, DateTimeOffset now)
    {
        var left = lastAt + After(failures) - now;
        return left > TimeSpan.Zero ? left : TimeSpan.Zero;
    }
}
