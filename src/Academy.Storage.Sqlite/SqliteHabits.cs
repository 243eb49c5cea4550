using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Storage.ValueConversion;

namespace Academy.Storage.Sqlite;

/// <summary>
/// SQLite lets one writer in at a time, and those that wait by trying again starve each other for seconds: here they queue.
/// Ids are kept as their 16 bytes in the order of their digits, less than half of their text.
/// </summary>
internal sealed class SqliteHabits : DatabaseHabits, IDisposable
{
    private readonly SemaphoreSlim _turn = new(1, 1);

    public override void LayDown(ModelConfigurationBuilder conventions) =>
        conventions.Properties<Guid>().HaveConversion<BigEndianBytes>();

    public override async Task<IDisposable> TakeTurnAsync()
    {
        await _turn.WaitAsync(CancellationToken.None);
        return new Turn(_turn);
    }

    public override Task InsertAsync(DbContext db)
    {
        using var inserts = new PreparedInserts(db);
        inserts.WriteAdded();
        return Task.CompletedTask;
    }

    // Erased pages are overwritten (secure_delete); the log of changes beside the file still holds what stood there.
    public override Task LetGoAsync(DbContext db) =>
        db.Database.ExecuteSqlRawAsync("PRAGMA wal_checkpoint(TRUNCATE)", CancellationToken.None);

    public void Dispose() => _turn.Dispose();

    private sealed class Turn(SemaphoreSlim turn) : IDisposable
    {
        public void Dispose() => turn.Release();
    }

    private sealed class BigEndianBytes()
        : ValueConverter<Guid, byte[]>(id => id.ToByteArray(true), bytes => new Guid(bytes, true));
}
