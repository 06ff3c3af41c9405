using GuideGen.Diagnosis.Evidence;
using GuideGen.Diagnosis.Proof;

namespace GuideGen.Diagnosis.Tests.Evidence;

public sealed class EvidenceSummaryTests
{
    static readonly Dictionary<string, double> Beliefs = new() { ["hose"] = 2, ["sensor"] = 1 };

    [Fact]
    public void Only_confirmed_cases_count_and_the_others_are_shown_by_level()
    {
        CauseEvidence hose = Of(
            ("hose", ProofLevel.Proved), ("hose", ProofLevel.Confirmed), ("hose", ProofLevel.Probable),
            ("hose", ProofLevel.Claimed), ("sensor", ProofLevel.Confirmed)).Causes[0];

        Assert.Equal("hose", hose.Id);
        Assert.Equal([0, 1, 1, 1, 1], hose.ByLevel);
        Assert.Equal(new Proportion(2, 3), hose.Reports);
        Assert.Equal(ShareWording.TooFew, hose.Wording);
    }

    [Fact]
    public void Refuted_case_counts_against_its_cause_as_something_else()
    {
        EvidenceSummary summary = Of(("hose", ProofLevel.Confirmed), ("hose", ProofLevel.Refuted));

        Assert.Equal(new Proportion(1, 2), summary.Causes.Single(c => c.Id == "hose").Reports);
        Assert.Equal(
            new Proportion(1, 2), summary.Causes.Single(c => c.Id == WeightedCause.SomethingElse).Reports);
    }

    [Fact]
    public void Unknown_cause_counts_once_as_something_else()
    {
        EvidenceSummary summary = Of(("hose", ProofLevel.Confirmed), ("mice", ProofLevel.Proved), ("mice", ProofLevel.Refuted));

        Assert.Equal(
            new Proportion(2, 3), summary.Causes.Single(c => c.Id == WeightedCause.SomethingElse).Reports);
    }

    [Fact]
    public void Of_equal_causes_the_first_by_id_comes_first_and_one_without_opinion_is_not_estimated()
    {
        EvidenceSummary summary = EvidenceSummary.Of(new Dictionary<string, double> { ["b"] = 1, ["c"] = 0, ["a"] = 1 }, 0, []);

        Assert.Equal(["a", "b", "c", WeightedCause.SomethingElse], summary.Causes.Select(c => c.Id));
        Assert.Equal(
            [ShareWording.AuthorsEstimate, ShareWording.AuthorsEstimate, ShareWording.NoReports, ShareWording.NoReports],
            summary.Causes.Select(c => c.Wording));
    }

    [Fact]
    public void Opinion_stays_apart_from_cases()
    {
        CauseEvidence sensor = Of([.. Enumerable.Repeat(("sensor", ProofLevel.Confirmed), 6)]).Causes[0];

        Assert.Equal(new BetaDistribution(1, 2.5), sensor.Opinion);
        Assert.Equal(new BetaDistribution(7, 2.5), sensor.Posterior);
        Assert.Equal(new Proportion(6, 6), sensor.Reports);
        Assert.InRange(sensor.AboveNext!.Value, 0.9, 1);
    }

    [Fact]
    public void Without_cases_the_author_is_named_as_the_source()
    {
        EvidenceSummary summary = Of();

        Assert.All(summary.Causes, c => Assert.Equal(ShareWording.AuthorsEstimate, c.Wording));
        Assert.All(summary.Causes, c => Assert.Null(c.Share));
        Assert.Null(summary.Causes[^1].AboveNext);
    }

    static EvidenceSummary Of(params (string Cause, ProofLevel Level)[] cases) =>
        EvidenceSummary.Of(Beliefs, 0.5, [.. cases.Select(c => new CaseOfCause(c.Cause, c.Level))]);
}
