using System.Net;
using Academy.Competence;
using Academy.Storage;
using Academy.Web.Tests.Hosting;

namespace Academy.Web.Tests.Features.InToday;

public sealed class InTodayTests
{
    [Fact]
    public async Task A_senior_ticks_who_is_in()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        using var rosa = await portal.AsAsync(cast, cast.Senior);
        var kept = await rosa.SendAsync("/in-today", Ticks(cast.Senior, cast.Junior));

        Assert.Equal("Rosa and Pim are in", (await kept.FollowAsync()).Heading);
        Assert.Equal(new HashSet<PersonId> { cast.Senior.Id, cast.Junior.Id }, (await InAsync(portal, cast)).ToHashSet());
    }

    [Fact]
    public async Task A_tick_is_taken_away_again()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        using var ines = await portal.AsAsync(cast, cast.Owner);
        await ines.SendAsync("/in-today", Ticks(cast.Senior, cast.Junior));
        portal.Clock.Advance(TimeSpan.FromMinutes(1));
        await ines.SendAsync("/in-today", Ticks(cast.Senior));

        Assert.Equal([cast.Senior.Id], await InAsync(portal, cast));
    }

    [Fact]
    public async Task A_junior_has_one_box_and_it_is_her_own()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        using var pim = await portal.AsAsync(cast, cast.Junior);
        var page = await pim.GetAsync("/in-today");

        Assert.Equal(
            [cast.Junior.Id.Value.ToString()],
            page.Page.QuerySelectorAll("input[name=In]").Select(box => box.GetAttribute("value"))
        );
        Assert.Equal("Pim is in", (await (await pim.SendAsync("/in-today", Ticks(cast.Junior))).FollowAsync()).Heading);
    }

    [Fact]
    public async Task A_junior_who_ticks_others_all_the_same_is_refused_and_nothing_is_kept()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        using var pim = await portal.AsAsync(cast, cast.Junior);
        var refused = await pim.SendAsync("/in-today", Ticks(cast.Junior, cast.Senior));

        Assert.Equal(HttpStatusCode.UnprocessableEntity, refused.Status);
        Assert.Equal(["Only a senior or the owner may do this; the role here is junior."], refused.Problems);
        Assert.Empty(await InAsync(portal, cast));
    }

    [Fact]
    public async Task Two_who_tick_at_the_same_time_do_not_untick_each_other()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        using var rosa = await portal.AsAsync(cast, cast.Senior);
        using var dora = await portal.AsAsync(cast, cast.SecondSenior);
        var roses = (await rosa.GetAsync("/in-today")).Form().With(Ticks(cast.Senior));
        var doras = (await dora.GetAsync("/in-today")).Form().With(Ticks(cast.SecondSenior));
        await roses.SendAsync();
        await doras.SendAsync();

        Assert.Equal(new HashSet<PersonId> { cast.Senior.Id, cast.SecondSenior.Id }, (await InAsync(portal, cast)).ToHashSet());
    }

    [Fact]
    public async Task Somebody_who_works_in_another_salon_is_not_ticked_here()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        var other = await portal.OpenSalonAsync("The Dry Nose");
        using var rosa = await portal.AsAsync(cast, cast.Senior);

        Assert.Equal("Nothing was changed.", (await (await rosa.SendAsync("/in-today", Ticks(other.Junior))).FollowAsync()).Said);
        Assert.Empty(await InAsync(portal, other));
    }

    private static IEnumerable<(string, string)> Ticks(params Academy.Competence.People.Person[] people) =>
        people.Select(person => ("In", person.Id.Value.ToString()));

    private static Task<IReadOnlySet<PersonId>> InAsync(PortalHost portal, Cast cast) =>
        portal.DoAsync<RecordBook, IReadOnlySet<PersonId>>(book =>
            book.InOnAsync(cast.Salon, portal.Today, TestContext.Current.CancellationToken)
        );
}
