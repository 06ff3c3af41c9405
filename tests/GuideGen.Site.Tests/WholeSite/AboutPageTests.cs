using System.Text.Json;
using System.Xml.Linq;
using GuideGen.Search;
using GuideGen.Site.Licences;
using GuideGen.Site.Tests.Compiling;

namespace GuideGen.Site.Tests.WholeSite;

/// <summary>The page that says whose work the site carries.</summary>
public sealed class AboutPageTests
{
    static readonly CompiledSite Site = CompiledSite.Of(Guides.Small);

    [Fact]
    public void The_terms_of_all_that_travels_with_the_pages_stand_in_full_and_every_page_leads_there()
    {
        var terms = Site.Pages["about.html"].Document.QuerySelectorAll("details").Select(d => Words(string.Join(' ', d.QuerySelectorAll("p").Select(p => p.TextContent))));

        Assert.Equal([Words(LicenceTexts.Own), Words(LunrScript.Licence)], terms);
        Assert.Contains("Copyright", LunrScript.Licence, StringComparison.Ordinal);
        Assert.All(Site.Pages.Values, p => Assert.NotNull(p.Document.QuerySelector("footer a[href$='about.html']")));

        static string Words(string text) => string.Join(' ', text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
    }

    /// <summary>The list of what the build needs at run time is the SDK's own: the .deps.json beside these tests.</summary>
    [Fact]
    public void Every_library_that_the_build_of_the_site_needs_is_listed_with_its_version_and_licence()
    {
        using var told = JsonDocument.Parse(File.ReadAllBytes(Path.ChangeExtension(typeof(AboutPageTests).Assembly.Location, ".deps.json")));
        var all = told.RootElement.GetProperty("targets").EnumerateObject().Single(t => t.Value.EnumerateObject().Any()).Value.EnumerateObject().ToDictionary(p => p.Name, p => p.Value);
        var needed = new SortedSet<string>(StringComparer.OrdinalIgnoreCase);
        Follow(all.Keys.Single(k => k.StartsWith("GuideGen.Site/", StringComparison.Ordinal)));

        var rows = Site.Pages["about.html"].Document.QuerySelectorAll(".libraries li").Select(l => (Name: l.Children[0].TextContent, Facts: l.ChildNodes[1].TextContent.Trim().Split(", "))).ToList();

        Assert.Equal(needed.Where(n => !n.StartsWith("GuideGen.", StringComparison.Ordinal)), rows.Select(r => $"{r.Name}/{r.Facts[0]}").Order(StringComparer.OrdinalIgnoreCase), StringComparer.OrdinalIgnoreCase);
        Assert.Equal("BSD-2-Clause", rows.Single(r => r.Name == "Markdig").Facts[1]);

        void Follow(string name)
        {
            if (!needed.Add(name) || !all[name].TryGetProperty("dependencies", out var others)) return;
            foreach (var other in others.EnumerateObject()) Follow($"{other.Name}/{other.Value.GetString()}");
        }
    }

    [Fact]
    public void A_guide_says_who_may_copy_it_or_that_it_does_not_say()
    {
        var guide = new Overlay(Guides.Open(Guides.Small)).Append("site-config.yml", "\nrights: Ask <the owners> first.\n");

        Assert.Equal("Ask <the owners> first.", RightsOf(CompiledSite.Compile(guide, 1)));
        Assert.StartsWith("The guide does not say", RightsOf(Site), StringComparison.Ordinal);

        static string RightsOf(CompiledSite site) => site.Pages["about.html"].Document.QuerySelector("#_content + p")!.TextContent;
    }

    [Theory]
    [InlineData("<license type='file'>LICENSE.txt</license>", "names no licence")]
    [InlineData("", "names no licence")]
    [InlineData("<license type='expression'>MIT</license><copyright> </copyright>", "authors")]
    public void A_package_that_does_not_say_its_terms_or_holder_is_not_passed_over(string told, string said)
    {
        var manifest = XDocument.Parse($"<package xmlns='urn:x'><metadata><id>Gauge</id><version>1.0.0</version><projectUrl>https://example.org</projectUrl>{told}</metadata></package>");

        Assert.Contains(said, Assert.Throws<InvalidDataException>(() => ShippedPackage.Read(manifest)).Message, StringComparison.Ordinal);
    }
}
