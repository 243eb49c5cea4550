using Academy.Competence.Decisions;
using Academy.Competence.Evidence;
using Academy.Competence.Facts;
using Academy.Competence.People;
using Academy.Competence.Skills;
using Academy.Competence.Standings;
using Academy.Competence.Statistics;
using Academy.Competence.Tests.Cast;
using Academy.Competence.Thresholds;
using static Academy.Competence.Tests.Cast.PathWords;
using static Academy.Competence.Tests.Cast.TestSalon;

namespace Academy.Competence.Tests.Decisions;

public class ClearingTests
{
    private static readonly DecisionId Signature = DecisionNumber(1);
    private static readonly Standing Ready = StandingNow(FullRow(Ago(1)));
    private static readonly Standing NearlyThere = StandingNow(FullRow(Ago(1), grooms: 14));
    private static readonly Standing AloneNow = StandingNow(Alone(Ago(10)));

    [Fact]
    public void The_owner_clears_whoever_is_ready_under_the_version_she_was_read_under() =>
        Assert.Equal(
            [
                new ClearanceGiven(
                    DecisionNumber(2),
                    Signature,
                    Pim.Id,
                    SkillBook.Double,
                    Now,
                    ThresholdVersion: 1,
                    new Limits(UpToKg: 20),
                    IsException: false,
                    Words.None
                ),
            ],
            Granted(Clear(Ready, new Limits(UpToKg: 20)))
        );

    [Fact]
    public void One_signature_covers_several_that_are_ready()
    {
        var smooth = CaseOf(ThresholdOf(SkillBook.Smooth), FullRow(Ago(1))).On(Today);
        var facts = Granted(
            Clearing.Clear(Signature, [Asked(2, Ready), Asked(3, smooth)], Pim, Olga, against: false, Words.None, Now, London)
        );

        Assert.Equal(
            [(Signature, DecisionNumber(2), SkillBook.Double), (Signature, DecisionNumber(3), SkillBook.Smooth)],
            facts.Cast<ClearanceGiven>().Select(given => (given.Signature, given.Id, given.Skill))
        );
    }

    [Fact]
    public void Nobody_is_cleared_or_declared_by_another_persons_standing()
    {
        Assert.Equal(
            [new NotHerStanding(SkillBook.Double)],
            Against(Clearing.Clear(Signature, [Asked(2, Ready)], Mei, Olga, against: false, Words.None, Now, London))
        );
        Assert.Equal(
            [new NotHerStanding(SkillBook.Double)],
            Against(
                Clearing.Declare(
                    DecisionNumber(2),
                    StandingNow(),
                    isSomebodyAlone: false,
                    Mei,
                    Olga,
                    Today,
                    Said("Years."),
                    Now,
                    London
                )
            )
        );
    }

    [Fact]
    public void One_that_is_not_ready_holds_up_the_whole_signature() =>
        Assert.Equal(
            [new NotReady(SkillBook.Double, new RowNotFull(14, 15))],
            Against(
                Clearing.Clear(
                    Signature,
                    [Asked(2, Ready), Asked(3, NearlyThere)],
                    Pim,
                    Olga,
                    against: false,
                    Words.None,
                    Now,
                    London
                )
            )
        );

    [Fact]
    public void Whoever_is_not_ready_is_refused_with_everything_that_lacks() =>
        Assert.Equal(
            [
                new NotReady(SkillBook.Double, new RowNotFull(0, 15)),
                new NotReady(SkillBook.Double, new TooFewBreeds(0, 3)),
                new NotReady(SkillBook.Double, new TooFewSeniors(0, 2)),
                new NotReady(SkillBook.Double, new TooFewRecentGrooms(0, 3, WithinDays: 120, LastOn: null)),
            ],
            Against(Clear(StandingNow()))
        );

    [Fact]
    public void Whoever_is_on_the_way_back_is_told_how_far_it_is() =>
        Assert.Equal(
            [
                new NotReady(SkillBook.Double, new RowNotFull(7, 15)),
                new NotReady(SkillBook.Double, new TooFewRecentGrooms(0, 3, WithinDays: 120, LastOn: Ago(200))),
                new NotReady(SkillBook.Double, new OnTheWayBack(WayBack.Long, 7, 15)),
            ],
            Against(Clear(StandingNow(Alone(Ago(200)))))
        );

    [Fact]
    public void Against_the_rules_the_owner_clears_only_with_a_written_reason()
    {
        var granted = Granted(Clear(NearlyThere, against: true, reason: Said("She did this for ten years.")));

        Assert.True(Assert.IsType<ClearanceGiven>(Assert.Single(granted)).IsException);
        Assert.Equal([new WordsNeeded(WordsFor.Exception)], Against(Clear(NearlyThere, against: true)));
    }

    [Fact]
    public void What_is_ready_under_the_same_signature_is_no_exception()
    {
        var facts = Granted(
            Clearing.Clear(
                Signature,
                [Asked(2, Ready), Asked(3, NearlyThere)],
                Pim,
                Olga,
                against: true,
                Said("She can."),
                Now,
                London
            )
        );

        Assert.Equal([false, true], facts.Cast<ClearanceGiven>().Select(given => given.IsException));
    }

    [Fact]
    public void Only_the_owner_clears_only_people_who_work_here_and_only_something() =>
        Assert.Equal(
            [new OwnerOnly(), new NotWorkingHere(Gus.Id), new NothingChosen()],
            Against(Clearing.Clear(Signature, [], Gus, Rosa, against: false, Words.None, Now, London))
        );

    [Fact]
    public void Nothing_is_decided_over_an_open_review_not_even_against_the_rules()
    {
        var underReview = StandingNow([.. FullRow(Ago(5)), Critical(Ago(1)), Reported(Today)]);

        Assert.Equal(
            [new ReviewComesFirst(SkillBook.Double)],
            Against(Clear(underReview, against: true, reason: Said("I trust her.")))
        );
    }

    [Fact]
    public void Whoever_is_stood_down_is_not_cleared_over_it_not_even_against_the_rules() =>
        Assert.Equal(
            [new NotReady(SkillBook.Double, new StoodDownSince(Ago(1), IsTechnique: false))],
            Against(Clear(StandingNow([.. Alone(Ago(10)), StoodDown(Ago(1))]), against: true, reason: Said("I trust her.")))
        );

    [Fact]
    public void After_technique_the_whole_row_and_the_owners_signature_end_the_stand_down()
    {
        var walked = StandingNow([.. Alone(Ago(60)), Critical(Ago(50)), ReviewedAsTechnique(Ago(49)), .. FullRow(Ago(1), 20)]);

        Assert.False(Assert.IsType<ClearanceGiven>(Assert.Single(Granted(Clear(walked)))).IsException);
    }

    [Fact]
    public void A_skill_that_is_turned_off_is_cleared_for_nobody()
    {
        var cabinet = CaseOf(ThresholdOf(SkillBook.CabinetDrying), FullRow(Ago(1))).On(Today);

        Assert.Equal(
            [new NotReady(SkillBook.CabinetDrying, new SkillTurnedOff())],
            Against(Clear(cabinet, against: true, reason: Said("Just once.")))
        );
    }

    [Fact]
    public void Whoever_is_alone_already_can_only_be_given_other_limits()
    {
        var other = Granted(Clear(AloneNow, new Limits(NotOnHotDays: true)));

        Assert.Equal([new AloneAlready(SkillBook.Double)], Against(Clear(AloneNow)));
        Assert.False(Assert.IsType<ClearanceGiven>(Assert.Single(other)).IsException);
    }

    // the last day
    [Theory]
    [InlineData("2026-06-14", false)] // yesterday
    [InlineData("2026-06-15", true)] // today is still a day
    public void A_limit_lies_today_or_later(string until, bool granted)
    {
        var decision = Clear(Ready, new Limits(Until: Day(until)));

        Assert.Equal(granted ? [] : [new LimitInThePast(Day(until))], Against(decision));
    }

    [Fact]
    public void The_owner_says_not_yet_in_words_to_the_person()
    {
        Assert.Equal(
            [new ClearanceRefused(Signature, Pim.Id, SkillBook.Wire, Said("Two more with Dora."))],
            Granted(Clearing.Refuse(Signature, Pim, SkillBook.Wire, Olga, Said("Two more with Dora.")))
        );
        Assert.Equal(
            [new OwnerOnly(), new WordsNeeded(WordsFor.Refusal)],
            Against(Clearing.Refuse(Signature, Pim, SkillBook.Wire, Rosa, Words.None))
        );
    }

    [Fact]
    public void The_first_people_of_a_salon_start_from_the_owners_declaration_of_experience() =>
        Assert.Equal(
            [new ExperienceDeclared(Signature, Rosa.Id, SkillBook.Double, Today, ThresholdVersion: 1, Said("Twelve years."))],
            Granted(Declare(StandingNow() with { Person = Rosa.Id }, isSomebodyAlone: false, Today, person: Rosa))
        );

    [Fact]
    public void Whoever_comes_with_experience_later_may_be_declared_too() =>
        Assert.Empty(Against(Declare(StandingNow(), isSomebodyAlone: true, Today)));

    [Fact]
    public void A_declaration_does_not_pass_by_the_rules_while_somebody_is_alone_in_the_skill()
    {
        Assert.Equal([new DeclaredAlready(SkillBook.Double)], Against(Declare(NearlyThere, isSomebodyAlone: true, Today)));
        Assert.Equal(
            [new DeclaredAlready(SkillBook.Double)],
            Against(Declare(StandingNow(Declared(Ago(200))), isSomebodyAlone: true, Today))
        );
    }

    [Fact]
    public void If_nobody_is_alone_in_a_skill_the_owner_may_declare_again() =>
        Assert.Empty(Against(Declare(StandingNow(Declared(Ago(200))), isSomebodyAlone: false, Today)));

    [Fact]
    public void A_declaration_is_no_way_round_a_stop() =>
        Assert.Equal(
            [
                new ReviewComesFirst(SkillBook.Double),
                new NotReady(SkillBook.Double, new StoodDownSince(Today, IsTechnique: false)),
            ],
            Against(Declare(StandingNow([.. Alone(Ago(5)), Critical(Ago(1)), Reported(Today)]), isSomebodyAlone: false, Today))
        );

    [Fact]
    public void A_declaration_says_who_when_and_why() =>
        Assert.Equal(
            [
                new OwnerOnly(),
                new NotWorkingHere(Gus.Id),
                new AloneAlready(SkillBook.Double),
                new InTheFuture(At("2026-06-15 23:00Z")), // tomorrow begins at this moment
                new WordsNeeded(WordsFor.Declaration),
            ],
            Against(
                Clearing.Declare(
                    Signature,
                    AloneNow with
                    {
                        Person = Gus.Id,
                    },
                    isSomebodyAlone: true,
                    Gus,
                    Rosa,
                    Today.AddDays(1),
                    Words.None,
                    Now,
                    London
                )
            )
        );

    [Fact]
    public void Work_elsewhere_is_recorded_with_its_source_and_at_most_ten_grooms()
    {
        Assert.Equal(
            [new WorkElsewhere(Signature, Pim.Id, SkillBook.Wire, Ago(3), Grooms: 10, Said("Her letter."))],
            Granted(
                Clearing.WorkedElsewhere(
                    Signature,
                    Pim,
                    SkillBook.Wire,
                    Olga,
                    Ago(3),
                    grooms: 40,
                    Said("Her letter."),
                    Now,
                    London
                )
            )
        );
        Assert.Equal(
            [new OwnerOnly(), new InTheFuture(At("2026-06-15 23:00Z")), new WordsNeeded(WordsFor.Source)],
            Against(
                Clearing.WorkedElsewhere(
                    Signature,
                    Pim,
                    SkillBook.Wire,
                    Rosa,
                    Today.AddDays(1),
                    grooms: 4,
                    Words.None,
                    Now,
                    London
                )
            )
        );
    }

    private static ClearanceAsked Asked(int number, Standing standing, Limits? limits = null) =>
        new(DecisionNumber(number), standing, limits ?? Limits.None);

    private static Decision Clear(Standing standing, Limits? limits = null, bool against = false, Words reason = default) =>
        Clearing.Clear(Signature, [Asked(2, standing, limits)], Pim, Olga, against, reason, Now, London);

    private static Decision Declare(Standing standing, bool isSomebodyAlone, DateOnly on, Person? person = null) =>
        Clearing.Declare(Signature, standing, isSomebodyAlone, person ?? Pim, Olga, on, Said("Twelve years."), Now, London);
}
