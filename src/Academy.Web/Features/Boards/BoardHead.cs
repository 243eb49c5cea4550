using Academy.Web.Features.Shared;
using Academy.Web.Wording;

namespace Academy.Web.Features.Boards;

/// <summary>What stands above the board: the moment it speaks of, and the ways to others.</summary>
/// <param name="Asks">Who may groom, or might.</param>
/// <param name="When">The moment, as the heading says it.</param>
/// <param name="IsPast">Whether it tells a past moment.</param>
/// <param name="At">The moment as the form takes it.</param>
/// <param name="Everybody">The way to everybody's board at this moment.</param>
/// <param name="OnlyIn">The way to those who were in.</param>
/// <param name="OnlyInWords">Its words.</param>
/// <param name="ShowsOnlyIn">Whether only those are shown.</param>
public sealed record BoardHead(
    string Asks,
    string When,
    bool IsPast,
    string At,
    string Everybody,
    string OnlyIn,
    string OnlyInWords,
    bool ShowsOnlyIn
)
{
    public static BoardHead Now(SalonTime time, bool onlyIn, BoardView board) =>
        new(
            "Who may groom",
            Words(time),
            IsPast: false,
            Moment.Write(time.Now, time.Zone),
            Paths.Board,
            $"{Paths.Board}?in=true",
            $"Only in today: {board.In}",
            onlyIn
        );

    public static BoardHead Past(SalonTime time, bool onlyIn, BoardView board) =>
        new(
            "Who might groom on",
            Words(time),
            IsPast: true,
            Moment.Write(time.Now, time.Zone),
            Paths.Board + Moment.Ask(time.Now, time.Zone),
            $"{Paths.Board}{Moment.Ask(time.Now, time.Zone)}&in=true",
            $"Only in that day: {board.In}",
            onlyIn
        );

    private static string Words(SalonTime time) => $"{time.Day(time.Now)} {time.Today.Year}, {time.Clock(time.Now)}";
}
