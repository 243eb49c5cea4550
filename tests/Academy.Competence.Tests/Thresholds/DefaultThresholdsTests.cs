using Academy.Competence.Skills;
using Academy.Competence.Statistics;
using Academy.Competence.Thresholds;
using static Academy.Competence.Tests.Cast.TestSalon;

namespace Academy.Competence.Tests.Thresholds;

/// <summary>The thresholds a new salon starts with: the salon's own numbers, value choices and no published figures.</summary>
public class DefaultThresholdsTests
{
    //          skill             marks taken breeds seniors grooms days on top of a coat, on
    [Theory]
    [InlineData("smooth", 15, 3, 3, 2, 3, 120, false, true)]
    [InlineData("double", 15, 4, 3, 2, 3, 120, false, true)]
    [InlineData("silky", 15, 4, 3, 2, 3, 120, false, true)]
    [InlineData("combination", 15, 4, 3, 2, 3, 120, false, true)]
    [InlineData("wool", 17, 6, 3, 2, 3, 120, false, true)]
    [InlineData("wire", 17, 6, 3, 2, 3, 180, false, true)]
    [InlineData("hairless", 8, 6, 1, 1, 1, 365, false, true)]
    [InlineData("corded", 8, 6, 1, 1, 1, 365, false, true)]
    [InlineData("bath", 15, 3, 3, 2, 3, 180, false, true)]
    [InlineData("hand-drying", 15, 4, 3, 2, 3, 180, false, true)]
    [InlineData("brushing", 15, 3, 3, 2, 3, 180, false, true)]
    [InlineData("nails", 15, 4, 3, 2, 3, 180, false, true)]
    [InlineData("pads-and-feet", 15, 4, 3, 2, 3, 180, false, true)]
    [InlineData("ears", 15, 4, 3, 2, 3, 180, false, true)]
    [InlineData("de-shedding", 15, 3, 3, 2, 3, 180, false, true)]
    [InlineData("body-scissoring", 15, 4, 3, 2, 3, 180, false, true)]
    [InlineData("hand-stripping", 8, 6, 2, 1, 2, 365, true, true)]
    [InlineData("de-matting", 8, 6, 2, 1, 2, 365, true, true)]
    [InlineData("face-scissoring", 8, 6, 2, 1, 2, 365, true, true)]
    [InlineData("cooling-clip", null, null, 0, 0, 0, 365, false, true)] // modules only
    [InlineData("cabinet-drying", 8, 6, 2, 1, 3, 180, false, false)] // off until the owner turns it on
    [InlineData("flat-faced", 8, 6, 2, 1, 2, 365, true, true)]
    [InlineData("elderly", 8, 6, 2, 1, 2, 365, true, true)]
    [InlineData("very-young", 8, 6, 2, 1, 2, 365, true, true)]
    [InlineData("heart", 8, 6, 2, 1, 1, 365, true, true)] // rare: one groom in a year
    [InlineData("seizures", 8, 6, 2, 1, 1, 365, true, true)]
    [InlineData("heavy-coat", 8, 6, 2, 1, 2, 365, true, true)]
    [InlineData("overweight", 8, 6, 2, 1, 2, 365, true, true)]
    [InlineData("fifty-kilos", 8, 6, 2, 1, 2, 365, true, true)]
    [InlineData("heat-prone", 8, 6, 2, 1, 2, 365, true, true)]
    [InlineData("nervous", 8, 6, 2, 1, 2, 365, true, true)]
    [InlineData("bite-history", 8, 6, 2, 1, 2, 365, true, true)]
    [InlineData("muzzled", 8, 6, 2, 1, 1, 365, true, true)]
    [InlineData("matted", 8, 6, 2, 1, 2, 365, true, true)]
    [InlineData("hot-day", null, null, 0, 0, 0, 365, false, true)]
    [InlineData("a-skill-of-the-salons-own", 15, 4, 3, 2, 3, 180, false, true)]
    public void A_salon_starts_with(
        string skill,
        int? marks,
        int? taken,
        int breeds,
        int seniors,
        int grooms,
        int days,
        bool onFullCoat,
        bool isOn
    )
    {
        var threshold = DefaultThresholds.For(new(skill), Today);

        Assert.Equal(
            (new SkillCode(skill), 1, Today, marks, taken, breeds, seniors, grooms, days, onFullCoat, isOn),
            (
                threshold.Skill,
                threshold.Version,
                threshold.FromDay,
                threshold.Row?.MarksToFill,
                threshold.Row?.MarksTaken,
                threshold.Breeds,
                threshold.Seniors,
                threshold.RecentGrooms,
                threshold.RecentDays,
                threshold.OnFullCoat,
                threshold.IsOn
            )
        );
        Assert.Equal(marks is null, threshold.IsModulesOnly);
    }

    [Fact]
    public void Every_skill_of_a_new_salon_is_in_the_table_above()
    {
        var pinned = typeof(DefaultThresholdsTests)
            .GetMethod(nameof(A_salon_starts_with))!
            .GetCustomAttributesData()
            .Where(attribute => attribute.AttributeType == typeof(InlineDataAttribute))
            .Select(attribute =>
                ((IReadOnlyList<System.Reflection.CustomAttributeTypedArgument>)attribute.ConstructorArguments[0].Value!)[0].Value
            );

        Assert.Equal(
            SkillBook.Defaults.Select(skill => skill.Code.Value).Append("a-skill-of-the-salons-own").Order(),
            pinned.Cast<string>().Order()
        );
    }

    // the fine rate that each row is built for
    [Theory]
    [InlineData("smooth", .15)]
    [InlineData("double", .10)]
    [InlineData("wire", .05)]
    [InlineData("hairless", .05)]
    public void Each_row_is_built_for_a_fine_rate(string skill, double fine) =>
        Assert.Equal(fine, ThresholdOf(new(skill)).Row!.P0);

    [Fact]
    public void The_strictest_row_is_there_for_an_owner_who_wants_it() =>
        Assert.Equal((23, 8), (RowProfile.Strictest.MarksToFill, RowProfile.Strictest.MarksTaken));

    [Fact]
    public void What_no_salon_changes_is_pinned()
    {
        Assert.Equal(20, Threshold.Window);
        Assert.Equal(50, Threshold.TalkAfter);
        Assert.Equal(3, Threshold.RatingsPerSenior);
        Assert.Equal(10, Threshold.FewerAfterCritical);
        Assert.Equal(180, Threshold.DaysAfterCritical);
    }
}
