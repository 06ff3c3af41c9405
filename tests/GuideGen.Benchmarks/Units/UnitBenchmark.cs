using BenchmarkDotNet.Columns;
using BenchmarkDotNet.Configs;
using BenchmarkDotNet.Exporters;
using BenchmarkDotNet.Jobs;
using BenchmarkDotNet.Loggers;
using BenchmarkDotNet.Running;
using BenchmarkDotNet.Toolchains.InProcess.Emit;

namespace GuideGen.Benchmarks.Units;

/// <summary>Runs <see cref="HotUnits"/> in this process, so that nothing else is built, and prints their table.</summary>
static class UnitBenchmark
{
    public static Task Run(TextWriter output)
    {
        var work = Directory.CreateTempSubdirectory();
        try
        {
            var config = ManualConfig.CreateEmpty()
                .AddColumnProvider(DefaultColumnProviders.Instance)
                .AddLogger(NullLogger.Instance)
                .AddJob(Job.ShortRun.WithToolchain(InProcessEmitToolchain.Instance))
                .WithArtifactsPath(work.FullName);
            var summary = BenchmarkRunner.Run<HotUnits>(config);
            var table = new AccumulationLogger();
            MarkdownExporter.Console.ExportToLog(summary, table);
            output.WriteLine(table.GetLog());
        }
        finally
        {
            work.Delete(recursive: true);
        }
        return Task.CompletedTask;
    }
}
