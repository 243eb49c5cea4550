using System.Data.Common;
using Academy.Storage.Accounts;

namespace Academy.Web.Access;

/// <summary>
/// Clears away what nobody can use any more, at the start and then every hour: sessions that are over, and failed sign-ins that
/// are forgotten. Nothing waits for it: an expired session is not found, swept or not.
/// </summary>
public sealed partial class Sweep(IServiceScopeFactory parts, TimeProvider clock, ILogger<Sweep> log) : BackgroundService
{
    public static readonly TimeSpan Every = TimeSpan.FromHours(1);

    protected override async Task ExecuteAsync(CancellationToken stoppingToken)
    {
        using var hours = new PeriodicTimer(Every, clock);
        do await TryAsync();
        while (await NextAsync(hours, stoppingToken));
    }

    private static async Task<bool> NextAsync(PeriodicTimer hours, CancellationToken stop)
    {
        try
        {
            return await hours.WaitForNextTickAsync(stop);
        }
        catch (OperationCanceledException)
        {
            return false;
        }
    }

    // A broom that breaks must not close the salon: the log says so, and an hour later it is tried again.
    private async Task TryAsync()
    {
        try
        {
            await SweepAsync();
        }
        catch (DbException broken)
        {
            Failed(broken);
        }
    }

    private async Task SweepAsync()
    {
        await using var scope = parts.CreateAsyncScope();
        var now = clock.GetUtcNow();
        var sessions = await scope.ServiceProvider.GetRequiredService<Sessions>().SweepAsync(now);
        var failures = await scope
            .ServiceProvider.GetRequiredService<SignInFailures>()
            .SweepAsync(now - Patience.NameForgottenAfter, Patience.StopsAt);
        Swept(sessions, failures);
    }

    [LoggerMessage(Level = LogLevel.Information, Message = "Swept {Sessions} sessions and {Failures} failed sign-ins away.")]
    private partial void Swept(int sessions, int failures);

    [LoggerMessage(Level = LogLevel.Error, Message = "The hourly sweep failed; it is tried again in an hour.")]
    private partial void Failed(Exception broken);
}
