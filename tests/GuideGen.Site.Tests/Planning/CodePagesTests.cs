using System.Text;
using GuideGen.Codes;
using GuideGen.Guide.Loading;
using GuideGen.Site.Planning;
using GuideGen.Site.Tests.Compiling;
using GuideGen.Site.Weighing;

namespace GuideGen.Site.Tests.Planning;

/// <summary>What is looked up without reading the whole guide is what its site has.</summary>
public sealed class CodePagesTests
{
    const string Hose = "content/faults/charge-air-hose-split.md", Part = "content/parts/charge-air-hose.md", Tree = "content/trees/engine-lamp.yml";

    static readonly TroubleCode Asked = TroubleCode.Parse("U0155");

    static SitePlan PlanOf(IGuideFiles files)
    {
        var guide = GuideLoader.Load(files).Guide;
        return SitePlan.Make([.. guide.Editions.Skip(1).Select(l => GuideLoader.LoadIn(files, l).Guide).Prepend(guide).Select(g => (g, GuideWeights.Of(g)))])[0];
    }

    static void AssertSame(SitePlan plan, CodePages pages, TroubleCode code)
    {
        Assert.Equal(plan.Guide.Codes.Find(code.ToString())?.Meaning.Value, pages.MeaningOf(code));
        IEnumerable<string> own = plan.Pages.OfType<CodeInfoPage>().Where(p => p.Code == code).Select(p => p.Address);
        Assert.Equal(own.Concat(plan.Relations.FaultsByCode[code].Select(f => Addresses.Of(f.Fault))), pages.AddressesOf(code));
    }

    [Fact]
    public void One_code_of_the_demo_guide_has_the_pages_of_the_site()
    {
        var files = Guides.Open(Guides.Demo);
        var plan = PlanOf(files);
        Assert.All(plan.Codes.Where((_, i) => i % 10 == 0).Append(Asked).Append(TroubleCode.Parse("P0000")), c => AssertSame(plan, CodePages.Of(files, [c]), c));
    }

    [Fact]
    public void All_codes_of_the_demo_guide_at_once_have_the_pages_of_the_site()
    {
        var files = Guides.Open(Guides.Demo);
        var plan = PlanOf(files);
        var pages = CodePages.Of(files, plan.Codes);
        Assert.All(plan.Codes, c => AssertSame(plan, pages, c));
        Assert.Contains(plan.Codes, c => plan.Relations.FaultsByCode[c].Count() > 2);
    }

    [Theory]
    [InlineData(Hose, "codes: {", "codes: { U0155: sometimes,")]
    [InlineData(Hose, "codes: {", @"codes: { ""\x550155"": sometimes,")]
    [InlineData(Hose, "codes: {", "codes: { \"U01\\\n  55\": sometimes,")]
    [InlineData(Hose, "## Safety", "See U0155.\n\n## Safety")]
    [InlineData(Part, "where: ", "where: Beside the unit of U0155, ")]
    [InlineData(Tree, "summary: ", "summary: Not with U0155. ")]
    [InlineData("content/cases/2019-05-w20d-hose.yml", "note: ", "note: U0155 came once. ")]
    [InlineData("content/terms.yml", "means: ", "means: In U0155, ")]
    public void A_code_is_found_wherever_it_is_named(string path, string old, string with)
    {
        var files = new Overlay(Guides.Open(Guides.Small)).Replace(path, old, with);
        var (plan, pages) = (PlanOf(files), CodePages.Of(files, [Asked]));

        Assert.Contains(Addresses.Of(Asked), pages.AddressesOf(Asked));
        AssertSame(plan, pages, Asked);
    }

    [Fact]
    public void A_page_of_a_code_need_not_say_its_code()
    {
        var files = new Overlay(Guides.Open(Guides.Small)).Put("content/codes/U0155.md", "---\nmeaning: Panel silent\nsummary: The panel does not answer.\n---\n## What it means here\n\nIt is off.\n");

        Assert.Equal("Panel silent", CodePages.Of(files, [Asked]).MeaningOf(Asked));
    }

    [Theory]
    [InlineData("content/parts/charge-air-hose.de.md", "---\nwhere: Bei U0155\n---\n")]
    [InlineData("content/parts/charge-air-hose.de.md", "---\nname: Schlauch\n---\n## Wo er sitzt\n\nBei U0155.\n")]
    public void A_code_that_only_a_translation_names_has_a_page(string path, string text)
    {
        var files = new Overlay(Guides.Open(Guides.Small)).Append("site-config.yml", "also-in: [de]\n").Put(path, text);
        var (plan, pages) = (PlanOf(files), CodePages.Of(files, [Asked]));

        Assert.Equal([Addresses.Of(Asked)], pages.AddressesOf(Asked));
        AssertSame(plan, pages, Asked);
    }

    [Fact]
    public void A_file_that_names_no_code_asked_for_is_not_read_as_a_page()
    {
        var naming = new NamingFiles(Guides.Open(Guides.Small), [TroubleCode.Parse("P0299")]);

        Assert.True(naming.TryRead(Hose, out var bytes, out _));
        Assert.Contains("P0299", Encoding.UTF8.GetString(bytes), StringComparison.Ordinal);
        Assert.True(naming.TryRead("content/vehicle.yml", out _, out _));
        Assert.False(naming.TryRead("content/faults/battery-earth-loose.md", out _, out _));
        Assert.False(naming.TryRead("content/images/air path #1.svg", out _, out _));
    }
}
