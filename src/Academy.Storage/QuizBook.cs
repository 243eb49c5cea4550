using System.Diagnostics;
using System.Text.Json;
using Academy.Competence;
using Academy.Competence.Evidence;
using Academy.Competence.Facts;
using Academy.Competence.Quizzes;
using Academy.Storage.Ledgers;
using Academy.Storage.Rows;
using Microsoft.EntityFrameworkCore;

namespace Academy.Storage;

/// <summary>A quiz under way and the answers given so far, each as it was given.</summary>
public sealed record UnderWay(Sitting Sitting, Listed<Answer> Answers);

/// <summary>An attempt in a person's list: which, and as much of it as knowledge asks for.</summary>
public sealed record HandedIn(AttemptId Attempt, QuizTaken Taken);

/// <summary>How the first tries at a module went.</summary>
/// <param name="People">How many people took its whole quiz.</param>
/// <param name="Passed">How many of them passed at the first try.</param>
public sealed record FirstTries(int People, int Passed);

/// <summary>
/// Quizzes under way, which are not facts yet and are forgotten once handed in, and attempts as they were handed in. Everything
/// is found through the salon.
/// </summary>
public sealed class QuizBook(AcademyDb db)
{
    /// <summary>A quiz under way; null where there is none of that id, or it was handed in.</summary>
    public async Task<UnderWay?> FindAsync(SalonId salon, AttemptId attempt, CancellationToken stop)
    {
        var row = await Open(salon).AsNoTracking().SingleOrDefaultAsync(row => row.Id == attempt.Value, stop);
        return row is null ? null : Read(row);
    }

    /// <summary>Quizzes under way that a person takes or reads out, the newest first.</summary>
    public async Task<IReadOnlyList<UnderWay>> UnderWayAsync(SalonId salon, PersonId person, CancellationToken stop)
    {
        var rows = await Open(salon)
            .AsNoTracking()
            .Where(row => row.Person == person.Value || row.ReadOutBy == person.Value)
            .OrderByDescending(row => row.StartedAt)
            .ToListAsync(stop);
        return [.. rows.Select(Read)];
    }

    /// <summary>
    /// Begins a quiz, or goes on with the one that this person has under way in the same edition: nobody has two, so that handing
    /// in one and then the other cannot get round the wait. One of another edition makes room for the new one.
    /// </summary>
    /// <returns>The quiz that is under way now.</returns>
    public Task<AttemptId> BeginAsync(SalonId salon, Sitting sitting) =>
        db.WriteAsync(async () =>
        {
            var open = await Open(salon)
                .Where(row => row.Person == sitting.Person.Value && row.Module == sitting.Module.Value)
                .ToListAsync();
            var same = open.Find(row =>
                row.ContentHash == sitting.ContentHash
                && row.IsRefresher == sitting.IsRefresher
                && row.IsCatchUp == sitting.IsCatchUp
            );
            db.Sittings.RemoveRange(open.Where(row => row != same));
            if (same is null && await WasHandedInAsync(salon, sitting.Id))
                return sitting.Id;
            if (same is null)
                db.Sittings.Add(same = RowOf(salon, sitting));
            else
                same.ReadOutBy = sitting.ReadOutBy?.Value ?? same.ReadOutBy;
            await db.SaveChangesAsync();
            return new AttemptId(same.Id);
        });

    /// <summary>Keeps an answer in place of an earlier one to the same question; an empty one takes it back.</summary>
    /// <returns>False where the quiz is no longer under way.</returns>
    public Task<bool> AnswerAsync(SalonId salon, AttemptId attempt, Answer answer) =>
        db.WriteAsync(async () =>
        {
            if (await Open(salon).SingleOrDefaultAsync(row => row.Id == attempt.Value) is not { } row)
                return false;
            row.Answers = Write([
                .. AnswersOf(row).Where(before => before.QuestionId != answer.QuestionId),
                .. answer.Given.IsEmpty ? (Answer[])[] : [answer],
            ]);
            await db.SaveChangesAsync();
            return true;
        });

    /// <summary>Forgets a quiz that was handed in or given up.</summary>
    public Task EndAsync(SalonId salon, AttemptId attempt) =>
        db.WriteAsync(() => db.Sittings.Where(row => row.SalonId == salon.Value && row.Id == attempt.Value).ExecuteDeleteAsync());

    /// <summary>What a person handed in, oldest first.</summary>
    public async Task<IReadOnlyList<HandedIn>> HandedInByAsync(SalonId salon, PersonId person, CancellationToken stop) =>
        await db
            .Attempts.AsNoTracking()
            .Where(row => row.SalonId == salon.Value && row.Person == person.Value)
            .OrderBy(row => row.HandedInAt)
            .Select(row => new HandedIn(
                new(row.Id),
                new(new(row.Module), row.Edition, row.HandedInAt, row.HasPassed, row.IsRefresher)
            ))
            .ToListAsync(stop);

    /// <summary>An attempt as it was handed in; null where this salon has none of that id.</summary>
    public async Task<AttemptHandedIn?> HandedInAsync(SalonId salon, AttemptId attempt, CancellationToken stop) =>
        (await ToldAsync(Attempts(salon).Where(row => row.Id == attempt.Value), stop)).SingleOrDefault();

    /// <summary>Everything that a person handed in of a module, as it was handed in, oldest first.</summary>
    public Task<IReadOnlyList<AttemptHandedIn>> AttemptsAsync(
        SalonId salon,
        PersonId person,
        ModuleName module,
        CancellationToken stop
    ) => ToldAsync(Attempts(salon).Where(row => row.Person == person.Value && row.Module == module.Value), stop);

    /// <summary>
    /// Each person's first whole quiz on a module, as it was handed in, also of those who left: what the quiz is measured by. It reads
    /// one entry a person, however often anybody took it.
    /// </summary>
    public async Task<IReadOnlyList<AttemptHandedIn>> FirstTriesAsync(SalonId salon, ModuleName module, CancellationToken stop) =>
        [.. (await ToldAsync(FirstTries(salon).Where(row => row.Module == module.Value), stop)).DistinctBy(one => one.Person)];

    /// <summary>For each module how many people took its whole quiz, and how many of them passed at the first try.</summary>
    public async Task<IReadOnlyDictionary<ModuleName, FirstTries>> FirstTriesAsync(SalonId salon, CancellationToken stop)
    {
        var counts = await FirstTries(salon)
            .GroupBy(row => row.Module)
            .Select(tries => new
            {
                Module = tries.Key,
                People = tries.Count(),
                Passed = tries.Count(row => row.HasPassed),
            })
            .ToListAsync(stop);
        return counts.ToDictionary(one => new ModuleName(one.Module), one => new FirstTries(one.People, one.Passed));
    }

    private IQueryable<AttemptRow> Attempts(SalonId salon) => db.Attempts.Where(row => row.SalonId == salon.Value);

    private IQueryable<AttemptRow> FirstTries(SalonId salon) =>
        Attempts(salon)
            .Where(row =>
                !row.IsRefresher
                && !db.Attempts.Any(before =>
                    before.SalonId == row.SalonId
                    && before.Module == row.Module
                    && before.Person == row.Person
                    && !before.IsRefresher
                    && before.HandedInAt < row.HandedInAt
                )
            );

    // The rows lead to their entries by number: how much else the ledger holds of a person makes no difference.
    private async Task<IReadOnlyList<AttemptHandedIn>> ToldAsync(IQueryable<AttemptRow> rows, CancellationToken stop)
    {
        var entries = rows.Join(
            db.Ledger,
            row => new { row.SalonId, row.Seq },
            entry => new { entry.SalonId, entry.Seq },
            (row, entry) => entry
        );
        var told = await entries.ReadAsync(db, stop);
        return [.. told.Select(one => one.Fact).OfType<AttemptHandedIn>().OrderBy(attempt => attempt.HandedInAt)];
    }

    // Between the fact that it was handed in and its being forgotten here the process may have stopped.
    private IQueryable<SittingRow> Open(SalonId salon) =>
        db.Sittings.Where(row =>
            row.SalonId == salon.Value && !db.Attempts.Any(taken => taken.SalonId == row.SalonId && taken.Id == row.Id)
        );

    private Task<bool> WasHandedInAsync(SalonId salon, AttemptId attempt) =>
        db.Attempts.AnyAsync(row => row.SalonId == salon.Value && row.Id == attempt.Value);

    private static SittingRow RowOf(SalonId salon, Sitting sitting) =>
        new()
        {
            SalonId = salon.Value,
            Id = sitting.Id.Value,
            Person = sitting.Person.Value,
            Module = sitting.Module.Value,
            ContentHash = sitting.ContentHash,
            IsRefresher = sitting.IsRefresher,
            Seed = sitting.Seed,
            StartedAt = sitting.StartedAt,
            ReadOutBy = sitting.ReadOutBy?.Value,
            IsCatchUp = sitting.IsCatchUp,
            Drawn = sitting.Drawn is { } chosen ? string.Join(',', chosen) : null,
        };

    private static UnderWay Read(SittingRow row) =>
        new(
            new Sitting(
                new(row.Id),
                new(row.Person),
                new(row.Module),
                row.ContentHash,
                row.IsRefresher,
                row.Seed,
                row.StartedAt,
                row.ReadOutBy is { } senior ? new PersonId(senior) : null,
                row.Drawn is { } chosen ? [.. chosen.Split(',')] : null,
                row.IsCatchUp
            ),
            AnswersOf(row)
        );

    private static Listed<Answer> AnswersOf(SittingRow row) =>
        [
            .. JsonSerializer
                .Deserialize<Dictionary<string, JsonElement>>(row.Answers)!
                .Select(given => new Answer(given.Key, GivenOf(given.Value))),
        ];

    // Places are kept as a list of numbers, typed words as they are.
    private static Given GivenOf(JsonElement kept) =>
        kept.ValueKind == JsonValueKind.String
            ? new Typed(kept.GetString()!)
            : new Picked([.. kept.EnumerateArray().Select(place => place.GetInt32())]);

    private static string Write(IEnumerable<Answer> answers) =>
        JsonSerializer.Serialize(answers.ToDictionary(given => given.QuestionId, given => Kept(given.Given)));

    private static object Kept(Given given) =>
        given switch
        {
            Picked picked => picked.Places.ToArray(),
            Typed typed => typed.Text,
            _ => throw new UnreachableException(),
        };
}
