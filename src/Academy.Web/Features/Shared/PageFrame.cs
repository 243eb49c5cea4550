namespace Academy.Web.Features.Shared;

/// <summary>Where a person sits in the salon that they are signed in to; decides which way around the portal they see.</summary>
public enum Seat
{
    Nobody,
    Junior,
    Senior,
    Owner,
}

/// <summary>What stands around every page: who is here, in which salon, the way around, and what the room is like.</summary>
public sealed record PageFrame(string? Person, Seat Seat, string? Salon, ReadingLine? Reading = null, string? Demo = null)
{
    public static PageFrame SignedOut { get; } = new(null, Seat.Nobody, null);

    public bool SignedIn => Seat is not Seat.Nobody;

    public IReadOnlyList<IndexEntry> Index => IndexEntry.For(Seat);

    /// <summary>Ways that are walked seldom: on the spine of a wide screen, and at the foot of a small one.</summary>
    public IReadOnlyList<IndexEntry> Further => IndexEntry.FurtherFor(Seat);
}

/// <summary>The newest room reading in one quiet line, its age, and what it means for dogs at risk.</summary>
/// <param name="Room">As read: "25.5 °C, 61 %, table room".</param>
/// <param name="Age">"13:40, 25 minutes ago".</param>
/// <param name="Meaning">"Hot day for at-risk dogs", "No reading yet today".</param>
/// <param name="Hot">Whether the meaning is a caution.</param>
public sealed record ReadingLine(string? Room, string? Age, string Meaning, bool Hot);

/// <summary>One way in the index.</summary>
/// <param name="Job">The one job of a role, which sits in the middle.</param>
public sealed record IndexEntry(string Path, string Words, string Icon, bool Job = false)
{
    public static IndexEntry Heat { get; } = new(Paths.Heat, "Dog too hot?", "heat");

    private static readonly IndexEntry Today = new(Paths.Today, "Today", "today");
    private static readonly IndexEntry Board = new(Paths.Board, "Board", "board");
    private static readonly IndexEntry DogCheck = new(Paths.DogCheck, "Dog check", "dog");
    private static readonly IndexEntry Study = new(Paths.Study, "Study", "study");
    private static readonly IndexEntry Dogs = new(Paths.Dogs, "Dogs", "paw");

    private static readonly IndexEntry[] Juniors =
    [
        Today,
        Study,
        new(Paths.LogGroom, "Log a groom", "log", Job: true),
        new(Paths.MySkills, "My skills", "skills"),
        Heat,
    ];

    private static readonly IndexEntry[] Seniors =
    [
        Today,
        Board,
        new(Paths.SignOffs, "Sign off", "sign-off", Job: true),
        DogCheck,
        Heat,
    ];

    private static readonly IndexEntry[] Owners =
    [
        Today,
        Board,
        new(Paths.Decide, "Decide", "decide", Job: true),
        DogCheck,
        new(Paths.People, "People", "people"),
        Heat,
    ];

    public static IReadOnlyList<IndexEntry> For(Seat seat) =>
        seat switch
        {
            Seat.Junior => Juniors,
            Seat.Senior => Seniors,
            Seat.Owner => Owners,
            _ => [Heat],
        };

    public static IReadOnlyList<IndexEntry> FurtherFor(Seat seat) =>
        seat switch
        {
            Seat.Junior => [DogCheck],
            Seat.Senior => [new(Paths.LogGroom, "Log a groom", "log"), Study, new(Paths.MySkills, "My skills", "skills"), Dogs],
            Seat.Owner =>
            [
                new(Paths.SignOffs, "Sign off", "sign-off"),
                new(Paths.LogGroom, "Log a groom", "log"),
                Study,
                Dogs,
                new(Paths.Thresholds, "Thresholds", "threshold"),
                new(Paths.Ledger, "Ledger", "ledger"),
            ],
            _ => [],
        };

    /// <summary>Whether the page at <paramref name="path"/> is this one or lies below it.</summary>
    public bool Holds(string path) =>
        path.Equals(Path, StringComparison.OrdinalIgnoreCase)
        || (Path.Length > 1 && path.StartsWith(Path + "/", StringComparison.OrdinalIgnoreCase));
}
