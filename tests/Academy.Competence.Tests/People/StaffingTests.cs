using Academy.Competence.Facts;
using Academy.Competence.People;
using static Academy.Competence.Tests.Cast.TestSalon;

namespace Academy.Competence.Tests.People;

public class StaffingTests
{
    [Fact]
    public void The_owner_takes_somebody_on() =>
        Assert.Equal(
            [new PersonDescribed(Uli.Id, Said("Uli"), Role.Junior, Uli.JoinedOn, EndsOn: null, IsUnder18: true, IsDeputy: false)],
            Granted(Staffing.Describe(Uli, before: null, Olga, owners: 1))
        );

    [Fact]
    public void Only_the_owner_takes_people_on_with_a_name_and_an_end_after_the_beginning() =>
        Assert.Equal(
            [new OwnerOnly(), new WordsNeeded(WordsFor.Name), new BeforeJoining(Today)],
            Against(Staffing.Describe(Pim with { Name = " ", JoinedOn = Today, EndsOn = Ago(1) }, before: null, Rosa, owners: 1))
        );

    [Fact]
    public void Somebody_may_end_on_the_day_she_begins() =>
        Assert.Empty(Against(Staffing.Describe(Pim with { JoinedOn = Today, EndsOn = Today }, before: null, Olga, owners: 1)));

    [Fact]
    public void The_last_owner_cannot_give_the_role_up_or_set_an_end_to_it()
    {
        Assert.Equal([new LastOwner()], Against(Staffing.Describe(Olga with { Role = Role.Senior }, Olga, Olga, owners: 1)));
        Assert.Equal([new LastOwner()], Against(Staffing.Describe(Olga with { EndsOn = Today }, Olga, Olga, owners: 1)));
        Assert.Empty(Against(Staffing.Describe(Olga with { Role = Role.Senior }, Olga, Olga, owners: 2)));
        Assert.Empty(Against(Staffing.Describe(Olga with { Name = "Olga K." }, Olga, Olga, owners: 1)));
    }

    [Fact]
    public void The_last_owner_cannot_leave()
    {
        Assert.Equal([new LastOwner()], Against(Staffing.Leave(Olga, Today, Olga, owners: 1)));
        Assert.Equal([new PersonLeft(Olga.Id, Today)], Granted(Staffing.Leave(Olga, Today, Olga, owners: 2)));
    }

    [Fact]
    public void Whoever_left_cannot_leave_again_and_nobody_before_she_joined() =>
        Assert.Equal(
            [new OwnerOnly(), new NotWorkingHere(Gus.Id), new BeforeJoining(Gus.JoinedOn)],
            Against(Staffing.Leave(Gus, Gus.JoinedOn.AddDays(-1), Rosa, owners: 1))
        );

    [Fact]
    public void Whoever_left_may_come_back_and_nobody_who_is_here()
    {
        Assert.Equal([new PersonCameBack(Gus.Id, Today)], Granted(Staffing.ComeBack(Gus, Today, Olga)));
        Assert.Equal([new OwnerOnly(), new HereAlready()], Against(Staffing.ComeBack(Pim, Today, Rosa)));
    }

    [Fact]
    public void Everybody_may_tick_herself_in_and_seniors_the_owner_and_the_deputy_tick_others()
    {
        Assert.Equal([new PresenceTicked(Pim.Id, Today, IsIn: true)], Granted(Staffing.Tick(Pim, Today, isIn: true, Pim)));
        Assert.Empty(Against(Staffing.Tick(Pim, Today, isIn: false, Rosa)));
        Assert.Empty(Against(Staffing.Tick(Pim, Today, isIn: true, Olga)));
        Assert.Empty(Against(Staffing.Tick(Pim, Today, isIn: true, Mei with { IsDeputy = true })));
        Assert.Equal([new SeniorOrOwnerOnly(Role.Junior)], Against(Staffing.Tick(Pim, Today, isIn: true, Mei)));
    }

    [Fact]
    public void Nobody_is_ticked_in_who_does_not_work_here_that_day() =>
        Assert.Equal([new NotWorkingHere(Gus.Id)], Against(Staffing.Tick(Gus, Today, isIn: true, Rosa)));

    // joined 1 June; ends 15 June (that day included) or left 15 June (from that day on not)
    [Theory]
    [InlineData("2026-05-31", false, false)]
    [InlineData("2026-06-01", true, true)]
    [InlineData("2026-06-14", true, true)]
    [InlineData("2026-06-15", true, false)]
    [InlineData("2026-06-16", false, false)]
    public void An_end_date_is_a_last_day_and_leaving_is_a_first_day_away(string day, bool withEnd, bool left)
    {
        var joined = Pim with { JoinedOn = Day("2026-06-01") };

        Assert.Equal(withEnd, (joined with { EndsOn = Today }).WorksOn(Day(day)));
        Assert.Equal(left, (joined with { LeftOn = Today }).WorksOn(Day(day)));
    }
}
