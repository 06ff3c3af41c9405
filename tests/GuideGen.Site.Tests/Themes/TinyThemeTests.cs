using System.Text.RegularExpressions;
using GuideGen.Site.Planning;
using GuideGen.Site.Tests.Compiling;
using GuideGen.Testing;

namespace GuideGen.Site.Tests.Themes;

/// <summary>A second theme, of six short templates made from the contract alone: the rooms before it do not lean on the look of the built-in one.</summary>
public sealed partial class TinyThemeTests
{
    static readonly string[] HandsOn = ["fault", "check", "task"];
    static readonly string[] Written = ["symptom", "part"];
    static readonly string[] Own = ["frame", "written", "hands-on", "list", "tree"];

    static readonly CompiledSite Site = CompiledSite.Compile(Guide(), 2);

    [Fact]
    public void Every_page_is_drawn_by_it_and_by_nothing_else()
    {
        Assert.NotEmpty(Site.Pages);
        Assert.All(Site.Pages.Values, page =>
        {
            Assert.Single(page.Document.QuerySelectorAll("h1"));
            Assert.Single(page.Document.QuerySelectorAll("link"));
            Assert.Empty(page.Document.QuerySelectorAll("script, .head, .foot, .section"));
        });
    }

    [Fact]
    public void Cautions_and_sections_of_every_page_are_there()
    {
        Assert.All(Site.Guide.HandsOnPages, entry =>
        {
            var page = Site.Pages[Addresses.Of(entry)].Document;
            var cautions = page.QuerySelectorAll("main > .caution").Select(c => c.TextContent).ToList();
            Assert.All(entry.Hazards, h => Assert.Contains(cautions, c => c.EndsWith(Site.Guide.Hazards[h.Value].Name.Value, StringComparison.Ordinal)));
            Assert.Equal(entry.Origin.Body.Sections.Select(s => s.Title.Value), page.QuerySelectorAll("main > h2").Select(h => h.TextContent));
        });
        Assert.All(Site.Guide.Trees.All, tree => Assert.Equal(tree.Nodes.Length, Site.Pages[Addresses.Of(tree)].Document.QuerySelectorAll("main > h2").Length));
    }

    [Fact]
    public void Every_link_of_its_leads_to_a_page()
    {
        var broken =
            from page in Site.Pages.Values
            from link in page.Document.QuerySelectorAll("a[href]")
            let target = link.GetAttribute("href")!.Split('#')[0]
            where target.Length > 0 && !target.Contains(':', StringComparison.Ordinal)
            let address = new Uri(new Uri("https://x/" + page.Address), target).AbsolutePath[1..]
            where !Site.Files.ContainsKey(Uri.UnescapeDataString(address))
            select $"{page.Address}: {target}";

        Assert.Empty(broken);
    }

    [Fact]
    public void It_uses_names_of_the_contract_only()
    {
        var contract = Name().Matches(Repository.Read("themes", "contract", "templates.md")).Select(m => m.Groups["last"].Value).ToHashSet(StringComparer.Ordinal);
        var used = Own.SelectMany(t => Used().Matches(TextOf(t))).Select(m => m.Groups["last"].Value).Where(n => n is not "signal").Distinct();

        Assert.Empty(used.Except(contract));
    }

    static Overlay Guide()
    {
        var guide = new Overlay(Guides.Open(Guides.Small)).Put("theme/style/tiny.css", Repository.Read("tests", "GuideGen.Site.Tests", "Themes", "Tiny", "tiny.css"));
        foreach (var template in Own) guide.Put($"theme/templates/{template}.html", TextOf(template));
        foreach (var kind in HandsOn) guide.Put($"theme/templates/{kind}.html", "{{ piece \"hands-on\" }}");
        foreach (var kind in Written) guide.Put($"theme/templates/{kind}.html", "{{ piece \"written\" }}");
        var others = SitePlan.Make(CompiledSite.Of(Guides.Small).Guide).Pages.Select(p => p.Template).Distinct().Except([.. HandsOn, .. Written, .. Own]);
        foreach (var kind in others) guide.Put($"theme/templates/{kind}.html", "<p>{{ page.description }}</p>");
        return guide;
    }

    static string TextOf(string template) => Repository.Read("tests", "GuideGen.Site.Tests", "Themes", "Tiny", template + ".html");

    [GeneratedRegex(@"^- `(?:.*[.\]])?(?<last>[a-z_]+)(?:\[\])?`", RegexOptions.Multiline | RegexOptions.CultureInvariant)]
    private static partial Regex Name();

    /// <summary>The names behind a point, and those that a loop takes.</summary>
    [GeneratedRegex(@"(?<=\{\{[^}]*(?:\.|\bin\s+))(?<last>[a-z_]+)(?=[^.a-z_])", RegexOptions.CultureInvariant)]
    private static partial Regex Used();
}
