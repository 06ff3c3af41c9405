using System.Text.RegularExpressions;

namespace GuideGen.Site.Tests.Compiling;

/// <summary>Whatever an author writes, in whichever field, comes out as text.</summary>
public sealed partial class HostileTextTests
{
    /// <summary>The fence's language becomes part of a class name, not of the text.</summary>
    static readonly string[] NotText = ["fault-fence-info"];

    static readonly CompiledSite Site = CompiledSite.Of(Guides.Hostile);

    public static TheoryData<string> Marks => new(
        Directory.EnumerateFiles(Guides.FolderOf(Guides.Hostile), "*.*", SearchOption.AllDirectories)
            .SelectMany(f => Mark().Matches(File.ReadAllText(f))).Select(m => m.Groups[1].Value).Except([.. NotText, "title"]).Order(StringComparer.Ordinal));

    [Theory, MemberData(nameof(Marks))]
    public void Every_field_and_every_kind_of_text_is_shown_as_it_was_written(string mark)
    {
        var written = $"<script>{mark}()</script> & \"two\" 'one' <b onclick=x>";

        Assert.Contains(Site.Pages.Values, p => p.Document.Body!.TextContent.Contains(written, StringComparison.Ordinal));
    }

    [Fact]
    public void No_text_becomes_an_element_or_an_attribute()
    {
        var elements = Site.Pages.Values.SelectMany(p => p.Document.All.Select(e => (p.Address, e)));

        Assert.Empty(elements
            .Where(x => x.e.LocalName == "b" || (x.e.LocalName == "script" && !x.e.HasAttribute("src")) || x.e.HasAttribute("onclick"))
            .Select(x => $"{x.Address}: {x.e.OuterHtml}"));
    }

    [Fact]
    public void No_text_can_end_a_data_script() =>
        Assert.All(Site.Files.Keys.Where(a => a.StartsWith("data/", StringComparison.Ordinal)), a => Assert.DoesNotContain('<', Site.Text(a)));

    [GeneratedRegex(@"<script>([a-z0-9-]+)\(\)</script>", RegexOptions.CultureInvariant)]
    private static partial Regex Mark();
}
