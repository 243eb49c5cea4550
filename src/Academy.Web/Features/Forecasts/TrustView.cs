using Academy.Competence;
using Academy.Competence.Forecasts;
using Academy.Competence.Statistics;
using Academy.Web.Features.Shared;
using Academy.Web.Wording;

namespace Academy.Web.Features.Forecasts;

/// <summary>How far the clearances in force can be trusted.</summary>
/// <param name="Example">How the number is found, with the least sure clearance as the example; null where there is none.</param>
/// <param name="More">How many more there are than the page lists.</param>
public sealed record TrustView(
    string Heading,
    string Lead,
    string? Example,
    string Lower,
    IReadOnlyList<TrustLine> Lines,
    string? More
)
{
    private const int Most = 100;

    internal static TrustView Of(Trust trust, Func<SkillCode, RowProfile> rowOf, Names names) =>
        trust.Active == 0
            ? new("No rated groom speaks of a clearance in force", LeadOf(trust), null, "", [], null)
            : new(
                $"Of {Counts.Of(trust.Active, "clearance")} that rated grooms speak of, about {About(trust.ProbablyWrong)} {(About(trust.ProbablyWrong) == "1" ? "is" : "are")} probably wrong",
                LeadOf(trust),
                ExampleOf(trust.Each[0], rowOf(trust.Each[0].Skill), names),
                LowerOf(trust),
                [.. trust.Each.Take(Most).Select(one => TrustLine.Of(one, names))],
                trust.Active > Most ? $"And {trust.Active - Most} more, each surer than these." : null
            );

    private static string LeadOf(Trust trust) =>
        "Wrong means: this person truly needs fixing more often than the skill’s threshold calls fine. No test on twenty grooms finds everybody."
        + (
            trust.Unseen == 0
                ? ""
                : $" Of {Counts.Of(trust.Unseen, "more clearance")} no rated groom speaks: they rest on a declaration."
        )
        + (
            trust.Others == 0
                ? ""
                : $" {Counts.Of(trust.Others, "clearance")} in skills without a row {(trust.Others == 1 ? "is" : "are")} not reckoned with: there the owner’s word and modules stand alone."
        );

    private static string ExampleOf(TrustInOne one, RowProfile row, Names names) =>
        $"{Say.Capital(names.Of(one.Person))} in {names.Of(one.Skill)}: {RecordOf(one)}. Groomers of this salon with such a record need fixing "
        + $"between {OneIn(one.Range.Lower)} and {OneIn(one.Range.Upper)} (9 chances in 10). The chance that it is truly more than "
        + $"{OneIn(row.P1)} is {Percent(one.ChanceWrong)}.";

    private static string LowerOf(Trust trust) =>
        "Inspected grooms: each finished dog that a senior looks at says more about whoever is alone."
        + (trust.Unseen == 0 ? "" : " Most of all where nobody has looked since a declaration.");

    internal static string RecordOf(TrustInOne one) => $"{Counts.OutOf(one.Unsuitable, one.Rated)} needed fixing";

    internal static string OneIn(double rate) =>
        rate < .01 ? "fewer than 1 in 100"
        : rate < .2 ? $"1 in {Math.Round(1 / rate).ToString(SalonTime.Culture)}"
        : Percent(rate);

    internal static string Percent(double chance) =>
        chance < .01 ? "less than 1 in 100" : $"{Math.Round(chance * 100).ToString(SalonTime.Culture)} in 100";

    private static string About(double number) =>
        number < .1 ? "none" : Math.Round(number, number < 3 ? 1 : 0).ToString(SalonTime.Culture);
}

/// <summary>One clearance.</summary>
public sealed record TrustLine(string What, string Href, string Record, string Typical, string Chance)
{
    // Below five rated grooms a share says nothing: the counts stand alone.
    private const int LeastForAShare = 5;

    internal static TrustLine Of(TrustInOne one, Names names) =>
        new(
            $"{Say.Capital(names.Of(one.Person))}, {names.Of(one.Skill)}",
            Paths.Why(one.Person.Value, one.Skill.Value),
            TrustView.RecordOf(one),
            one.Rated < LeastForAShare
                ? "too few to say"
                : $"{TrustView.OneIn(one.Range.Lower)} to {TrustView.OneIn(one.Range.Upper)}",
            TrustView.Percent(one.ChanceWrong)
        );
}
