using Academy.Modules;
using Academy.Storage.Ledgers;
using Academy.Storage.Projections;
using Academy.Storage.Sqlite;
using Academy.Web.Shell;

namespace Academy.Web.Commands;

/// <summary>
/// The same program from a shell: it does one thing and ends, also while the portal is running. Exit codes: 0 in order, 1 something
/// found, 64 called wrongly, 66 no database there.
/// </summary>
public static class Command
{
    private const int Fine = 0;
    private const int Found = 1;
    private const int CalledWrongly = 64;
    private const int NothingThere = 66;

    private static readonly string[] Names = ["check-modules", "check-ledger", "check-standings", "backup"];

    /// <summary>Whether the program was called to do one of these.</summary>
    public static bool IsIn(string[] args) => args.Length > 0 && Names.Contains(args[0], StringComparer.Ordinal);

    /// <summary>Does it and says what came of it.</summary>
    public static Task<int> RunAsync(
        string[] args,
        IConfiguration settings,
        IHostEnvironment environment,
        TextWriter output,
        CancellationToken stop
    ) =>
        args[0] switch
        {
            "check-modules" => Task.FromResult(
                CheckModules.Run(args.Length > 1 ? args[1] : DefaultModules(settings, environment), output)
            ),
            "check-ledger" => OverAsync(settings, environment, output, (file, say) => CheckLedgerAsync(file, say, stop)),
            "check-standings" => OverAsync(settings, environment, output, (file, say) => CheckStandingsAsync(file, say, stop)),
            _ when args.Length < 2 => WronglyAsync(output),
            _ => OverAsync(settings, environment, output, (file, say) => BackUpAsync(file, args[1], say, stop)),
        };

    private static string DefaultModules(IConfiguration settings, IHostEnvironment environment) =>
        Library.ModuleFolder.Of(settings, environment.ContentRootPath);

    private static async Task<int> WronglyAsync(TextWriter output)
    {
        await output.WriteLineAsync("Say where the backup goes: backup <file>");
        return CalledWrongly;
    }

    private static async Task<int> OverAsync(
        IConfiguration settings,
        IHostEnvironment environment,
        TextWriter output,
        Func<DatabaseFile, TextWriter, Task<int>> work
    )
    {
        var path = StorageSetup.PathOf(Site.Of(settings, environment));
        if (!File.Exists(path))
        {
            await output.WriteLineAsync(
                $"There is no database at {path}. Name its folder with the setting Data:Folder (or ACADEMY_Data__Folder in the environment)."
            );
            return NothingThere;
        }
        using var file = DatabaseFile.OpenToRead(path);
        return await work(file, output);
    }

    private static async Task<int> CheckLedgerAsync(DatabaseFile file, TextWriter output, CancellationToken stop)
    {
        await using var db = file.NewDb();
        var all = await new LedgerCheck(db).CheckAllAsync(stop);
        foreach (var ledger in all)
            await output.WriteLineAsync(
                $"Salon {ledger.Salon}: {ledger.Entries} entries, {ledger.Words} words, {ledger.Erased} erased: {WordsOf(ledger)}"
            );
        return all.All(ledger => ledger.Holds) ? Fine : Found;
    }

    private static string WordsOf(LedgerChecked ledger) =>
        ledger.First is { } fault
            ? $"broken at entry {fault.Seq} ({fault.Kind}{(fault.Path.Length > 0 ? $", {fault.Path}" : "")})"
            : "the chain holds";

    private static async Task<int> CheckStandingsAsync(DatabaseFile file, TextWriter output, CancellationToken stop)
    {
        await using var db = file.NewDb();
        var all = await new StandingsCheck(db).CheckAllAsync(stop);
        foreach (var standings in all)
            await output.WriteLineAsync(
                $"Salon {standings.Salon}: {standings.Paths} paths, {standings.Steps} steps: {(standings.First is { } fault ? $"differs: {fault}" : "as the ledger says")}"
            );
        return all.All(standings => standings.Holds) ? Fine : Found;
    }

    private static async Task<int> BackUpAsync(DatabaseFile file, string target, TextWriter output, CancellationToken stop)
    {
        switch (await file.BackUpAsync(target, stop))
        {
            case BackedUp.Made made:
                await output.WriteLineAsync($"{made.Path}: {made.Bytes} bytes, {made.Entries} ledger entries, checked.");
                return Fine;
            case BackedUp.Damaged damaged:
                await output.WriteLineAsync(
                    $"No backup was made: the database is damaged.{Environment.NewLine}{damaged.Findings}"
                );
                return Found;
            case BackedUp.LedgerFails fails:
                await output.WriteLineAsync($"No backup was made: the ledger is {WordsOf(fails.Found)}.");
                return Found;
            default:
                throw new System.Diagnostics.UnreachableException();
        }
    }
}
