using Academy.Competence;
using Academy.Competence.Facts;
using Academy.Competence.Grooms;
using Academy.Competence.SignOffs;
using Academy.Competence.Skills;
using Academy.Competence.Standings;
using Academy.Competence.Statistics;
using Academy.Storage.Ledgers;
using Academy.Storage.Projections;
using Academy.Storage.Rows;
using Microsoft.EntityFrameworkCore;

namespace Academy.Storage.Tests.Ledgers;

public sealed class LedgerTests
{
    private static readonly DateTimeOffset Afternoon = TestSalon.Opening.AddDays(1).AddHours(6);

    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    [Fact]
    public async Task What_was_kept_reads_back_equal()
    {
        using var salon = await TestSalon.OpenAsync();
        var groom = salon.NewGroom(Afternoon, TestSalon.Rosa, "calm, ears a little red; ë € \U0001F415");

        await salon.KeepAsync(await salon.LoggingAsync(groom), TestSalon.Pim, Afternoon.AddMinutes(3));
        var signed = await salon.SignAsync(groom.Id, Afternoon.AddHours(1));

        Assert.Equal(
            GroomStory.Of(groom, Afternoon.AddMinutes(3)) with
            {
                SignOffs = [signed],
            },
            await salon.StoryAsync(groom.Id)
        );
        Assert.Equal(
            "Biscuit",
            (await salon.ReadAsync(book => book.DogAsync(TestSalon.Salon, TestSalon.Biscuit, Stop)))?.Record.Name
        );
        Assert.Equal(Afternoon.AddMinutes(3), (await FactsAsync(salon, groom.Id.Value))[0].RecordedAt);
        Assert.Equal(TestSalon.Rosa, (await FactsAsync(salon, groom.Id.Value))[1].By);
    }

    [Fact]
    public async Task The_same_operation_twice_makes_one_groom_and_gives_the_same_answer()
    {
        using var salon = await TestSalon.OpenAsync();
        var operation = new OperationId(salon.NewId());
        var logging = await salon.LoggingAsync(salon.NewGroom(Afternoon, TestSalon.Rosa));

        var first = Assert.IsType<Kept.Done>(await salon.KeepAsync(logging, TestSalon.Pim, Afternoon, operation));
        await salon.LogAsync(Afternoon.AddHours(1), TestSalon.Rosa);
        var second = await salon.KeepAsync(logging, TestSalon.Pim, Afternoon.AddDays(1), operation);

        Assert.Equal(new Kept.AlreadyDone(first.Version), second);
        Assert.Equal(2, await salon.InDbAsync(db => db.Grooms.CountAsync(Stop)));
        Assert.Equal(first.Version + 1, await salon.ReadAsync(book => book.VersionAsync(TestSalon.Salon, Stop)));
    }

    [Fact]
    public async Task Fifty_posts_of_one_operation_at_once_make_one_groom()
    {
        using var salon = await TestSalon.OpenAsync();
        var operation = new OperationId(salon.NewId());
        var logging = await salon.LoggingAsync(salon.NewGroom(Afternoon, TestSalon.Rosa));

        var answers = await Task.WhenAll(
            Enumerable
                .Range(0, 50)
                .Select(_ => Task.Run(() => salon.KeepAsync(logging, TestSalon.Pim, Afternoon, operation), Stop))
        );

        Assert.Single(answers.OfType<Kept.Done>());
        Assert.Equal(49, answers.OfType<Kept.AlreadyDone>().Count());
        Assert.Equal(1, await salon.InDbAsync(db => db.Grooms.CountAsync(Stop)));
    }

    [Fact]
    public async Task A_form_shown_before_somebody_else_wrote_is_answered_with_what_moved_on()
    {
        using var salon = await TestSalon.OpenAsync();
        var groom = await salon.LogAsync(Afternoon, TestSalon.Rosa);
        var seen = (await salon.ReadAsync(book => book.GroomAsync(TestSalon.Salon, groom.Id, Stop)))!.Version;
        var again = await RetellAsync(salon, groom, "told again");

        Assert.IsType<Kept.Done>(
            await salon.KeepAsync(again, TestSalon.Pim, Afternoon.AddMinutes(5), expected: new Expected(groom.Id.Value, seen))
        );
        var late = await salon.KeepAsync(
            again,
            TestSalon.Pim,
            Afternoon.AddMinutes(6),
            expected: new Expected(groom.Id.Value, seen)
        );

        Assert.Equal(new Kept.RecordMovedOn(seen + 1), late);
        Assert.Equal(2, (await FactsAsync(salon, groom.Id.Value)).Count);
    }

    [Fact]
    public async Task Of_two_forms_on_one_record_sent_at_once_one_is_kept_and_the_other_told()
    {
        using var salon = await TestSalon.OpenAsync();
        var groom = await salon.LogAsync(Afternoon, TestSalon.Rosa);
        var expected = new Expected(groom.Id.Value, 1);
        var again = await RetellAsync(salon, groom, "told again");

        var answers = await Task.WhenAll(
            Enumerable
                .Range(0, 8)
                .Select(_ => Task.Run(() => salon.KeepAsync(again, TestSalon.Pim, Afternoon, expected: expected), Stop))
        );

        Assert.Single(answers.OfType<Kept.Done>());
        Assert.Equal(7, answers.OfType<Kept.RecordMovedOn>().Count());
    }

    [Fact]
    public async Task A_change_of_the_book_is_expected_by_the_books_version_which_grooms_do_not_raise()
    {
        using var salon = await TestSalon.OpenAsync();
        var seen = await salon.InDbAsync(db => db.Salons.Select(row => row.BookVersion).SingleAsync(Stop));
        await salon.LogAsync(Afternoon, TestSalon.Rosa);
        var ina = await salon.PersonAsync(TestSalon.Ina);
        var described = Competence.Salons.Keeping.Describe(
            new Words("The Combed Corner"),
            new Words("the vet"),
            new Words("0"),
            ina
        );

        var first = await salon.KeepAsync(
            described,
            TestSalon.Ina,
            Afternoon,
            expected: new Expected(TestSalon.Salon.Value, seen)
        );
        var second = await salon.KeepAsync(
            described,
            TestSalon.Ina,
            Afternoon,
            expected: new Expected(TestSalon.Salon.Value, seen)
        );

        Assert.IsType<Kept.Done>(first);
        Assert.IsType<Kept.RecordMovedOn>(second);
        Assert.Equal("the vet", (await salon.ReadAsync(book => book.SalonAsync(TestSalon.Salon, Stop))).VetName);
    }

    [Fact]
    public async Task Many_writers_at_once_leave_one_chain_and_right_tallies()
    {
        using var salon = await TestSalon.OpenAsync();

        await Task.WhenAll(
            Enumerable
                .Range(0, 30)
                .Select(i => Task.Run(() => salon.LogAsync(Afternoon.AddHours(-i), TestSalon.Rosa, Afternoon), Stop))
        );

        await AssertWholeAsync(salon);
        Assert.Equal(30, (await PathAsync(salon, SkillBook.Wire)).Count);
    }

    [Fact]
    public async Task Nobodys_name_and_nothing_typed_stands_in_the_entries()
    {
        using var salon = await TestSalon.OpenAsync();
        var groom = salon.NewGroom(Afternoon, TestSalon.Rosa, "bites when the dryer starts");
        await salon.KeepAsync(await salon.LoggingAsync(groom), TestSalon.Pim, Afternoon);
        await salon.SignAsync(groom.Id, Afternoon.AddHours(1));

        var entries = string.Join('\n', await salon.InDbAsync(db => db.Ledger.Select(row => row.Canonical).ToListAsync(Stop)));

        string[] typed = ["Ina", "Rosa", "Pim", "Biscuit", "Överbeck", "Combed", "bites", "neat feet", "fifteen years"];
        Assert.DoesNotContain(typed, word => entries.Contains(word, StringComparison.Ordinal));
    }

    [Fact]
    public async Task Words_erased_leave_the_chain_whole_and_the_groom_readable_without_them()
    {
        using var salon = await TestSalon.OpenAsync();
        var groom = await salon.LogAsync(Afternoon, TestSalon.Rosa);

        await salon.InDbAsync(db =>
            db.WriteAsync(() =>
                db.Words.ExecuteUpdateAsync(set =>
                    set.SetProperty(row => row.Text, (string?)null).SetProperty(row => row.Key, (byte[]?)null)
                )
            )
        );

        Assert.Equal(groom with { Notes = Words.None }, (await salon.StoryAsync(groom.Id)).Groom);
        var found = Assert.Single(await salon.InDbAsync(db => new LedgerCheck(db).CheckAllAsync(Stop)));
        Assert.True(found.Holds, $"{found}");
        Assert.Equal(found.Words, found.Erased);
    }

    [Fact]
    public async Task A_sign_off_moves_the_tally_in_the_same_breath()
    {
        using var salon = await TestSalon.OpenAsync();
        var groom = await salon.LogAsync(Afternoon, TestSalon.Rosa);
        var before = await salon.StandingAsync(TestSalon.Pim, SkillBook.Wire, Afternoon);

        await salon.SignAsync(groom.Id, Afternoon.AddHours(1));

        var after = await salon.StandingAsync(TestSalon.Pim, SkillBook.Wire, Afternoon.AddHours(1));
        Assert.Equal((0, 0), (before.Tally.Row, before.Tally.Rated));
        Assert.Equal((1, 1), (after.Tally.Row, after.Tally.Rated));
        await AssertWholeAsync(salon);
    }

    [Fact]
    public async Task A_late_groom_replays_the_path_in_the_order_of_the_grooms()
    {
        using var salon = await TestSalon.OpenAsync();
        var newer = await salon.LogAsync(Afternoon, TestSalon.Rosa);
        await salon.SignAsync(newer.Id, Afternoon.AddHours(1));
        var older = await salon.LogAsync(Afternoon.AddHours(-20), TestSalon.Rosa, Afternoon.AddHours(2));

        await salon.SignAsync(older.Id, Afternoon.AddHours(3), SupportLevel.HandsOn);

        var path = await PathAsync(salon, SkillBook.Wire);
        Assert.Equal([older.Id.Value, newer.Id.Value], path.Select(step => step.Id));
        Assert.Equal([Verdict.Unsuitable, Verdict.Suitable], path.Select(step => step.Verdict));
        await AssertWholeAsync(salon);
    }

    [Fact]
    public async Task A_correction_takes_the_earlier_judgement_off_the_path_and_leaves_it_known_for_then()
    {
        using var salon = await TestSalon.OpenAsync();
        var groom = await salon.LogAsync(Afternoon, TestSalon.Rosa);
        var first = await salon.SignAsync(groom.Id, Afternoon.AddHours(1));
        await salon.SignAsync(groom.Id, Afternoon.AddHours(5), SupportLevel.TalkedThrough, replaces: first);

        var known = await salon.InDbAsync(db =>
            db.Steps.Where(row => row.Skill == "wire" && row.Source == groom.Id.Value).ToListAsync(Stop)
        );

        Assert.Equal(
            [
                (null, Afternoon, Afternoon.AddHours(1)),
                (Verdict.Suitable, Afternoon.AddHours(1), Afternoon.AddHours(5)),
                (Verdict.Unsuitable, Afternoon.AddHours(5), null),
            ],
            known.OrderBy(row => row.KnownFrom).Select(row => ((Verdict?)row.Verdict, row.KnownFrom, row.KnownUntil))
        );
        var then = await salon.ReadAsync(book => book.TeamAsKnownAsync(TestSalon.Salon, Afternoon.AddHours(4), Stop));
        Assert.Equal(1, then[TestSalon.Pim, SkillBook.Wire]!.Tally.Suitable);
        Assert.Equal(0, (await salon.StandingAsync(TestSalon.Pim, SkillBook.Wire, Afternoon.AddHours(5))).Tally.Suitable);
        await AssertWholeAsync(salon);
    }

    [Fact]
    public async Task A_critical_incident_stops_the_clearance_at_once_and_is_found_open()
    {
        using var salon = await TestSalon.OpenAsync();
        await salon.ClearAsync(SkillBook.Nails, Afternoon.AddHours(-1));
        var groom = await salon.LogAsync(Afternoon, TestSalon.Rosa);

        var incident = await salon.ReportAsync(groom, Afternoon.AddHours(1));

        Assert.Equal(
            StandingKind.StoodDown,
            (await salon.StandingAsync(TestSalon.Pim, SkillBook.Nails, Afternoon.AddHours(1))).Kind
        );
        var open = Assert.Single(
            await salon.InDbAsync(db => db.Incidents.Where(row => row.ReviewedAt == null).ToListAsync(Stop))
        );
        Assert.Equal(incident.Value, open.Id);
        Assert.True(await salon.InDbAsync(db => db.Grooms.Select(row => row.HasIncident).SingleAsync(Stop)));
        await AssertWholeAsync(salon);
    }

    [Fact]
    public async Task A_new_threshold_from_today_folds_the_paths_of_its_skill_again()
    {
        using var salon = await TestSalon.OpenAsync();
        var groom = await salon.LogAsync(Afternoon, TestSalon.Rosa);
        await salon.SignAsync(groom.Id, Afternoon.AddHours(1));
        var book = await salon.ReadAsync(read => read.SalonAsync(TestSalon.Salon, Stop));
        var today = new DateOnly(2026, 1, 6);
        var shorter = book.ThresholdOn(SkillBook.Wire, today) with { Version = 2, FromDay = today, Row = RowProfile.Short };

        await salon.KeepAsync(
            Competence.Salons.Keeping.SetThreshold(shorter, await salon.PersonAsync(TestSalon.Ina), today),
            TestSalon.Ina,
            Afternoon.AddHours(2)
        );

        Assert.Equal(
            [2, 2],
            await salon.InDbAsync(db =>
                db.Tallies.Where(row => row.Skill == "wire").Select(row => row.ThresholdVersion).ToListAsync(Stop)
            )
        );
        await AssertWholeAsync(salon);
    }

    [Fact]
    public async Task A_batch_is_kept_in_order_and_leaves_what_the_same_grants_one_by_one_leave()
    {
        using var oneByOne = await TestSalon.OpenAsync();
        using var atOnce = await TestSalon.OpenAsync();
        var pim = await oneByOne.PersonAsync(TestSalon.Pim);
        var grooms = Enumerable.Range(0, 520).Select(i => oneByOne.NewGroom(Afternoon.AddMinutes(i), TestSalon.Rosa)).ToList();
        var batch = grooms
            .Select(groom =>
                (
                    Granted: TestSalon.GrantedOf(Logging.Log(groom, earlier: null, pim, groom.EndedAt, TestSalon.Zone)),
                    Groom: groom
                )
            )
            .Select(one => (one.Granted, new Hand(TestSalon.Pim, "tablet", one.Groom.EndedAt)))
            .ToList();

        foreach (var (granted, hand) in batch)
            await oneByOne.KeepAsync(granted, TestSalon.Pim, hand.Now);
        await atOnce.InDbAsync(async db =>
        {
            await new Ledger(db, atOnce.Shelf).KeepAllAsync(TestSalon.Salon, batch);
            return true;
        });

        Assert.Equal(await ProjectionDump.OfAsync(oneByOne.Database, Stop), await ProjectionDump.OfAsync(atOnce.Database, Stop));
        await AssertWholeAsync(atOnce);
    }

    [Fact]
    public async Task A_story_kept_fact_by_fact_and_at_once_is_the_same_ledger_the_same_rows_and_the_same_tallies()
    {
        using var factByFact = await ChangefulAsync();
        var (ledger, rows) = (
            await LedgerDump.OfAsync(factByFact.Database, Stop),
            await ProjectionDump.OfAsync(factByFact.Database, Stop)
        );

        for (var cut = 0; cut < factByFact.Told.Count; cut++)
        {
            using var atOnce = await TestDatabase.NewAsync();
            await KeepAllAsync(atOnce, [.. factByFact.Told.Take(cut)]);
            await KeepAllAsync(atOnce, [.. factByFact.Told.Skip(cut)]);

            Assert.Equal(ledger, await LedgerDump.OfAsync(atOnce, Stop));
            Assert.Equal(rows, await ProjectionDump.OfAsync(atOnce, Stop));
        }
    }

    [Fact]
    public async Task A_batch_that_fails_half_way_keeps_nothing()
    {
        using var salon = await TestSalon.OpenAsync();
        var pim = await salon.PersonAsync(TestSalon.Pim);
        var before = await ProjectionDump.OfAsync(salon.Database, Stop);
        var batch = Enumerable
            .Range(0, 520)
            .Select(i => salon.NewGroom(Afternoon.AddMinutes(i), TestSalon.Rosa, i == 519 ? "half a character \uD83D" : "calm"))
            .Select(groom =>
                (
                    TestSalon.GrantedOf(Logging.Log(groom, earlier: null, pim, groom.EndedAt, TestSalon.Zone)),
                    new Hand(TestSalon.Pim, "tablet", groom.EndedAt)
                )
            )
            .ToList();

        await Assert.ThrowsAnyAsync<ArgumentException>(() =>
            salon.InDbAsync(async db =>
            {
                await new Ledger(db, salon.Shelf).KeepAllAsync(TestSalon.Salon, batch);
                return true;
            })
        );

        Assert.Equal(before, await ProjectionDump.OfAsync(salon.Database, Stop));
        await AssertWholeAsync(salon);
    }

    [Fact]
    public async Task Another_salons_groom_is_not_found()
    {
        using var salon = await TestSalon.OpenAsync();
        var groom = await salon.LogAsync(Afternoon, TestSalon.Rosa);

        Assert.Null(await salon.ReadAsync(book => book.GroomAsync(new SalonId(TestSalon.Id(99)), groom.Id, Stop)));
    }

    [Fact]
    public async Task A_salon_that_never_opened_keeps_nothing()
    {
        using var salon = await TestSalon.OpenAsync();
        var logging = TestSalon.GrantedOf(await salon.LoggingAsync(salon.NewGroom(Afternoon, TestSalon.Rosa)));

        await Assert.ThrowsAsync<InvalidOperationException>(() =>
            salon.InDbAsync(db =>
                new Ledger(db, salon.Shelf).KeepAsync(
                    new SalonId(TestSalon.Id(99)),
                    logging,
                    new Hand(TestSalon.Pim, "", Afternoon),
                    new OperationId(salon.NewId())
                )
            )
        );
    }

    // Beside one of everything: new rules in the middle, and a groom told anew without one who had been named.
    private static async Task<TestSalon> ChangefulAsync()
    {
        var salon = await TestSalon.BusyAsync();
        var later = Afternoon.AddDays(2);
        var today = Competence.Salons.SalonDay.Of(later, TestSalon.Zone);
        var ina = await salon.PersonAsync(TestSalon.Ina);
        var book = await salon.ReadAsync(read => read.SalonAsync(TestSalon.Salon, Stop));
        var shorter = book.ThresholdOn(SkillBook.Nails, today) with { Version = 2, FromDay = today, Row = RowProfile.Short };
        var groom = salon.NewGroom(later.AddHours(-2), TestSalon.Rosa) with
        {
            Parts = [new Part(SkillBook.Nails, TestSalon.Ina)],
        };

        await salon.KeepAsync(await salon.LoggingAsync(groom), TestSalon.Pim, later);
        await salon.KeepAsync(Competence.Salons.Keeping.SetThreshold(shorter, ina, today), TestSalon.Ina, later);
        var alone = groom with { Parts = [new Part(SkillBook.Nails, TestSalon.Pim)] };
        var pim = await salon.PersonAsync(TestSalon.Pim);
        var before = await salon.StoryAsync(groom.Id);
        await salon.KeepAsync(Logging.Log(alone, before, pim, later, TestSalon.Zone), TestSalon.Pim, later.AddMinutes(5));
        await salon.SignAsync(groom.Id, later.AddMinutes(10));
        return salon;
    }

    private static async Task KeepAllAsync(TestDatabase database, IReadOnlyList<(Granted Granted, Hand Hand)> told)
    {
        await using var db = database.NewDb();
        await new Ledger(db, new BookShelf()).KeepAllAsync(TestSalon.Salon, told);
    }

    private static async Task<Decision> RetellAsync(TestSalon salon, Groom groom, string notes) =>
        Logging.Log(
            groom with
            {
                Notes = new Words(notes),
            },
            await salon.StoryAsync(groom.Id),
            await salon.PersonAsync(TestSalon.Pim),
            Afternoon,
            TestSalon.Zone
        );

    private static Task<IReadOnlyList<Recorded>> FactsAsync(TestSalon salon, Guid subject) =>
        salon.ReadAsync(book => book.FactsAboutAsync(TestSalon.Salon, subject, Stop));

    private static Task<IReadOnlyList<Competence.Evidence.Step>> PathAsync(TestSalon salon, SkillCode skill) =>
        salon.ReadAsync(book => book.PathAsync(TestSalon.Salon, TestSalon.Pim, skill, Afternoon.AddDays(30), Stop));

    private static async Task AssertWholeAsync(TestSalon salon)
    {
        var ledger = Assert.Single(await salon.InDbAsync(db => new LedgerCheck(db).CheckAllAsync(Stop)));
        var standings = Assert.Single(await salon.InDbAsync(db => new StandingsCheck(db).CheckAllAsync(Stop)));
        Assert.True(ledger.Holds, $"{ledger}");
        Assert.True(standings.Holds, $"{standings}");
    }
}
