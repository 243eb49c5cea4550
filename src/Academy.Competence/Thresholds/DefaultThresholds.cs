using Academy.Competence.Skills;
using Academy.Competence.Statistics;

namespace Academy.Competence.Thresholds;

/// <summary>The thresholds a new salon starts with; it may change every number.</summary>
/// <remarks>Trade custom (5 to 20 signed grooms a class) is laxer than these rows (about 19 to 26 grooms); the owner should be told so.</remarks>
public static class DefaultThresholds
{
    private const int HalfYear = 180;
    private const int Year = 365;

    private static readonly Dictionary<SkillCode, Func<SkillCode, DateOnly, Threshold>> ByCode = new()
    {
        [SkillBook.Smooth] = (skill, from) => Coat(skill, from, RowProfile.Basic),
        [SkillBook.Double] = (skill, from) => Coat(skill, from, RowProfile.Standard),
        [SkillBook.Silky] = (skill, from) => Coat(skill, from, RowProfile.Standard),
        [SkillBook.Combination] = (skill, from) => Coat(skill, from, RowProfile.Standard),
        [SkillBook.Wool] = (skill, from) => Coat(skill, from, RowProfile.Strict),
        [SkillBook.Wire] = (skill, from) => Coat(skill, from, RowProfile.Strict) with { RecentDays = HalfYear },
        [SkillBook.Hairless] = RareCoat,
        [SkillBook.Corded] = RareCoat,
        [SkillBook.Bath] = (skill, from) => Everyday(skill, from, RowProfile.Basic),
        [SkillBook.HandDrying] = (skill, from) => Everyday(skill, from, RowProfile.Standard),
        [SkillBook.Brushing] = (skill, from) => Everyday(skill, from, RowProfile.Basic),
        [SkillBook.Nails] = (skill, from) => Everyday(skill, from, RowProfile.Standard),
        [SkillBook.PadsAndFeet] = (skill, from) => Everyday(skill, from, RowProfile.Standard),
        [SkillBook.Ears] = (skill, from) => Everyday(skill, from, RowProfile.Standard),
        [SkillBook.DeShedding] = (skill, from) => Everyday(skill, from, RowProfile.Basic),
        [SkillBook.BodyScissoring] = (skill, from) => Everyday(skill, from, RowProfile.Standard),
        [SkillBook.HandStripping] = OnTopOfACoat,
        [SkillBook.DeMatting] = OnTopOfACoat,
        [SkillBook.FaceScissoring] = OnTopOfACoat,
        [SkillBook.CoolingClip] = ModulesOnly,
        [SkillBook.CabinetDrying] = Cabinet,
        [SkillBook.FlatFaced] = OnTopOfACoat,
        [SkillBook.Elderly] = OnTopOfACoat,
        [SkillBook.VeryYoung] = OnTopOfACoat,
        [SkillBook.Heart] = RareHazard,
        [SkillBook.Seizures] = RareHazard,
        [SkillBook.HeavyCoat] = OnTopOfACoat,
        [SkillBook.Overweight] = OnTopOfACoat,
        [SkillBook.FiftyKilos] = OnTopOfACoat,
        [SkillBook.HeatProne] = OnTopOfACoat,
        [SkillBook.Nervous] = OnTopOfACoat,
        [SkillBook.BiteHistory] = OnTopOfACoat,
        [SkillBook.Muzzled] = RareHazard,
        [SkillBook.Matted] = OnTopOfACoat,
        [SkillBook.HotDay] = ModulesOnly,
    };

    /// <summary>Version 1 of the threshold of a skill, from this day on. A skill of the salon's own starts with the standard row.</summary>
    public static Threshold For(SkillCode skill, DateOnly from) =>
        ByCode.TryGetValue(skill, out var make) ? make(skill, from) : Everyday(skill, from, RowProfile.Standard);

    private static Threshold Coat(SkillCode skill, DateOnly from, RowProfile row) =>
        new(skill, version: 1, from, row, breeds: 3, seniors: 2, recentGrooms: 3, recentDays: 120);

    private static Threshold RareCoat(SkillCode skill, DateOnly from) =>
        new(skill, version: 1, from, RowProfile.Short, breeds: 1, seniors: 1, recentGrooms: 1, recentDays: Year);

    private static Threshold Everyday(SkillCode skill, DateOnly from, RowProfile row) =>
        new(skill, version: 1, from, row, breeds: 3, seniors: 2, recentGrooms: 3, recentDays: HalfYear);

    private static Threshold OnTopOfACoat(SkillCode skill, DateOnly from) =>
        new(
            skill,
            version: 1,
            from,
            RowProfile.Short,
            breeds: 2,
            seniors: 1,
            recentGrooms: 2,
            recentDays: Year,
            onFullCoat: true
        );

    private static Threshold RareHazard(SkillCode skill, DateOnly from) => OnTopOfACoat(skill, from) with { RecentGrooms = 1 };

    private static Threshold Cabinet(SkillCode skill, DateOnly from) =>
        new(skill, version: 1, from, RowProfile.Short, breeds: 2, seniors: 1, recentGrooms: 3, recentDays: HalfYear, isOn: false);

    private static Threshold ModulesOnly(SkillCode skill, DateOnly from) =>
        new(skill, version: 1, from, row: null, breeds: 0, seniors: 0, recentGrooms: 0, recentDays: Year);
}
