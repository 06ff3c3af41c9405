using System.Collections.Immutable;
using System.Globalization;
using System.Text.RegularExpressions;

namespace GuideGen.Benchmarks.Compiling;

/// <summary>What an author may change on the page of a fault.</summary>
/// <param name="Name">As the heading of a column.</param>
/// <param name="Change">The page with <see cref="Mark"/> of a number on it, from how it was.</param>
sealed partial record TriedEdit(string Name, Func<string, int, string> Change)
{
    /// <summary>The page, from the folder of a generated guide.</summary>
    public static readonly string Path = System.IO.Path.Combine("content", "faults", "fault-0-0.md");

    /// <summary>Text that its page alone shows, a summary that others show as well, and a belief by which all causes are weighed anew.</summary>
    public static readonly ImmutableArray<TriedEdit> All =
    [
        new("text", (page, number) => $"{page}\n{Mark(number)}.\n"),
        new("a summary", Summed),
        new("a belief", (page, number) => Belief().Replace(Summed(page, number), string.Create(CultureInfo.InvariantCulture, $"belief: {2 + number}"))),
    ];

    /// <summary>What tells a changed page from how it was.</summary>
    public static string Mark(int number) => string.Create(CultureInfo.InvariantCulture, $"Edit {number}");

    public static double Middle(IReadOnlyCollection<double> values) => values.Order().ElementAt(values.Count / 2);

    static string Summed(string page, int number) => page.Replace("summary: ", $"summary: {Mark(number)}, ", StringComparison.Ordinal);

    [GeneratedRegex("belief: [0-9]+")]
    private static partial Regex Belief();
}
