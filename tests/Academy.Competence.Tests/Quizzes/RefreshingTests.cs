using System.Text.Json;
using Academy.Competence.Quizzes;

namespace Academy.Competence.Tests.Quizzes;

public class RefreshingTests
{
    private static readonly DateOnly FirstDay = new(2026, 3, 1);

    // data/competence/refresher_schedule.json, computed from the rule by a separate program.
    [Theory]
    [MemberData(nameof(Schedules))]
    public void Gaps_double_up_to_the_longest_and_begin_again_after_failing(string results, int longest, int[] gaps)
    {
        List<int> found = [];
        foreach (var result in results)
            found.Add(Refreshing.NextGap(found.Count == 0 ? null : found[^1], result == 'P', longest));

        Assert.Equal(gaps, found);
    }

    public static TheoryData<string, int, int[]> Schedules()
    {
        using var file = JsonDocument.Parse(
            File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "data", "competence", "refresher_schedule.json"))
        );
        return
        [
            .. new[] { 180, 90 }.SelectMany(longest =>
                file.RootElement.GetProperty($"cap{longest}")
                    .EnumerateArray()
                    .Select(row =>
                        (
                            row.GetProperty("results").GetString()!,
                            longest,
                            row.GetProperty("next_interval_days_after_each")
                                .EnumerateArray()
                                .Select(gap => gap.GetInt32())
                                .ToArray()
                        )
                    )
            ),
        ];
    }

    [Fact]
    public void A_module_never_passed_has_no_refresher() => Assert.Null(After("0F 1F"));

    // day and result of each attempt     due on day  paused  expires on day
    [Theory]
    [InlineData("0P", 28, false, 365)]
    [InlineData("0F 1F 2P", 30, false, 367)] // failures before the first pass are only practice
    [InlineData("0P 28P", 84, false, 393)]
    [InlineData("0P 28F", 28, false, 365)] // one failure: due as before, to be tried again
    [InlineData("0P 28F 28P", 84, false, 393)]
    [InlineData("0P 28F 28F", 35, true, 365)] // two in a row: paused
    [InlineData("0P 28F 29F", 36, true, 365)]
    [InlineData("0P 28F 28F 30P", 44, false, 395)] // back after fourteen days
    [InlineData("0P 28F 28F 30F", 37, true, 365)]
    [InlineData("0P 28P 84P 174P 264P", 354, false, 629)] // never longer than the module says
    [InlineData("0P 28P 28P 28P 28P", 84, false, 393)] // four passes in one afternoon are one
    [InlineData("0P 13P", 41, false, 378)] // in the first half of the gap: the same gap anew
    [InlineData("0P 14P", 70, false, 379)]
    public void Refreshers_come_due_by_what_was_passed_and_failed(string attempts, int due, bool paused, int expires) =>
        Assert.Equal(
            new(FirstDay.AddDays(due), paused, FirstDay.AddDays(expires), HasFailedOnce: attempts == "0P 28F"),
            After(attempts)
        );

    [Fact]
    public void Days_are_the_salons_local_days()
    {
        Attempt late = new(new(2026, 3, 1, 23, 30, 0, TimeSpan.Zero), HasPassed: true);

        Assert.Equal(new(2026, 3, 30), Refreshing.After([late], 90, Zone("Europe/Amsterdam"))!.DueOn);
        Assert.Equal(new(2026, 3, 29), Refreshing.After([late], 90, Zone("Europe/London"))!.DueOn);
    }

    private static NextRefresher? After(string attempts) =>
        Refreshing.After(attempts.Split(' ').Select(Parsed), longest: 90, Zone("Europe/London"));

    private static Attempt Parsed(string attempt, int place) =>
        new(
            new(FirstDay.AddDays(int.Parse(attempt[..^1], provider: null)), new(9, place), TimeSpan.Zero),
            HasPassed: attempt[^1] == 'P'
        );

    private static TimeZoneInfo Zone(string id) => TimeZoneInfo.FindSystemTimeZoneById(id);
}
