using Academy.Competence.DogChecks;
using Academy.Competence.Dogs;
using Academy.Competence.Skills;
using Academy.Competence.Tests.Cast;
using static Academy.Competence.Tests.Cast.CheckWords;
using static Academy.Competence.Tests.Cast.TestSalon;

namespace Academy.Competence.Tests.DogChecks;

/// <summary>What no clearance covers. Common practice unless a source is named in the modules; the vet decides where health is in doubt.</summary>
public class AbsoluteRulesTests
{
    private static readonly DogAsked Bathed = new(Biscuit, [SkillBook.Bath]);

    [Fact]
    public void Loud_or_laboured_breathing_at_rest_is_nobodys()
    {
        var answer = Check(Bathed with { HasBreathingTrouble = true });

        Assert.Equal([new BreathingTrouble()], answer.Nobody);
        Assert.All(answer.People, one => Assert.Equal(Place.Not, one.Place));
    }

    [Theory]
    [InlineData("flat-faced")]
    [InlineData("elderly")]
    [InlineData("very-young")]
    [InlineData("overweight")]
    [InlineData("heart")]
    public void Enclosed_drying_of_a_dog_at_risk_in_it_is_nobodys(string hazard)
    {
        var answer = Check(With(hazard) with { Techniques = [SkillBook.Bath, SkillBook.CabinetDrying] });

        Assert.Equal([new NeverEnclosedDrying(new(hazard))], answer.Nobody);
        Assert.Empty(answer.Alone);
    }

    [Fact]
    public void Other_dogs_are_dried_in_a_cabinet_by_whoever_may_where_the_owner_turned_it_on()
    {
        var cabinet = Bathed with { Techniques = [SkillBook.CabinetDrying] };
        var off = TeamWords.TwoSeniors with
        {
            Thresholds = TeamWords.TwoSeniors.Thresholds.SetItem(SkillBook.CabinetDrying, ThresholdOf(SkillBook.CabinetDrying)),
        };

        Assert.Equal([Rosa.Id], MayAlone(Check(cabinet)));
        Assert.Empty(Check(cabinet, off).Alone);
    }

    [Fact]
    public void Drying_by_hand_is_not_enclosed() =>
        Assert.Empty(Check(With("flat-faced") with { Techniques = [SkillBook.HandDrying] }).Nobody);

    [Fact]
    public void A_muzzle_on_a_dog_that_is_hot_or_may_vomit_or_breathes_badly_is_nobodys()
    {
        Assert.Equal([new NeverMuzzled()], Check(With("muzzled") with { MayVomitOrIsHot = true }).Nobody);
        Assert.Equal(
            [new BreathingTrouble(), new NeverMuzzled()],
            Check(With("muzzled") with { HasBreathingTrouble = true }).Nobody
        );
        Assert.Empty(Check(With("muzzled")).Nobody);
        Assert.Empty(Check(Bathed with { MayVomitOrIsHot = true }).Nobody);
    }

    [Fact]
    public void A_flat_face_never_wears_a_sleeve()
    {
        Assert.Equal(
            [new NeverASleeve()],
            Check(Bathed with { Dog = Biscuit with { Hazards = [SkillBook.FlatFaced, SkillBook.Muzzled] } }).Cautions
        );
        Assert.Empty(Check(With("muzzled")).Cautions);
    }

    [Theory]
    [InlineData("seizures")]
    [InlineData("heart")]
    [InlineData("bite-history")]
    public void Seizures_a_heart_condition_and_a_bite_history_take_two_people_one_of_them_a_senior(string hazard)
    {
        var answer = Check(With(hazard), isIn: [Rosa, Mei]);

        Assert.Equal([new TwoPeopleFor(new(hazard))], answer.TwoPeople);
        Assert.Equal(new PersonAnswer(Rosa.Id, Place.Beside, [], With: [Mei.Id]), AnswerFor(Rosa, answer)); // she is the senior
        Assert.Equal([Rosa.Id], AnswerFor(Mei, answer).With);
        Assert.Empty(answer.Alone);
    }

    [Fact]
    public void Two_people_means_two_a_senior_by_herself_is_not_enough() =>
        Assert.Equal(
            new PersonAnswer(Rosa.Id, Place.Not, [new NobodyToStandBeside()], With: []),
            AnswerFor(Rosa, Check(With("seizures"), isIn: [Rosa]))
        );

    [Fact]
    public void A_junior_who_lacks_nothing_still_needs_a_senior_as_the_second_person()
    {
        var team = TeamWords.TwoSeniors.MayAlone(Pim, SkillBook.Wire, SkillBook.Bath, SkillBook.Seizures);

        Assert.Equal([Dora.Id], AnswerFor(Pim, Check(With("seizures"), team, isIn: [Pim, Mei, Dora])).With);
        Assert.Equal([new NobodyToStandBeside()], AnswerFor(Pim, Check(With("seizures"), team, isIn: [Pim, Mei])).Reasons);
    }

    [Fact]
    public void A_corded_coat_takes_two_people_also_as_a_second_coat()
    {
        Assert.Equal(
            [new TwoPeopleFor(SkillBook.Corded)],
            Check(Bathed with { Dog = Biscuit with { Coat = SkillBook.Corded } }).TwoPeople
        );
        Assert.Equal(
            [new TwoPeopleFor(SkillBook.Corded)],
            Check(Bathed with { Dog = Biscuit with { SecondCoat = SkillBook.Corded } }).TwoPeople
        );
    }

    [Fact]
    public void A_pelted_coat_near_skin_folds_takes_two_people() =>
        Assert.Equal([new TwoPeopleForPeltedFolds()], Check(Bathed with { IsPeltedNearFolds = true }).TwoPeople);

    [Fact]
    public void Retiring_a_hazard_does_not_take_its_absolute_rule_away()
    {
        var team = TeamWords.TwoSeniors.Retire(SkillBook.Seizures).Retire(SkillBook.FlatFaced);

        Assert.Equal([new TwoPeopleFor(SkillBook.Seizures)], Check(With("seizures"), team).TwoPeople);
        Assert.Equal(
            [new NeverEnclosedDrying(SkillBook.FlatFaced)],
            Check(With("flat-faced") with { Techniques = [SkillBook.CabinetDrying] }, team).Nobody
        );
    }

    // weight of the dog      two lift it
    [Theory]
    [InlineData(25, false)] // at the limit one may
    [InlineData(26, true)]
    [InlineData(null, true)] // unknown: take no chance
    public void A_dog_above_the_salons_limit_is_lifted_by_two(int? kilos, bool together) =>
        Assert.Equal(
            together ? [new LiftTogether(kilos, UpToKg: 25)] : [],
            Check(Bathed with { Dog = Biscuit with { WeightKg = kilos } }).Cautions
        );

    private static DogAsked With(string hazard) => Bathed with { Dog = Biscuit with { Hazards = [new(hazard)] } };
}
