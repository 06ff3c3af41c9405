using System.Collections.Immutable;
using System.Globalization;
using GuideGen.Testing;

namespace GuideGen.Site.Tests.Demo;

/// <summary>One row of a table of <c>trade-figures.md</c>, by the names of its columns.</summary>
sealed record TradeRow(ImmutableDictionary<string, string> Cells)
{
    public string this[string column] => Cells[column];

    public double Low => Number("low");

    public double High => Number("high");

    public double Number(string column) => double.Parse(Cells[column], CultureInfo.InvariantCulture);
}

static class TradeTable
{
    static readonly string[] Lines = Repository.Read("tests", "GuideGen.Site.Tests", "Demo", "trade-figures.md").ReplaceLineEndings("\n").Split('\n');

    /// <summary>The rows of the table under a heading, in order.</summary>
    public static ImmutableArray<TradeRow> Under(string heading)
    {
        var table = Lines.SkipWhile(l => l != "## " + heading).Skip(1).TakeWhile(l => !l.StartsWith("## ", StringComparison.Ordinal))
            .Where(l => l.StartsWith('|')).Select(Cells).ToList();
        return [.. table.Skip(2).Select(row => new TradeRow(table[0].Zip(row).ToImmutableDictionary(c => c.First, c => c.Second)))];
    }

    static string[] Cells(string line) => [.. line.Trim('|').Split('|').Select(c => c.Trim())];
}
