using Academy.Storage.Tests.Sqlite;
using Xunit.MicrosoftTestingPlatform;
using Xunit.Runner.InProc.SystemConsole;

namespace Academy.Storage.Tests;

internal static class Program
{
    public static Task<int> Main(string[] args) =>
        args switch
        {
            [WriteUntilKilled.Switch, var path] => WriteUntilKilled.RunAsync(path),
            _ when args.Intersect(["--server", "--internal-msbuild-node"]).Any() => TestPlatformTestFramework.RunAsync(
                args,
                SelfRegisteredExtensions.AddSelfRegisteredExtensions
            ),
            _ => ConsoleRunner.Run(args),
        };
}
