using Academy.Competence.Decisions;
using Academy.Competence.Evidence;
using Academy.Competence.Standings;
using static Academy.Competence.Tests.Cast.PathWords;
using static Academy.Competence.Tests.Cast.TestSalon;

namespace Academy.Competence.Tests.Standings;

public class RunningOutTests
{
    private static readonly ModuleName Blades = new("blades-and-scissors");

    [Fact]
    public void A_standing_holds_until_its_third_last_groom_leaves_the_window()
    {
        var standing = StandingNow(Alone(Ago(106)));

        // The third last groom of the row was 108 days ago; its last day inside 120 is the 119th.
        Assert.Equal(Ago(108).AddDays(119), standing.LastDay());
        Assert.Equal(11, standing.DaysLeft(Today));
    }

    [Fact]
    public void The_earliest_of_recency_modules_and_the_limit_is_the_last_day()
    {
        var recency = Ago(3).AddDays(119);

        Assert.Equal(recency, StandingNow(Alone(Ago(1))).LastDay());
        Assert.Equal(Today.AddDays(5), StandingNow(Alone(Ago(1), new Limits(Until: Today.AddDays(5)))).LastDay());
        Assert.Equal(Today.AddDays(2), WithModule(ModuleState.Current, dueOn: Today.AddDays(2)).LastDay());
        Assert.Equal(recency, WithModule(ModuleState.Current, dueOn: null).LastDay());
    }

    [Fact]
    public void Modules_that_an_exception_gives_time_for_run_out_with_that_time()
    {
        var exception = Case([.. FullRow(Ago(11)), ClearedAgainstTheRules(Ago(10))]) with
        {
            Modules = [new ModuleFound(Blades, ModuleState.NotPassed, PassedOn: null, DueOn: null)],
        };

        Assert.Equal(Today.AddDays(20), exception.On(Today).LastDay());
        Assert.Null(exception.On(Today).DaysLeft(Today));
        Assert.Equal(14, exception.On(Today.AddDays(6)).DaysLeft(Today.AddDays(6)));
        Assert.Equal(0, exception.On(Today.AddDays(20)).DaysLeft(Today.AddDays(20)));
    }

    [Fact]
    public void A_safety_change_is_told_from_the_day_it_comes_and_runs_out_on_its_day()
    {
        var changed = CatchingUpBy(Today.AddDays(40), Alone(Ago(1)));

        Assert.Equal([new CatchingUp(Blades, Today.AddDays(40))], changed.CatchesUp());
        Assert.Equal(Today.AddDays(40), changed.LastDay());
        Assert.Null(changed.DaysLeft(Today));
        Assert.Equal(14, changed.DaysLeft(Today.AddDays(26)));
        // told once, by itself, and not again as a standing that runs out
        Assert.Null(changed.OtherDaysLeft(Today.AddDays(26)));
        Assert.False(changed.IsToMind(Today.AddDays(26)));
    }

    [Fact]
    public void What_runs_out_before_the_day_to_catch_up_is_told_beside_it()
    {
        var changed = CatchingUpBy(Today.AddDays(13), Alone(Ago(1), new Limits(Until: Today.AddDays(5))));

        Assert.Equal([new CatchingUp(Blades, Today.AddDays(13))], changed.CatchesUp());
        Assert.Equal(5, changed.OtherDaysLeft(Today));
        Assert.True(changed.IsToMind(Today));
    }

    [Fact]
    public void A_refresher_not_passed_is_told_of_whoever_is_alone_before_a_second_one_pauses()
    {
        Assert.Equal([Blades], OnItsLastTry(Alone(Ago(1))).LastTries());
        Assert.Equal([], OnItsLastTry(FullRow(Ago(1))).LastTries());
        Assert.Equal([], CatchingUpBy(Today.AddDays(5), Alone(Ago(1))).LastTries());
    }

    [Fact]
    public void Only_a_standing_of_somebody_alone_catches_up() =>
        Assert.Equal([], CatchingUpBy(Today.AddDays(5), FullRow(Ago(1))).CatchesUp());

    [Fact]
    public void Whoever_is_not_alone_has_nothing_that_runs_out() => Assert.Null(StandingNow(FullRow(Ago(1))).LastDay());

    private static Standing OnItsLastTry(params IEnumerable<Step> path) =>
        (
            Case(path) with
            {
                Modules = [new ModuleFound(Blades, ModuleState.Current, Ago(100), Today.AddDays(90), IsLastTry: true)],
            }
        ).On(Today);

    private static Standing CatchingUpBy(DateOnly day, params IEnumerable<Step> path) =>
        (Case(path) with { Modules = [new ModuleFound(Blades, ModuleState.Current, Ago(100), day, AsksToCatchUp: true)] }).On(
            Today
        );

    private static Standing WithModule(ModuleState state, DateOnly? dueOn) =>
        (Case(Alone(Ago(1))) with { Modules = [new ModuleFound(Blades, state, Ago(100), dueOn)] }).On(Today);
}
