using AngleSharp.Dom;
using GuideGen.Guide.Inspection;
using GuideGen.Guide.Model;
using GuideGen.Guide.Text;
using GuideGen.Site.Planning;
using GuideGen.Site.Tests.Compiling;

namespace GuideGen.Site.Tests.WholeSite;

/// <summary>Nobody comes to a hands-on step without having passed its cautions (ANSI Z535.6: section safety messages stand before the procedure).</summary>
public sealed class CautionTests
{
    public static TheoryData<string> All => [Guides.Small, Guides.Demo, Guides.Hostile];

    [Theory, MemberData(nameof(All))]
    public void Every_hands_on_page_shows_its_cautions_before_the_first_hands_on_section(string guide)
    {
        var site = CompiledSite.Of(guide);

        Assert.All(site.Guide.HandsOnPages, entry =>
        {
            var main = site.Pages[Addresses.Of(entry)].Document.QuerySelector("main")!;
            var handsOn = SectionPlan.Of(entry.Origin.Kind!.Value).Where(s => s.IsHandsOn).Select(s => Heading(main, s.Title));
            var safety = Heading(main, SectionPlan.Safety);
            foreach (var section in handsOn)
            {
                Assert.True(IsBefore(safety, section), $"{entry.Origin.Slug}: {section.TextContent} stands before the safety section");
                Assert.All(Cautions(site, HazardsOf(site, entry)), c => Assert.True(IsBefore(Line(main, c), section), $"{entry.Origin.Slug}: '{c}' stands after {section.TextContent}"));
            }
        });
    }

    [Theory, MemberData(nameof(All))]
    public void Every_step_that_does_a_check_shows_the_cautions_of_that_check_right_there(string guide)
    {
        var site = CompiledSite.Of(guide);
        var steps = from tree in site.Guide.Trees.All from node in tree.Nodes where node.Value is DoNode select (tree, node.Key, (DoNode)node.Value);

        Assert.All(steps, s =>
        {
            var (tree, name, step) = s;
            var shown = site.Pages[Addresses.Of(tree)].Document.GetElementById(name.Value)!;
            var hazards = HazardsOf(site, site.Guide.Checks.Find(step.Check.Value)!);
            Assert.All(Cautions(site, hazards), c => Line(shown, c));
            Assert.All(hazards, h => Assert.Contains(site.Guide.Hazards[h].Name.Value, shown.TextContent, StringComparison.Ordinal));
        });
    }

    [Theory, MemberData(nameof(All))]
    public void Cautions_stand_gravest_first(string guide)
    {
        var site = CompiledSite.Of(guide);

        Assert.All(site.Guide.HandsOnPages, entry =>
        {
            var main = site.Pages[Addresses.Of(entry)].Document.QuerySelector("main")!;
            var gravestFirst = HazardsOf(site, entry).OrderBy(h => site.Guide.Hazards[h].Signal.Value).ToList();
            Assert.All(gravestFirst.Zip(gravestFirst.Skip(1)), pair =>
            {
                var (graver, lesser) = (site.Guide.Hazards[pair.First], site.Guide.Hazards[pair.Second]);
                if (graver.Signal.Value == lesser.Signal.Value) return;
                Assert.True(IsBefore(Line(main, graver.Cautions[0].Value), Line(main, lesser.Cautions[0].Value)));
            });
        });
    }

    /// <summary>A check's preparation is part of doing it.</summary>
    static List<string> HazardsOf(CompiledSite site, IHandsOnPage page)
    {
        var setups = page is Check check ? check.Setup.Select(s => site.Guide.Vehicle.Setups.First(v => v.Key.Value == s.Value).Value) : [];
        IEnumerable<Located<string>> all = [.. page.Hazards, .. setups.SelectMany(s => s.Hazards)];
        return [.. all.Select(h => h.Value).Distinct()];
    }

    static IEnumerable<string> Cautions(CompiledSite site, IEnumerable<string> hazards) =>
        hazards.SelectMany(h => site.Guide.Hazards[h].Cautions).Select(c => c.Value);

    static IElement Heading(IElement main, string title) => main.QuerySelectorAll("h2").First(h => h.TextContent.Trim() == title);

    static IElement Line(IElement place, string text) =>
        place.QuerySelectorAll("li, p").FirstOrDefault(e => e.TextContent.Trim() == text) ?? throw new InvalidOperationException($"'{text}' is not shown");

    static bool IsBefore(INode first, INode second) => first.CompareDocumentPosition(second).HasFlag(DocumentPositions.Following);
}
