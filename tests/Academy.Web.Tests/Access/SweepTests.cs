using Academy.Storage;
using Academy.Storage.Rows;
using Academy.Web.Access;
using Academy.Web.Tests.Hosting;
using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Hosting;
using Microsoft.Extensions.Logging;

namespace Academy.Web.Tests.Access;

/// <summary>What nobody can use any more is cleared away by itself.</summary>
public sealed class SweepTests
{
    [Fact]
    public async Task Sessions_that_are_over_and_failures_that_are_forgotten_go_at_the_start_and_every_hour()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        await portal.SignInAsync(cast, cast.Junior);
        await FailAsync(portal, "forgotten", count: 3);
        await FailAsync(portal, "stopped", count: Patience.StopsAt);
        portal.Clock.Advance(TimeSpan.FromDays(40));
        var said = new Said<Sweep>();
        using var sweep = SweepOf(portal, said);

        await sweep.StartAsync(TestContext.Current.CancellationToken);
        Assert.Equal((LogLevel.Information, "Swept 1 sessions and 1 failed sign-ins away."), await said.NextAsync());
        Assert.Equal((0, "stopped"), await LeftAsync(portal));

        await portal.SignInAsync(cast, cast.Senior);
        portal.Clock.Advance(Sweep.Every);
        Assert.Equal((LogLevel.Information, "Swept 0 sessions and 0 failed sign-ins away."), await said.NextAsync());
        Assert.Equal((1, "stopped"), await LeftAsync(portal));

        await sweep.StopAsync(TestContext.Current.CancellationToken);
        Assert.True(sweep.ExecuteTask!.IsCompletedSuccessfully);
    }

    [Fact]
    public async Task A_sweep_that_fails_is_in_the_log_and_the_next_one_is_tried_all_the_same()
    {
        var (portal, cast) = await PortalHost.OpenAsync();
        await using var _ = portal;
        await portal.SignInAsync(cast, cast.Junior);
        portal.Clock.Advance(TimeSpan.FromDays(40));
        var broken = new Broken(portal.Services.GetRequiredService<IServiceScopeFactory>());
        var said = new Said<Sweep>();
        using var sweep = SweepOf(portal, said, broken);

        await sweep.StartAsync(TestContext.Current.CancellationToken);
        Assert.Equal((LogLevel.Error, "The hourly sweep failed; it is tried again in an hour."), await said.NextAsync());
        broken.IsBroken = false;
        portal.Clock.Advance(Sweep.Every);

        Assert.Equal((LogLevel.Information, "Swept 1 sessions and 0 failed sign-ins away."), await said.NextAsync());
        await sweep.StopAsync(TestContext.Current.CancellationToken);
    }

    [Fact]
    public async Task The_portal_starts_it_by_itself()
    {
        await using var portal = new PortalHost { Sweeps = true };

        Assert.Single(portal.Services.GetServices<IHostedService>().OfType<Sweep>());
    }

    private static Sweep SweepOf(PortalHost portal, ILogger<Sweep> log, IServiceScopeFactory? parts = null) =>
        new(parts ?? portal.Services.GetRequiredService<IServiceScopeFactory>(), portal.Clock, log);

    private static Task<int> FailAsync(PortalHost portal, string key, int count) =>
        portal.DoAsync<AcademyDb, int>(db =>
        {
            db.SignInFailures.Add(
                new SignInFailureRow
                {
                    Key = key,
                    Count = count,
                    LastAt = portal.Now,
                }
            );
            return db.SaveChangesAsync();
        });

    private static Task<(int Sessions, string Failures)> LeftAsync(PortalHost portal) =>
        portal.DoAsync<AcademyDb, (int, string)>(async db =>
            (
                await db.Sessions.CountAsync(),
                string.Join(
                    ' ',
                    await db.SignInFailures.Select(row => row.Key).ToListAsync(TestContext.Current.CancellationToken)
                )
            )
        );

    /// <summary>A database that cannot be asked for a while.</summary>
    private sealed class Broken(IServiceScopeFactory parts) : IServiceScopeFactory
    {
        public bool IsBroken { get; set; } = true;

        public IServiceScope CreateScope() =>
            IsBroken ? throw new SqliteException("disk I/O error", errorCode: 10) : parts.CreateScope();
    }
}
