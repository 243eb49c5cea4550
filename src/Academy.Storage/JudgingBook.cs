using System.Globalization;
using Academy.Competence;
using Academy.Storage.Rows;
using Microsoft.EntityFrameworkCore;

namespace Academy.Storage;

/// <summary>
/// What judges have said of questions so far. It is work in progress and no fact: nobody else sees it and nothing rests on it until
/// the whole judgement is given.
/// </summary>
public sealed class JudgingBook(AcademyDb db)
{
    /// <summary>For each question judged so far its chance in percent; empty where nothing of this edition was.</summary>
    public async Task<IReadOnlyDictionary<string, int>> FindAsync(
        SalonId salon,
        PersonId judge,
        ModuleName module,
        string hash,
        CancellationToken stop
    )
    {
        var row = await Of(salon, judge, module).AsNoTracking().SingleOrDefaultAsync(stop);
        return row is not null && row.ContentHash == hash ? Read(row.Chances) : new Dictionary<string, int>();
    }

    /// <summary>How many questions of which edition a judge has judged so far, by module.</summary>
    public async Task<IReadOnlyDictionary<ModuleName, (string Hash, int Questions)>> AllAsync(
        SalonId salon,
        PersonId judge,
        CancellationToken stop
    ) =>
        (
            await db
                .Judgings.AsNoTracking()
                .Where(row => row.SalonId == salon.Value && row.Person == judge.Value)
                .ToListAsync(stop)
        ).ToDictionary(row => new ModuleName(row.Module), row => (row.ContentHash, Read(row.Chances).Count));

    /// <summary>Keeps what a judge says of one question, in place of what she said before.</summary>
    /// <param name="salon">The salon.</param>
    /// <param name="judge">Whose.</param>
    /// <param name="module">The module.</param>
    /// <param name="hash">The edition judged; what was said of another one is let go.</param>
    /// <param name="said">The question and its chance in percent.</param>
    /// <param name="given">What she gave before of this edition: where a further round starts.</param>
    public Task KeepAsync(
        SalonId salon,
        PersonId judge,
        ModuleName module,
        string hash,
        (string Question, int Percent) said,
        IReadOnlyDictionary<string, int> given
    ) =>
        db.WriteAsync(async () =>
        {
            var row = await Of(salon, judge, module).SingleOrDefaultAsync();
            if (row is null)
                db.Judgings.Add(
                    row = new JudgingRow
                    {
                        SalonId = salon.Value,
                        Person = judge.Value,
                        Module = module.Value,
                    }
                );
            var before = row.ContentHash == hash ? Read(row.Chances) : given;
            row.ContentHash = hash;
            row.Chances = Write(before.Where(one => one.Key != said.Question).Append(new(said.Question, said.Percent)));
            return await db.SaveChangesAsync();
        });

    /// <summary>Lets go of it: it was given.</summary>
    public Task EndAsync(SalonId salon, PersonId judge, ModuleName module) =>
        db.WriteAsync(() => Of(salon, judge, module).ExecuteDeleteAsync());

    private IQueryable<JudgingRow> Of(SalonId salon, PersonId judge, ModuleName module) =>
        db.Judgings.Where(row => row.SalonId == salon.Value && row.Person == judge.Value && row.Module == module.Value);

    private static Dictionary<string, int> Read(string chances) =>
        chances
            .Split(' ', StringSplitOptions.RemoveEmptyEntries)
            .Select(one => one.Split(':'))
            .ToDictionary(one => one[0], one => int.Parse(one[1], CultureInfo.InvariantCulture), StringComparer.Ordinal);

    private static string Write(IEnumerable<KeyValuePair<string, int>> chances) =>
        string.Join(' ', chances.Select(one => string.Create(CultureInfo.InvariantCulture, $"{one.Key}:{one.Value}")));
}
