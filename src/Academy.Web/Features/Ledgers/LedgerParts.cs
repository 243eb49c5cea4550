using Academy.Storage.Ledgers;

namespace Academy.Web.Features.Ledgers;

/// <summary>What the page of the ledger is handed beside its queries.</summary>
public static class LedgerParts
{
    public static IServiceCollection AddLedgerPage(this IServiceCollection services) =>
        services.AddScoped<LedgerCheck>().AddSingleton<NightFindings>().AddHostedService<NightCheck>();
}
