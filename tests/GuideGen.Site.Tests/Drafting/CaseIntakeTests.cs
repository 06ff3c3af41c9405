using System.Text;
using GuideGen.Guide.Findings;
using GuideGen.Guide.Loading;
using GuideGen.Site.Drafting;
using GuideGen.Site.Tests.Compiling;
using GuideGen.Testing;

namespace GuideGen.Site.Tests.Drafting;

/// <summary>An owner's case on its way into the guide.</summary>
public sealed class CaseIntakeTests : IDisposable
{
    const string Good = """
        date: 2024-06-03
        variant: w20d
        distance: 143000
        codes: { P0299: confirmed }
        symptoms: { present: [reduced-power] }
        found: charge-air-hose-split
        changed: ["Charge-air hose"]
        proof: { cleared: true, codes-after: none }
        """;

    readonly TempFolder guide = new();

    public CaseIntakeTests()
    {
        var from = Guides.FolderOf(Guides.Small);
        foreach (var path in new FolderFiles(from).Paths)
        {
            Directory.CreateDirectory(Path.GetDirectoryName(guide.PathTo(path))!);
            File.Copy(Path.Combine(from, path), guide.PathTo(path));
        }
    }

    public void Dispose() => guide.Dispose();

    [Fact]
    public void A_good_case_is_filed_by_its_month_variant_and_fault()
    {
        var taken = CaseIntake.File(guide.PathTo("."), Bytes(Good));

        Assert.Equal("content/cases/2024-06-w20d-charge-air-hose-split.yml", taken.Path);
        Assert.Equal(Good, File.ReadAllText(guide.PathTo(taken.Path!)));
    }

    [Fact]
    public void A_name_that_is_taken_is_never_written_over()
    {
        var first = CaseIntake.File(guide.PathTo("."), Bytes(Good)).Path!;
        var second = CaseIntake.File(guide.PathTo("."), Bytes(Good.Replace("143000", "90500", StringComparison.Ordinal).Replace("06-03", "06-21", StringComparison.Ordinal)));

        Assert.Equal("content/cases/2024-06-w20d-charge-air-hose-split-2.yml", second.Path);
        Assert.Equal(Good, File.ReadAllText(guide.PathTo(first)));
    }

    [Theory]
    [InlineData("found: charge-air-hose-split", "found: unheard-of", "name-unknown")]
    [InlineData("variant: w20d", "variant: w99x", "name-unknown")]
    [InlineData("date: 2024-06-03", "date: yesterday", "value-type")]
    [InlineData("proof: {", "shoe-size: 44\nproof: {", "key-unknown")]
    public void A_case_that_the_guide_cannot_take_is_told_why_and_not_filed(string good, string bad, string rule)
    {
        var before = new FolderFiles(guide.PathTo(".")).Paths;
        var taken = CaseIntake.File(guide.PathTo("."), Bytes(Good.Replace(good, bad, StringComparison.Ordinal)));

        Assert.Null(taken.Path);
        Assert.Contains(taken.Findings, f => f.Severity == Severity.Error && f.Rule.Id == rule);
        Assert.Equal(before, new FolderFiles(guide.PathTo(".")).Paths);
    }

    [Theory]
    [InlineData("")]
    [InlineData("%PDF-1.7")]
    [InlineData("- a\n- list")]
    public void What_is_no_case_at_all_is_not_filed(string text)
    {
        var taken = CaseIntake.File(guide.PathTo("."), Bytes(text));

        Assert.Null(taken.Path);
        Assert.NotEmpty(taken.Findings);
    }

    static byte[] Bytes(string text) => Encoding.UTF8.GetBytes(text);
}
