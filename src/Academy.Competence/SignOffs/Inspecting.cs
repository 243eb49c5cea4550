using Academy.Competence.Evidence;

namespace Academy.Competence.SignOffs;

/// <summary>Looking at the finished dog of somebody who groomed it alone: without it the mirrored test sees nothing.</summary>
/// <remarks>
/// The first ten after a clearance are all inspected, then at least 1 in 3; a looser habit finds a groomer who needs fixing
/// 1 groom in 3 after 42 grooms instead of 29 (our own computation of the mirrored row).
/// </remarks>
public static class Inspecting
{
    /// <summary>The first grooms alone after a clearance that are all inspected.</summary>
    public const int AllOfTheFirst = 10;

    /// <summary>Of those that follow, at least one in this many.</summary>
    public const int ThenOneIn = 3;

    /// <summary>How many of this path's grooms alone are asked to be inspected.</summary>
    public static int Asked(Tally tally) =>
        Math.Min(tally.SoloSinceClearance, AllOfTheFirst)
        + (Math.Max(0, tally.SoloSinceClearance - AllOfTheFirst) + ThenOneIn - 1) / ThenOneIn;

    /// <summary>Whether one more inspection is asked.</summary>
    public static bool IsDue(Tally tally) => tally.InspectedSinceClearance < Asked(tally);
}
