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
    public void Whoever_is_not_alone_has_nothing_that_runs_out() => Assert.Null(StandingNow(FullRow(Ago(1))).LastDay());

    private static Standing WithModule(ModuleState state, DateOnly? dueOn) =>
        (Case(Alone(Ago(1))) with { Modules = [new ModuleFound(Blades, state, Ago(100), dueOn)] }).On(Today);
}
