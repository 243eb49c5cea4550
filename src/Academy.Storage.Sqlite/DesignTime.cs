using Microsoft.EntityFrameworkCore.Design;

namespace Academy.Storage.Sqlite;

/// <summary>What `dotnet ef` asks for when it compares the model with the migrations. It opens no file of a salon.</summary>
internal sealed class DesignTime : IDesignTimeDbContextFactory<AcademyDb>
{
    public AcademyDb CreateDbContext(string[] args) => DatabaseFile.OpenToRead("design-time-only.db").NewDb();
}
