using System.Data.Common;
using Academy.Storage.Rows;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.ChangeTracking;
using Microsoft.EntityFrameworkCore.Metadata;
using Microsoft.EntityFrameworkCore.Storage;

namespace Academy.Storage.Sqlite;

/// <summary>
/// Writes added rows with one prepared statement for each table. Tables, columns and the form of the values are the model's, so
/// the same rows stand in the file as after an ordinary save (20,000 steps on a busy machine: a fourth to a tenth of its CPU time).
/// </summary>
internal sealed class PreparedInserts(DbContext db) : IDisposable
{
    private readonly Dictionary<IEntityType, PreparedInsert> _tables = [];

    public void WriteAdded()
    {
        var added = db.ChangeTracker.Entries().Where(entry => entry.State == EntityState.Added);
        foreach (var entry in added.OrderBy(PlaceOf).ToList())
        {
            TableOf(entry.Metadata).Write(entry.CurrentValues);
            entry.State = EntityState.Detached;
        }
    }

    public void Dispose()
    {
        foreach (var table in _tables.Values)
            table.Dispose();
    }

    // The guard of the ledger lets an entry in only behind the one before it.
    private static long PlaceOf(EntityEntry entry) => entry.Entity is LedgerRow row ? row.Seq : 0;

    private PreparedInsert TableOf(IEntityType type)
    {
        if (!_tables.TryGetValue(type, out var table))
            _tables.Add(type, table = new PreparedInsert(db.Database, type));
        return table;
    }

    private sealed class PreparedInsert : IDisposable
    {
        private readonly DbCommand _command;
        private readonly (IProperty Property, DbParameter Parameter, Func<object?, object?> Form)[] _columns;

        public PreparedInsert(Microsoft.EntityFrameworkCore.Infrastructure.DatabaseFacade database, IEntityType type)
        {
            _command = database.GetDbConnection().CreateCommand();
            _command.Transaction = database.CurrentTransaction!.GetDbTransaction();
            var table = StoreObjectIdentifier.Create(type, StoreObjectType.Table)!.Value;
            _columns = [.. type.GetProperties().Select((property, i) => Column(property, $"@p{i}"))];
            _command.CommandText =
                $"INSERT INTO \"{table.Name}\" ({string.Join(", ", _columns.Select(one => $"\"{one.Property.GetColumnName(table)}\""))}) "
                + $"VALUES ({string.Join(", ", _columns.Select(one => one.Parameter.ParameterName))})";
            _command.Prepare();
        }

        public void Write(PropertyValues row)
        {
            foreach (var (property, parameter, form) in _columns)
                parameter.Value = row[property] is { } value ? form(value) : DBNull.Value;
            _command.ExecuteNonQuery();
        }

        public void Dispose() => _command.Dispose();

        private (IProperty Property, DbParameter Parameter, Func<object?, object?> Form) Column(IProperty property, string name)
        {
            var mapping = property.GetRelationalTypeMapping();
            var parameter = mapping.CreateParameter(_command, name, value: null, nullable: true);
            _command.Parameters.Add(parameter);
            return (property, parameter, mapping.Converter is { } converter ? converter.ConvertToProvider : value => value);
        }
    }
}
