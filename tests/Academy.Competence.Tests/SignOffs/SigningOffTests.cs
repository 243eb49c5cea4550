using Academy.Competence.Facts;
using Academy.Competence.Grooms;
using Academy.Competence.People;
using Academy.Competence.SignOffs;
using Academy.Competence.Skills;
using Academy.Competence.Standings;
using Academy.Competence.Statistics;
using Academy.Competence.Tests.Cast;
using static Academy.Competence.Tests.Cast.StoryWords;
using static Academy.Competence.Tests.Cast.TestSalon;

namespace Academy.Competence.Tests.SignOffs;

public class SigningOffTests
{
    private static readonly Criteria Unset = new(Mark.Unset, Mark.Unset, Mark.Unset, Mark.Unset, Mark.Unset, Mark.Unset);

    [Fact]
    public void A_senior_who_watched_and_is_alone_in_every_skill_signs_for_all_of_them() =>
        Assert.Equal(
            new SignOff(
                SignOffNumber(301),
                StrippingBiscuit.Id,
                Pim.Id,
                Rosa.Id,
                Now,
                SupportLevel.StoodBy,
                Criteria.AllMet,
                NotSuitable: [],
                Counted:
                [
                    new(SkillBook.Wire, Verdict.Suitable),
                    new(SkillBook.Bath, Verdict.Suitable),
                    new(SkillBook.HandStripping, Verdict.Suitable),
                ],
                NotCounted: [],
                IsInspection: false,
                IsLate: false,
                InsteadOf: null,
                Replaces: null,
                Words.None,
                Phrases: [],
                Words.None
            ),
            Met(Pim).Signed(Yesterday, Rosa.MayStripWire())
        );

    [Fact]
    public void The_owner_may_judge_where_she_is_alone() =>
        Assert.Equal(Olga.Id, Met(Pim).Signed(Yesterday, Olga.MayStripWire()).Senior);

    [Fact]
    public void A_sign_off_counts_only_for_skills_in_which_the_senior_is_alone_and_lists_the_others()
    {
        var signer = Rosa.AloneIn(SkillBook.Wire) with
        {
            Standings = new Dictionary<SkillCode, StandingKind>
            {
                [SkillBook.Wire] = StandingKind.Alone,
                [SkillBook.Bath] = StandingKind.Lapsed,
            },
        };
        var preview = SigningOff.Preview(Met(Pim), StrippingBiscuit, signer, Kinds);
        var signed = Met(Pim).Signed(Yesterday, signer);

        Assert.Equal(
            new SignOffPreview(
                Verdict.Suitable,
                Counted: [new(SkillBook.Wire, Verdict.Suitable)],
                NotCounted:
                [
                    new(SkillBook.Bath, StandingKind.Lapsed),
                    new(SkillBook.HandStripping, StandingKind.Learning), // nothing is known of her there
                ]
            ),
            preview
        );
        Assert.Equal([new CountedFor(SkillBook.Wire, Verdict.Suitable)], signed.Counted);
        Assert.Equal([SkillBook.Bath, SkillBook.HandStripping], signed.NotCounted);
    }

    [Fact]
    public void A_senior_whose_own_clearance_has_lapsed_cannot_judge_others()
    {
        var lapsed = new Signer(
            Rosa,
            new Dictionary<SkillCode, StandingKind>
            {
                [SkillBook.Wire] = StandingKind.Lapsed,
                [SkillBook.Bath] = StandingKind.CheckAgain,
                [SkillBook.HandStripping] = StandingKind.StoodDown,
            },
            DaysIn: []
        );

        Assert.Equal([new SignerAloneInNone()], AgainstSigning(Met(Pim), lapsed));
    }

    [Fact]
    public void A_junior_cannot_judge_others_though_she_is_alone() =>
        Assert.Equal([new SeniorOrOwnerOnly(Role.Junior)], AgainstSigning(Met(Pim), Mei.MayStripWire()));

    [Fact]
    public void Nobody_judges_her_own_work()
    {
        var rosas = Yesterday.Told(groom =>
            groom with
            {
                By = Rosa.Id,
                Watcher = Dora.Id,
                WholeFinishBy = Rosa.Id,
                Parts = [new(SkillBook.Bath, Rosa.Id)],
            }
        );

        Assert.Equal([new OwnWork()], AgainstSigning(Met(Rosa), Rosa.MayStripWire(), rosas));
    }

    [Fact]
    public void Nobody_judges_a_groom_of_which_she_did_a_part()
    {
        var shared = Yesterday.Told(groom => groom with { Parts = groom.Parts.With(new(SkillBook.Nails, Dora.Id)) });

        Assert.Equal([new OwnWork()], AgainstSigning(Met(Pim), Dora.MayStripWire(), shared));
    }

    [Fact]
    public void Whoever_did_not_watch_cannot_judge() =>
        Assert.Equal([new SignerDidNotWatch()], AgainstSigning(Met(Pim) with { HasWatched = false }, Rosa.MayStripWire()));

    [Fact]
    public void If_the_named_senior_was_away_the_one_who_really_watched_signs_and_the_record_says_so()
    {
        Assert.Equal(Rosa.Id, Met(Pim).Signed(Yesterday, Dora.MayStripWire()).InsteadOf);
        Assert.Null(Met(Pim).Signed(Yesterday, Rosa.MayStripWire()).InsteadOf);
    }

    [Fact]
    public void The_finished_dog_of_a_groom_done_alone_is_inspected()
    {
        var signed = Met(Pim).Signed(Yesterday.Told(groom => groom with { Watcher = null }), Rosa.MayStripWire());

        Assert.Equal((true, (PersonId?)null), (signed.IsInspection, signed.InsteadOf));
    }

    [Fact]
    public void Whoever_has_left_signs_nothing() =>
        Assert.Equal([new NotWorkingHere(Rosa.Id)], AgainstSigning(Met(Pim), (Rosa with { LeftOn = Today }).MayStripWire()));

    [Fact]
    public void Only_somebody_who_did_a_part_can_be_judged() =>
        Assert.Equal([new DidNoPart(Mei.Id), new SignerAloneInNone()], AgainstSigning(Met(Mei), Rosa.MayStripWire()));

    [Fact]
    public void A_groom_is_judged_after_its_end() =>
        Assert.Equal(
            [new GroomNotEnded()],
            AgainstSigning(Met(Pim), Rosa.MayStripWire(), Yesterday.Told(groom => groom with { EndedAt = Now.AddMinutes(1) }))
        );

    [Fact]
    public void A_form_that_is_not_filled_in_says_everything_that_is_missing() =>
        Assert.Equal(
            [
                new LevelNotChosen(),
                new CriterionNotSet(Criterion.Handling),
                new CriterionNotSet(Criterion.Preparation),
                new CriterionNotSet(Criterion.Tools),
                new CriterionNotSet(Criterion.SkinSafety),
                new CriterionNotSet(Criterion.Finish),
                new CriterionNotSet(Criterion.Comfort),
            ],
            AgainstSigning(Met(Pim) with { Level = null, Criteria = Unset }, Rosa.MayStripWire())
        );

    [Fact]
    public void All_reasons_are_said_at_once()
    {
        var story = SignedOnce().Told(groom => groom with { EndedAt = Now.AddHours(1) });
        var draft = Met(Pim) with { Id = SignOffNumber(302), HasWatched = false, Level = null, NotSuitable = [SkillBook.Bath] };

        Assert.Equal(
            [
                new NotWorkingHere(Gus.Id),
                new SeniorOrOwnerOnly(Role.Junior),
                new GroomNotEnded(),
                new SignerDidNotWatch(),
                new LevelNotChosen(),
                new WordsNeeded(WordsFor.NotYet),
                new AlreadySignedOff(SignOffNumber(301)),
            ],
            AgainstSigning(draft, Gus.MayStripWire(), story)
        );
    }

    [Fact]
    public void Not_yet_needs_words_or_a_phrase_for_the_junior()
    {
        var draft = Met(Pim) with { Criteria = Criteria.AllMet with { Finish = Mark.NotYet } };

        Assert.Equal([new WordsNeeded(WordsFor.NotYet)], AgainstSigning(draft, Rosa.MayStripWire()));
        Assert.Empty(AgainstSigning(draft with { ToJunior = Said("Blend the legs.") }, Rosa.MayStripWire()));
        Assert.Empty(AgainstSigning(draft with { Phrases = ["blend-legs"] }, Rosa.MayStripWire()));
        Assert.Equal(
            [new WordsNeeded(WordsFor.NotYet)],
            AgainstSigning(Met(Pim) with { NotSuitable = [SkillBook.Bath] }, Rosa.MayStripWire())
        );
    }

    [Fact]
    public void Not_seen_needs_no_words() =>
        Assert.Empty(
            AgainstSigning(Met(Pim) with { Criteria = Criteria.AllMet with { Finish = Mark.NotSeen } }, Rosa.MayStripWire())
        );

    [Fact]
    public void A_groom_is_signed_once_and_then_only_corrected()
    {
        var again = Met(Pim) with { Id = SignOffNumber(302) };
        var correction = again with { Replaces = SignOffNumber(301), Why = Said("I mixed up two dogs.") };

        Assert.Equal([new AlreadySignedOff(SignOffNumber(301))], AgainstSigning(again, Rosa.MayStripWire(), SignedOnce()));
        Assert.Empty(AgainstSigning(correction, Rosa.MayStripWire(), SignedOnce()));
    }

    [Fact]
    public void A_correction_says_why() =>
        Assert.Equal(
            [new WordsNeeded(WordsFor.Correction)],
            AgainstSigning(
                Met(Pim) with
                {
                    Id = SignOffNumber(302),
                    Replaces = SignOffNumber(301),
                },
                Rosa.MayStripWire(),
                SignedOnce()
            )
        );

    [Fact]
    public void A_correction_corrects_what_is_in_force_not_what_was_corrected_before()
    {
        var corrected = SignedOnce()
            .SignedOff(
                Met(Pim) with
                {
                    Id = SignOffNumber(302),
                    Replaces = SignOffNumber(301),
                    Why = Said("Slip."),
                },
                Rosa.MayStripWire()
            );
        var third = Met(Pim) with { Id = SignOffNumber(303), Why = Said("Slip again.") };

        Assert.Equal(
            [new NotTheSignOffInForce()],
            AgainstSigning(third with { Replaces = SignOffNumber(301) }, Rosa.MayStripWire(), corrected)
        );
        Assert.Empty(AgainstSigning(third with { Replaces = SignOffNumber(302) }, Rosa.MayStripWire(), corrected));
    }

    [Fact]
    public void There_is_nothing_to_correct_before_the_first_sign_off() =>
        Assert.Equal(
            [new NotTheSignOffInForce()],
            AgainstSigning(Met(Pim) with { Replaces = SignOffNumber(300), Why = Said("Slip.") }, Rosa.MayStripWire())
        );

    [Fact]
    public void Two_people_who_shared_a_groom_are_judged_each_for_her_own_part()
    {
        var shared = Yesterday.Told(groom =>
            groom with
            {
                Parts = [new(SkillBook.Bath, Mei.Id), new(SkillBook.HandStripping, Pim.Id)],
            }
        );
        var story = shared.SignedOff(Met(Mei), Rosa.MayStripWire());

        Assert.Equal([new CountedFor(SkillBook.Bath, Verdict.Suitable)], story.SignOffs[0].Counted);
        Assert.Empty(AgainstSigning(Met(Pim) with { Id = SignOffNumber(302) }, Rosa.MayStripWire(), story));
    }

    // level, and what is not met     coat        technique
    [Theory]
    [InlineData(SupportLevel.SeniorDidIt, "", false, false)]
    [InlineData(SupportLevel.HandsOn, "", false, false)]
    [InlineData(SupportLevel.TalkedThrough, "", false, false)]
    [InlineData(SupportLevel.StoodBy, "", true, true)]
    [InlineData(SupportLevel.NotNeeded, "", true, true)]
    [InlineData(SupportLevel.SeniorDidIt, "skin not yet", false, false)]
    [InlineData(SupportLevel.HandsOn, "skin not yet", false, false)]
    [InlineData(SupportLevel.TalkedThrough, "skin not yet", false, false)]
    [InlineData(SupportLevel.StoodBy, "skin not yet", false, false)] // skin safety must be met, for every skill
    [InlineData(SupportLevel.NotNeeded, "skin not yet", false, false)]
    [InlineData(SupportLevel.StoodBy, "skin not seen", false, false)] // not seen is neutral except for these two
    [InlineData(SupportLevel.NotNeeded, "skin not seen", false, false)]
    [InlineData(SupportLevel.StoodBy, "comfort not yet", false, false)]
    [InlineData(SupportLevel.NotNeeded, "comfort not yet", false, false)]
    [InlineData(SupportLevel.StoodBy, "comfort not seen", false, false)]
    [InlineData(SupportLevel.NotNeeded, "comfort not seen", false, false)]
    [InlineData(SupportLevel.TalkedThrough, "finish not yet", false, false)]
    [InlineData(SupportLevel.StoodBy, "finish not yet", false, true)] // the coat takes the whole groom, the nails may still be right
    [InlineData(SupportLevel.NotNeeded, "finish not yet", false, true)]
    [InlineData(SupportLevel.StoodBy, "finish not seen", true, true)]
    [InlineData(SupportLevel.NotNeeded, "finish not seen", true, true)]
    [InlineData(SupportLevel.TalkedThrough, "finish not seen", false, false)]
    public void Suitable_is_level_four_or_five_with_skin_safety_and_comfort_met_and_for_the_coat_nothing_not_yet(
        SupportLevel level,
        string lacking,
        bool coat,
        bool technique
    )
    {
        var marked = Marked(lacking);

        Assert.Equal(coat, IsSuitable(level, marked, [], SkillBook.Wire));
        Assert.Equal(technique, IsSuitable(level, marked, [], SkillBook.Nails));
        Assert.Equal(technique, IsSuitable(level, marked, [], SkillBook.Nervous)); // a hazard counts as a technique does
    }

    [Fact]
    public void A_technique_or_hazard_that_the_senior_marks_otherwise_is_unsuitable_and_the_coat_is_not_touched()
    {
        Listed<SkillCode> marked = [SkillBook.Nails, SkillBook.Wire];

        Assert.False(IsSuitable(SupportLevel.StoodBy, Criteria.AllMet, marked, SkillBook.Nails));
        Assert.True(IsSuitable(SupportLevel.StoodBy, Criteria.AllMet, marked, SkillBook.Bath));
        Assert.True(IsSuitable(SupportLevel.StoodBy, Criteria.AllMet, marked, SkillBook.Wire));
    }

    [Fact]
    public void What_is_not_chosen_yet_is_shown_as_unsuitable_before_saving() =>
        Assert.Equal(
            Verdict.Unsuitable,
            SigningOff.Preview(Met(Pim) with { Level = null }, StrippingBiscuit, Rosa.MayStripWire(), Kinds).Verdict
        );

    private static GroomStory SignedOnce() => Yesterday.SignedOff(Met(Pim), Rosa.MayStripWire());

    private static Criteria Marked(string lacking) =>
        lacking switch
        {
            "" => Criteria.AllMet,
            "skin not yet" => Criteria.AllMet with { SkinSafety = Mark.NotYet },
            "skin not seen" => Criteria.AllMet with { SkinSafety = Mark.NotSeen },
            "comfort not yet" => Criteria.AllMet with { Comfort = Mark.NotYet },
            "comfort not seen" => Criteria.AllMet with { Comfort = Mark.NotSeen },
            "finish not yet" => Criteria.AllMet with { Finish = Mark.NotYet },
            "finish not seen" => Criteria.AllMet with { Finish = Mark.NotSeen },
            _ => throw new ArgumentOutOfRangeException(nameof(lacking), lacking, "Not in the table."),
        };

    private static bool IsSuitable(SupportLevel level, Criteria criteria, Listed<SkillCode> notSuitable, SkillCode skill) =>
        SigningOff.VerdictOf(level, criteria, notSuitable, skill, Kinds.IsCoat(skill)) == Verdict.Suitable;

    private static Listed<Reason> AgainstSigning(SignOffDraft draft, Signer signer, GroomStory? story = null) =>
        Against(SigningOff.Decide(draft, story ?? Yesterday, signer, Kinds, Now, London));
}
