using Academy.Storage.Rows;
using Microsoft.EntityFrameworkCore;

namespace Academy.Storage.Tests.Sqlite;

/// <summary>The lists that pages show are read in the order of an index: nothing is scanned and nothing is sorted.</summary>
public sealed class ListPlanTests
{
    private static readonly Guid Salon = TestSalon.Salon.Value;

    private static readonly Guid Someone = TestSalon.Pim.Value;

    private static readonly DateTimeOffset At = TestSalon.Opening;

    public static TheoryData<string> Lists => [.. Queries.Keys];

    private static readonly Dictionary<string, Func<AcademyDb, IQueryable>> Queries = new(StringComparer.Ordinal)
    {
        ["waiting for a sign-off, oldest first"] = db =>
            db.GroomDoers.Where(row => row.SalonId == Salon && row.SignOff == null && row.Watcher != null)
                .OrderBy(row => row.EndedAt),
        ["a person's grooms, newest first, the next page"] = db =>
            db.GroomDoers.Where(row => row.SalonId == Salon && row.Person == Someone && row.EndedAt < At)
                .OrderByDescending(row => row.EndedAt)
                .Take(20),
        ["a dog's grooms, newest first, the next page"] = db =>
            db.Grooms.Where(row => row.SalonId == Salon && row.Dog == Someone && row.StartedAt < At)
                .OrderByDescending(row => row.StartedAt)
                .Take(20),
        ["all grooms, newest first"] = db =>
            db.Grooms.Where(row => row.SalonId == Salon && row.StartedAt < At).OrderByDescending(row => row.StartedAt).Take(20),
        ["dogs by name"] = db =>
            db.Dogs.Where(row => row.SalonId == Salon && row.Search.Contains("bis")).OrderBy(row => row.Name).Take(20),
        ["signed late and not let count, oldest first"] = db =>
            db.GroomDoers.Where(row => row.SalonId == Salon && row.SignOff != null && row.IsLate)
                .OrderBy(row => row.SignedAt)
                .ThenBy(row => row.SignOff)
                .Take(21),
        ["supervised and not signed off, counted"] = db =>
            db.GroomDoers.Where(row =>
                row.SalonId == Salon && row.SignOff == null && row.Watcher != null && row.Person != Someone
            ),
        ["supervised by one senior and not signed off, oldest first"] = db =>
            db.GroomDoers.Where(row => row.SalonId == Salon && row.SignOff == null && row.Watcher == Someone && row.EndedAt > At)
                .OrderBy(row => row.EndedAt),
        ["a person's newest sign-offs"] = db =>
            db.GroomDoers.Where(row => row.SalonId == Salon && row.Person == Someone && row.SignOff != null)
                .OrderByDescending(row => row.SignedAt)
                .Take(3),
        ["done alone since a moment, newest first"] = db =>
            db.Grooms.Where(row =>
                    row.SalonId == Salon && row.State == GroomState.Told && row.Watcher == null && row.EndedAt >= At
                )
                .OrderByDescending(row => row.EndedAt)
                .Take(500),
        ["dogs in the order of the search"] = db =>
            db.Dogs.Where(row => row.SalonId == Salon && !row.IsGone && row.Search.Contains("bis"))
                .OrderBy(row => row.Search)
                .ThenBy(row => row.Id)
                .Take(51),
        ["dogs that came last"] = db =>
            db.Dogs.Where(row => row.SalonId == Salon && !row.IsGone).OrderByDescending(row => row.LastGroomAt).Take(24),
        ["critical incidents that wait for a review, oldest first"] = db =>
            db.Incidents.Where(row => row.SalonId == Salon && row.ReviewedAt == null && row.IsCritical)
                .OrderBy(row => row.ReportedAt)
                .ThenBy(row => row.Id)
                .Take(21),
        ["incidents that were reviewed, newest first"] = db =>
            db.Incidents.Where(row => row.SalonId == Salon && row.ReviewedAt != null)
                .OrderByDescending(row => row.ReviewedAt)
                .Take(20),
        ["disputes without an answer, oldest first"] = db =>
            db.Disputes.Where(row => row.SalonId == Salon && row.AnsweredAt == null)
                .OrderBy(row => row.At)
                .ThenBy(row => row.SignOff)
                .Take(21),
        ["disputes that were answered, newest first"] = db =>
            db.Disputes.Where(row => row.SalonId == Salon && row.AnsweredAt != null)
                .OrderByDescending(row => row.AnsweredAt)
                .Take(20),
        ["a person's disputes, newest first"] = db =>
            db.Disputes.Where(row => row.SalonId == Salon && row.By == Someone).OrderByDescending(row => row.At).Take(20),
        ["a person's quizzes, oldest first"] = db =>
            db.Attempts.Where(row => row.SalonId == Salon && row.Person == Someone).OrderBy(row => row.HandedInAt),
        ["a person's quizzes on one module, with their entries"] = db =>
            db.Attempts.Where(row => row.SalonId == Salon && row.Person == Someone && row.Module == "heat-stroke")
                .Join(
                    db.Ledger,
                    row => new { row.SalonId, row.Seq },
                    entry => new { entry.SalonId, entry.Seq },
                    (row, entry) => entry
                ),
        ["the tries at one module"] = db =>
            db.Attempts.Where(row => row.SalonId == Salon && row.Module == "heat-stroke" && !row.IsRefresher),
        ["whether somebody tried a module before"] = db =>
            db.Attempts.Where(row =>
                row.SalonId == Salon
                && row.Module == "heat-stroke"
                && row.Person == Someone
                && !row.IsRefresher
                && row.HandedInAt < At
            ),
        ["the ledger, newest first, the next page"] = db =>
            db.Ledger.Where(row => row.SalonId == Salon && row.Seq < 500).OrderByDescending(row => row.Seq).Take(51),
        ["incidents that wait for a review"] = db => db.Incidents.Where(row => row.SalonId == Salon && row.ReviewedAt == null),
        ["who is in on a day"] = db => db.Presences.Where(row => row.SalonId == Salon && row.Day == new DateOnly(2026, 1, 5)),
        ["the newest reading"] = db =>
            db.Readings.Where(row => row.SalonId == Salon && row.At <= At).OrderByDescending(row => row.At).Take(1),
        ["one path in its order"] = db =>
            db.Steps.Where(row => row.SalonId == Salon && row.Person == Someone && row.Skill == "wire" && row.KnownUntil == null)
                .OrderBy(row => row.At)
                .ThenBy(row => row.Source)
                .ThenBy(row => row.Kind),
        ["the newest part of a path"] = db =>
            db.Steps.Where(row => row.SalonId == Salon && row.Person == Someone && row.Skill == "wire" && row.At >= At)
                .OrderBy(row => row.At),
        ["modules being written, by name"] = db => db.Drafts.Where(row => row.SalonId == Salon).OrderBy(row => row.Module),
        ["modules that wait to be read or mended"] = db =>
            db.Drafts.Where(row => row.SalonId == Salon && (row.AskedAt != null || row.ReturnedBy != null))
                .OrderBy(row => row.Module),
        ["a draft's pictures"] = db => db.DraftPictures.Where(row => row.SalonId == Salon && row.Module == "towels"),
        ["all tallies of a salon"] = db => db.Tallies.Where(row => row.SalonId == Salon),
        ["all facts about one record"] = db =>
            db.Ledger.Where(row => row.SalonId == Salon && row.Subject == Someone).OrderBy(row => row.Seq),
        ["all facts of one kind"] = db =>
            db.Ledger.Where(row => row.SalonId == Salon && row.Kind == "salon.opened").OrderBy(row => row.Seq),
    };

    [Theory]
    [MemberData(nameof(Lists))]
    public async Task A_list_is_one_run_along_an_index(string list)
    {
        using var database = await TestDatabase.NewAsync();
        await using var db = database.NewDb();

        var plan = await PlanAsync(db, Queries[list](db).ToQueryString());

        Assert.All(plan, step => Assert.StartsWith("SEARCH", step, StringComparison.Ordinal));
    }

    [Fact]
    public async Task Steps_stand_in_the_file_once_in_the_order_of_their_path()
    {
        using var database = await TestDatabase.NewAsync();
        await using var db = database.NewDb();

        var plan = await PlanAsync(db, Queries["one path in its order"](db).ToQueryString());

        Assert.Equal(["SEARCH s USING PRIMARY KEY (salon_id=? AND person=? AND skill=?)"], plan);
        Assert.EndsWith(
            "WITHOUT ROWID",
            $"{database.Scalar("SELECT sql FROM sqlite_master WHERE name = 'steps'")}",
            StringComparison.Ordinal
        );
    }

    // EF puts the values of the parameters before the query, in lines that the database's own shell would read.
    private static async Task<List<string>> PlanAsync(AcademyDb db, string query)
    {
        var lines = query.Split('\n');
        await using var command = db.Database.GetDbConnection().CreateCommand();
        await db.Database.OpenConnectionAsync(TestContext.Current.CancellationToken);
        command.CommandText =
            "EXPLAIN QUERY PLAN " + string.Join('\n', lines.Where(line => !line.StartsWith(".param", StringComparison.Ordinal)));
        foreach (
            var name in System
                .Text.RegularExpressions.Regex.Matches(command.CommandText, "@\\w+")
                .Select(match => match.Value)
                .Distinct(StringComparer.Ordinal)
        )
            command.Parameters.Add(new Microsoft.Data.Sqlite.SqliteParameter(name, DBNull.Value));
        await using var reader = await command.ExecuteReaderAsync(TestContext.Current.CancellationToken);
        var plan = new List<string>();
        while (await reader.ReadAsync(TestContext.Current.CancellationToken))
            plan.Add(reader.GetString(3));
        return plan;
    }
}
