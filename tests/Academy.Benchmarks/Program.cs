using BenchmarkDotNet.Running;

namespace Academy.Benchmarks;

/// <summary>Runs the benchmarks: <c>dotnet run -c Release --project tests/Academy.Benchmarks -- --filter '*'</c>.</summary>
internal static class Bench
{
    private static void Main(string[] args) => BenchmarkSwitcher.FromAssembly(typeof(Bench).Assembly).Run(args);
}
