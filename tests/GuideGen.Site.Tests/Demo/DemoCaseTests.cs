using GuideGen.Diagnosis.Proof;
using GuideGen.Guide.Model;
using GuideGen.Site.Weighing;

namespace GuideGen.Site.Tests.Demo;

/// <summary>The demo guide's reports are as mixed as real ones, so that evidence and ranking have something to show.</summary>
public sealed class DemoCaseTests
{
    static readonly GuideContent Guide = DemoText.Guide;

    [Fact]
    public void Reports_span_ten_years_and_every_fault()
    {
        Assert.InRange(Guide.Cases.Length, 220, 2_000);
        Assert.InRange(Guide.Cases.Select(c => c.Date.Value.Year).Distinct().Count(), 10, 40);
        Assert.Empty(Guide.Faults.All.Select(f => f.Origin.Slug).Except(Guide.Cases.Select(c => c.Found.Value)));
    }

    [Fact]
    public void Every_level_of_proof_is_there()
    {
        var levels = GuideWeights.Of(Guide).Proofs.Values.CountBy(p => p.Level).ToDictionary();

        Assert.All(Enum.GetValues<ProofLevel>(), level => Assert.True(levels.GetValueOrDefault(level) >= 5, $"{level}: {levels.GetValueOrDefault(level)}"));
    }

    [Fact]
    public void Reports_have_failed_attempts_codes_nobody_read_and_signs_that_were_not_there()
    {
        Assert.True(Guide.Cases.Count(c => c.Work.Tried.Length > 0) >= 60);
        Assert.True(Guide.Cases.Count(c => c.Codes.IsEmpty) >= 20);
        Assert.True(Guide.Cases.Count(c => c.Symptoms.Absent.Length > 0) >= 60);
        Assert.True(Guide.Cases.Count(c => c.Codes.Any(code => !PageOf(c).Codes.Any(listed => listed.Key.Value == code.Key.Value))) >= 20);
    }

    [Fact]
    public void A_report_is_of_a_vehicle_that_can_have_the_fault_and_was_built_by_then() => Assert.All(Guide.Cases, c =>
    {
        var years = Guide.Vehicle.Variants.Single(v => v.Key.Value == c.Variant.Value).Value.Years.Value;
        Assert.True(GuideWeights.Fits(PageOf(c), c.Variant.Value), c.Origin.Slug);
        Assert.True(c.Date.Value.Year >= years.First, c.Origin.Slug);
    });

    [Fact]
    public void A_few_reports_show_a_sign_that_their_fault_does_not_explain()
    {
        var unexplained = Guide.Cases.Where(c => c.Symptoms.Present.Select(s => s.Value).Except(PageOf(c).Symptoms.Select(s => s.Key.Value)).Any());

        Assert.InRange(unexplained.Count(), 1, Guide.Cases.Length / 10);
    }

    static Fault PageOf(SolvedCase solved) => Guide.Faults.Find(solved.Found.Value)!;
}
