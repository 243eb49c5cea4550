using System.Diagnostics;
using System.Globalization;
using Academy.Storage.Sqlite;

namespace Academy.Storage.Tests.Sqlite;

/// <summary>The child of the kill test: it writes one fact after the other and says each number once it was answered as kept.</summary>
internal static class WriteUntilKilled
{
    public const string Switch = "write-until-killed";

    public static Process Start(string path) =>
        Process.Start(
            new ProcessStartInfo("dotnet", [typeof(WriteUntilKilled).Assembly.Location, Switch, path])
            {
                RedirectStandardError = true,
                RedirectStandardOutput = true,
                UseShellExecute = false,
            }
        )!;

    public static async Task<int> RunAsync(string path)
    {
        using var file = DatabaseFile.Open(path);
        await file.MigrateAsync(CancellationToken.None);
        for (var kept = 0; ; kept++)
        {
            await using var db = file.NewDb();
            await RawLedger.AppendAsync(db, entries: 1);
            await Console.Out.WriteLineAsync(kept.ToString(CultureInfo.InvariantCulture));
            await Console.Out.FlushAsync();
        }
    }
}
