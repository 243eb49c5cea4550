namespace Academy.Web.Features.Boards;

/// <summary>What the board is handed beside its queries.</summary>
public static class BoardParts
{
    public static IServiceCollection AddBoards(this IServiceCollection services) => services.AddSingleton<BoardShelf>();
}
