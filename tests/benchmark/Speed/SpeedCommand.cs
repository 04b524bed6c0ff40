using BenchmarkDotNet.Columns;
using BenchmarkDotNet.Configs;
using BenchmarkDotNet.Jobs;
using BenchmarkDotNet.Loggers;
using BenchmarkDotNet.Running;
using BenchmarkDotNet.Toolchains.InProcess.Emit;

namespace NanoDustSwitch.Benchmarks;

/// <summary>The speed of virtual time.</summary>
internal static class SpeedCommand
{
    /// <summary>Measures.</summary>
    public static void Run()
    {
        // One process, so that the ratios are of one run on one core.
        ManualConfig config = ManualConfig.CreateEmpty()
            .AddJob(Job.Default.WithToolchain(InProcessEmitToolchain.Instance).WithWarmupCount(3).WithIterationCount(8))
            .AddColumnProvider(DefaultColumnProviders.Instance)
            .AddColumn(new TimesRealTimeColumn())
            .AddDiagnoser(BenchmarkDotNet.Diagnosers.MemoryDiagnoser.Default)
            .AddLogger(ConsoleLogger.Default)
            .WithOptions(ConfigOptions.DisableLogFile)
            .WithArtifactsPath("artifacts/benchmark");
        BenchmarkRunner.Run<SpeedBenchmark>(config);
    }
}
