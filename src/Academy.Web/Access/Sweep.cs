using Academy.Storage.Accounts;
using Academy.Web.Shell;

namespace Academy.Web.Access;

/// <summary>
/// Clears away what nobody can use any more, at the start and then every hour: sessions that are over, and failed sign-ins that
/// are forgotten. Nothing waits for it: an expired session is not found, swept or not.
/// </summary>
public sealed partial class Sweep(IServiceScopeFactory parts, TimeProvider clock, ILogger<Sweep> log) : Hourly(clock)
{
    protected override bool BeginsAtOnce => true;

    // What is begun is ended: it is short.
    protected override async Task DoAsync(CancellationToken stop)
    {
        await using var scope = parts.CreateAsyncScope();
        var now = Clock.GetUtcNow();
        var sessions = await scope.ServiceProvider.GetRequiredService<Sessions>().SweepAsync(now);
        var failures = await scope
            .ServiceProvider.GetRequiredService<SignInFailures>()
            .SweepAsync(now - Patience.NameForgottenAfter, Patience.StopsAt);
        Swept(sessions, failures);
    }

    [LoggerMessage(Level = LogLevel.Information, Message = "Swept {Sessions} sessions and {Failures} failed sign-ins away.")]
    private partial void Swept(int sessions, int failures);

    [LoggerMessage(Level = LogLevel.Error, Message = "The hourly sweep failed; it is tried again in an hour.")]
    private partial void SweepFailed(Exception broken);

    protected override void Failed(Exception broken) => SweepFailed(broken);
}
