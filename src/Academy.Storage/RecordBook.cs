using Academy.Competence;
using Academy.Competence.Dogs;
using Academy.Competence.Evidence;
using Academy.Competence.Facts;
using Academy.Competence.Grooms;
using Academy.Competence.Salons;
using Academy.Competence.Standings;
using Academy.Competence.Thresholds;
using Academy.Storage.Ledgers;
using Academy.Storage.Projections;
using Microsoft.EntityFrameworkCore;

namespace Academy.Storage;

/// <summary>A record and the version it was read at: it comes back with the form as <see cref="Expected"/>.</summary>
public sealed record Known<T>(T Record, long Version);

/// <summary>
/// What is known of one groom: its story once it was told, its start where it was started first, disputes over it, and what is
/// flagged of it.
/// </summary>
public sealed record GroomRecord(GroomStory? Story, StartedGroom? Start, Listed<DisputeStory> Disputes, Listed<FlagStory> Flags);

/// <summary>
/// Reads whole records for decisions. Everything is found through a salon: what is another's is not there. The As-known reads
/// answer from what had been recorded by a moment, not from what is known today.
/// </summary>
public sealed class RecordBook(AcademyDb db, BookShelf shelf)
{
    private static readonly string[] BookKinds =
    [
        FactForms.CodeOf<SalonOpened>(),
        FactForms.CodeOf<SalonDescribed>(),
        FactForms.CodeOf<HouseRulesSet>(),
        FactForms.CodeOf<PersonDescribed>(),
        FactForms.CodeOf<PersonLeft>(),
        FactForms.CodeOf<PersonCameBack>(),
        FactForms.CodeOf<SkillDescribed>(),
        FactForms.CodeOf<ThresholdSet>(),
        FactForms.CodeOf<ModuleEditionSeen>(),
        FactForms.CodeOf<ModulePublished>(),
        FactForms.CodeOf<ModuleNoted>(),
        FactForms.CodeOf<ModuleNoteTakenBack>(),
        FactForms.CodeOf<QuestionsJudged>(),
    ];

    /// <summary>Whether a fact of this kind changes the salon's book.</summary>
    internal static bool IsOfTheBook(string kind) => BookKinds.Contains(kind, StringComparer.Ordinal);

    /// <summary>The salon of this installation; null before it is set up. Where there are several, the oldest.</summary>
    public async Task<SalonId?> OnlySalonAsync(CancellationToken stop)
    {
        var id = await db
            .Salons.SelectMany(salon => db.Ledger.Where(row => row.SalonId == salon.Id && row.Seq == 0))
            .OrderBy(row => row.RecordedAt)
            .Select(row => (Guid?)row.SalonId)
            .FirstOrDefaultAsync(stop);
        return id is { } salon ? new SalonId(salon) : null;
    }

    /// <summary>The salon's version: raised by every fact, so that a page can answer "not changed" without reading anything else.</summary>
    public Task<long> VersionAsync(SalonId salon, CancellationToken stop) =>
        db.Salons.AsNoTracking().Where(row => row.Id == salon.Value).Select(row => row.Version).SingleAsync(stop);

    /// <summary>The salon's book as of now, from memory where nothing of it has changed.</summary>
    public async Task<SalonBook> SalonAsync(SalonId salon, CancellationToken stop) =>
        await BookAsync(salon, (await VersionsAsync(salon, stop)).Book, stop);

    /// <summary>The salon's book as it was known at a moment.</summary>
    public async Task<SalonBook> SalonAsKnownAsync(SalonId salon, DateTimeOffset at, CancellationToken stop) =>
        SalonBook.Of(await OfTheBook(salon).Where(row => row.RecordedAt <= at).ReadAsync(db, stop));

    /// <summary>Everybody's standings at this moment, from memory where nothing was told since and it is the same day.</summary>
    public async Task<Team> TeamAsync(SalonId salon, DateTimeOffset now, CancellationToken stop)
    {
        var versions = await VersionsAsync(salon, stop);
        var book = await BookAsync(salon, versions.Book, stop);
        var day = SalonDay.Of(now, book.Zone);
        if (shelf.FindTeam(salon, versions.Salon, day, now) is { } kept)
            return kept;
        var (team, isWhole) = await ReadTeamAsync(salon, book, now, stop);
        return isWhole ? shelf.KeepTeam(salon, versions.Salon, day, now, team) : team;
    }

    /// <summary>Everybody's standings from the tallies: grooms are not read. Not whole where something lies later than the moment.</summary>
    /// <remarks>A tally of another version of its threshold (one that came into force by the calendar) is folded again from its steps.</remarks>
    private async Task<(Team Team, bool IsWhole)> ReadTeamAsync(
        SalonId salon,
        SalonBook book,
        DateTimeOffset now,
        CancellationToken stop
    )
    {
        var thresholds = ThresholdsOn(book, now);
        var rows = await TallyRowsAsync(salon, stop);
        var tallies = await TalliesAsync(salon, book, thresholds, rows, now, stop);
        var taken = await Taken(salon).ToListAsync(stop);
        var known = taken.Where(one => one.RecordedAt <= now).ToList();
        var isWhole = known.Count == taken.Count && rows.TrueForAll(row => row.LastAt <= now);
        return (TeamOf(book, thresholds, tallies, known, now), isWhole);
    }

    /// <summary>Everybody's standings at this moment as they are, and as they would be if one skill had this threshold.</summary>
    public async Task<(Team Now, Team Then)> TeamUnderAsync(
        SalonId salon,
        Threshold threshold,
        DateTimeOffset now,
        CancellationToken stop
    )
    {
        var book = await SalonAsync(salon, stop);
        var thresholds = ThresholdsOn(book, now);
        var tallies = await TalliesAsync(salon, book, thresholds, await TallyRowsAsync(salon, stop), now, stop);
        var taken = await Taken(salon, now).ToListAsync(stop);

        var paths = tallies.Keys.Where(path => path.Item2 == threshold.Skill).Select(path => new PathOf(path.Item1, path.Item2));
        var steps = await PathsAsync(salon, [.. paths], now, stop);
        var others = tallies.ToDictionary(
            one => one.Key,
            one =>
                one.Key.Item2 == threshold.Skill
                    ? Tally.Of(Tally.InOrder(steps[new PathOf(one.Key.Item1, one.Key.Item2)]), threshold)
                    : one.Value
        );
        var then = new Dictionary<SkillCode, Threshold>(thresholds) { [threshold.Skill] = threshold };
        return (TeamOf(book, thresholds, tallies, taken, now), TeamOf(book, then, others, taken, now));
    }

    /// <summary>Everybody's standings at a past moment, from what was known then.</summary>
    public async Task<Team> TeamAsKnownAsync(SalonId salon, DateTimeOffset at, CancellationToken stop)
    {
        var book = await SalonAsKnownAsync(salon, at, stop);
        var thresholds = ThresholdsOn(book, at);
        var rows = await db
            .Steps.AsNoTracking()
            .Where(row =>
                row.SalonId == salon.Value
                && row.At <= at
                && row.KnownFrom <= at
                && (row.KnownUntil == null || row.KnownUntil > at)
            )
            .ToListAsync(stop);
        var tallies = rows.Select(Steps.ToStep)
            .GroupBy(of => (of.Person, of.Skill))
            .ToDictionary(
                path => path.Key,
                path =>
                    Tally.Of(
                        Tally.InOrder(path.Select(of => of.Step)),
                        book.ThresholdOn(path.Key.Skill, SalonDay.Of(at, book.Zone))
                    )
            );
        var taken = await Taken(salon, at).ToListAsync(stop);
        return TeamOf(book, thresholds, tallies, taken, at);
    }

    /// <summary>One person's path in one skill as it stands, oldest first.</summary>
    public async Task<IReadOnlyList<Step>> PathAsync(
        SalonId salon,
        PersonId person,
        SkillCode skill,
        DateTimeOffset now,
        CancellationToken stop
    )
    {
        var rows = await db
            .Steps.AsNoTracking()
            .Where(row =>
                row.SalonId == salon.Value
                && row.Person == person.Value
                && row.Skill == skill.Value
                && row.At <= now
                && row.KnownUntil == null
            )
            .ToListAsync(stop);
        return [.. Tally.InOrder(rows.Select(row => Steps.ToStep(row).Step))];
    }

    /// <summary>Several paths as they stand, read at once; a path that nothing was put on is empty.</summary>
    public async Task<ILookup<PathOf, Step>> PathsAsync(
        SalonId salon,
        IReadOnlyCollection<PathOf> paths,
        DateTimeOffset now,
        CancellationToken stop
    )
    {
        var people = paths.Select(path => path.Person.Value).Distinct().ToList();
        var skills = paths.Select(path => path.Skill.Value).Distinct(StringComparer.Ordinal).ToList();
        var asked = paths.ToHashSet();
        var rows = await db
            .Steps.AsNoTracking()
            .Where(row =>
                row.SalonId == salon.Value
                && people.Contains(row.Person)
                && skills.Contains(row.Skill)
                && row.At <= now
                && row.KnownUntil == null
            )
            .ToListAsync(stop);
        return rows.Select(Steps.ToStep)
            .Where(of => asked.Contains(new PathOf(of.Person, of.Skill)))
            .ToLookup(of => new PathOf(of.Person, of.Skill), of => of.Step);
    }

    /// <summary>A dog as last told; null if this salon has none of that id.</summary>
    public async Task<Known<Dog>?> DogAsync(SalonId salon, DogId dog, CancellationToken stop)
    {
        var facts = await FactsAboutAsync(salon, dog.Value, stop);
        return DogStories.Of(facts) is { } told ? new(told, await VersionOfAsync(salon, dog.Value, stop)) : null;
    }

    /// <summary>A dog as it was known at a moment.</summary>
    public async Task<Dog?> DogAsKnownAsync(SalonId salon, DogId dog, DateTimeOffset at, CancellationToken stop) =>
        DogStories.Of((await FactsAboutAsync(salon, dog.Value, stop)).Where(told => told.RecordedAt <= at));

    /// <summary>Everything known of one groom; null if this salon has none of that id.</summary>
    public async Task<Known<GroomRecord>?> GroomAsync(SalonId salon, GroomId groom, CancellationToken stop)
    {
        var facts = await FactsAboutAsync(salon, groom.Value, stop);
        if (facts.Count == 0)
            return null;

        var record = new GroomRecord(
            GroomStories.Of(facts),
            GroomStories.StartOf(facts),
            GroomStories.DisputesOf(facts),
            Flagging.Of(facts)
        );
        return record is { Story: null, Start: null } ? null : new(record, await VersionOfAsync(salon, groom.Value, stop));
    }

    /// <summary>The stories of several grooms, read at once; those that were never told are left out.</summary>
    public async Task<IReadOnlyDictionary<GroomId, GroomStory>> StoriesAsync(
        SalonId salon,
        IReadOnlyCollection<GroomId> grooms,
        CancellationToken stop
    )
    {
        var ids = grooms.Select(groom => (Guid?)groom.Value).ToList();
        var facts = await db.Ledger.Where(row => row.SalonId == salon.Value && ids.Contains(row.Subject)).ReadAsync(db, stop);
        return facts
            .GroupBy(told => FactForms.Of(told.Fact).SubjectOf(told.Fact))
            .Select(told => GroomStories.Of(told))
            .OfType<GroomStory>()
            .ToDictionary(story => story.Groom.Id);
    }

    /// <summary>What the ledger holds about one groom, dog or person, in the order recorded.</summary>
    public Task<IReadOnlyList<Recorded>> FactsAboutAsync(SalonId salon, Guid subject, CancellationToken stop) =>
        db.Ledger.Where(row => row.SalonId == salon.Value && row.Subject == subject).ReadAsync(db, stop);

    /// <summary>The version that a form about the salon's book (its skills, thresholds, house rules) is shown at, with the salon as its record.</summary>
    public Task<long> BookVersionAsync(SalonId salon, CancellationToken stop) =>
        db.Salons.AsNoTracking().Where(row => row.Id == salon.Value).Select(row => row.BookVersion).SingleAsync(stop);

    /// <summary>How often a record was told; 0 if never.</summary>
    public Task<long> VersionOfAsync(SalonId salon, Guid record, CancellationToken stop) =>
        db
            .RecordVersions.AsNoTracking()
            .Where(row => row.SalonId == salon.Value && row.Record == record)
            .Select(row => row.Version)
            .SingleOrDefaultAsync(stop);

    /// <summary>Who is ticked in on a day.</summary>
    public Task<IReadOnlySet<PersonId>> InOnAsync(SalonId salon, DateOnly day, CancellationToken stop) =>
        InOnAsync(salon, day, DateTimeOffset.MaxValue, stop);

    /// <summary>Who was ticked in on a day, as known at a moment.</summary>
    public async Task<IReadOnlySet<PersonId>> InOnAsync(
        SalonId salon,
        DateOnly day,
        DateTimeOffset asKnownAt,
        CancellationToken stop
    )
    {
        var ticks = await db
            .Presences.AsNoTracking()
            .Where(row => row.SalonId == salon.Value && row.Day == day && row.RecordedAt <= asKnownAt)
            .ToListAsync(stop);
        return ticks
            .GroupBy(tick => tick.Person)
            .Where(ticked => ticked.MaxBy(tick => (tick.RecordedAt, tick.Id))!.IsIn)
            .Select(ticked => new PersonId(ticked.Key))
            .ToHashSet();
    }

    /// <summary>Days from this one on, on which a person was ticked in.</summary>
    public async Task<IReadOnlyCollection<DateOnly>> DaysInAsync(
        SalonId salon,
        PersonId person,
        DateOnly from,
        CancellationToken stop
    )
    {
        var ticks = await db
            .Presences.AsNoTracking()
            .Where(row => row.SalonId == salon.Value && row.Person == person.Value && row.Day >= from)
            .ToListAsync(stop);
        return
        [
            .. ticks
                .GroupBy(tick => tick.Day)
                .Where(day => day.MaxBy(tick => (tick.RecordedAt, tick.Id))!.IsIn)
                .Select(day => day.Key)
                .Order(),
        ];
    }

    /// <summary>The newest room reading at a moment, of those recorded by then; null if there is none.</summary>
    public async Task<RoomReading?> NewestReadingAsync(SalonId salon, DateTimeOffset at, CancellationToken stop)
    {
        var limit = at + Logging.Grace;
        var row = await db
            .Readings.AsNoTracking()
            .Where(row => row.SalonId == salon.Value && row.At <= limit && row.RecordedAt <= limit)
            .OrderByDescending(row => row.At)
            .FirstOrDefaultAsync(stop);
        return row is null ? null : new RoomReading(row.At, row.TenthsC, row.HumidityPct);
    }

    /// <summary>Quizzes that a person handed in, oldest first.</summary>
    public async Task<IReadOnlyList<QuizTaken>> TakenAsync(SalonId salon, PersonId person, CancellationToken stop) =>
        await db
            .Attempts.AsNoTracking()
            .Where(row => row.SalonId == salon.Value && row.Person == person.Value)
            .OrderBy(row => row.HandedInAt)
            .Select(row => new QuizTaken(new ModuleName(row.Module), row.Edition, row.HandedInAt, row.HasPassed, row.IsRefresher))
            .ToListAsync(stop);

    private sealed record TakenBy(
        Guid Person,
        string Module,
        int Edition,
        DateTimeOffset HandedInAt,
        bool HasPassed,
        bool IsRefresher,
        DateTimeOffset RecordedAt
    );

    private IQueryable<TakenBy> Taken(SalonId salon, DateTimeOffset? knownAt = null) =>
        db
            .Attempts.AsNoTracking()
            .Where(row => row.SalonId == salon.Value && (knownAt == null || row.RecordedAt <= knownAt))
            .Select(row => new TakenBy(
                row.Person,
                row.Module,
                row.Edition,
                row.HandedInAt,
                row.HasPassed,
                row.IsRefresher,
                row.RecordedAt
            ));

    private IQueryable<Rows.LedgerRow> OfTheBook(SalonId salon) =>
        db.Ledger.Where(row => row.SalonId == salon.Value && BookKinds.Contains(row.Kind));

    private async Task<(long Salon, long Book)> VersionsAsync(SalonId salon, CancellationToken stop)
    {
        var row = await db
            .Salons.AsNoTracking()
            .Where(row => row.Id == salon.Value)
            .Select(row => new { row.Version, row.BookVersion })
            .SingleAsync(stop);
        return (row.Version, row.BookVersion);
    }

    private async Task<SalonBook> BookAsync(SalonId salon, long version, CancellationToken stop) =>
        shelf.Find(salon, version) ?? shelf.Keep(salon, version, SalonBook.Of(await OfTheBook(salon).ReadAsync(db, stop)));

    private Task<List<Rows.TallyRow>> TallyRowsAsync(SalonId salon, CancellationToken stop) =>
        db.Tallies.AsNoTracking().Where(row => row.SalonId == salon.Value).ToListAsync(stop);

    private async Task<Dictionary<(PersonId, SkillCode), Tally>> TalliesAsync(
        SalonId salon,
        SalonBook book,
        Dictionary<SkillCode, Threshold> thresholds,
        IEnumerable<Rows.TallyRow> rows,
        DateTimeOffset now,
        CancellationToken stop
    )
    {
        var tallies = new Dictionary<(PersonId, SkillCode), Tally>();
        foreach (var row in rows)
        {
            var key = (new PersonId(row.Person), new SkillCode(row.Skill));
            var threshold = thresholds.GetValueOrDefault(key.Item2) ?? book.ThresholdOn(key.Item2, SalonDay.Of(now, book.Zone));
            tallies[key] =
                row.ThresholdVersion == threshold.Version && row.LastAt <= now && TallyForm.IsNewest(row.Tally)
                    ? TallyForm.Read(row.Tally)
                    : await RefoldAsync(salon, key, threshold, now, stop);
        }
        return tallies;
    }

    private async Task<Tally> RefoldAsync(
        SalonId salon,
        (PersonId Person, SkillCode Skill) of,
        Threshold threshold,
        DateTimeOffset now,
        CancellationToken stop
    ) => Tally.Of(await PathAsync(salon, of.Person, of.Skill, now, stop), threshold);

    private static Dictionary<SkillCode, Threshold> ThresholdsOn(SalonBook book, DateTimeOffset now)
    {
        var day = SalonDay.Of(now, book.Zone);
        return book.Skills.ToDictionary(skill => skill.Code, skill => book.ThresholdOn(skill.Code, day));
    }

    private static Team TeamOf(
        SalonBook book,
        Dictionary<SkillCode, Threshold> thresholds,
        Dictionary<(PersonId, SkillCode), Tally> tallies,
        IEnumerable<TakenBy> taken,
        DateTimeOffset now
    ) =>
        Team.Of(
            new TeamEvidence(
                [.. book.People],
                [.. book.Skills],
                thresholds,
                tallies,
                taken.ToLookup(
                    one => new PersonId(one.Person),
                    one => new QuizTaken(new ModuleName(one.Module), one.Edition, one.HandedInAt, one.HasPassed, one.IsRefresher)
                ),
                [.. book.Library],
                book.House,
                book.Zone
            ),
            now
        );
}
