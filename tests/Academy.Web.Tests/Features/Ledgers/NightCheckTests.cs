using Academy.Storage;
using Academy.Web.Features.Ledgers;
using Academy.Web.Tests.Hosting;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Hosting;
using Microsoft.Extensions.Logging;

namespace Academy.Web.Tests.Features.Ledgers;

/// <summary>Every night the records are checked, and the owner reads in the morning what was found.</summary>
public sealed class NightCheckTests
{
    [Fact]
    public async Task In_the_hour_in_which_the_salon_sleeps_its_records_are_checked_and_the_ledger_page_says_so()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        await portal.WoolAsync(cast, cast.Junior, marks: 3);
        using (var evening = await portal.AsAsync(cast, cast.Owner))
            Assert.Null((await evening.GetAsync("/ledger")).Page.QuerySelector("#night"));

        await NightAsync(portal, cast, LogLevel.Information);

        using var ines = await portal.AsAsync(cast, cast.Owner);
        var said = (await ines.GetAsync("/ledger")).Page.QuerySelector("#night")!.TextContent;
        Assert.Matches(
            "^Checked .*: \\d+ standings? folded again from \\d+ entries came to what is kept, and the chain holds.$",
            said
        );
    }

    [Fact]
    public async Task A_tally_that_was_changed_by_hand_is_found_and_named()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        await portal.WoolAsync(cast, cast.Junior, marks: 3);
        await portal.DoAsync<AcademyDb, int>(db =>
            db.Tallies.Where(row => row.Skill == "wool" && row.Person == cast.Junior.Id.Value)
                .ExecuteUpdateAsync(set => set.SetProperty(row => row.StepsSince, 99))
        );

        await NightAsync(portal, cast, LogLevel.Critical);

        using var ines = await portal.AsAsync(cast, cast.Owner);
        var said = (await ines.GetAsync("/ledger")).Page.QuerySelector("#night.notice")!.TextContent;
        Assert.Contains("Pim, wool: what is kept is not what its grooms come to.", said, StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_portal_starts_it_by_itself()
    {
        await using var portal = new PortalHost { Sweeps = true };

        Assert.Single(portal.Services.GetServices<IHostedService>().OfType<NightCheck>());
    }

    [Fact]
    public async Task In_every_other_hour_nothing_is_checked()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        await ToAsync(portal, cast, hour: 4);

        await NightOf(portal, new Said<NightCheck>()).CheckAsync(TestContext.Current.CancellationToken);

        Assert.Null(portal.Services.GetRequiredService<NightFindings>().Of(cast.Salon));
    }

    private static async Task NightAsync(PortalHost portal, Cast cast, LogLevel expected)
    {
        await ToAsync(portal, cast, NightCheck.Hour);
        var said = new Said<NightCheck>();

        await NightOf(portal, said).CheckAsync(TestContext.Current.CancellationToken);

        Assert.Equal(expected, (await said.NextAsync()).Item1);
    }

    /// <summary>Lets the time come to the half past this hour, by the salon's clock.</summary>
    private static async Task ToAsync(PortalHost portal, Cast cast, int hour)
    {
        var local = TimeZoneInfo.ConvertTime(portal.Now, (await portal.BookAsync(cast)).Zone).DateTime;
        var next = local.Date.AddDays(1).AddHours(hour + .5);
        portal.Clock.Advance(next - local);
    }

    private static NightCheck NightOf(PortalHost portal, ILogger<NightCheck> log) =>
        new(
            portal.Services.GetRequiredService<IServiceScopeFactory>(),
            portal.Services.GetRequiredService<NightFindings>(),
            portal.Clock,
            log
        );
}
