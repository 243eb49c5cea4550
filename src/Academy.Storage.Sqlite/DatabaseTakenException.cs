namespace Academy.Storage.Sqlite;

/// <summary>Another process writes to the same database file. Two would break each other's turns, so the second stops here.</summary>
public sealed class DatabaseTakenException(string path, Exception cause)
    : IOException(
        $"Another process already has the database {path} open. One portal writes to one file: stop the other first, "
            + $"or give this one a file of its own. (The lock is {path}.lock; it goes away with the process that holds it.)",
        cause
    )
{
    public string Path { get; } = path;
}
