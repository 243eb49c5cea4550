using Academy.Competence.Decisions;
using Academy.Competence.Evidence;
using Academy.Competence.Facts;
using Academy.Competence.Grooms;
using Academy.Competence.People;
using Academy.Competence.Skills;
using Academy.Competence.Tests.Cast;
using static Academy.Competence.Tests.Cast.CheckWords;
using static Academy.Competence.Tests.Cast.PathWords;
using static Academy.Competence.Tests.Cast.TestSalon;

namespace Academy.Competence.Tests.Grooms;

/// <summary>Product paper: "someone who is not alone for that dog and logs it as alone": kept, flagged, spoken about.</summary>
public class FlaggingTests
{
    private static readonly Groom Alone = StrippingBiscuit with { Watcher = null };

    [Fact]
    public void A_groom_that_a_senior_watched_is_not_flagged() =>
        Assert.Empty(Flagging.NotAloneIn(StrippingBiscuit, Pim.Id, Then()));

    [Fact]
    public void Coat_and_techniques_in_which_she_was_not_alone_are_named() =>
        Assert.Equal([SkillBook.Wire, SkillBook.Bath, SkillBook.HandStripping], Flagging.NotAloneIn(Alone, Pim.Id, Then()));

    [Fact]
    public void Whoever_is_alone_in_all_of_it_is_not_flagged()
    {
        Assert.Empty(
            Flagging.NotAloneIn(Alone with { By = Rosa.Id, WholeFinishBy = Rosa.Id, Parts = PartsOf(Rosa) }, Rosa.Id, Then())
        );
        Assert.Equal(
            [SkillBook.HandStripping],
            Flagging.NotAloneIn(Alone, Pim.Id, Then(TeamWords.TwoSeniors.MayAlone(Pim, SkillBook.Wire, SkillBook.Bath)))
        );
    }

    [Fact]
    public void Both_coats_are_asked() =>
        Assert.Equal(
            [SkillBook.Wool],
            Flagging.NotAloneIn(
                Alone with
                {
                    Coat = SkillBook.Double,
                    SecondCoat = SkillBook.Wool,
                    Parts = [],
                },
                Pim.Id,
                Then(TeamWords.TwoSeniors.MayAlone(Pim, SkillBook.Double))
            )
        );

    [Fact]
    public void Hazards_are_asked_ticked_or_not()
    {
        var able = TeamWords.TwoSeniors.MayAlone(Pim, SkillBook.Wire);
        var old = Then(able) with { Dog = Biscuit with { BornOn = new(2015, 1, 1) } };

        Assert.Equal(
            [SkillBook.Nervous],
            Flagging.NotAloneIn(Alone with { Parts = [], Hazards = [SkillBook.Nervous] }, Pim.Id, Then(able))
        );
        Assert.Equal([SkillBook.Elderly], Flagging.NotAloneIn(Alone with { Parts = [] }, Pim.Id, old));
    }

    [Fact]
    public void A_hot_day_is_asked_by_the_reading_that_was_taken() =>
        Assert.Equal(
            [SkillBook.HotDay],
            Flagging.NotAloneIn(
                Alone with
                {
                    Parts = [],
                    Room = new RoomReading(Alone.EndedAt.AddMinutes(-30), 262, 40),
                },
                Pim.Id,
                Then(TeamWords.TwoSeniors.MayAlone(Pim, SkillBook.Wire))
            )
        );

    [Fact]
    public void A_limit_in_the_way_is_as_good_as_not_alone()
    {
        var limited = TeamWords.TwoSeniors.Path(
            Pim,
            SkillBook.Wire,
            Declared(Ago(10)),
            Cleared(Ago(9)) with
            {
                Limits = new Limits(UpToKg: 5),
            }
        );

        Assert.Equal([SkillBook.Wire], Flagging.NotAloneIn(Alone with { Parts = [] }, Pim.Id, Then(limited)));
    }

    [Fact]
    public void Each_of_several_answers_for_her_own_part()
    {
        var shared = Alone with { Parts = [new(SkillBook.Bath, Mei.Id), new(SkillBook.HandStripping, Pim.Id)] };

        Assert.Equal([SkillBook.Bath], Flagging.NotAloneIn(shared, Mei.Id, Then()));
        Assert.Equal([SkillBook.Wire, SkillBook.HandStripping], Flagging.NotAloneIn(shared, Pim.Id, Then()));
    }

    [Fact]
    public void What_a_senior_who_holds_it_had_a_hand_in_was_not_done_alone()
    {
        var shared = Alone with { Parts = [new(SkillBook.Bath, Dora.Id), new(SkillBook.HandStripping, Pim.Id)] };

        Assert.Equal(
            [SkillBook.Wire, SkillBook.HandStripping], // Dora holds neither
            Flagging.NotAloneIn(shared, Pim.Id, Then())
        );
        Assert.Empty(
            Flagging.NotAloneIn(
                shared with
                {
                    Parts = [new(SkillBook.Bath, Rosa.Id), new(SkillBook.HandStripping, Pim.Id)],
                },
                Pim.Id,
                Then()
            )
        );
    }

    [Fact]
    public void What_takes_two_people_is_nobodys_alone()
    {
        var biter = Alone with
        {
            By = Rosa.Id,
            WholeFinishBy = Rosa.Id,
            Parts = PartsOf(Rosa),
            Hazards = [SkillBook.BiteHistory],
        };

        Assert.Equal([SkillBook.BiteHistory], Flagging.NotAloneIn(biter, Rosa.Id, Then()));
        Assert.Empty(Flagging.NotAloneIn(biter with { Parts = biter.Parts.With(new(SkillBook.Nails, Mei.Id)) }, Rosa.Id, Then()));
    }

    [Fact]
    public void A_retired_skill_is_asked_of_nobody() =>
        Assert.Empty(Flagging.NotAloneIn(Alone with { Parts = [] }, Pim.Id, Then(TeamWords.TwoSeniors.Retire(SkillBook.Wire))));

    [Fact]
    public void Standings_of_another_moment_are_in_doubt_where_something_lacks_or_is_new_since_that_day()
    {
        var rosas = Alone with { By = Rosa.Id, WholeFinishBy = Rosa.Id, Parts = PartsOf(Rosa) };
        var sinceThatDay = TeamWords.TwoSeniors.Path(Rosa, SkillBook.Wire, Declared(Ago(1)));

        Assert.False(Flagging.IsInDoubt(rosas, Then()));
        Assert.True(Flagging.IsInDoubt(Alone, Then()));
        Assert.True(Flagging.IsInDoubt(rosas, Then(sinceThatDay)));
        Assert.False(Flagging.IsInDoubt(StrippingBiscuit, Then(sinceThatDay)));
    }

    [Fact]
    public void A_flag_is_said_once_taken_back_when_told_anew_and_said_again_where_it_differs()
    {
        Listed<SkillCode> all = [SkillBook.Wire, SkillBook.Bath, SkillBook.HandStripping];
        Listed<FlagStory> before = [new FlagStory(Alone.Id, Pim.Id, Now, all)];
        var less = Alone with { Parts = [new(SkillBook.Bath, Pim.Id)] };

        Assert.Equal([new GroomFlagged(Alone.Id, Pim.Id, all)], Granted(Flagging.Flag(Alone, [], Then())));
        Assert.Empty(Granted(Flagging.Flag(Alone, before, Then())));
        Assert.Empty(Granted(Flagging.Flag(StrippingBiscuit, [], Then())));
        Assert.Equal([new GroomFlagged(Alone.Id, Pim.Id, [])], Granted(Flagging.Flag(StrippingBiscuit, before, Then())));
        Assert.Equal(
            [new GroomFlagged(Alone.Id, Pim.Id, [SkillBook.Wire, SkillBook.Bath])],
            Granted(Flagging.Flag(less, before, Then()))
        );
    }

    [Fact]
    public void The_owner_speaks_about_it_once_in_words()
    {
        var open = new FlagStory(Alone.Id, Pim.Id, Now, [SkillBook.Wire]);
        var spoken = open with { Spoken = Said("Next time ask."), SpokenBy = Olga.Id, SpokenAt = Now };

        Assert.Equal(
            [new FlagSpokenAbout(Alone.Id, Pim.Id, Said("Next time ask."))],
            Granted(Flagging.SpeakAbout(open, Olga, Said("Next time ask.")))
        );
        Assert.Equal(
            [new OwnerOnly(), new NothingToSpeakAbout(), new WordsNeeded(WordsFor.SpokenAbout)],
            Against(Flagging.SpeakAbout(spoken, Rosa, Words.None))
        );
        Assert.Equal([new NothingToSpeakAbout()], Against(Flagging.SpeakAbout(flag: null, Olga, Said("What?"))));
    }

    [Fact]
    public void The_story_tells_who_spoke_and_when_and_a_flag_said_anew_is_open_again()
    {
        var flagged = new GroomFlagged(Alone.Id, Pim.Id, [SkillBook.Wire]);
        var spoke = new FlagSpokenAbout(Alone.Id, Pim.Id, Said("Next time ask."));
        var open = new FlagStory(Alone.Id, Pim.Id, Now, [SkillBook.Wire]);

        Assert.Equal([open], Flagging.Of([Told(flagged, 0)]));
        Assert.Equal(
            [open with { Spoken = Said("Next time ask."), SpokenBy = Olga.Id, SpokenAt = Now.AddHours(1) }],
            Flagging.Of([Told(flagged, 0), Told(spoke, 1)])
        );
        Assert.Equal([open with { At = Now.AddHours(2) }], Flagging.Of([Told(flagged, 0), Told(spoke, 1), Told(flagged, 2)]));
        Assert.Empty(Flagging.Of([Told(flagged, 0), Told(flagged with { Skills = [] }, 1)]));
    }

    private static Recorded Told(Fact fact, int hours) => new(fact, Olga.Id, Now.AddHours(hours), hours);

    private static Listed<Part> PartsOf(Person doer) => [new(SkillBook.Bath, doer.Id), new(SkillBook.HandStripping, doer.Id)];

    private static KnownThen Then(TeamWords? team = null) =>
        new(Biscuit, (team ?? TeamWords.TwoSeniors).Now, new HashSet<PersonId> { Rosa.Id, Pim.Id, Mei.Id }, House, London);
}
