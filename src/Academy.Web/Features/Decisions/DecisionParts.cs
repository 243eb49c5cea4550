namespace Academy.Web.Features.Decisions;

/// <summary>What the owner's pages are handed.</summary>
public static class DecisionParts
{
    public static IServiceCollection AddDecisions(this IServiceCollection services) => services.AddScoped<DecideQueries>();
}
