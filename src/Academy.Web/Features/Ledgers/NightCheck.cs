using System.Collections.Concurrent;
using Academy.Competence;
using Academy.Storage;
using Academy.Storage.Ledgers;
using Academy.Storage.Projections;
using Academy.Web.Shell;

namespace Academy.Web.Features.Ledgers;

/// <summary>What the last night's check of one salon found.</summary>
/// <param name="At">When it ended.</param>
/// <param name="Ledger">The chain and its seals.</param>
/// <param name="Standings">The standings, folded again from the ledger.</param>
public sealed record NightFound(DateTimeOffset At, LedgerChecked Ledger, StandingsChecked Standings)
{
    public bool Holds => Ledger.Holds && Standings.Holds;
}

/// <summary>The newest of these findings for each salon; empty after a start, until the first night.</summary>
public sealed class NightFindings
{
    private readonly ConcurrentDictionary<SalonId, NightFound> _found = new();

    public NightFound? Of(SalonId salon) => _found.GetValueOrDefault(salon);

    internal NightFound Keep(SalonId salon, NightFound found) => _found[salon] = found;
}

/// <summary>
/// Checks the ledger of each salon and folds its standings again in the hour in which it sleeps, one salon after the other. It
/// changes nothing.
/// </summary>
public sealed partial class NightCheck(
    IServiceScopeFactory parts,
    NightFindings findings,
    TimeProvider clock,
    ILogger<NightCheck> log
) : Hourly(clock)
{
    /// <summary>The hour of the night in which it is done, by the salon's clock.</summary>
    public const int Hour = 3;

    /// <summary>Checks the salons in which it is the hour for it.</summary>
    public async Task CheckAsync(CancellationToken stop)
    {
        foreach (var salon in await SalonsAsync(stop))
            if (await IsNightAsync(salon, stop))
                Tell(salon, findings.Keep(salon, await CheckAsync(salon, stop)));
    }

    protected override Task DoAsync(CancellationToken stop) => CheckAsync(stop);

    protected override void Failed(Exception broken) => CheckFailed(broken);

    private async Task<bool> IsNightAsync(SalonId salon, CancellationToken stop)
    {
        await using var scope = parts.CreateAsyncScope();
        var book = await scope.ServiceProvider.GetRequiredService<RecordBook>().SalonAsync(salon, stop);
        return TimeZoneInfo.ConvertTime(Clock.GetUtcNow(), book.Zone).Hour == Hour;
    }

    private async Task<NightFound> CheckAsync(SalonId salon, CancellationToken stop)
    {
        await using var scope = parts.CreateAsyncScope();
        var (ledger, standings) = await scope.ServiceProvider.GetRequiredService<NightQueries>().CheckAsync(salon, stop);
        return new(Clock.GetUtcNow(), ledger, standings);
    }

    private async Task<IReadOnlyList<SalonId>> SalonsAsync(CancellationToken stop)
    {
        await using var scope = parts.CreateAsyncScope();
        return await scope.ServiceProvider.GetRequiredService<NightQueries>().SalonsAsync(stop);
    }

    private void Tell(SalonId salon, NightFound found)
    {
        if (found.Holds)
            Holds(salon.Value, found.Standings.Paths, found.Ledger.Entries);
        else
            Differs(salon.Value, found.Ledger.First, found.Standings.First);
    }

    [LoggerMessage(
        Level = LogLevel.Information,
        Message = "Checked salon {Salon}: {Paths} standings agree with {Entries} entries, and the chain holds."
    )]
    private partial void Holds(Guid salon, int paths, long entries);

    [LoggerMessage(
        Level = LogLevel.Critical,
        Message = "Checked salon {Salon}: the records do not agree. Ledger: {Ledger}. Standings: {Standings}."
    )]
    private partial void Differs(Guid salon, LedgerFault? ledger, StandingFault? standings);

    [LoggerMessage(Level = LogLevel.Error, Message = "The nightly check failed; it is tried again next night.")]
    private partial void CheckFailed(Exception broken);
}
