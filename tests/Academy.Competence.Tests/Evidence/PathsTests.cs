using Academy.Competence.Decisions;
using Academy.Competence.Evidence;
using Academy.Competence.Facts;
using Academy.Competence.Grooms;
using Academy.Competence.Incidents;
using Academy.Competence.People;
using Academy.Competence.SignOffs;
using Academy.Competence.Skills;
using Academy.Competence.Standings;
using Academy.Competence.Statistics;
using Academy.Competence.Tests.Cast;
using static Academy.Competence.Tests.Cast.StoryWords;
using static Academy.Competence.Tests.Cast.TestSalon;

namespace Academy.Competence.Tests.Evidence;

public class PathsTests
{
    private static readonly GroomStory SignedYesterday = Yesterday.SignedOff(Met(Pim), Rosa.MayStripWire());

    private static readonly SignOffDraft TalkedThrough = Met(Pim) with { Level = SupportLevel.TalkedThrough };

    private static readonly DateTimeOffset TooLate = Yesterday.Groom.EndedAt.AddDays(8);

    [Fact]
    public void A_watched_groom_that_nobody_signed_is_exposure_in_each_of_its_skills() =>
        Assert.Equal(["wire watched", "bath watched", "hand-stripping watched"], ToldOf(Paths.Of(Yesterday, London), Pim));

    [Fact]
    public void A_signed_groom_is_one_rated_step_in_each_skill_it_counts_for()
    {
        var step = new Step(
            StrippingBiscuit.EndedAt,
            StrippingBiscuit.Id.Value,
            StepKind.Rated,
            Ago(1),
            Verdict.Suitable,
            "Border Terrier",
            Rosa.Id
        );

        Assert.Equal(
            [
                new StepOf(Pim.Id, SkillBook.Wire, step),
                new StepOf(Pim.Id, SkillBook.Bath, step),
                new StepOf(Pim.Id, SkillBook.HandStripping, step),
            ],
            Paths.Of(SignedYesterday, London)
        );
    }

    [Fact]
    public void Where_the_senior_is_not_alone_in_a_skill_the_groom_stays_exposure_in_it()
    {
        var story = Yesterday.SignedOff(Met(Pim), Rosa.AloneIn(SkillBook.Wire, SkillBook.Bath));

        Assert.Equal(
            ["wire rated suitable", "bath rated suitable", "hand-stripping watched"],
            ToldOf(Paths.Of(story, London), Pim)
        );
    }

    [Fact]
    public void A_groom_found_unsuitable_by_a_senior_who_is_not_alone_there_feeds_no_recency_either()
    {
        var story = Yesterday.SignedOff(TalkedThrough, Rosa.AloneIn(SkillBook.Wire));

        Assert.Equal(["wire rated unsuitable"], ToldOf(Paths.Of(story, London), Pim));
    }

    [Fact]
    public void A_late_sign_off_counts_only_once_the_owner_admits_it()
    {
        var late = Yesterday.SignedOff(Met(Pim), Rosa.MayStripWire(), TooLate);

        Assert.True(late.SignOffs[0].IsLate);
        Assert.Equal("wire watched", ToldOf(Paths.Of(late, London), Pim)[0]);
        Assert.Equal("wire rated suitable", ToldOf(Paths.Of(late with { Admitted = [late.SignOffs[0].Id] }, London), Pim)[0]);
    }

    [Fact]
    public void A_groom_found_unsuitable_too_late_moves_no_row_and_feeds_no_recency()
    {
        var late = Yesterday.SignedOff(TalkedThrough, Rosa.MayStripWire(), TooLate);

        Assert.Empty(Paths.Of(late, London));
        Assert.Equal(
            ["wire rated unsuitable", "bath rated unsuitable", "hand-stripping rated unsuitable"],
            ToldOf(Paths.Of(late with { Admitted = [late.SignOffs[0].Id] }, London), Pim)
        );
    }

    [Fact]
    public void A_judgement_that_the_owner_took_back_was_never_said()
    {
        var story = Yesterday.SignedOff(TalkedThrough, Rosa.MayStripWire());

        Assert.Equal("wire rated unsuitable", ToldOf(Paths.Of(story, London), Pim)[0]);
        Assert.Equal("wire watched", ToldOf(Paths.Of(story with { Overturned = [story.SignOffs[0].Id] }, London), Pim)[0]);
    }

    [Fact]
    public void A_correction_replaces_what_it_corrects_and_a_second_one_replaces_the_first()
    {
        var corrected = SignedYesterday.SignedOff(
            Correcting(SignOffNumber(301), SignOffNumber(302)) with
            {
                Level = SupportLevel.HandsOn,
            },
            Rosa.MayStripWire()
        );
        var again = corrected.SignedOff(Correcting(SignOffNumber(302), SignOffNumber(303)), Rosa.MayStripWire());

        Assert.Equal("wire rated unsuitable", ToldOf(Paths.Of(corrected, London), Pim)[0]);
        Assert.Equal("wire rated suitable", ToldOf(Paths.Of(again, London), Pim)[0]);
        Assert.Equal(3, Paths.Of(again, London).Count);
    }

    [Fact]
    public void A_groom_done_alone_is_exposure_until_a_senior_inspects_the_dog()
    {
        var alone = Yesterday.Told(groom => groom with { Watcher = null });

        Assert.Equal("wire alone", ToldOf(Paths.Of(alone, London), Pim)[0]);
        Assert.Equal("wire inspected suitable", ToldOf(Paths.Of(alone.SignedOff(Met(Pim), Rosa.MayStripWire()), London), Pim)[0]);
    }

    [Fact]
    public void When_two_people_share_a_groom_each_gets_the_techniques_she_did_and_nobody_the_coat()
    {
        var shared = Yesterday.Told(groom =>
            groom with
            {
                WholeFinishBy = null,
                Parts = [new(SkillBook.Bath, Mei.Id), new(SkillBook.HandStripping, Pim.Id)],
                Hazards = [SkillBook.Nervous],
            }
        );

        Assert.Equal(["hand-stripping watched"], ToldOf(Paths.Of(shared, London), Pim));
        Assert.Equal(["bath watched"], ToldOf(Paths.Of(shared, London), Mei));
    }

    [Fact]
    public void Whoever_did_the_whole_finish_gets_the_coat_and_the_hazards_though_another_bathed()
    {
        var shared = Yesterday.Told(groom =>
            groom with
            {
                Parts = [new(SkillBook.Bath, Mei.Id), new(SkillBook.HandStripping, Pim.Id)],
                Hazards = [SkillBook.Nervous],
            }
        );

        Assert.Equal(["wire watched", "hand-stripping watched", "nervous watched"], ToldOf(Paths.Of(shared, London), Pim));
        Assert.Equal(["bath watched"], ToldOf(Paths.Of(shared, London), Mei));
    }

    [Fact]
    public void A_dog_with_two_coats_counts_for_both_where_one_person_did_both()
    {
        var twoCoats = Yesterday.Told(groom => groom with { SecondCoat = SkillBook.Silky });

        Assert.Equal(["wire watched", "silky watched"], ToldOf(Paths.Of(twoCoats, London), Pim)[..2]);
        Assert.DoesNotContain(
            Paths.Of(twoCoats.Told(groom => groom with { WholeFinishBy = null }), London),
            of => Kinds.IsCoat(of.Skill)
        );
    }

    [Fact]
    public void A_groom_counts_on_the_salons_local_day_of_its_end()
    {
        var midnight = Yesterday.Told(groom => groom with { EndedAt = At("2026-06-13 23:30Z") }); // half past midnight in London

        Assert.Equal(Day("2026-06-14"), Paths.Of(midnight, London)[0].Step.Day);
        Assert.Equal(Day("2026-06-13"), Paths.Of(midnight, TimeZoneInfo.Utc)[0].Step.Day);
    }

    [Fact]
    public void A_critical_incident_makes_the_groom_critical_and_stops_every_skill_of_it_when_it_is_reported()
    {
        var path = Paths.Of(SignedYesterday.With(Burn), London);

        Assert.Equal(
            [
                "wire rated critical",
                "bath rated critical",
                "hand-stripping rated critical",
                "wire stood down, review open",
                "bath stood down, review open",
                "hand-stripping stood down, review open",
            ],
            ToldOf(path, Pim)
        );
        Assert.All(
            path.Where(of => of.Step.Kind == StepKind.StoodDown),
            of => Assert.Equal((Now, Today), (of.Step.At, of.Step.Day))
        );
    }

    [Fact]
    public void An_incident_during_one_technique_concerns_that_technique_and_the_coat() =>
        Assert.Equal(
            [
                "wire rated critical",
                "bath rated suitable",
                "hand-stripping rated critical",
                "wire stood down, review open",
                "hand-stripping stood down, review open",
            ],
            ToldOf(Paths.Of(SignedYesterday.With(Burn with { During = [SkillBook.HandStripping] }), London), Pim)
        );

    [Fact]
    public void An_incident_concerns_the_hazards_of_the_dog_as_it_does_its_coat()
    {
        var story = Yesterday.Told(groom => groom with { Hazards = [SkillBook.FlatFaced] }).With(Burn);

        Assert.Contains("flat-faced stood down, review open", ToldOf(Paths.Of(story, London), Pim));
    }

    [Fact]
    public void An_incident_of_whoever_only_bathed_leaves_the_coat_alone()
    {
        var story = Yesterday.Told(groom =>
            groom with
            {
                Parts = [new(SkillBook.Bath, Mei.Id), new(SkillBook.HandStripping, Pim.Id)],
            }
        );
        var path = Paths.Of(story.With(Burn with { Person = Mei.Id }), London);

        Assert.Equal(["bath rated critical", "bath stood down, review open"], ToldOf(path, Mei));
        Assert.Equal(["wire watched", "hand-stripping watched"], ToldOf(path, Pim));
    }

    [Fact]
    public void Not_technique_replays_as_one_unsuitable_groom_and_the_owner_lifts_the_stop_herself()
    {
        var path = Paths.Of(SignedYesterday.With(Burn, Found(technique: false, Pim)), London);

        Assert.Equal("wire rated unsuitable", ToldOf(path, Pim)[0]);
        Assert.Equal("wire stood down", ToldOf(path, Pim)[3]);
    }

    [Fact]
    public void Technique_keeps_the_groom_critical_and_the_stop_for_good()
    {
        var path = Paths.Of(SignedYesterday.With(Burn, Found(technique: true, Pim)), London);

        Assert.Equal("wire rated critical", ToldOf(path, Pim)[0]);
        Assert.Equal("wire stood down, technique", ToldOf(path, Pim)[3]);
    }

    [Fact]
    public void Where_a_review_names_somebody_else_the_incident_moves_to_her()
    {
        var path = Paths.Of(SignedYesterday.With(Burn, Found(technique: true, Rosa)), London);

        Assert.Equal(["wire rated suitable", "bath rated suitable", "hand-stripping rated suitable"], ToldOf(path, Pim));
        Assert.Equal(
            [
                "wire rated critical",
                "bath rated critical",
                "hand-stripping rated critical",
                "wire stood down, technique",
                "bath stood down, technique",
                "hand-stripping stood down, technique",
            ],
            ToldOf(path, Rosa)
        );
    }

    [Fact]
    public void Where_a_review_names_nobody_it_lowers_nothing() =>
        Assert.Equal(
            Paths.Of(SignedYesterday, London),
            Paths.Of(SignedYesterday.With(Burn, Found(technique: false, responsible: null)), London)
        );

    [Fact]
    public void A_near_miss_never_lowers_anything()
    {
        var nearMiss = Burn with { Severity = Academy.Competence.Salons.Severity.NearMiss, IsCritical = false };

        Assert.Equal(Paths.Of(SignedYesterday, London), Paths.Of(SignedYesterday.With(nearMiss), London));
    }

    [Fact]
    public void A_late_report_stops_the_clearance_at_once_although_the_groom_is_old()
    {
        var old = SignedYesterday.Told(groom =>
            groom with
            {
                EndedAt = Now.AddDays(-40),
                StartedAt = Now.AddDays(-40).AddHours(-2),
            }
        );
        var before = PathWords.Alone(Ago(60)).Concat(PathWords.FullRow(Ago(1), 20)).ToList();
        var told = Paths.Of(old.With(Burn), London).Where(of => of.Skill == SkillBook.Wire).Select(of => of.Step);
        var standing = PathWords.StandingNow(Tally.InOrder(before.Concat(told)));

        Assert.Equal(StandingKind.Alone, PathWords.StandingNow(before).Kind);
        Assert.Equal((StandingKind.StoodDown, Today), (standing.Kind, standing.Since));
        Assert.Equal([new ReviewOpen(1)], standing.Gaps); // twenty suitable grooms lie between: the row is full again
    }

    [Fact]
    public void An_upheld_complaint_makes_a_groom_unsuitable_though_a_senior_found_it_suitable()
    {
        var story = SignedYesterday with { Complaints = [new(Pim.Id, Now, [SkillBook.Wire])] };

        Assert.Equal(
            ["wire rated unsuitable", "bath rated suitable", "hand-stripping rated suitable"],
            ToldOf(Paths.Of(story, London), Pim)
        );
    }

    [Fact]
    public void An_upheld_complaint_about_a_groom_done_alone_is_an_inspection_that_nobody_signed()
    {
        var story = Yesterday.Told(groom => groom with { Watcher = null }) with
        {
            Complaints = [new(Pim.Id, Now, [SkillBook.Wire])],
        };
        var step = Paths.Of(story, London)[0].Step;

        Assert.Equal((StepKind.Inspected, Verdict.Unsuitable, (PersonId?)null), (step.Kind, step.Verdict, step.Senior));
    }

    [Fact]
    public void Each_decision_is_one_step_on_its_path()
    {
        var limits = new Limits(UpToKg: 10);
        (Fact Fact, Step[] Steps)[] decisions =
        [
            (
                new ClearanceGiven(
                    DecisionNumber(1),
                    DecisionNumber(2),
                    Pim.Id,
                    SkillBook.Wire,
                    Now,
                    3,
                    limits,
                    IsException: true,
                    Said("She can.")
                ),
                [
                    new(Now, Number(1), StepKind.Cleared, Today)
                    {
                        Limits = limits,
                        IsException = true,
                        ThresholdVersion = 3,
                    },
                ]
            ),
            (
                new StoodDown(DecisionNumber(1), Pim.Id, SkillBook.Wire, Now, Said("Stop.")),
                [new(Now, Number(1), StepKind.StoodDown, Today)]
            ),
            (
                new StandDownLifted(DecisionNumber(1), Pim.Id, SkillBook.Wire, Now, Said("Go on.")),
                [new(Now, Number(1), StepKind.Lifted, Today)]
            ),
            (
                new ExperienceDeclared(DecisionNumber(1), Pim.Id, SkillBook.Wire, Today, 3, Said("Ten years.")),
                [new(At("2026-06-14 23:00Z"), Number(1), StepKind.Declared, Today, ThresholdVersion: 3)] // midnight in London
            ),
            (
                new WorkElsewhere(DecisionNumber(1), Pim.Id, SkillBook.Wire, Today, 2, Said("Her last salon.")),
                [
                    new(At("2026-06-14 23:00Z"), Number(1), StepKind.Elsewhere, Today),
                    new(At("2026-06-14 23:00Z"), Number(1), StepKind.Elsewhere, Today),
                ]
            ),
            (new ClearanceRefused(DecisionNumber(1), Pim.Id, SkillBook.Wire, Said("Not yet.")), []), // it changes no standing
        ];

        Assert.All(
            decisions,
            one => Assert.Equal(one.Steps.Select(step => new StepOf(Pim.Id, SkillBook.Wire, step)), Paths.Of(one.Fact, London))
        );
    }

    private static SignOffDraft Correcting(SignOffId earlier, SignOffId later) =>
        Met(Pim) with
        {
            Id = later,
            Replaces = earlier,
            Why = Said("I had mixed up two dogs."),
        };

    private static string[] ToldOf(IEnumerable<StepOf> path, Person person) =>
        [.. path.Where(of => of.Person == person.Id).Select(of => $"{of.Skill} {ToldOf(of.Step)}")];

    private static string ToldOf(Step step) =>
        step switch
        {
            { Kind: StepKind.StoodDown, IsReviewOpen: true } => "stood down, review open",
            { Kind: StepKind.StoodDown, IsTechnique: true } => "stood down, technique",
            { Kind: StepKind.StoodDown } => "stood down",
            { Verdict: { } verdict } => $"{step.Kind} {verdict}".ToLowerInvariant(),
            _ => step.Kind.ToString().ToLowerInvariant(),
        };
}
