using Academy.Storage.Sqlite;
using Microsoft.Data.Sqlite;

namespace Academy.Storage.Tests;

/// <summary>A real database file in a folder of its own, with the migrations applied, gone after the test.</summary>
public sealed class TestDatabase : IDisposable
{
    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("academy-");

    private TestDatabase() => File = DatabaseFile.Open(PathOf("academy.db"));

    public DatabaseFile File { get; private set; }

    public static async Task<TestDatabase> NewAsync()
    {
        var database = new TestDatabase();
        await database.File.MigrateAsync(TestContext.Current.CancellationToken);
        return database;
    }

    public static TestDatabase NewEmpty() => new();

    public string PathOf(string name) => Path.Combine(_folder.FullName, name);

    public AcademyDb NewDb() => File.NewDb();

    public void Reopen()
    {
        File.Dispose();
        File = DatabaseFile.Open(PathOf("academy.db"));
    }

    /// <summary>SQL as somebody would run it who got hold of the file, past everything the portal sets on its connections.</summary>
    public int Tamper(string sql)
    {
        using var connection = new SqliteConnection(
            new SqliteConnectionStringBuilder { DataSource = File.Path, Pooling = false }.ToString()
        );
        connection.Open();
        using var command = connection.CreateCommand();
        command.CommandText = sql;
        return command.ExecuteNonQuery();
    }

    public object? Scalar(string sql)
    {
        using var connection = new SqliteConnection(
            new SqliteConnectionStringBuilder { DataSource = File.Path, Pooling = false }.ToString()
        );
        connection.Open();
        using var command = connection.CreateCommand();
        command.CommandText = sql;
        return command.ExecuteScalar();
    }

    public void Dispose()
    {
        File.Dispose();
        _folder.Delete(recursive: true);
    }
}
