using System.Globalization;
using GuideGen.Benchmarks.Compiling;
using GuideGen.Benchmarks.Evidence;
using GuideGen.Benchmarks.Pages;
using GuideGen.Benchmarks.Reading;
using GuideGen.Benchmarks.Search;
using GuideGen.Benchmarks.Trees;
using GuideGen.Benchmarks.Units;

if (args is [CompileBenchmark.ChildMark, var guide, var site])
{
    CompileBenchmark.RunOne(guide, site, Console.Out);
    return 0;
}

if (args is [CompileBenchmark.AgainMark, var same, var where])
{
    CompileBenchmark.RunAgain(same, where, Console.Out);
    return 0;
}

if (args is [CompileBenchmark.FloorMark, var compiled, var into])
{
    CompileBenchmark.RunFloor(compiled, into, Console.Out);
    return 0;
}

if (args is ["compile", .. var how])
{
    await CompileBenchmark.Run(how, Console.Out);
    return 0;
}

if (args is ["preview", .. var shown])
{
    await PreviewBenchmark.Run(shown, Console.Out);
    return 0;
}

// For trying things by hand: a guide of so many pages.
if (args is ["guide", var pages, var folder])
{
    CompileBenchmark.WriteGuide(int.Parse(pages, CultureInfo.InvariantCulture), folder);
    return 0;
}

// Each benchmark prints one Markdown table; they are run by hand and never as tests.
var benchmarks = new Dictionary<string, Func<TextWriter, Task>>
{
    ["catalogue"] = CatalogueBenchmark.Run,
    ["evidence"] = EvidenceBenchmark.Run,
    ["look-up"] = LookUpBenchmark.Run,
    ["pages"] = PageBenchmark.Run,
    ["reading"] = ReadingBenchmark.Run,
    ["search"] = SearchBenchmark.Run,
    ["search-browser"] = SearchBenchmark.RunBrowser,
    ["trees"] = TreeBenchmark.Run,
    ["units"] = UnitBenchmark.Run,
};

if (args.Length != 1 || !benchmarks.TryGetValue(args[0], out var benchmark))
{
    await Console.Error.WriteLineAsync("Name one benchmark: compile, preview, " + string.Join(", ", benchmarks.Keys));
    return 2;
}
await benchmark(Console.Out);
return 0;
