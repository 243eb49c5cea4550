namespace Academy.Web.Features.Boards;

/// <summary>What the board and its reasons are handed.</summary>
public static class BoardParts
{
    public static IServiceCollection AddBoards(this IServiceCollection services) =>
        services.AddSingleton<BoardShelf>().AddScoped<WhyQueries>();
}
