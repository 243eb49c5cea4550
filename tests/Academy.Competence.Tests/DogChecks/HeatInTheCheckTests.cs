using Academy.Competence.Decisions;
using Academy.Competence.DogChecks;
using Academy.Competence.Heat;
using Academy.Competence.Skills;
using Academy.Competence.Standings;
using Academy.Competence.Tests.Cast;
using static Academy.Competence.Tests.Cast.CheckWords;
using static Academy.Competence.Tests.Cast.PathWords;
using static Academy.Competence.Tests.Cast.TestSalon;

namespace Academy.Competence.Tests.DogChecks;

/// <summary>The salon's own numbers, common practice, no published threshold for salons.</summary>
public class HeatInTheCheckTests
{
    private static readonly DogAsked Robust = new(Biscuit, [SkillBook.Bath]);
    private static readonly DogAsked AtRisk = new(Bean, [SkillBook.Bath]);

    // tenths of a degree      hot day for any dog, and for one at risk in heat
    [Theory]
    [InlineData(239, false, false)]
    [InlineData(240, false, true)]
    [InlineData(259, false, true)]
    [InlineData(260, true, true)]
    [InlineData(279, true, true)]
    public void A_hot_day_begins_at_26_degrees_and_for_dogs_at_risk_at_24(int tenths, bool robust, bool atRisk)
    {
        Assert.Equal(robust, Check(Robust, reading: Reading(tenths)).Asked.Contains(SkillBook.HotDay));
        Assert.Equal(atRisk, Check(AtRisk, reading: Reading(tenths)).Asked.Contains(SkillBook.HotDay));
    }

    [Theory]
    [InlineData(279, false, false)]
    [InlineData(280, false, true)]
    [InlineData(299, false, true)]
    [InlineData(300, true, true)]
    public void The_stop_line_is_at_30_degrees_and_for_dogs_at_risk_at_28(int tenths, bool robust, bool atRisk)
    {
        Assert.Equal(
            robust ? [new AtTheStopLine(tenths, 300, IsAtRisk: false)] : [],
            Check(Robust, reading: Reading(tenths)).Nobody
        );
        Assert.Equal(
            atRisk ? [new AtTheStopLine(tenths, 280, IsAtRisk: true)] : [],
            Check(AtRisk, reading: Reading(tenths)).Nobody
        );
    }

    [Fact]
    public void At_the_stop_line_nobody_grooms() =>
        Assert.All(Check(Robust, reading: Reading(300)).People, one => Assert.Equal(Place.Not, one.Place));

    // 27.0 C is 80.6 F; by the full algorithm of the US National Weather Service it feels like 79.9 F at 20 % and 88 F at 90 %
    [Theory]
    [InlineData(20, HeatState.Under)]
    [InlineData(90, HeatState.Hot)]
    [InlineData(null, HeatState.Under)] // only a thermometer hangs there: the index is not asked
    public void A_hot_day_begins_also_at_a_heat_index_of_80_degrees_fahrenheit(int? humidity, HeatState state)
    {
        var house = House with { HotFromTenthsC = 290 };

        Assert.Equal(state, RoomHeat.StateOf(Reading(270, humidity), isAtRisk: false, house, Now, London));
    }

    [Fact]
    public void With_the_usual_numbers_the_thermometer_says_hot_before_the_index_does() =>
        Assert.DoesNotContain(SkillBook.HotDay, Check(Robust, reading: Reading(259, humidity: 100)).Asked);

    [Fact]
    public void On_a_hot_day_everybody_needs_the_hot_day_too_and_is_cautioned()
    {
        var team = TeamWords.TwoSeniors.MayAlone(Pim, SkillBook.Wire, SkillBook.Bath);
        var answer = Check(Robust, team, reading: Reading(265));

        Assert.Equal([new HotForThisDog(265, IsAtRisk: false)], answer.Cautions);
        Assert.Equal(
            [new NotAloneIn(SkillBook.HotDay, StandingKind.Ready, Have: null, Need: null)],
            AnswerFor(Pim, answer).Reasons
        );
        Assert.Equal([Rosa.Id], MayAlone(answer));
    }

    [Fact]
    public void A_clearance_that_does_not_hold_on_hot_days_does_not_hold_on_one()
    {
        var team = TeamWords
            .TwoSeniors.MayAlone(Pim, SkillBook.Bath, SkillBook.HotDay)
            .Path(Pim, SkillBook.Wire, [.. FullRow(Ago(5), 17), Cleared(Ago(5), new Limits(NotOnHotDays: true))]);

        Assert.Equal(Place.Alone, AnswerFor(Pim, Check(Robust, team, reading: Reading(259))).Place);
        Assert.Equal([new NotOnHotDays(SkillBook.Wire)], AnswerFor(Pim, Check(Robust, team, reading: Reading(260))).Reasons);
    }

    [Fact]
    public void Whether_a_day_is_hot_that_nobody_measured_is_unknown_and_such_a_clearance_does_not_hold()
    {
        var team = TeamWords
            .TwoSeniors.MayAlone(Pim, SkillBook.Bath)
            .Path(Pim, SkillBook.Wire, [.. FullRow(Ago(5), 17), Cleared(Ago(5), new Limits(NotOnHotDays: true))]);

        Assert.Equal([new ReadingNeeded(NewestAt: null)], AnswerFor(Pim, CheckWithoutAReading(Robust, team)).Reasons);
    }

    // hours since the newest reading
    [Theory]
    [InlineData(3.99, true)]
    [InlineData(4, false)] // half-open: four hours old says nothing any more
    public void A_reading_is_good_for_four_hours(double hours, bool good)
    {
        var reading = Reading(210, hoursAgo: hours);

        Assert.Equal(good ? [] : [new ReadingNeeded(reading.At)], Check(AtRisk, reading: reading).Unknown);
    }

    [Fact]
    public void Without_a_reading_on_a_day_that_may_be_hot_a_dog_at_risk_is_nobodys_and_for_others_it_is_asked()
    {
        var (atRisk, robust) = (CheckWithoutAReading(AtRisk), CheckWithoutAReading(Robust));

        Assert.Equal([new ReadingNeeded(NewestAt: null)], atRisk.Unknown);
        Assert.Empty(atRisk.Alone);
        Assert.Equal([new ReadingNeeded(NewestAt: null)], robust.Cautions);
        Assert.Equal([Rosa.Id], MayAlone(robust));
    }

    [Fact]
    public void Out_of_season_no_reading_is_asked_unless_the_day_itself_was_warm()
    {
        var inMarch = At("2026-03-02 14:00Z");
        var warmMorning = new Academy.Competence.Grooms.RoomReading(At("2026-03-02 09:00Z"), 241, HumidityPct: null);
        var warmYesterday = warmMorning with { At = At("2026-03-01 09:00Z") };

        Assert.Empty(CheckWithoutAReading(AtRisk, now: inMarch).Unknown);
        Assert.Empty(CheckWithoutAReading(AtRisk, reading: warmYesterday, now: inMarch).Unknown);
        Assert.Equal(
            [new ReadingNeeded(warmMorning.At)],
            CheckWithoutAReading(AtRisk, reading: warmMorning, now: inMarch).Unknown
        );
    }

    [Fact]
    public void A_reading_from_a_clock_that_runs_far_ahead_says_nothing() =>
        Assert.Equal([new ReadingNeeded(Now.AddMinutes(6))], Check(AtRisk, reading: Reading(210, hoursAgo: -0.1)).Unknown);

    [Theory]
    [InlineData("flat-faced", true)]
    [InlineData("elderly", true)]
    [InlineData("heart", true)]
    [InlineData("heavy-coat", true)]
    [InlineData("overweight", true)]
    [InlineData("fifty-kilos", true)]
    [InlineData("heat-prone", true)]
    [InlineData("very-young", false)]
    [InlineData("seizures", false)]
    [InlineData("nervous", false)]
    [InlineData("muzzled", false)]
    public void At_risk_in_heat_are_these_hazards_and_no_others(string hazard, bool atRisk)
    {
        var asked = Robust with { Dog = Biscuit with { Hazards = [new(hazard)] } };

        Assert.Equal(atRisk, Check(asked, reading: Reading(240)).Asked.Contains(SkillBook.HotDay));
    }

    [Fact]
    public void A_heat_prone_breed_is_at_risk_though_nobody_ticked_it() =>
        Assert.Contains(
            SkillBook.HotDay,
            Check(Robust with { Dog = Biscuit with { Breed = "Golden Retriever" } }, reading: Reading(240)).Asked
        );
}
