using System.Text.RegularExpressions;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata;

namespace Academy.Storage;

/// <summary>Columns, keys and indexes are named in lower case with underscores, as tables are.</summary>
internal static partial class SnakeCase
{
    public static void Apply(ModelBuilder builder)
    {
        foreach (var entity in builder.Model.GetEntityTypes())
            Apply(entity);
    }

    private static void Apply(IMutableEntityType entity)
    {
        if (entity.IsMappedToJson())
            return;
        foreach (var property in entity.GetProperties())
            property.SetColumnName(Of(property.Name));
        foreach (var key in entity.GetKeys())
            key.SetName(Of(key.GetDefaultName()!));
        foreach (var foreign in entity.GetForeignKeys())
            foreign.SetConstraintName(Of(foreign.GetDefaultName()!));
        foreach (var index in entity.GetIndexes())
            index.SetDatabaseName(Of(index.GetDatabaseName()!));
    }

    private static string Of(string name) => Humps().Replace(name, "_").ToLowerInvariant();

    [GeneratedRegex("(?<=[a-z0-9])(?=[A-Z])", RegexOptions.None, matchTimeoutMilliseconds: 1000)]
    private static partial Regex Humps();
}
