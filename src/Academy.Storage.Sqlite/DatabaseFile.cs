using System.Globalization;
using Microsoft.Data.Sqlite;

namespace Academy.Storage.Sqlite;

/// <summary>
/// The one file that a salon's portal keeps everything in. The process that writes to it holds a lock beside it, which the
/// system lets go of when the process ends, however it ends; a second process is turned away at the door.
/// </summary>
public sealed class DatabaseFile : IDisposable
{
    private static readonly TimeSpan UsualPatience = TimeSpan.FromSeconds(10);

    private readonly FileStream? _lock;

    private DatabaseFile(string path, SqliteOpenMode mode, FileStream? held, TimeSpan patience)
    {
        Path = path;
        _lock = held;
        Connections = new SqliteConnections(patience);
        ConnectionString = new SqliteConnectionStringBuilder
        {
            DataSource = path,
            Mode = mode,
            ForeignKeys = true,
            DefaultTimeout = (int)Math.Ceiling(patience.TotalSeconds),
        }.ToString();
    }

    public string Path { get; }

    public string ConnectionString { get; }

    internal SqliteHabits Habits { get; } = new();

    internal SqliteConnections Connections { get; }

    /// <summary>Opens the file for this process alone to write to; it is made when it is not there yet.</summary>
    /// <param name="path">The file.</param>
    /// <param name="patience">How long a write waits for a tool that holds the file, such as a shell; ten seconds if not said.</param>
    /// <exception cref="DatabaseTakenException">Another process has it open.</exception>
    public static DatabaseFile Open(string path, TimeSpan? patience = null)
    {
        var full = System.IO.Path.GetFullPath(path);
        Directory.CreateDirectory(System.IO.Path.GetDirectoryName(full)!);
        return new DatabaseFile(full, SqliteOpenMode.ReadWriteCreate, Lock(full), patience ?? UsualPatience);
    }

    /// <summary>Opens the file to read only, which is safe beside the process that writes: for backups and checks from a shell.</summary>
    public static DatabaseFile OpenToRead(string path) =>
        new(System.IO.Path.GetFullPath(path), SqliteOpenMode.ReadOnly, held: null, UsualPatience);

    public void Dispose()
    {
        using (var pool = new SqliteConnection(ConnectionString))
            SqliteConnection.ClearPool(pool);
        Habits.Dispose();
        _lock?.Dispose();
    }

    private static FileStream Lock(string full)
    {
        try
        {
            var held = new FileStream(full + ".lock", FileMode.OpenOrCreate, FileAccess.ReadWrite, FileShare.None);
            held.SetLength(0);
            held.Write(System.Text.Encoding.UTF8.GetBytes(Environment.ProcessId.ToString(CultureInfo.InvariantCulture)));
            held.Flush();
            return held;
        }
        catch (IOException taken) when (File.Exists(full + ".lock"))
        {
            throw new DatabaseTakenException(full, taken);
        }
    }
}
