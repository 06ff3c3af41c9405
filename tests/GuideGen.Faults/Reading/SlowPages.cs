using System.Diagnostics;
using System.Globalization;
using GuideGen.Guide.Findings;
using GuideGen.Guide.Pages;
using GuideGen.Guide.Text;
using GuideGen.Testing;

namespace GuideGen.Faults.Reading;

/// <summary>How long pages take that are made to be slow, by their length.</summary>
static class SlowPages
{
    static readonly int[] Sizes = [20_000, 80_000];

    /// <param name="size">Length of the longest page; 80,000 characters if it is 0.</param>
    public static bool Run(TextWriter output, int size)
    {
        int[] sizes = size == 0 ? Sizes : [size / 4, size];
        output.WriteLine($"| page | {string.Join(" | ", sizes)} characters | found |");
        output.WriteLine("| --- | ---: | ---: | --- |");
        foreach (var (name, ofSize) in SlowMarkdown.Shapes)
        {
            var findings = new FindingList();
            var took = sizes.Select(s => Took(ofSize(s), findings));
            output.WriteLine($"| {name} | {string.Join(" | ", took.Select(t => t.ToString("N1", CultureInfo.InvariantCulture)))} ms | {string.Join(", ", findings.ToSorted().Select(f => f.Rule.Id).Distinct())} |");
        }

        return true;
    }

    static double Took(string markdown, FindingList findings)
    {
        var watch = Stopwatch.StartNew();
        PageBodyReader.Read(new SourceText("page.md", markdown), 0, findings);
        return watch.Elapsed.TotalMilliseconds;
    }
}
