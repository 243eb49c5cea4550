using Academy.Competence.Statistics;
using CsCheck;

namespace Academy.Competence.Tests.Statistics;

/// <summary>The profiles by the names in the check values, and any profile at all.</summary>
internal static class Profiles
{
    public static Gen<RowProfile> Any { get; } =
        from taken in Gen.Int[1, 12]
        from toFill in Gen.Int[1, 30]
        from share in Gen.Double[.05, .95]
        select new RowProfile(share / (taken + 1), taken, toFill);

    // What the check values call critical the salon calls strictest.
    public static RowProfile Named(string name) =>
        name switch
        {
            "basic" => RowProfile.Basic,
            "standard" => RowProfile.Standard,
            "critical" => RowProfile.Strictest,
            _ => throw new ArgumentOutOfRangeException(nameof(name), name, "No such profile in the check values."),
        };

    public static Verdict VerdictOf(string outcome) =>
        outcome switch
        {
            "S" => Verdict.Suitable,
            "F" => Verdict.Unsuitable,
            "C" => Verdict.Critical,
            _ => throw new ArgumentOutOfRangeException(nameof(outcome), outcome, "No such outcome in the check values."),
        };
}
