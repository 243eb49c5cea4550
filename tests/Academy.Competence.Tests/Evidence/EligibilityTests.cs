using System.Text.Json;
using Academy.Competence.Evidence;
using Academy.Competence.People;
using Academy.Competence.Skills;
using Academy.Competence.Standings;
using Academy.Competence.Statistics;
using Academy.Competence.Tests.Cast;
using Academy.Competence.Thresholds;
using static Academy.Competence.Tests.Cast.TestSalon;

namespace Academy.Competence.Tests.Evidence;

/// <summary>
/// data/competence/eligibility.json, computed from the rule by a separate program: the whole rule on seven logs, with the
/// parameters 3 suitable in 90 days, 3 breeds, 2 seniors with 3 ratings, the last 20 rated grooms.
/// </summary>
public class EligibilityTests
{
    private static readonly ModuleName Blades = new("blades-and-scissors");

    private static readonly Threshold InNinetyDays = PathWords.Standard with { RecentDays = 90 };

    [Theory]
    [InlineData("15 straight, all gates met", 0)]
    [InlineData("14 straight", 1)]
    [InlineData("one breed only", 1)]
    [InlineData("one friendly senior", 1)]
    [InlineData("critical incident then 15 clean, incident still inside the last 20", 1)]
    [InlineData("full then one unsuitable", 1)]
    [InlineData("quiz expired", 1)]
    public void Seven_logs_come_to_the_marks_counts_and_gaps_of_the_check_values(string name, int failing)
    {
        var checks = CaseNamed(name);
        var expected = checks.GetProperty("expected");
        var standing = StandingOf(checks);

        Assert.Equal(expected.GetProperty("points").GetInt32(), standing.Tally.Row);
        Assert.Equal(expected.GetProperty("rated").GetInt32(), standing.Tally.Rated);
        Assert.Equal(expected.GetProperty("suitable").GetInt32(), standing.Tally.Suitable);
        Assert.Equal(expected.GetProperty("distinct_breeds_in_window").GetInt32(), standing.Tally.BreedsSuitable);
        Assert.Equal(Ratings(expected), Ratings(standing.Tally));
        Assert.Equal(Gates(expected), Gates(standing));
        Assert.Equal(failing, standing.Gaps.Count);
        Assert.Equal(failing == 0 ? StandingKind.Ready : StandingKind.Learning, standing.Kind);
    }

    // The tally remembers the 10 newest days, so a count of suitable grooms in 90 days is compared up to 10.
    [Fact]
    public void Suitable_grooms_in_ninety_days_are_those_of_the_check_values_up_to_ten() =>
        Assert.All(
            Cases(),
            checks =>
                Assert.Equal(
                    Math.Min(
                        Threshold.MostRecentGrooms,
                        checks.GetProperty("expected").GetProperty("suitable_in_last_90_days").GetInt32()
                    ),
                    StandingOf(checks).Findings.OfType<RecencyFound>().Single().Have
                )
        );

    private static Standing StandingOf(JsonElement checks)
    {
        var path = checks.GetProperty("log").EnumerateArray().Select(StepOf).ToList();
        var state = checks.GetProperty("quiz_current").GetBoolean() ? ModuleState.Current : ModuleState.RefresherOverdue;
        var asked = PathWords.CaseOf(InNinetyDays, path) with { Modules = [new(Blades, state, PassedOn: null, DueOn: null)] };
        Assert.Equal(path.Count, asked.Tally.Rated);
        return asked.On(Day(checks.GetProperty("as_of").GetString()!));
    }

    private static Step StepOf(JsonElement row) =>
        PathWords.Rated(
            Day(row.GetProperty("date").GetString()!),
            VerdictOf(row),
            row.GetProperty("breed").GetString()!,
            SeniorNamed(row.GetProperty("assessor").GetString()!)
        );

    private static Verdict VerdictOf(JsonElement row) =>
        row.GetProperty("critical").GetBoolean() ? Verdict.Critical
        : row.GetProperty("level").GetInt32() >= 4 && row.GetProperty("passed").GetBoolean() ? Verdict.Suitable
        : Verdict.Unsuitable;

    private static Person SeniorNamed(string name) => name == "Ann" ? Rosa : Dora;

    private static Dictionary<PersonId, int> Ratings(JsonElement expected) =>
        expected
            .GetProperty("assessor_counts_in_window")
            .EnumerateObject()
            .ToDictionary(one => SeniorNamed(one.Name).Id, one => one.Value.GetInt32());

    private static Dictionary<PersonId, int> Ratings(Tally tally) =>
        tally.Last.CountBy(groom => groom.Senior!.Value).ToDictionary();

    private static Dictionary<string, bool> Gates(JsonElement expected) =>
        expected.GetProperty("gates").EnumerateObject().ToDictionary(one => one.Name, one => one.Value.GetBoolean());

    private static Dictionary<string, bool> Gates(Standing standing) =>
        new()
        {
            ["points_full"] = !standing.Gaps.Any(gap => gap is RowNotFull),
            ["breeds_at_least_3"] = !standing.Gaps.Any(gap => gap is TooFewBreeds),
            ["two_assessors_with_3_each"] = !standing.Gaps.Any(gap => gap is TooFewSeniors),
            ["no_critical_in_last_20"] = !standing.Gaps.Any(gap => gap is CriticalTooNear),
            ["recent_3_in_90_days"] = !standing.Gaps.Any(gap => gap is TooFewRecentGrooms),
            ["knowledge_current"] = !standing.Gaps.Any(gap => gap is ModuleLacking),
        };

    private static JsonElement CaseNamed(string name) => Cases().Single(one => one.GetProperty("name").GetString() == name);

    private static List<JsonElement> Cases()
    {
        using var file = JsonDocument.Parse(
            File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "data", "competence", "eligibility.json"))
        );
        List<JsonElement> cases = [.. file.RootElement.GetProperty("cases").EnumerateArray().Select(one => one.Clone())];
        Assert.Equal(7, cases.Count);
        return cases;
    }
}
