using System.Text;
using GuideGen.Guide.Findings;
using GuideGen.Site.Drafting;
using GuideGen.Site.Tests.Compiling;
using GuideGen.Testing;

namespace GuideGen.Site.Tests.Scripts;

/// <summary>The file that the case form makes is one that the guide takes, whatever an owner types.</summary>
public sealed class CaseFileTests : IDisposable
{
    readonly SiteScripts scripts = new(CompiledSite.Of(Guides.Small), "assets/case-file.js");

    public void Dispose() => scripts.Dispose();

    [Fact]
    public void A_case_with_every_field_is_taken()
    {
        var taken = CaseIntake.Check(Guides.Open(Guides.Small), File(Full));

        Assert.Empty(taken.Findings.Where(f => f.Severity == Severity.Error).Select(f => $"{f.Span}: {f.Message}"));
        Assert.Equal("content/cases/2024-06-w20d-charge-air-hose-split.yml", taken.Path);
    }

    [Theory]
    [InlineData("He said: \"it's fixed\" # not a comment")]
    [InlineData("- a dash, a colon: and {braces} [too]")]
    [InlineData("two\nlines\u0000 and\u2028more \\ back\tslash")]
    [InlineData("&anchor *alias !tag %x @y `z`")]
    public void What_an_owner_types_stays_text(string typed)
    {
        var taken = CaseIntake.Check(Guides.Open(Guides.Small), File(Full with { Note = typed, Changed = [typed], Tried = [typed] }));

        Assert.Empty(taken.Findings.Where(f => f.Severity == Severity.Error).Select(f => $"{f.Span}: {f.Message}"));
    }

    public static TheoryData<int> Rows => new(Enumerable.Range(0, PersonalRow.All.Count));

    [Theory, MemberData(nameof(Rows))]
    public void What_could_tell_who_wrote_it_is_what_the_inspection_finds(int row) =>
        Assert.Equal(PersonalRow.All[row].Found, scripts.Call<PersonalRow.Telling[]>("GuideGen.caseFile.identifying", Full with { Note = PersonalRow.All[row].Text }));

    [Fact]
    public void There_is_no_file_without_the_facts_that_every_case_has() =>
        Assert.Equal(["date", "distance", "variant", "found"], scripts.Call<string[]>("GuideGen.caseFile.missing", Full with { Date = "", Distance = "many", Variant = "", Found = "" }));

    byte[] File(OwnersCase given) => Encoding.UTF8.GetBytes(scripts.Call<string>("GuideGen.caseFile.write", given));

    static OwnersCase Full => new(
        "2024-06-03",
        "w20d",
        "143,000",
        new() { ["P0299"] = "confirmed" },
        new(["reduced-power"], ["engine-lamp"]),
        "charge-air-hose-split",
        ["Charge-air hose and two clips"],
        ["Boost pressure sensor renewed"],
        "95",
        "58,50",
        new() { ["shown-before"] = true, ["one-change"] = true, ["cleared"] = true, ["monitor-passes"] = "3", ["codes-after"] = "none", ["symptom-gone"] = "true", ["evidence"] = "measured" },
        "45",
        "1800",
        "Pulls as it did when new.");

    sealed record OwnersCase(
        string Date,
        string Variant,
        string Distance,
        Dictionary<string, string> Codes,
        Noticed Symptoms,
        string Found,
        string[] Changed,
        string[] Tried,
        string Minutes,
        string Spend,
        Dictionary<string, object> Proof,
        string Days,
        string Driven,
        string Note);

    sealed record Noticed(string[] Present, string[] Absent);
}
