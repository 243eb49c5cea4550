using Academy.Competence;
using Academy.Competence.Decisions;
using Academy.Competence.Dogs;
using Academy.Competence.Facts;
using Academy.Competence.Grooms;
using Academy.Competence.Incidents;
using Academy.Competence.People;
using Academy.Competence.Salons;
using Academy.Competence.SignOffs;
using Academy.Competence.Skills;
using Academy.Competence.Standings;
using Academy.Storage.Ledgers;

namespace Academy.Storage.Tests;

/// <summary>
/// A small salon in a real database: Ina owns it, Rosa is a senior who is alone in wire coats and nails by declaration, Pim is a
/// junior, Biscuit is a wire-coated dog. Everything in it was decided by the trade and kept by the ledger.
/// </summary>
public sealed class TestSalon : IDisposable
{
    public static readonly SalonId Salon = new(Id(1));
    public static readonly PersonId Ina = new(Id(2));
    public static readonly PersonId Rosa = new(Id(3));
    public static readonly PersonId Pim = new(Id(4));
    public static readonly DogId Biscuit = new(Id(5));

    /// <summary>Monday 5 January 2026, nine o'clock in the salon.</summary>
    public static readonly DateTimeOffset Opening = new(2026, 1, 5, 8, 0, 0, TimeSpan.Zero);

    public static readonly TimeZoneInfo Zone = TimeZoneInfo.FindSystemTimeZoneById("Europe/Amsterdam");

    private static readonly DateOnly FirstDay = new(2026, 1, 5);

    private readonly List<(Granted Granted, Hand Hand)> _told = [];
    private int _ids = 1000;

    private TestSalon(TestDatabase database) => Database = database;

    public TestDatabase Database { get; }

    public BookShelf Shelf { get; } = new();

    /// <summary>Everything that was kept so far, in its order: to tell it again elsewhere.</summary>
    public IReadOnlyList<(Granted Granted, Hand Hand)> Told => _told;

    public static CancellationToken Stop => TestContext.Current.CancellationToken;

    public static async Task<TestSalon> OpenAsync(TimeSpan? patience = null)
    {
        var salon = new TestSalon(await TestDatabase.NewAsync(patience));
        var ina = new Person(Ina, "Ina", Role.Owner, FirstDay);
        await salon.KeepAsync(Keeping.Open(new Words("The Combed Corner"), Zone, ina, FirstDay), Ina, Opening);
        await salon.KeepAsync(
            Staffing.Describe(new Person(Rosa, "Rosa", Role.Senior, FirstDay), before: null, ina, owners: 1),
            Ina,
            Opening
        );
        await salon.KeepAsync(
            Staffing.Describe(new Person(Pim, "Pim", Role.Junior, FirstDay), before: null, ina, owners: 1),
            Ina,
            Opening
        );
        await salon.KeepAsync(DogKeeping.Describe(NewDog(), FirstDay), Ina, Opening);
        foreach (var skill in (SkillCode[])[SkillBook.Wire, SkillBook.Nails])
            await salon.DeclareAsync(Rosa, skill);
        return salon;
    }

    /// <summary>One of each kind of thing that the tables hold, within two days.</summary>
    public static async Task<TestSalon> BusyAsync()
    {
        var afternoon = Opening.AddDays(1).AddHours(6);
        var salon = await OpenAsync();
        await salon.ClearAsync(SkillBook.Nails, afternoon.AddHours(-2));
        var first = await salon.LogAsync(afternoon.AddHours(-1), Rosa);
        var second = await salon.LogAsync(afternoon, Rosa);
        var judged = await salon.SignAsync(first.Id, afternoon.AddHours(1), SupportLevel.HandsOn);
        await salon.SignAsync(second.Id, afternoon.AddHours(1));
        await salon.DisputeAsync(judged, afternoon.AddHours(2));
        await salon.SignAsync(first.Id, afternoon.AddHours(3), SupportLevel.TalkedThrough, replaces: judged);
        await salon.ReportAsync(second, afternoon.AddHours(4));
        var alone = await salon.LogAsync(afternoon.AddHours(-3), watcher: null, afternoon.AddHours(5));
        await salon.FlagAsync(alone, isSpokenAbout: true, afternoon.AddHours(6));
        await salon.FlagAsync(second, isSpokenAbout: false, afternoon.AddHours(6));
        await salon.TickAsync(Rosa, afternoon);
        await salon.ReadRoomAsync(afternoon);
        await salon.StartAsync(afternoon.AddDays(1));
        await salon.WorkedElsewhereAsync(SkillBook.Wire, afternoon.AddDays(1));
        return salon;
    }

    public static Guid Id(int number) => new($"0198c0de-0000-7000-9000-{number:x12}");

    public Guid NewId() => Id(Interlocked.Increment(ref _ids));

    public async Task<T> ReadAsync<T>(Func<RecordBook, Task<T>> read)
    {
        await using var db = Database.NewDb();
        return await read(new RecordBook(db, Shelf));
    }

    public async Task<T> InDbAsync<T>(Func<AcademyDb, Task<T>> work)
    {
        await using var db = Database.NewDb();
        return await work(db);
    }

    public async Task<Kept> KeepAsync(
        Decision decision,
        PersonId by,
        DateTimeOffset at,
        OperationId? operation = null,
        Expected? expected = null
    )
    {
        await using var db = Database.NewDb();
        return await KeepAsync(db, decision, by, at, operation, expected);
    }

    public Task<Kept> KeepAsync(
        AcademyDb db,
        Decision decision,
        PersonId by,
        DateTimeOffset at,
        OperationId? operation = null,
        Expected? expected = null
    )
    {
        _told.Add((GrantedOf(decision), new Hand(by, "tablet", at, "pin")));
        return new Ledger(db, Shelf).KeepAsync(
            Salon,
            Told[^1].Granted,
            Told[^1].Hand,
            operation ?? new OperationId(NewId()),
            expected
        );
    }

    public static Granted GrantedOf(Decision decision) =>
        decision is Granted granted ? granted : throw new InvalidOperationException($"refused: {decision}");

    public async Task<Person> PersonAsync(PersonId id) => (await ReadAsync(book => book.SalonAsync(Salon, Stop))).Find(id)!;

    public async Task<GroomStory> StoryAsync(GroomId groom) =>
        (await ReadAsync(book => book.GroomAsync(Salon, groom, Stop)))!.Record.Story!;

    /// <summary>Pim's groom of Biscuit with Rosa watching: the whole finish and the nails.</summary>
    public Groom NewGroom(DateTimeOffset endedAt, PersonId? watcher, string notes = "calm") =>
        new(
            new GroomId(NewId()),
            Biscuit,
            Pim,
            watcher,
            endedAt.AddHours(-1),
            endedAt,
            "Wire Fox Terrier",
            SkillBook.Wire,
            SecondCoat: null,
            CoatCondition.CombedThrough,
            WholeFinishBy: Pim,
            [new Part(SkillBook.Nails, Pim)],
            ["10"],
            [],
            [],
            [new CheckMade(WelfareCheck.ArrivalPads, endedAt.AddHours(-1))],
            [],
            Room: null,
            EndedEarly: false,
            [],
            new Words(notes)
        );

    public async Task<Decision> LoggingAsync(Groom groom) =>
        Logging.Log(groom, earlier: null, await PersonAsync(groom.By), groom.EndedAt, Zone);

    public async Task<Groom> LogAsync(DateTimeOffset endedAt, PersonId? watcher, DateTimeOffset? recordedAt = null)
    {
        var groom = NewGroom(endedAt, watcher);
        await KeepAsync(await LoggingAsync(groom), Pim, recordedAt ?? endedAt);
        return groom;
    }

    public async Task<SignOff> SignAsync(
        GroomId groom,
        DateTimeOffset at,
        SupportLevel level = SupportLevel.StoodBy,
        SignOff? replaces = null
    )
    {
        var team = await ReadAsync(book => book.TeamAsync(Salon, at, Stop));
        var story = await StoryAsync(groom);
        var standings = team.Of(Rosa).ToDictionary(standing => standing.Skill, standing => standing.Kind);
        var draft = new SignOffDraft(
            new SignOffId(NewId()),
            Pim,
            HasWatched: true,
            level,
            Criteria.AllMet,
            [],
            [],
            new Words("neat feet")
        )
        {
            Replaces = replaces?.Id,
            Why = replaces is null ? default : new Words("pressed the wrong one"),
        };
        var book = await ReadAsync(read => read.SalonAsync(Salon, Stop));
        var signer = new Signer(await PersonAsync(Rosa), standings, []);
        await KeepAsync(SigningOff.Decide(draft, story, signer, new SkillKinds(book.Skills), at, Zone), Rosa, at);
        return (await StoryAsync(groom)).SignOffOf(Pim)!;
    }

    public async Task<IncidentId> ReportAsync(Groom groom, DateTimeOffset at)
    {
        await using var db = Database.NewDb();
        return await ReportAsync(groom, at, db);
    }

    public async Task<IncidentId> ReportAsync(Groom groom, DateTimeOffset at, AcademyDb db, string what = "cut beside the nail")
    {
        var draft = new IncidentDraft(
            new IncidentId(NewId()),
            Pim,
            at,
            IncidentKind.SkinOpened,
            Severity.Moderate,
            BodySite.Ear,
            [SkillBook.Nails],
            VetContact.Phoned,
            new Words(what),
            new Words("pressed, phoned the vet")
        );
        await KeepAsync(db, Reporting.Report(draft, groom, await PersonAsync(Pim), new HouseRules(), at), Pim, at);
        return draft.Id;
    }

    public async Task DisputeAsync(SignOff signed, DateTimeOffset at) =>
        await KeepAsync(
            Disputing.Dispute(
                await StoryAsync(signed.Groom),
                signed,
                isDisputed: false,
                await PersonAsync(Pim),
                new Words("it went well")
            ),
            Pim,
            at
        );

    public async Task FlagAsync(Groom groom, bool isSpokenAbout, DateTimeOffset at)
    {
        var told = groom with { Watcher = null };
        var dog = (await ReadAsync(book => book.DogAsync(Salon, groom.Dog, Stop)))!.Record;
        var then = new KnownThen(
            dog,
            await ReadAsync(book => book.TeamAsync(Salon, at, Stop)),
            new HashSet<PersonId>(),
            new(),
            Zone
        );
        await KeepAsync(Flagging.Flag(told, [], then), Pim, at);
        if (!isSpokenAbout)
            return;
        var flag = (await ReadAsync(book => book.GroomAsync(Salon, groom.Id, Stop)))!.Record.Flags[0];
        await KeepAsync(Flagging.SpeakAbout(flag, await PersonAsync(Ina), new Words("we spoke")), Ina, at.AddHours(1));
    }

    public async Task TickAsync(PersonId person, DateTimeOffset at) =>
        await KeepAsync(
            Staffing.Tick(await PersonAsync(person), SalonDay.Of(at, Zone), isIn: true, await PersonAsync(Ina)),
            Ina,
            at
        );

    public Task ReadRoomAsync(DateTimeOffset at) =>
        KeepAsync(Keeping.ReadRoom(new RoomReading(at, 241, 55), "bathroom", at), Rosa, at);

    public async Task StartAsync(DateTimeOffset at) =>
        await KeepAsync(Logging.Start(new GroomId(NewId()), Biscuit, await PersonAsync(Pim), Rosa, at, at, Zone), Pim, at);

    public async Task WorkedElsewhereAsync(SkillCode skill, DateTimeOffset at)
    {
        var (pim, ina) = (await PersonAsync(Pim), await PersonAsync(Ina));
        var id = new DecisionId(NewId());
        await KeepAsync(Clearing.WorkedElsewhere(id, pim, skill, ina, FirstDay, 3, new Words("a letter"), at, Zone), Ina, at);
    }

    public async Task<Standing> StandingAsync(PersonId person, SkillCode skill, DateTimeOffset at) =>
        (await ReadAsync(book => book.TeamAsync(Salon, at, Stop)))[person, skill]!;

    public async Task ClearAsync(SkillCode skill, DateTimeOffset at)
    {
        var asked = new ClearanceAsked(
            new DecisionId(NewId()),
            await StandingAsync(Pim, skill, at),
            Limits.None with
            {
                UpToKg = 20,
            }
        );
        var ina = await PersonAsync(Ina);
        var pim = await PersonAsync(Pim);
        var decision = Clearing.Clear(
            new DecisionId(NewId()),
            [asked],
            pim,
            ina,
            against: true,
            new Words("worked beside me for years"),
            at,
            Zone
        );
        await KeepAsync(decision, Ina, at);
    }

    public void Dispose() => Database.Dispose();

    private static Dog NewDog() =>
        new(
            Biscuit,
            "Biscuit",
            "Wire Fox Terrier",
            SkillBook.Wire,
            SecondCoat: null,
            [],
            BornOn: new DateOnly(2022, 5, 1),
            AgeByLook.NotSaid,
            WeightKg: 9,
            Client: "Överbeck"
        );

    private async Task DeclareAsync(PersonId person, SkillCode skill)
    {
        var standing = await StandingAsync(person, skill, Opening);
        var declared = Clearing.Declare(
            new DecisionId(NewId()),
            standing,
            isSomebodyAlone: false,
            await PersonAsync(person),
            await PersonAsync(Ina),
            FirstDay,
            new Words("fifteen years at the table"),
            Opening,
            Zone
        );
        await KeepAsync(declared, Ina, Opening);
    }
}
