using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Migrations;

namespace Academy.Storage.Sqlite;

public static class SqliteSetup
{
    /// <summary>Everything this project asks of SQLite, for a context over the given file.</summary>
    public static DbContextOptionsBuilder UseAcademySqlite(this DbContextOptionsBuilder options, DatabaseFile file) =>
        options
            .UseSqlite(file.ConnectionString, sqlite => sqlite.MigrationsAssembly(typeof(SqliteSetup).Assembly.GetName().Name))
            .AddInterceptors(file.Habits, file.Connections)
            .ReplaceService<IMigrationsSqlGenerator, ClusteredTables>();

    public static AcademyDb NewDb(this DatabaseFile file)
    {
        var options = new DbContextOptionsBuilder<AcademyDb>();
        options.UseAcademySqlite(file);
        return new AcademyDb(options.Options);
    }
}
