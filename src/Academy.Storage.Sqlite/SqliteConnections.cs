using System.Data.Common;
using Microsoft.EntityFrameworkCore.Diagnostics;

namespace Academy.Storage.Sqlite;

/// <summary>What SQLite forgets between two connections, said again on each. Only WAL, set when the file is migrated, is remembered by the file.</summary>
internal sealed class SqliteConnections : DbConnectionInterceptor
{
    // FULL: with NORMAL a power cut loses writes that were already answered.
    private const string EveryConnection =
        "PRAGMA synchronous=FULL; PRAGMA busy_timeout=5000; PRAGMA foreign_keys=ON; PRAGMA temp_store=MEMORY; "
        + "PRAGMA trusted_schema=OFF; PRAGMA cell_size_check=ON; PRAGMA secure_delete=ON; PRAGMA recursive_triggers=ON; "
        + "PRAGMA cache_size=-16000; PRAGMA journal_size_limit=67108864;";

    public override void ConnectionOpened(DbConnection connection, ConnectionEndEventData eventData)
    {
        using var command = connection.CreateCommand();
        command.CommandText = EveryConnection;
        command.ExecuteNonQuery();
    }

    public override async Task ConnectionOpenedAsync(
        DbConnection connection,
        ConnectionEndEventData eventData,
        CancellationToken cancellationToken = default
    )
    {
        await using var command = connection.CreateCommand();
        command.CommandText = EveryConnection;
        await command.ExecuteNonQueryAsync(cancellationToken);
    }
}
