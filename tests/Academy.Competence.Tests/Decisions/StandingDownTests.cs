using Academy.Competence.Decisions;
using Academy.Competence.Facts;
using Academy.Competence.People;
using Academy.Competence.Skills;
using Academy.Competence.Standings;
using static Academy.Competence.Tests.Cast.PathWords;
using static Academy.Competence.Tests.Cast.TestSalon;

namespace Academy.Competence.Tests.Decisions;

public class StandingDownTests
{
    private static readonly DecisionId Decision = DecisionNumber(1);
    private static readonly Standing AloneNow = StandingNow(Alone(Ago(10)));
    private static readonly Standing Stopped = StandingNow([.. Alone(Ago(10)), StoodDown(Ago(1))]);

    [Fact]
    public void The_owner_stops_a_clearance_with_a_reason() =>
        Assert.Equal(
            [new StoodDown(Decision, Pim.Id, SkillBook.Double, Now, Said("Blades left hot."))],
            Granted(Stop(AloneNow, Olga))
        );

    [Fact]
    public void The_owners_deputy_may_stop_and_lift_while_the_owner_is_away()
    {
        Assert.Empty(Against(Stop(AloneNow, Dora)));
        Assert.Empty(Against(Lift(Stopped, Dora)));
    }

    [Fact]
    public void Other_seniors_and_juniors_may_do_neither()
    {
        Assert.Equal([new OwnerOrDeputyOnly()], Against(Stop(AloneNow, Rosa)));
        Assert.Equal([new OwnerOrDeputyOnly()], Against(Lift(Stopped, Rosa)));
    }

    [Fact]
    public void There_is_nothing_to_stop_where_nothing_was_cleared_or_it_is_stopped_already()
    {
        Assert.Equal([new NothingToStop(SkillBook.Double)], Against(Stop(StandingNow(FullRow(Today)), Olga)));
        Assert.Equal([new NothingToStop(SkillBook.Double)], Against(Stop(Stopped, Olga)));
    }

    [Fact]
    public void Whoever_walked_back_from_an_incident_of_technique_is_stopped_still()
    {
        var walked = StandingNow([.. Alone(Ago(60)), Critical(Ago(50)), ReviewedAsTechnique(Ago(49)), .. FullRow(Ago(1), 20)]);

        Assert.Equal(StandingKind.Ready, walked.Kind);
        Assert.Equal([new NothingToStop(SkillBook.Double)], Against(Stop(walked, Olga)));
    }

    [Fact]
    public void A_lapsed_clearance_can_be_stopped_so_that_it_does_not_return_by_itself() =>
        Assert.Empty(Against(Stop(StandingNow(Alone(Ago(150))), Olga)));

    [Fact]
    public void Stopping_and_lifting_need_words()
    {
        Assert.Equal(
            [new WordsNeeded(WordsFor.StandDown)],
            Against(StandingDown.Stop(Decision, AloneNow, Olga, Words.None, Now))
        );
        Assert.Equal([new WordsNeeded(WordsFor.Lift)], Against(StandingDown.Lift(Decision, Stopped, Olga, Words.None, Now)));
    }

    [Fact]
    public void The_owner_lifts_a_stop_with_a_reason() =>
        Assert.Equal(
            [new StandDownLifted(Decision, Pim.Id, SkillBook.Double, Now, Said("We talked."))],
            Granted(Lift(Stopped, Olga))
        );

    [Fact]
    public void A_deputy_does_not_lift_her_own_stop_but_the_owner_of_a_small_salon_may()
    {
        Assert.Equal([new OwnWork()], Against(Lift(Stopped with { Person = Dora.Id }, Dora)));
        Assert.Empty(Against(Lift(Stopped with { Person = Olga.Id }, Olga)));
    }

    [Fact]
    public void Nothing_is_lifted_that_was_not_stopped() =>
        Assert.Equal([new NotStoodDown(SkillBook.Double)], Against(Lift(AloneNow, Olga)));

    [Fact]
    public void Nothing_is_lifted_over_an_open_review() =>
        Assert.Equal(
            [new ReviewComesFirst(SkillBook.Double)],
            Against(Lift(StandingNow([.. Alone(Ago(10)), Critical(Ago(1)), Reported(Today)]), Olga))
        );

    [Fact]
    public void Nothing_is_lifted_where_technique_contributed() =>
        Assert.Equal(
            [new TechniqueContributed(SkillBook.Double)],
            Against(Lift(StandingNow([.. Alone(Ago(10)), Critical(Ago(5)), ReviewedAsTechnique(Ago(4))]), Olga))
        );

    private static Competence.Decision Stop(Standing standing, Person by) =>
        StandingDown.Stop(Decision, standing, by, Said("Blades left hot."), Now);

    private static Competence.Decision Lift(Standing standing, Person by) =>
        StandingDown.Lift(Decision, standing, by, Said("We talked."), Now);
}
