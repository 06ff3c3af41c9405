using System.Collections.Immutable;
using System.Diagnostics;
using System.Globalization;
using GuideGen.Diagnosis;
using GuideGen.Diagnosis.Ordering;

namespace GuideGen.Benchmarks.Trees;

/// <summary>How long it takes to order checks: random problems, the same in every run.</summary>
static class TreeBenchmark
{
    const int Problems = 5;

    public static Task Run(TextWriter output)
    {
        output.WriteLine("| causes | checks | method | slowest of 5, ms | expected minutes, mean |");
        output.WriteLine("| ---: | ---: | --- | ---: | ---: |");
        Measure(output, 16, 24, SplitMethod.Exact);
        Measure(output, 200, 300, SplitMethod.Greedy);
        return Task.CompletedTask;
    }

    static void Measure(TextWriter output, int causes, int checks, SplitMethod method)
    {
        var times = new List<double>();
        var costs = new List<double>();
        for (var seed = 1; seed <= Problems; seed++)
        {
            var problem = Problem(causes, checks, seed);
            var clock = Stopwatch.StartNew();
            costs.Add(SplitPlans.By(problem, method).Expected.Minutes);
            times.Add(clock.Elapsed.TotalMilliseconds);
        }

        output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"| {causes} | {checks} | {method} | {times.Max():F0} | {costs.Average():F1} |"));
    }

    // The numbers are only to be the same every time.
#pragma warning disable CA5394
    static SplitProblem Problem(int causes, int checks, int seed)
    {
        var random = new Random(seed);
        ImmutableArray<WeightedCause> all = [.. Enumerable.Range(0, causes).Select(i => new WeightedCause($"c{i:D3}", 0.05 + random.NextDouble()))];
        return new SplitProblem(
            all,
            [
                .. Enumerable.Range(0, checks).Select(i => new SplitCheck(
                    $"t{i:D3}",
                    new Effort(2 + random.Next(40)),
                    [.. all.Select(_ => $"o{random.Next(3)}")],
                    random.Next(4) == 0 ? [$"s{random.Next(4)}"] : [],
                    [])),
            ],
            [.. Enumerable.Range(0, 4).Select(i => new Setup($"s{i}", new Effort(15)))],
            CostScale.MinutesOnly);
    }
#pragma warning restore CA5394
}
