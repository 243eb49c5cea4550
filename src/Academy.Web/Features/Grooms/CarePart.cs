using Academy.Competence.Grooms;
using Academy.Web.Features.Shared;
using Academy.Web.Wording;

namespace Academy.Web.Features.Grooms;

/// <summary>A stamp that was set: its check, its time, its place in the form.</summary>
public sealed record StampSet(string Check, string Words, string? At, int Place);

/// <summary>What one tap writes.</summary>
public sealed record StampTap(string Check, string Words, string Said, bool IsOffered);

/// <summary>One line of welfare checks: what is asked, what was set, and what one tap would set.</summary>
public sealed record StampLine(
    string Icon,
    string Title,
    IReadOnlyList<StampSet> Set,
    IReadOnlyList<StampTap> Taps,
    bool IsMuzzle
);

/// <summary>How the dog was looked after: checks with their times, signs seen, the room.</summary>
public sealed record CarePart(IReadOnlyList<StampLine> Stamps, IReadOnlyList<Pick> Signs, string Room, bool IsRoomOpen)
{
    public static CarePart Of(Table table, LogForm form, SalonTime time) =>
        new(
            [
                Once(form, WelfareCheck.ArrivalPads, "paw", "Looked at"),
                Once(form, WelfareCheck.WaterBeforeBath, "water", "Offered"),
                Once(form, WelfareCheck.WaterAfterBath, "water", "Offered"),
                Once(form, WelfareCheck.WaterAfterGroom, "water", "Offered"),
                Muzzle(form),
            ],
            Say.Picks<Sign>(Say.Word),
            RoomOf(table, time),
            IsRoomOpen: table.Offered is null
        );

    private static StampLine Once(LogForm form, WelfareCheck check, string icon, string tap)
    {
        var set = Set(form, [check]);
        var title = Say.Capital(Say.Word(check)).Replace("Water offered", "Water", StringComparison.Ordinal);
        return new(icon, title, set, [Tap(check, tap, isOffered: set.Count == 0)], IsMuzzle: false);
    }

    // On, breaks, off, and on again if need be: what may follow depends on what was set last.
    private static StampLine Muzzle(LogForm form)
    {
        var set = Set(form, [WelfareCheck.MuzzleOn, WelfareCheck.MuzzleBreak, WelfareCheck.MuzzleOff]);
        var isOn = set.Count > 0 && set[^1].Check != nameof(WelfareCheck.MuzzleOff);
        return new(
            "caution",
            "Muzzle",
            set,
            [
                Tap(WelfareCheck.MuzzleOn, "On now", isOffered: !isOn),
                Tap(WelfareCheck.MuzzleBreak, "Break now", isOn),
                Tap(WelfareCheck.MuzzleOff, "Off now", isOn),
            ],
            IsMuzzle: true
        );
    }

    private static StampTap Tap(WelfareCheck check, string words, bool isOffered) =>
        new(check.ToString(), words, Say.Word(check), isOffered);

    private static IReadOnlyList<StampSet> Set(LogForm form, WelfareCheck[] checks) =>
        [
            .. form
                .StampedWhat.Zip(form.StampedAt)
                .Select((stamp, place) => (stamp.First, stamp.Second, Place: place))
                .Where(stamp => Chosen.Of<WelfareCheck>(stamp.First) is { } check && checks.Contains(check))
                .Select(stamp => new StampSet(stamp.First, WordOf(stamp.First), stamp.Second, stamp.Place)),
        ];

    private static string WordOf(string check) => Chosen.Of<WelfareCheck>(check) is { } known ? Say.Word(known) : check;

    private static string RoomOf(Table table, SalonTime time) =>
        table.Offered is { } read
            ? $"{Counts.Celsius(read.TenthsC)}{(read.HumidityPct is { } percent ? $", {percent} %" : "")}, read {time.At(read.At)}"
            : "No reading that is new enough";
}
