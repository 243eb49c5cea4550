using Academy.Competence;
using Academy.Competence.Grooms;
using Academy.Competence.Heat;
using Academy.Competence.Salons;
using Academy.Storage;
using Academy.Storage.Ledgers;
using Academy.Web.Access;
using Academy.Web.Features.Shared;
using Academy.Web.Shell;
using Academy.Web.Wording;
using Microsoft.AspNetCore.Authorization;
using Microsoft.AspNetCore.Mvc;

namespace Academy.Web.Features.Readings;

/// <summary>Keeps what the thermometer says, now. Anybody who works here may read it.</summary>
[Authorize(Policy = Policies.AnyoneHere)]
public sealed class ReadModel(Who who, RecordBook records, Ledger ledger, Ids ids, TimeProvider clock) : KeepingPage(who, ledger)
{
    private const int MostLetters = 60;

    [BindProperty]
    public Guid Operation { get; set; }

    [BindProperty]
    public string? Temperature { get; set; }

    [BindProperty]
    public string? Humidity { get; set; }

    [BindProperty]
    public string? Room { get; set; }

    public ReadView View { get; private set; } = null!;

    public async Task OnGetAsync(CancellationToken stop)
    {
        Operation = ids.New();
        await ShowAsync(stop);
    }

    public async Task<IActionResult> OnPostAsync(CancellationToken stop)
    {
        await ShowAsync(stop);
        var reading = Read();
        if (!ModelState.IsValid || reading is null)
            return Again();

        return await KeepAsync(
            Keeping.ReadRoom(reading, string.IsNullOrWhiteSpace(Room) ? "table room" : Room.Trim(), clock.GetUtcNow()),
            Operation,
            Paths.Today,
            $"{Counts.Celsius(reading.TenthsC)} is in the book.",
            stop
        );
    }

    private RoomReading? Read()
    {
        var tenths = Typed.TenthsC(Temperature);
        var humidity = Typed.Percent(Humidity);
        if (tenths is null)
            ModelState.AddModelError(nameof(Temperature), "Write the temperature in degrees Celsius, such as 22.5.");
        if (humidity is null && !string.IsNullOrWhiteSpace(Humidity))
            ModelState.AddModelError(nameof(Humidity), "Write the humidity in percent, such as 61, or leave it empty.");
        if (Room?.Length > MostLetters)
            ModelState.AddModelError(nameof(Room), $"Room: at most {MostLetters} letters.");
        return tenths is { } read ? new RoomReading(clock.GetUtcNow(), read, humidity) : null;
    }

    private async Task ShowAsync(CancellationToken stop)
    {
        var now = clock.GetUtcNow();
        var newest = await records.NewestReadingAsync(Who.Salon, now, stop);
        View = ReadView.Of(newest, Who.Book, now);
    }
}

/// <summary>The newest reading and the salon's own limits, in words.</summary>
public sealed record ReadView(string? Newest, IReadOnlyList<string> Limits)
{
    public static ReadView Of(RoomReading? newest, SalonBook book, DateTimeOffset now)
    {
        var time = new SalonTime(book.Zone, now);
        var house = book.House;
        var state = RoomHeat.StateOf(newest, isAtRisk: false, house, now, book.Zone);
        return new(
            newest is null
                ? null
                : $"{Counts.Celsius(newest.TenthsC)}{(newest.HumidityPct is { } wet ? $", {wet} %" : "")}, read {time.At(newest.At)}: {Say.Word(state)}.",
            [
                $"Hot day from {Counts.Celsius(house.HotFromTenthsC)}, or a heat index of {house.HotFromIndexF} °F; for dogs at risk in heat from {Counts.Celsius(house.HotForAtRiskFromTenthsC)}.",
                $"Stop line, nobody grooms: from {Counts.Celsius(house.StopFromTenthsC)}; for dogs at risk in heat from {Counts.Celsius(house.StopForAtRiskFromTenthsC)}.",
                "These are the salon's own numbers, not published ones. The heat index is made for people: it calls for a look, it promises nothing.",
            ]
        );
    }
}
