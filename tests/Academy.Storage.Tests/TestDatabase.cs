using Academy.Storage.Sqlite;
using Microsoft.Data.Sqlite;

namespace Academy.Storage.Tests;

/// <summary>A real database file in a folder of its own, with the migrations applied, gone after the test.</summary>
public sealed class TestDatabase : IDisposable
{
    private const string Name = "academy.db";

    // Migrated once and copied for each test.
    private static readonly Lazy<Task<string>> Migrated = new(MigrateAsync);

    private readonly DirectoryInfo _folder;

    private TestDatabase(DirectoryInfo folder, DatabaseFile file) => (_folder, File) = (folder, file);

    public DatabaseFile File { get; private set; }

    public static async Task<TestDatabase> NewAsync(TimeSpan? patience = null)
    {
        var folder = Directory.CreateTempSubdirectory("academy-");
        var path = Path.Combine(folder.FullName, Name);
        System.IO.File.Copy(await Migrated.Value, path);
        return new TestDatabase(folder, DatabaseFile.Open(path, patience));
    }

    public static TestDatabase NewEmpty()
    {
        var folder = Directory.CreateTempSubdirectory("academy-");
        return new TestDatabase(folder, DatabaseFile.Open(Path.Combine(folder.FullName, Name)));
    }

    public string PathOf(string name) => Path.Combine(_folder.FullName, name);

    public AcademyDb NewDb() => File.NewDb();

    public void Reopen()
    {
        File.Dispose();
        File = DatabaseFile.Open(PathOf(Name));
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

    private static async Task<string> MigrateAsync()
    {
        var folder = Directory.CreateTempSubdirectory("academy-migrated-");
        AppDomain.CurrentDomain.ProcessExit += (_, _) => folder.Delete(recursive: true);
        var path = Path.Combine(folder.FullName, Name);
        using var file = DatabaseFile.Open(path);
        await file.MigrateAsync(CancellationToken.None);
        return path;
    }
}
