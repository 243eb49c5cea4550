using Academy.Competence.Dogs;
using Academy.Competence.Facts;
using Academy.Competence.Skills;
using static Academy.Competence.Tests.Cast.TestSalon;

namespace Academy.Competence.Tests.Dogs;

public class DogKeepingTests
{
    [Fact]
    public void A_dog_is_described_with_no_more_than_the_salon_needs() =>
        Assert.Equal(
            [
                new DogDescribed(
                    Biscuit.Id,
                    Said("Biscuit"),
                    "Border Terrier",
                    SkillBook.Wire,
                    SecondCoat: null,
                    Hazards: [],
                    BornOn: new(2022, 3, 1),
                    AgeByLook.NotSaid,
                    WeightKg: 7,
                    Words.None,
                    IsGone: false
                ),
            ],
            Granted(DogKeeping.Describe(Biscuit, Today))
        );

    [Fact]
    public void Coat_age_and_weight_may_stay_unknown_for_the_dog_check_asks() =>
        Assert.Empty(Against(DogKeeping.Describe(Biscuit with { Coat = null, BornOn = null, WeightKg = null }, Today)));

    [Fact]
    public void What_cannot_be_true_of_a_dog_is_refused_all_at_once() =>
        Assert.Equal(
            [
                new WordsNeeded(WordsFor.Name),
                new BirthdayNotPlausible(Today.AddDays(1)),
                new WeightNotPlausible(0),
                new SameCoatTwice(SkillBook.Wire),
            ],
            Against(
                DogKeeping.Describe(
                    Biscuit with
                    {
                        Name = "",
                        BornOn = Today.AddDays(1),
                        WeightKg = 0,
                        SecondCoat = SkillBook.Wire,
                    },
                    Today
                )
            )
        );

    [Theory]
    [InlineData("1996-06-14", 7, false)] // more than thirty years
    [InlineData("1996-06-15", 7, true)]
    [InlineData("2026-06-15", 1, true)] // born today
    [InlineData("2022-03-01", 120, true)]
    [InlineData("2022-03-01", 121, false)]
    public void A_birthday_lies_in_the_last_thirty_years_and_a_weight_from_1_to_120_kg(string born, int kilos, bool plausible) =>
        Assert.Equal(
            plausible,
            Against(DogKeeping.Describe(Biscuit with { BornOn = Day(born), WeightKg = kilos }, Today)).IsEmpty
        );

    // born on       elderly from 8 years, very young until 16 weeks
    [Theory]
    [InlineData("2018-06-16", false, false)] // eight tomorrow
    [InlineData("2018-06-15", true, false)] // eight today
    [InlineData("2026-02-23", false, false)] // sixteen weeks today
    [InlineData("2026-02-24", false, true)]
    [InlineData("2026-06-15", false, true)]
    public void Elderly_and_very_young_follow_from_the_birthday_at_the_day_asked(string born, bool elderly, bool veryYoung)
    {
        var hazards = (Biscuit with { BornOn = Day(born) }).HazardsOn(Today, House);

        Assert.Equal((elderly, veryYoung), (hazards.Contains(SkillBook.Elderly), hazards.Contains(SkillBook.VeryYoung)));
    }

    [Fact]
    public void A_dog_born_on_a_leap_day_is_a_year_older_on_28_February_of_a_common_year()
    {
        var leap = Biscuit with { BornOn = Day("2020-02-29") };

        Assert.Empty(leap.HazardsOn(Day("2028-02-28"), House)); // 2028 is a leap year again
        Assert.Equal([SkillBook.Elderly], leap.HazardsOn(Day("2028-02-29"), House));
        Assert.Equal([SkillBook.Elderly], leap.HazardsOn(Day("2027-02-28"), House with { ElderlyFromYears = 7 }));
    }

    [Fact]
    public void The_salon_may_call_a_dog_elderly_at_another_age() =>
        Assert.Equal([SkillBook.Elderly], Biscuit.HazardsOn(Today, House with { ElderlyFromYears = 4 }));

    [Fact]
    public void Where_the_birthday_is_unknown_the_look_stands_for_it_and_nobody_having_said_is_unknown()
    {
        var unknown = Biscuit with { BornOn = null };

        Assert.Equal([SkillBook.Elderly], (unknown with { Age = AgeByLook.Elderly }).HazardsOn(Today, House));
        Assert.Equal([SkillBook.VeryYoung], (unknown with { Age = AgeByLook.VeryYoung }).HazardsOn(Today, House));
        Assert.Empty((unknown with { Age = AgeByLook.Grown }).HazardsOn(Today, House));
        Assert.False(unknown.IsAgeKnown);
        Assert.True((unknown with { Age = AgeByLook.Grown }).IsAgeKnown);
        Assert.True((unknown with { Hazards = [SkillBook.Elderly] }).IsAgeKnown);
    }

    [Fact]
    public void A_known_birthday_is_believed_before_a_look() =>
        Assert.Empty((Biscuit with { Age = AgeByLook.Elderly }).HazardsOn(Today, House));

    [Theory]
    [InlineData(49, false)]
    [InlineData(50, true)] // 50 kg or more
    [InlineData(null, false)]
    public void Fifty_kilos_follow_from_the_weight(int? kilos, bool heavy) =>
        Assert.Equal(heavy, (Biscuit with { WeightKg = kilos }).HazardsOn(Today, House).Contains(SkillBook.FiftyKilos));

    // Hall, Carter and O'Neill 2020, Scientific Reports 10:9128: the nine breeds
    [Theory]
    [InlineData("Pug", true)]
    [InlineData("golden retriever", true)]
    [InlineData("Chow Chow", true)]
    [InlineData("Border Terrier", false)]
    [InlineData("Pug cross", false)] // of a cross nobody knows: judge the dog
    public void A_heat_prone_breed_is_a_hazard_by_itself(string breed, bool prone) =>
        Assert.Equal(prone, (Biscuit with { Breed = breed }).HazardsOn(Today, House).Contains(SkillBook.HeatProne));

    [Fact]
    public void Each_hazard_is_listed_once_those_recorded_first() =>
        Assert.Equal(
            [SkillBook.Nervous, SkillBook.HeatProne, SkillBook.Elderly, SkillBook.FiftyKilos],
            (
                Biscuit with
                {
                    Breed = "Dogue de Bordeaux",
                    Hazards = [SkillBook.Nervous, SkillBook.HeatProne],
                    BornOn = Day("2015-01-01"),
                    WeightKg = 55,
                }
            ).HazardsOn(Today, House)
        );
}
