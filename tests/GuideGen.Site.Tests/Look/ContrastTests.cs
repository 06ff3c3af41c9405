using System.Globalization;
using System.Text.RegularExpressions;
using GuideGen.Testing;

namespace GuideGen.Site.Tests.Look;

/// <summary>The theme's table of contrasts is what its style sheet comes to, and every text can be read.</summary>
/// <remarks>Relative luminance and contrast ratio as Web Content Accessibility Guidelines 2.2 (W3C Recommendation) define them; 4.5 is its success criterion 1.4.3.</remarks>
public sealed partial class ContrastTests
{
    static readonly string Css = Repository.Read("themes", "workshop", "style", "workshop.css");
    static readonly Dictionary<string, string> Light = Colours(Block(":root {"));
    static readonly Dictionary<string, string> Dark = Light.Concat(Colours(Block("@media (prefers-color-scheme: dark) {"))).GroupBy(c => c.Key).ToDictionary(g => g.Key, g => g.Last().Value);

    public static TheoryData<string, string, string, string> Rows
    {
        get
        {
            var rows = new TheoryData<string, string, string, string>();
            foreach (Match m in Row().Matches(Repository.Read("themes", "workshop", "README.md"))) rows.Add(m.Groups[1].Value, m.Groups[2].Value, m.Groups[3].Value, m.Groups[4].Value);
            return rows;
        }
    }

    [Theory, MemberData(nameof(Rows))]
    public void A_pair_has_the_contrast_that_the_table_states_and_can_be_read(string text, string ground, string light, string dark)
    {
        foreach (var (colours, stated) in new[] { (Light, light), (Dark, dark) })
        {
            var contrast = Contrast(colours[text], colours[ground]);
            Assert.Equal(stated, contrast.ToString("0.0", CultureInfo.InvariantCulture));
            Assert.InRange(contrast, 4.5, 21);
        }
    }

    [Fact]
    public void Every_colour_that_text_is_set_in_stands_in_the_table() =>
        Assert.Superset(Light.Keys.Except(["ground", "sheet", "sunk", "line", "mark"]).ToHashSet(), Rows.Select(r => r.Data.Item1).ToHashSet());

    [Fact]
    public void The_contrast_of_black_on_white_is_21() => Assert.Equal(21, Contrast("#000000", "#ffffff"), 9);

    static double Contrast(string one, string other)
    {
        var (a, b) = (Luminance(one), Luminance(other));
        return (Math.Max(a, b) + 0.05) / (Math.Min(a, b) + 0.05);
    }

    static double Luminance(string colour) => (0.2126 * Linear(colour[1..3])) + (0.7152 * Linear(colour[3..5])) + (0.0722 * Linear(colour[5..7]));

    static double Linear(string channel)
    {
        var value = int.Parse(channel, NumberStyles.HexNumber, CultureInfo.InvariantCulture) / 255.0;
        return value <= 0.04045 ? value / 12.92 : Math.Pow((value + 0.055) / 1.055, 2.4);
    }

    static string Block(string opening)
    {
        var start = Css.IndexOf(opening, StringComparison.Ordinal);
        return Css[start..Css.IndexOf("\n}", start, StringComparison.Ordinal)];
    }

    static Dictionary<string, string> Colours(string block) => Colour().Matches(block).ToDictionary(m => m.Groups[1].Value, m => m.Groups[2].Value);

    [GeneratedRegex("--([a-z-]+): (#[0-9a-f]{6});")]
    private static partial Regex Colour();

    [GeneratedRegex(@"^\| `([a-z-]+)` on `([a-z-]+)` \| ([\d.]+) \| ([\d.]+) \|\r?$", RegexOptions.Multiline)]
    private static partial Regex Row();
}
