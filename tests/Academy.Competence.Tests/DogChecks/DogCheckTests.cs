using Academy.Competence.Decisions;
using Academy.Competence.DogChecks;
using Academy.Competence.Dogs;
using Academy.Competence.People;
using Academy.Competence.Skills;
using Academy.Competence.Standings;
using Academy.Competence.Statistics;
using Academy.Competence.Tests.Cast;
using static Academy.Competence.Tests.Cast.CheckWords;
using static Academy.Competence.Tests.Cast.PathWords;
using static Academy.Competence.Tests.Cast.TestSalon;

namespace Academy.Competence.Tests.DogChecks;

public class DogCheckTests
{
    private static readonly DogAsked ToStrip = new(Biscuit, [SkillBook.Bath, SkillBook.HandStripping]);
    private static readonly TeamWords TheTeam = TeamWords.TwoSeniors;
    private static readonly NotAloneIn NotAloneInWire = new(SkillBook.Wire, StandingKind.Learning, Have: 0, Need: 17);
    private static readonly NotAloneIn NotAloneInStripping = new(
        SkillBook.HandStripping,
        StandingKind.Learning,
        Have: 0,
        Need: 8
    );

    [Fact]
    public void A_dog_without_agreed_work_is_not_everybodys()
    {
        var answer = Check(ToStrip with { Techniques = [] });

        Assert.Equal([new NoWorkAgreed()], answer.Unknown);
        Assert.All(answer.People, one => Assert.Equal(Place.Not, one.Place));
    }

    [Fact]
    public void A_dog_without_a_chosen_coat_is_not_everybodys()
    {
        var answer = Check(ToStrip with { Dog = Biscuit with { Coat = null } });

        Assert.Equal([new NoCoatChosen()], answer.Unknown);
        Assert.All(answer.People, one => Assert.Equal(Place.Not, one.Place));
    }

    [Fact]
    public void A_dog_of_unknown_age_is_nobodys_until_somebody_says()
    {
        var unknown = ToStrip with { Dog = Biscuit with { BornOn = null } };

        Assert.Equal([new AgeUnknown()], Check(unknown).Unknown);
        Assert.Equal([Rosa.Id], MayAlone(Check(unknown with { Dog = unknown.Dog with { Age = AgeByLook.Grown } })));
    }

    [Fact]
    public void A_dog_that_asks_for_a_skill_the_salon_does_not_have_is_nobodys()
    {
        var answer = Check(
            ToStrip with
            {
                Techniques = [SkillBook.Bath, new("ultrasonic-bath")],
                Dog = Biscuit with { Coat = new("scaly") },
            }
        );

        Assert.Equal([new UnknownSkill(new("scaly")), new UnknownSkill(new("ultrasonic-bath"))], answer.Unknown);
        Assert.Empty(answer.Alone);
    }

    [Fact]
    public void Everything_unknown_is_said_at_once() =>
        Assert.Equal(
            [new NoCoatChosen(), new NoWorkAgreed(), new AgeUnknown()],
            Check(new DogAsked(Biscuit with { Coat = null, BornOn = null }, Techniques: [])).Unknown
        );

    [Fact]
    public void A_dog_asks_for_its_coats_its_techniques_its_hazards_and_the_days()
    {
        var asked = new DogAsked(Otto with { Hazards = [SkillBook.Nervous], BornOn = new(2015, 1, 1) }, [SkillBook.Bath]);

        Assert.Equal(
            [SkillBook.Double, SkillBook.Wool, SkillBook.Bath, SkillBook.Elderly, SkillBook.Nervous, SkillBook.HotDay],
            Check(asked, reading: Reading(260)).Asked
        );
    }

    [Fact]
    public void Whoever_is_in_is_told_alone_beside_whom_or_not_and_every_reason()
    {
        var answer = Check(ToStrip, isIn: [Rosa, Dora, Pim], team: TheTeam.MayAlone(Pim, SkillBook.Bath, SkillBook.Wire));

        Assert.Equal(
            [
                new PersonAnswer(Rosa.Id, Place.Alone, [], With: []),
                new PersonAnswer(Dora.Id, Place.Beside, [NotAloneInWire, NotAloneInStripping], With: [Rosa.Id]),
                new PersonAnswer(Pim.Id, Place.Beside, [NotAloneInStripping], With: [Rosa.Id]),
            ],
            answer.People.Take(3)
        );
        Assert.Empty(answer.Nobody.Concat(answer.TwoPeople).Concat(answer.Unknown).Concat(answer.Cautions));
    }

    [Fact]
    public void Whoever_is_not_in_today_may_not_and_the_answer_still_says_what_else_is_missing() =>
        Assert.Equal(
            [
                new PersonAnswer(
                    Olga.Id,
                    Place.Not,
                    [
                        new NotInToday(),
                        NotAloneInWire,
                        new NotAloneIn(SkillBook.Bath, StandingKind.Learning, 0, 15),
                        NotAloneInStripping,
                    ],
                    With: []
                ),
                new PersonAnswer(Rosa.Id, Place.Not, [new NotInToday()], With: []),
            ],
            Check(ToStrip, isIn: []).People.Take(2)
        );

    [Fact]
    public void Whoever_is_in_comes_before_whoever_is_not_and_whoever_may_before_whoever_may_not()
    {
        var answer = Check(ToStrip, isIn: [Mei, Dora, Rosa]);

        Assert.Equal([Rosa.Id, Dora.Id, Mei.Id, Olga.Id, Pim.Id, Uli.Id], answer.People.Select(one => one.Person));
    }

    [Fact]
    public void Whoever_left_is_not_in_the_answer_at_all() =>
        Assert.DoesNotContain(Check(ToStrip).People, one => one.Person == Gus.Id);

    [Fact]
    public void Where_nobody_in_today_could_stand_beside_it_is_no() =>
        Assert.Equal(
            new PersonAnswer(Dora.Id, Place.Not, [NotAloneInWire, NotAloneInStripping, new NobodyToStandBeside()], With: []),
            AnswerFor(Dora, Check(ToStrip, isIn: [Dora, Mei]))
        );

    [Fact]
    public void Only_a_senior_or_the_owner_stands_beside_a_junior_does_not_though_she_is_alone()
    {
        var team = TheTeam.MayAlone(Pim, SkillBook.Wire, SkillBook.Bath, SkillBook.HandStripping);

        Assert.Equal(Place.Not, AnswerFor(Mei, Check(ToStrip, team, isIn: [Mei, Pim])).Place);
        Assert.Equal(
            [Olga.Id],
            AnswerFor(
                Mei,
                Check(ToStrip, team.MayAlone(Olga, SkillBook.Wire, SkillBook.Bath, SkillBook.HandStripping), isIn: [Mei, Olga])
            ).With
        );
    }

    [Fact]
    public void Whoever_stands_beside_holds_what_is_missing_and_need_not_hold_the_rest()
    {
        // Pim lacks the bath; Dora holds it though she may not strip
        var team = TheTeam.MayAlone(Pim, SkillBook.Wire, SkillBook.HandStripping);

        Assert.Equal([Dora.Id], AnswerFor(Pim, Check(ToStrip, team, isIn: [Pim, Dora])).With);
    }

    [Fact]
    public void A_dog_with_two_coats_asks_for_both()
    {
        var team = TheTeam.MayAlone(Pim, SkillBook.Double, SkillBook.Bath);

        Assert.Equal(
            new PersonAnswer(
                Pim.Id,
                Place.Beside,
                [new NotAloneIn(SkillBook.Wool, StandingKind.Learning, 0, 17)],
                [Rosa.Id, Dora.Id]
            ),
            AnswerFor(Pim, Check(new DogAsked(Otto, [SkillBook.Bath]), team))
        );
    }

    [Fact]
    public void A_lapsed_clearance_is_none()
    {
        var team = TheTeam.Path(Rosa, SkillBook.Wire, Declared(Ago(180)));

        Assert.Equal(
            [new NotAloneIn(SkillBook.Wire, StandingKind.Lapsed, Have: 14, Need: 17), new NobodyToStandBeside()],
            AnswerFor(Rosa, Check(ToStrip, team)).Reasons
        );
    }

    [Fact]
    public void Whoever_is_watched_does_it_with_a_senior_beside_and_is_herself_no_senior_beside()
    {
        var watched = TheTeam.Path(
            Dora,
            SkillBook.Wire,
            [
                .. FullRow(Ago(5), 17),
                Cleared(Ago(5)),
                Inspected(Ago(2), Verdict.Unsuitable),
                Inspected(Ago(1), Verdict.Unsuitable),
            ]
        );
        var bathOnly = ToStrip with { Techniques = [SkillBook.Bath] };

        Assert.Equal(
            new PersonAnswer(Dora.Id, Place.Beside, [new Watched(SkillBook.Wire, Yet: 3)], [Rosa.Id]),
            AnswerFor(Dora, Check(bathOnly, watched))
        );
        Assert.Equal(Place.Not, AnswerFor(Pim, Check(bathOnly, watched, isIn: [Dora, Pim])).Place);
    }

    // limit in kg, weight of the dog
    [Theory]
    [InlineData(34, 34, true)] // included
    [InlineData(33, 34, false)]
    public void A_clearance_up_to_a_weight_holds_up_to_it(int upTo, int weight, bool alone)
    {
        var answer = AnswerFor(
            Pim,
            Check(Bathed(Otto with { SecondCoat = null, WeightKg = weight }), PimMayDouble(new Limits(UpToKg: upTo)))
        );

        Assert.Equal(alone ? [] : [new TooHeavy(SkillBook.Double, weight, upTo)], answer.Reasons);
    }

    [Fact]
    public void Where_the_weight_is_unknown_a_limit_in_weight_means_no() =>
        Assert.Equal(
            [new WeightUnknown(SkillBook.Double, UpToKg: 40)],
            AnswerFor(
                Pim,
                Check(Bathed(Otto with { SecondCoat = null, WeightKg = null }), PimMayDouble(new Limits(UpToKg: 40)))
            ).Reasons
        );

    [Fact]
    public void A_clearance_only_with_a_senior_in_the_building_holds_while_another_senior_is_ticked_in()
    {
        var team = PimMayDouble(new Limits(OnlyWithSeniorIn: true));
        var otto = Bathed(Otto with { SecondCoat = null });

        Assert.Equal(Place.Alone, AnswerFor(Pim, Check(otto, team, isIn: [Pim, Olga])).Place); // the owner counts
        Assert.Equal(
            new PersonAnswer(Pim.Id, Place.Not, [new NoSeniorIn(SkillBook.Double), new NobodyToStandBeside()], With: []),
            AnswerFor(Pim, Check(otto, team, isIn: [Pim, Mei]))
        );
    }

    [Fact]
    public void Whoever_is_under_18_may_do_nothing_alone_while_no_senior_is_in()
    {
        var team = TheTeam.MayAlone(Uli, SkillBook.Wire, SkillBook.Bath);
        var bathOnly = ToStrip with { Techniques = [SkillBook.Bath] };

        Assert.Equal(Place.Alone, AnswerFor(Uli, Check(bathOnly, team, isIn: [Uli, Rosa])).Place);
        Assert.Equal(
            [new NoSeniorIn(SkillBook.Wire), new NoSeniorIn(SkillBook.Bath), new NobodyToStandBeside()],
            AnswerFor(Uli, Check(bathOnly, team, isIn: [Uli, Pim])).Reasons
        );
    }

    [Fact]
    public void While_an_incident_waits_for_review_it_is_no_not_even_with_somebody_beside()
    {
        var team = TheTeam.Path(Pim, SkillBook.Wire, [.. FullRow(Ago(5), 5), Critical(Ago(1)), Reported(Today)]);

        Assert.Equal(
            new PersonAnswer(
                Pim.Id,
                Place.Not,
                [
                    new NotUntilReviewed(SkillBook.Wire),
                    NotAloneInWire,
                    new NotAloneIn(SkillBook.Bath, StandingKind.Learning, 0, 15),
                ],
                With: []
            ),
            AnswerFor(Pim, Check(ToStrip with { Techniques = [SkillBook.Bath] }, team))
        );
    }

    [Fact]
    public void A_review_in_a_skill_that_this_dog_does_not_ask_for_is_no_matter_here()
    {
        var team = TheTeam.Path(Pim, SkillBook.Wool, [Critical(Ago(1)), Reported(Today)]);

        Assert.Equal(Place.Beside, AnswerFor(Pim, Check(ToStrip, team)).Place);
    }

    [Fact]
    public void A_retired_technique_or_hazard_is_asked_of_no_dog()
    {
        var nervous = ToStrip with { Dog = Biscuit with { Hazards = [SkillBook.Nervous] } };
        var answer = Check(nervous, TheTeam.Retire(SkillBook.Nervous).Retire(SkillBook.Bath));

        Assert.Equal([SkillBook.Wire, SkillBook.HandStripping], answer.Asked);
        Assert.Empty(answer.Unknown);
        Assert.Equal([Rosa.Id], MayAlone(answer));
    }

    [Fact]
    public void A_dog_whose_coat_or_whose_whole_work_is_retired_asks_for_nothing_and_that_is_not_everybodys()
    {
        Assert.Equal([new NoCoatChosen()], Check(ToStrip, TheTeam.Retire(SkillBook.Wire)).Unknown);
        Assert.Equal(
            [new NoWorkAgreed()],
            Check(ToStrip, TheTeam.Retire(SkillBook.Bath).Retire(SkillBook.HandStripping)).Unknown
        );
        Assert.Empty(Check(ToStrip, TheTeam.Retire(SkillBook.Wire)).Alone);
    }

    [Fact]
    public void A_dog_that_grew_old_since_its_last_visit_asks_for_more_by_itself()
    {
        var team = TheTeam.MayAlone(Pim, SkillBook.Wire, SkillBook.Bath);
        var eightToday = ToStrip with { Techniques = [SkillBook.Bath], Dog = Biscuit with { BornOn = Day("2018-06-15") } };

        Assert.Equal(
            [new NotAloneIn(SkillBook.Elderly, StandingKind.Learning, 0, 8)],
            AnswerFor(Pim, Check(eightToday, team)).Reasons
        );
    }

    private static DogAsked Bathed(Dog dog) => new(dog, [SkillBook.Bath]);

    private static TeamWords PimMayDouble(Limits limits) =>
        TheTeam.MayAlone(Pim, SkillBook.Bath).Path(Pim, SkillBook.Double, Alone(Ago(5), limits));
}
