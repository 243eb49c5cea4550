using Academy.Storage.Sqlite;

namespace Academy.Web.Tests.Hosting;

/// <summary>A database with its tables and nothing in them, made once: laying the tables for each test would take longer than the test.</summary>
internal static class EmptyDatabase
{
    private static readonly Lazy<byte[]> File = new(Make);

    public static void CopyTo(string folder)
    {
        var path = Path.Combine(folder, "academy.db");
        if (!System.IO.File.Exists(path))
            System.IO.File.WriteAllBytes(path, File.Value);
    }

    private static byte[] Make()
    {
        var folder = Directory.CreateTempSubdirectory("academy-");
        var path = Path.Combine(folder.FullName, "academy.db");
        using (var made = DatabaseFile.Open(path))
            made.MigrateAsync(CancellationToken.None).GetAwaiter().GetResult();
        var bytes = System.IO.File.ReadAllBytes(path);
        folder.Delete(recursive: true);
        return bytes;
    }
}
