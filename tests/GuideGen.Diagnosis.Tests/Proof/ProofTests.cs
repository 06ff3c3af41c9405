using GuideGen.Diagnosis.Proof;

namespace GuideGen.Diagnosis.Tests.Proof;

public sealed class ProofTests
{
    static readonly ProofFacts Confirmed = new()
    {
        ShownBefore = true,
        OneChange = true,
        Cleared = true,
        MonitorPasses = 3,
        CodesAfter = CodesAfter.None,
        SymptomGone = true,
        FollowUpDays = 30,
    };

    /// <summary>
    /// Basis: three cycles from California Code of Regulations, title 13, section 1968.2 (d)(2) (from memory); follow-up
    /// and the division into levels are common practice, no source.
    /// </summary>
    public static TheoryData<string, ProofFacts, ProofLevel> Rows { get; } = new()
    {
        { "nothing stated", new(), ProofLevel.Claimed },
        { "all of it", Confirmed, ProofLevel.Confirmed },
        { "distance in place of days", Confirmed with { FollowUpDays = 3, FollowUpKilometres = 1000 }, ProofLevel.Confirmed },
        { "defect measured", Confirmed with { Evidence = PartEvidence.Measured }, ProofLevel.Proved },
        { "old part back", Confirmed with { Evidence = PartEvidence.SwappedBack }, ProofLevel.Proved },
        { "measured but not followed up", Confirmed with { Evidence = PartEvidence.Measured, FollowUpDays = 3 }, ProofLevel.Probable },
        { "several changes", Confirmed with { OneChange = false }, ProofLevel.Probable },
        { "not shown before", Confirmed with { ShownBefore = false }, ProofLevel.Probable },
        { "two monitor passes", Confirmed with { MonitorPasses = 2 }, ProofLevel.Probable },
        { "codes never read", Confirmed with { CodesAfter = CodesAfter.Unread }, ProofLevel.Probable },
        { "permanent code left", Confirmed with { CodesAfter = CodesAfter.Permanent }, ProofLevel.Probable },
        { "pending code, short follow-up", Confirmed with { CodesAfter = CodesAfter.Pending, FollowUpDays = 5 }, ProofLevel.Claimed },
        { "symptom gone a month, nothing else", new() { SymptomGone = true, FollowUpDays = 31 }, ProofLevel.Probable },
        { "symptom gone a week", new() { SymptomGone = true, FollowUpDays = 7 }, ProofLevel.Claimed },
        { "symptom gone for exactly a month", new() { SymptomGone = true, FollowUpDays = 30 }, ProofLevel.Probable },
        { "nothing said of codes is not 'no code ever'", new() { ShownBefore = true, OneChange = true, SymptomGone = true, FollowUpDays = 30 }, ProofLevel.Probable },
        { "cleared only", new() { Cleared = true, OneChange = true }, ProofLevel.Claimed },
        { "monitor passed once", new() { MonitorPasses = 1, CodesAfter = CodesAfter.None }, ProofLevel.Probable },
        { "code back", Confirmed with { CodesAfter = CodesAfter.Back }, ProofLevel.Refuted },
        { "symptom back", Confirmed with { SymptomGone = false }, ProofLevel.Refuted },
        {
            "no code ever",
            Confirmed with { HadCode = false, MonitorPasses = 0, Cleared = false, CodesAfter = CodesAfter.Unread },
            ProofLevel.Confirmed
        },
        { "came every fifth cycle, 13 quiet", Confirmed with { Recurrence = 0.2, CyclesSince = 13 }, ProofLevel.Probable },
        { "came every fifth cycle, 14 quiet", Confirmed with { Recurrence = 0.2, CyclesSince = 14 }, ProofLevel.Confirmed },
    };

    [Theory]
    [MemberData(nameof(Rows))]
    public void Level_follows_from_the_facts(string what, ProofFacts facts, ProofLevel level) =>
        Assert.True(ProofOfCase.Of(facts).Level == level, $"{what}: {ProofOfCase.Of(facts).Level}");

    [Fact]
    public void What_is_missing_for_the_next_level_is_named()
    {
        Assert.Equal(
            [ProofNeed.OneChange, ProofNeed.FollowUp],
            ProofOfCase.Of(Confirmed with { OneChange = false, FollowUpDays = 2 }).MissingForNext);
        Assert.Equal([ProofNeed.IndependentEvidence], ProofOfCase.Of(Confirmed).MissingForNext);
        Assert.Equal([ProofNeed.SomeVerification], ProofOfCase.Of(new()).MissingForNext);
        Assert.Empty(ProofOfCase.Of(Confirmed with { Evidence = PartEvidence.Measured }).MissingForNext);
    }

    [Theory]
    [InlineData(ProofLevel.Proved, true)]
    [InlineData(ProofLevel.Confirmed, true)]
    [InlineData(ProofLevel.Probable, false)]
    [InlineData(ProofLevel.Refuted, false)]
    public void Only_the_two_highest_levels_count(ProofLevel level, bool counts) => Assert.Equal(counts, level.Counts());

    // Source: ln 0.05 / ln(1 - f); near the rule of three of J. Hanley, A. Lippman-Hand 1983, JAMA 249:1743-1745.
    [Theory]
    [InlineData(0.5, 5)]
    [InlineData(1.0 / 3, 8)]
    [InlineData(0.25, 11)]
    [InlineData(0.2, 14)]
    [InlineData(0.1, 29)]
    [InlineData(0.05, 59)]
    [InlineData(1, 1)]
    public void Quiet_cycles_follow_from_how_often_it_came(double recurrence, int cycles) =>
        Assert.Equal(cycles, Intermittent.CyclesNeeded(recurrence));

    [Fact]
    public void Risk_met_exactly_needs_no_further_cycle() => Assert.Equal(3, Intermittent.CyclesNeeded(0.5, 0.125));

    // Source: Bayes' rule; recomputed with SciPy 1.10.1.
    [Theory]
    [InlineData(0.5, 3, 0.949153)]
    [InlineData(0.2, 3, 0.820056)]
    [InlineData(0.2, 10, 0.956007)]
    [InlineData(0.1, 30, 0.982157)]
    public void Quiet_cycles_raise_the_chance_that_it_is_cured(double recurrence, int cycles, double chance) =>
        Assert.Equal(chance, Intermittent.ChanceCured(0.7, recurrence, cycles), 5e-7);

    public static TheoryData<string, ProofFacts, ProofLevel, ProofNeed[]> Gaps { get; } = new()
    {
        { "nothing stated", new(), ProofLevel.Probable, [ProofNeed.SomeVerification] },
        { "several changes", Confirmed with { OneChange = false }, ProofLevel.Confirmed, [ProofNeed.OneChange] },
        { "several changes, nothing measured", Confirmed with { OneChange = false }, ProofLevel.Proved, [ProofNeed.OneChange, ProofNeed.IndependentEvidence] },
        { "several changes, measured", Confirmed with { OneChange = false, Evidence = PartEvidence.Measured }, ProofLevel.Proved, [ProofNeed.OneChange] },
        { "nothing measured", Confirmed, ProofLevel.Proved, [ProofNeed.IndependentEvidence] },
        { "code back", Confirmed with { CodesAfter = CodesAfter.Back }, ProofLevel.Claimed, [ProofNeed.NoCodes] },
        { "code back, for the highest but one", Confirmed with { CodesAfter = CodesAfter.Back }, ProofLevel.Confirmed, [ProofNeed.NoCodes] },
        { "symptom back", Confirmed with { SymptomGone = false }, ProofLevel.Claimed, [ProofNeed.SymptomGone] },
        { "both back", Confirmed with { CodesAfter = CodesAfter.Back, SymptomGone = false }, ProofLevel.Claimed, [ProofNeed.NoCodes, ProofNeed.SymptomGone] },
    };

    [Theory]
    [MemberData(nameof(Gaps))]
    public void What_keeps_a_case_from_a_level_is_named(string what, ProofFacts facts, ProofLevel level, ProofNeed[] needs) =>
        Assert.True(ProofOfCase.Lacks(facts, level).SequenceEqual(needs), $"{what}: {string.Join(' ', ProofOfCase.Lacks(facts, level))}");

    [Theory]
    [InlineData(0)]
    [InlineData(1.01)]
    public void A_recurrence_is_a_share_above_0(double recurrence) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Intermittent.CyclesNeeded(recurrence));

    [Fact]
    public void A_level_lacks_something_just_where_it_is_not_reached() =>
        Assert.All(
            from facts in new ProofFacts[] { new(), Confirmed, Confirmed with { Evidence = PartEvidence.Measured }, Confirmed with { OneChange = false }, Confirmed with { CodesAfter = CodesAfter.Back }, Confirmed with { SymptomGone = false } }
            from level in Enum.GetValues<ProofLevel>()
            select (facts, level),
            c => Assert.Equal(ProofOfCase.Of(c.facts).Level >= c.level, ProofOfCase.Lacks(c.facts, c.level).IsEmpty));
}
