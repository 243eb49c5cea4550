using BenchmarkDotNet.Configs;
using BenchmarkDotNet.Jobs;
using BenchmarkDotNet.Toolchains.InProcess.Emit;

namespace Academy.Benchmarks;

/// <summary>A short run in the process that began it: a program of its own for each measurement would not find the portal's files.</summary>
internal sealed class InThisProcess : ManualConfig
{
    public InThisProcess() => AddJob(Job.ShortRun.WithToolchain(InProcessEmitToolchain.Instance));
}
