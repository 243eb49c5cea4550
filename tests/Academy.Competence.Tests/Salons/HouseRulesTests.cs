using Academy.Competence.Salons;
using static Academy.Competence.Salons.IncidentKind;
using static Academy.Competence.Tests.Cast.TestSalon;

namespace Academy.Competence.Tests.Salons;

/// <summary>Common practice, no published threshold for salons: the salon owns every number here.</summary>
public class HouseRulesTests
{
    [Fact]
    public void A_salon_starts_with_these_numbers() =>
        Assert.Equal(
            new HouseRules
            {
                ElderlyFromYears = 8,
                VeryYoungUntilWeeks = 16,
                HotFromTenthsC = 260,
                HotFromIndexF = 80,
                HotForAtRiskFromTenthsC = 240,
                StopFromTenthsC = 300,
                StopForAtRiskFromTenthsC = 280,
                ReadingGoodForHours = 4,
                HotSeasonFromMonth = 5,
                HotSeasonToMonth = 9,
                RenewFromMonth = 3,
                RenewByMonth = 5,
                LiftAloneUpToKg = 25,
                ModulesDueInDays = 30,
                Under18OnlyWithSeniorIn = true,
                CriticalKinds = [SkinOpened, Burn, EyeInjury, HeatIllness, FallOrHanging, Escape, LeftInDryer],
            },
            new HouseRules()
        );

    //          kind          near miss, slight, moderate, serious: critical?
    [Theory]
    [InlineData(SkinOpened, false, true, true, true)]
    [InlineData(Burn, false, true, true, true)]
    [InlineData(EyeInjury, false, true, true, true)]
    [InlineData(HeatIllness, false, true, true, true)]
    [InlineData(FallOrHanging, false, true, true, true)]
    [InlineData(Escape, false, true, true, true)]
    [InlineData(LeftInDryer, false, true, true, true)]
    [InlineData(Nick, false, false, false, true)]
    [InlineData(RedSkin, false, false, false, true)]
    [InlineData(NailQuick, false, false, false, true)]
    [InlineData(Bite, false, false, false, true)]
    [InlineData(WrongDogOrClip, false, false, false, true)]
    [InlineData(Other, false, false, false, true)]
    public void Critical_follows_from_kind_and_severity(
        IncidentKind kind,
        bool nearMiss,
        bool slight,
        bool moderate,
        bool serious
    ) =>
        Assert.Equal(
            [nearMiss, slight, moderate, serious],
            new[] { Severity.NearMiss, Severity.Slight, Severity.Moderate, Severity.Serious }.Select(severity =>
                House.IsCritical(kind, severity)
            )
        );

    [Theory]
    [InlineData(5, 9, "2026-04-30", false)]
    [InlineData(5, 9, "2026-05-01", true)]
    [InlineData(5, 9, "2026-09-30", true)]
    [InlineData(5, 9, "2026-10-01", false)]
    [InlineData(11, 3, "2026-10-31", false)] // south of the equator the season spans the new year
    [InlineData(11, 3, "2026-12-31", true)]
    [InlineData(11, 3, "2027-03-31", true)]
    [InlineData(11, 3, "2027-04-01", false)]
    public void A_day_may_be_hot_in_the_salons_season(int from, int to, string day, bool mayBeHot) =>
        Assert.Equal(mayBeHot, (House with { HotSeasonFromMonth = from, HotSeasonToMonth = to }).MayBeHot(Day(day)));

    public static TheoryData<string, Func<HouseRules>> Nonsense() =>
        new()
        {
            { "a dog elderly from birth", () => House with { ElderlyFromYears = 0 } },
            { "a dog young for ever", () => House with { VeryYoungUntilWeeks = 105 } },
            { "a room colder than outside ever is", () => House with { HotFromTenthsC = -101 } },
            { "a room hotter than any", () => House with { HotForAtRiskFromTenthsC = 601 } },
            { "a stop line at 70 degrees", () => House with { StopFromTenthsC = 700 } },
            { "a stop line at 70 degrees for dogs at risk", () => House with { StopForAtRiskFromTenthsC = 700 } },
            { "an index below nothing", () => House with { HotFromIndexF = -1 } },
            { "a reading good for no time", () => House with { ReadingGoodForHours = 0 } },
            { "a reading good for two days", () => House with { ReadingGoodForHours = 48 } },
            { "a season from month 0", () => House with { HotSeasonFromMonth = 0 } },
            { "a season to month 13", () => House with { HotSeasonToMonth = 13 } },
            { "renewing from month 0", () => House with { RenewFromMonth = 0 } },
            {
                "renewing by month 13",
                () =>
                    new HouseRules { RenewByMonth = 13 }
            },
            { "lifting nothing", () => House with { LiftAloneUpToKg = 0 } },
            { "modules due before the clearance", () => House with { ModulesDueInDays = -1 } },
        };

    [Theory]
    [MemberData(nameof(Nonsense))]
    public void A_number_that_means_nothing_is_refused_when_it_is_set(string what, Func<HouseRules> set)
    {
        Assert.NotEmpty(what);
        Assert.Throws<ArgumentOutOfRangeException>(() => set());
    }
}
