using System.Collections.Immutable;
using BenchmarkDotNet.Attributes;
using GuideGen.Benchmarks.Compiling;
using GuideGen.Codes.Reading;
using GuideGen.Diagnosis.Ranking;
using GuideGen.Guide.Loading;
using GuideGen.Guide.Model;
using GuideGen.Search.Words;

namespace GuideGen.Benchmarks.Units;

/// <summary>The smallest pieces of work that a compile and a page do most often, each by itself.</summary>
[MemoryDiagnoser]
public class HotUnits
{
    const int Causes = 300, Findings = 60, Pages = 25;

    readonly string report = """
        ECM 7E8
        Stored DTCs: P0299, P0101-00; P0113
        Pending DTCs: P0401
        7E8 10 0A 43 04 02 99 01 13
        7E8 21 04 01 20 02 00 00 00
        the light came on after P0299 was cleared, no other codes
        """;
    readonly MemoryFiles files = new(GuideGenerator.Guide(Pages));
    readonly ImmutableArray<string> words = [.. new RandomText(1).Sentences(700).ToLowerInvariant().Split(' ', StringSplitOptions.RemoveEmptyEntries)];
    readonly RankingModel model = RandomModel();
    readonly Answers answers = Enumerable.Range(0, 8).Aggregate(Answers.Nothing, (known, f) => known.With($"finding-{f * 7}", f % 2 == 0));

    [Benchmark(Description = "a pasted report of six lines read")]
    public int CodeReading() => CodeReader.Read(report, ReadingPlace.FreeText).Finds.Length;

    [Benchmark(Description = "a page of a fault read and bound")]
    public bool FaultPage() => new FileReading(files, "content/faults/fault-0-0.md", GuideMemory.None).TryReadPage(ContentKind.Fault, "fault-0-0", GuideShapes.Fault, out _);

    [Benchmark(Description = "a solved case read and bound, YAML alone")]
    public bool YamlBinding() => new FileReading(files, "content/cases/case-0-0.yml", GuideMemory.None).TryReadStructure(ContentKind.Case, "case-0-0", GuideShapes.Case, out _);

    [Benchmark(Description = "300 causes ranked by 8 of 60 findings")]
    public string Ranking() => CauseRanking.Of(model, answers).Causes[0].Id;

    [Benchmark(Description = "the words of a page stemmed")]
    public int Stemmer()
    {
        var letters = 0;
        foreach (var word in words) letters += PorterStemmer.Stem(word).Length;
        return letters;
    }

    // The numbers are only to be the same every time.
#pragma warning disable CA5394
    static RankingModel RandomModel()
    {
        var random = new Random(1);
        return RankingModel.Create(
            Enumerable.Range(0, Causes).Select(c => new Hypothesis($"cause-{c}", random.NextDouble())),
            elsePrior: 0.5,
            new() { Findings = [.. Enumerable.Range(0, Findings).Select(f => new Finding($"finding-{f}", [.. Enumerable.Range(0, Causes + 1).Select(_ => 0.02 + (0.96 * random.NextDouble()))]))] });
    }
#pragma warning restore CA5394
}
