using System.Text;
using Microsoft.Data.Sqlite;

namespace Academy.Storage.Tests;

/// <summary>Every row of every table that is a projection of the ledger, as text in the order of the keys: to compare two databases whole.</summary>
internal static class ProjectionDump
{
    private static readonly string[] Tables =
    [
        "record_versions",
        "dogs",
        "grooms",
        "groom_doers",
        "incidents",
        "disputes",
        "flags",
        "attempts",
        "presences",
        "readings",
        "steps",
        "tallies",
    ];

    public static async Task<string> OfAsync(TestDatabase database, CancellationToken stop)
    {
        await using var connection = new SqliteConnection($"Data Source={database.File.Path};Mode=ReadOnly;Pooling=False");
        await connection.OpenAsync(stop);
        var text = new StringBuilder();
        foreach (var table in Tables)
            await AppendAsync(text, connection, table, stop);
        return text.ToString();
    }

    private static async Task AppendAsync(StringBuilder text, SqliteConnection connection, string table, CancellationToken stop)
    {
        await using var command = connection.CreateCommand();
        command.CommandText = $"SELECT {ColumnsOf(table)} FROM {table}";
        await using var reader = await command.ExecuteReaderAsync(stop);
        var rows = new List<string>();
        while (await reader.ReadAsync(stop))
            rows.Add(string.Join('|', Enumerable.Range(0, reader.FieldCount).Select(i => Spell(reader.GetValue(i)))));
        text.AppendLine(table).AppendJoin('\n', rows.Order(StringComparer.Ordinal)).AppendLine();
    }

    // Where a tally rests depends on how many facts came at once, and is left out: the check of standings looks at it.
    private static string ColumnsOf(string table) =>
        table == "tallies" ? "salon_id, person, skill, threshold_version, last_at, last_source, last_kind, tally" : "*";

    private static string Spell(object value) => value is byte[] bytes ? Convert.ToHexString(bytes) : $"{value}";
}
