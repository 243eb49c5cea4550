using System.Globalization;
using Academy.Competence;
using Academy.Competence.Decisions;
using Academy.Competence.Dogs;
using Academy.Competence.Evidence;
using Academy.Competence.People;
using Academy.Competence.Salons;
using Academy.Competence.Skills;
using Academy.Competence.Statistics;
using Academy.Storage;
using Academy.Storage.Ledgers;
using Academy.Storage.Projections;
using Academy.Storage.Sqlite;
using Microsoft.Data.Sqlite;

namespace Academy.Benchmarks;

/// <summary>
/// A salon of 20 people and many grooms in a real database file. People, skills and dog come through the ledger; the grooms are
/// laid straight into the tables that are read instead of it, eight skills a groom, and every tally is folded from its steps by the
/// storage itself. Made once for each size and kept in the folder for temporary files.
/// </summary>
internal static class BigSalon
{
    public const int People = 20;

    public static readonly SalonId Salon = new(Id(1, 1));

    public static readonly DogId Dog = new(Id(2, 1));

    public static readonly DateTimeOffset Now = new(2026, 6, 10, 8, 0, 0, TimeSpan.Zero);

    private const int SkillsAGroom = 8;

    private static readonly DateOnly Opened = new(2016, 6, 1);

    public static readonly Person Owner = PersonOf(1);

    /// <summary>The folder that holds the database of this size.</summary>
    public static async Task<string> FolderAsync(int grooms)
    {
        var folder = Path.Combine(Path.GetTempPath(), string.Create(CultureInfo.InvariantCulture, $"academy-benchmark-{grooms}"));
        if (File.Exists(Path.Combine(folder, "made")))
            return folder;
        if (Directory.Exists(folder))
            Directory.Delete(folder, recursive: true);
        using (var file = DatabaseFile.Open(Path.Combine(folder, "academy.db")))
        {
            await file.MigrateAsync(CancellationToken.None);
            await OpenAsync(file);
            Fill(file, grooms);
            await using var db = file.NewDb();
            await new Refolding(db).RefoldOldFormsAsync(Now, CancellationToken.None);
        }
        await File.WriteAllTextAsync(Path.Combine(folder, "made"), "");
        return folder;
    }

    private static async Task OpenAsync(DatabaseFile file)
    {
        var dog = new Dog(Dog, "Biscuit", "Cockapoo", SkillBook.Wool, null, [SkillBook.Nervous], Opened.AddYears(7), default, 11);
        var today = SalonDay.Of(Now, TimeZoneInfo.Utc);
        var people = Enumerable.Range(1, People).Select(PersonOf).ToList();
        Decision[] told =
        [
            Keeping.Open(new Words("The Long Table"), TimeZoneInfo.Utc, Owner, Opened),
            .. people.Skip(1).Select(person => Staffing.Describe(person, before: null, Owner, owners: 1)),
            DogKeeping.Describe(dog, today),
            .. people.Select(person => Staffing.Tick(person, today, isIn: true, Owner)),
        ];
        await using var db = file.NewDb();
        var hand = new Hand(Owner.Id, "", Now.AddHours(-1));
        await new Ledger(db, new BookShelf()).KeepAllAsync(Salon, [.. told.Select(one => ((Granted)one, hand))]);
    }

    private static void Fill(DatabaseFile file, int grooms)
    {
        using var connection = new SqliteConnection(file.ConnectionString);
        connection.Open();
        using var transaction = connection.BeginTransaction();
        var chance = new Competence.Quizzes.SplitMix64(7);
        var steps = grooms * SkillsAGroom / (People * SkillBook.Defaults.Count);
        for (var person = 1; person <= People; person++)
            foreach (var (number, skill) in SkillBook.Defaults.Index())
                FillPath(connection, person, (number, skill.Code.Value), steps, chance);
        FillGrooms(connection, grooms);
        transaction.Commit();
    }

    private static void FillPath(
        SqliteConnection connection,
        int person,
        (int Number, string Code) skill,
        int steps,
        Competence.Quizzes.SplitMix64 chance
    )
    {
        using var step = Prepared(
            connection,
            """
            INSERT INTO steps (salon_id, person, skill, at, source, kind, row, day, verdict, breed, senior,
                is_exception, threshold_version, is_review_open, is_technique, known_from)
            VALUES ($salon, $person, $skill, $at, $source, $kind, $source, $day, $verdict, $breed, $senior, 0, 0, 0, 0, $at)
            """
        );
        for (var i = 0; i < steps; i++)
        {
            var at = Now.AddMinutes(-(steps - i) * 600L - person * 7 - skill.Number);
            Say(step, "$salon", Bytes(Salon.Value));
            Say(step, "$person", Bytes(PersonOf(person).Id.Value));
            Say(step, "$skill", skill.Code);
            Say(step, "$at", at.UtcTicks);
            Say(step, "$source", Bytes(Id(person * 100 + skill.Number, i)));
            Say(step, "$kind", (int)StepKind.Rated);
            Say(step, "$day", DateOnly.FromDateTime(at.UtcDateTime).ToString("yyyy-MM-dd", CultureInfo.InvariantCulture));
            Say(step, "$verdict", (int)(chance.Below(20) == 0 ? Verdict.Unsuitable : Verdict.Suitable));
            Say(step, "$breed", $"Breed {chance.Below(6)}");
            Say(step, "$senior", Bytes(PersonOf(1 + chance.Below(3)).Id.Value));
            step.ExecuteNonQuery();
        }
        // In no form that is read: what the storage folds again for itself.
        using var tally = Prepared(
            connection,
            """
            INSERT INTO tallies (salon_id, person, skill, threshold_version, last_at, last_source, last_kind, tally, steps_since)
            VALUES ($salon, $person, $skill, 1, 0, $salon, 0, x'', 0)
            """
        );
        Say(tally, "$salon", Bytes(Salon.Value));
        Say(tally, "$person", Bytes(PersonOf(person).Id.Value));
        Say(tally, "$skill", skill.Code);
        tally.ExecuteNonQuery();
    }

    private static void FillGrooms(SqliteConnection connection, int grooms)
    {
        using var groom = Prepared(
            connection,
            """
            INSERT INTO grooms (salon_id, id, dog, by, watcher, state, started_at, ended_at, recorded_at, breed, coat, has_incident)
            VALUES ($salon, $id, $dog, $by, $senior, 1, $at, $at, $at, 'Cockapoo', 'wool', 0)
            """
        );
        using var doer = Prepared(
            connection,
            """
            INSERT INTO groom_doers (salon_id, groom, person, ended_at, watcher, sign_off, senior, signed_at, is_late, is_suitable, is_disputed)
            VALUES ($salon, $id, $by, $at, $senior, $id, $senior, $at, 0, 1, 0)
            """
        );
        for (var i = 0; i < grooms; i++)
            foreach (var row in (SqliteCommand[])[groom, doer])
            {
                Say(row, "$salon", Bytes(Salon.Value));
                Say(row, "$id", Bytes(Id(3, i)));
                Say(row, "$by", Bytes(PersonOf(1 + i % People).Id.Value));
                Say(row, "$senior", Bytes(PersonOf(1 + (i + 1) % People).Id.Value));
                Say(row, "$at", Now.AddMinutes(-15L * (grooms - i)).UtcTicks);
                Say(row, "$dog", Bytes(Dog.Value));
                row.ExecuteNonQuery();
            }
    }

    private static SqliteCommand Prepared(SqliteConnection connection, string sql)
    {
        var command = connection.CreateCommand();
        command.CommandText = sql;
        return command;
    }

    private static void Say(SqliteCommand command, string name, object value)
    {
        if (command.Parameters.Contains(name))
            command.Parameters[name].Value = value;
        else if (command.CommandText.Contains(name, StringComparison.Ordinal))
            command.Parameters.AddWithValue(name, value);
    }

    private static Person PersonOf(int number) =>
        new(
            new PersonId(Id(4, number)),
            $"Person {number}",
            number switch
            {
                1 => Role.Owner,
                <= 4 => Role.Senior,
                _ => Role.Junior,
            },
            Opened
        );

    private static byte[] Bytes(Guid id) => id.ToByteArray(bigEndian: true);

    private static Guid Id(int kind, int number) =>
        new(
            kind,
            0,
            0x7000,
            0x80,
            0,
            0,
            0,
            (byte)(number >> 24),
            (byte)(number >> 16 & 0xFF),
            (byte)(number >> 8 & 0xFF),
            (byte)(number & 0xFF)
        );
}
