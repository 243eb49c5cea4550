using System.Data.Common;
using Microsoft.EntityFrameworkCore.Diagnostics;

namespace Academy.Storage.Sqlite;

/// <summary>What SQLite forgets between two connections, said again on each. Only WAL, set when the file is migrated, is remembered by the file.</summary>
internal sealed class SqliteConnections(TimeSpan patience) : DbConnectionInterceptor
{
    // FULL: with NORMAL a power cut loses writes that were already answered. The driver tries again after SQLite has given up,
    // as long as its own patience lasts: so SQLite itself is given half of it.
    private readonly string _everyConnection =
        FormattableString.Invariant($"PRAGMA busy_timeout={(int)patience.TotalMilliseconds / 2}; ")
        + "PRAGMA synchronous=FULL; PRAGMA foreign_keys=ON; PRAGMA temp_store=MEMORY; "
        + "PRAGMA trusted_schema=OFF; PRAGMA cell_size_check=ON; PRAGMA secure_delete=ON; PRAGMA recursive_triggers=ON; "
        + "PRAGMA cache_size=-16000; PRAGMA journal_size_limit=67108864;";

    public override void ConnectionOpened(DbConnection connection, ConnectionEndEventData eventData)
    {
        using var command = connection.CreateCommand();
        command.CommandText = _everyConnection;
        command.ExecuteNonQuery();
    }

    public override async Task ConnectionOpenedAsync(
        DbConnection connection,
        ConnectionEndEventData eventData,
        CancellationToken cancellationToken = default
    )
    {
        await using var command = connection.CreateCommand();
        command.CommandText = _everyConnection;
        await command.ExecuteNonQueryAsync(cancellationToken);
    }
}
