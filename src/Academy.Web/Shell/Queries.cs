namespace Academy.Web.Shell;

/// <summary>Every class of this room whose name ends in Queries is what one feature asks the database; each is there by itself.</summary>
internal static class Queries
{
    public static void AddQueries(this IServiceCollection services)
    {
        foreach (var queries in typeof(Queries).Assembly.GetTypes().Where(IsQueries))
            services.AddScoped(queries);
    }

    private static bool IsQueries(Type type) =>
        type is { IsClass: true, IsAbstract: false } && type.Name.EndsWith("Queries", StringComparison.Ordinal);
}
