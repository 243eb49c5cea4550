using Academy.Competence.Evidence;
using Academy.Competence.Statistics;

namespace Academy.Web.Wording;

// What the last rated grooms say of somebody: counts out of 20, and never a bare percentage.
public static partial class Say
{
    private const int FewestForTypical = 5;

    /// <summary>"2 of the last 20 needed fixing." and, from five rated grooms on, what is typical of such a record.</summary>
    public static string Record(Tally tally)
    {
        var rated = tally.Last.Count;
        var unsuitable = tally.Last.Count(groom => groom.Verdict != Verdict.Suitable);
        var counted = $"{Capital(Counts.NeededFixing(unsuitable, rated))}.";
        return rated < FewestForTypical ? counted : $"{counted} {Typical(Proportion.Typical(unsuitable, rated))}";
    }

    /// <summary>"Groomers with such a record typically need fixing between 1 in 25 and 1 in 4."</summary>
    public static string Typical(RateRange range) =>
        $"Groomers with such a record typically need fixing between {Share(range.Lower)} and {Share(range.Upper)}.";

    private static string Share(double rate) =>
        rate switch
        {
            < .01 => "less than 1 in 100",
            < .05 => $"1 in {5 * Math.Round(1 / rate / 5, MidpointRounding.AwayFromZero)}",
            < .4 => $"1 in {Math.Round(1 / rate, MidpointRounding.AwayFromZero)}",
            _ => $"{Math.Round(rate * 20, MidpointRounding.AwayFromZero)} in 20",
        };
}
