using System.Data.Common;

namespace Academy.Web.Shell;

/// <summary>
/// Something that the portal does by itself every hour. Where the database cannot be asked the log says so and an hour later it is
/// tried again: a broom that breaks must not close the salon.
/// </summary>
public abstract class Hourly(TimeProvider clock) : BackgroundService
{
    public static readonly TimeSpan Every = TimeSpan.FromHours(1);

    protected TimeProvider Clock => clock;

    /// <summary>Whether it is done at the start as well, and not only an hour later.</summary>
    protected virtual bool BeginsAtOnce => false;

    protected abstract Task DoAsync(CancellationToken stop);

    protected abstract void Failed(Exception broken);

    protected override async Task ExecuteAsync(CancellationToken stoppingToken)
    {
        using var hours = new PeriodicTimer(Every, clock);
        if (BeginsAtOnce)
            await TryAsync(stoppingToken);
        while (await NextAsync(hours, stoppingToken))
            await TryAsync(stoppingToken);
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

    private async Task TryAsync(CancellationToken stop)
    {
        try
        {
            await DoAsync(stop);
        }
        catch (DbException broken)
        {
            Failed(broken);
        }
        catch (OperationCanceledException) when (stop.IsCancellationRequested)
        {
            // The portal stops; the next start begins anew.
        }
    }
}
