using System.Text.RegularExpressions;
using GuideGen.Testing;

namespace GuideGen.Site.Tests.Look;

/// <summary>Styles speak of start and end, so that a page that runs from right to left is its own mirror (CSS Logical Properties and Values Level 1).</summary>
public sealed partial class DirectionTests
{
    public static TheoryData<string> Sheets => [.. Directory.EnumerateFiles(Repository.PathTo("themes", "workshop", "style"), "*.css").Select(f => Path.GetFileName(f)).Order(StringComparer.Ordinal)];

    [Theory, MemberData(nameof(Sheets))]
    public void No_rule_names_a_side_of_the_screen(string sheet)
    {
        var text = Comment().Replace(File.ReadAllText(Repository.PathTo("themes", "workshop", "style", sheet)), "");

        Assert.Empty(Side().Matches(text).Select(m => m.Value));
    }

    /// <summary>A property or value that means the left or the right, or four lengths of which those of the two sides differ.</summary>
    [GeneratedRegex(@"[\w-]*-(left|right)\b[^;{}]*|(?<=[;{\s])(left|right)\s*:[^;{}]*|:\s*(left|right)\b|(padding|margin):\s*[\w.]+\s+(?<r>[\w.]+)\s+[\w.]+\s+(?!\k<r>[;\s}])[\w.]+", RegexOptions.CultureInvariant)]
    private static partial Regex Side();

    [GeneratedRegex(@"/\*.*?\*/", RegexOptions.Singleline | RegexOptions.CultureInvariant)]
    private static partial Regex Comment();
}
