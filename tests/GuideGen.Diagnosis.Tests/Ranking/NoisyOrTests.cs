using CsCheck;
using GuideGen.Diagnosis.Ranking;

namespace GuideGen.Diagnosis.Tests.Ranking;

public sealed class NoisyOrTests
{
    static readonly string[] Names = ["cold", "flu", "malaria"];

    // Source: S. Russell, P. Norvig, Artificial Intelligence: a modern approach, the noisy-OR table of fever with
    // inhibitors 0.6, 0.2, 0.1 (from memory, recomputed); the last column with a leak of 0.02.
    [Theory]
    [InlineData("", 0, 0.02)]
    [InlineData("malaria", 0.9, 0.902)]
    [InlineData("flu", 0.8, 0.804)]
    [InlineData("flu malaria", 0.98, 0.9804)]
    [InlineData("cold", 0.4, 0.412)]
    [InlineData("cold malaria", 0.94, 0.9412)]
    [InlineData("cold flu", 0.88, 0.8824)]
    [InlineData("cold flu malaria", 0.988, 0.98824)]
    public void Published_table_is_met(string present, double without, double with)
    {
        int[] causes = [.. present.Split(' ', StringSplitOptions.RemoveEmptyEntries).Select(n => Array.IndexOf(Names, n))];

        Assert.Equal(without, NoisyOr.Chance(Fever(0), causes), 1e-12);
        Assert.Equal(with, NoisyOr.Chance(Fever(0.02), causes), 1e-12);
    }

    // Source: F. J. Diez, M. J. Druzdzel 2006, TR CISIAD-06-01, for the two readings of a leak.
    [Fact]
    public void Link_stated_with_its_leak_is_turned_into_one_without() =>
        Assert.Equal(0.777778, NoisyOr.LinkWithoutLeak(0.8, 0.1), 5e-7);

    [Fact]
    public void Second_fault_is_believed_only_when_the_first_leaves_something_unexplained()
    {
        Hypothesis[] faults = [new("hose", 0.1), new("sensor", 0.05)];
        NoisyOrFinding whistle = new("whistle", 0.01, [0.8, 0]), code = new("code", 0.01, [0, 0.9]);

        NoisyOr one = NoisyOr.Of([.. faults], [whistle, code], new Dictionary<string, bool> { ["whistle"] = true, ["code"] = false });
        NoisyOr both = NoisyOr.Of([.. faults], [whistle, code], new Dictionary<string, bool> { ["whistle"] = true, ["code"] = true });

        Assert.Equal(["hose"], one.Likeliest[0].Faults);
        Assert.Equal(["hose", "sensor"], both.Likeliest[0].Faults);
    }

    [Fact]
    public void Sets_agree_with_a_sum_over_all_combinations() =>
        Gen.Select(
            Gen.Double[0.01, 0.9].Array[5], Gen.Double[0.01, 0.4].Array[3], Gen.Double[0, 0.9].Array[15], Gen.Bool.Array[3])
            .Sample((priors, leaks, links, seen) =>
            {
                Hypothesis[] faults = [.. priors.Select((p, i) => new Hypothesis($"f{i}", p))];
                NoisyOrFinding[] findings = [.. leaks.Select((l, f) => new NoisyOrFinding($"s{f}", l, [.. links[(5 * f)..(5 * f + 5)]]))];
                double total = 0, first = 0;
                for (int set = 0; set < 32; set++)
                {
                    int[] members = [.. Enumerable.Range(0, 5).Where(i => (set >> i & 1) == 1)];
                    double weight = Enumerable.Range(0, 5).Aggregate(1.0, (w, i) => w * (members.Contains(i) ? priors[i] : 1 - priors[i]));
                    for (int f = 0; f < 3; f++)
                        weight *= seen[f] ? NoisyOr.Chance(findings[f], members) : 1 - NoisyOr.Chance(findings[f], members);
                    total += weight;
                    first += members.Contains(0) ? weight : 0;
                }

                NoisyOr result = NoisyOr.Of([.. faults], [.. findings], seen.Select((s, f) => (s, f)).ToDictionary(s => $"s{s.f}", s => s.s));

                Assert.Equal(first / total, result.Causes.Single(c => c.Id == "f0").Probability, 1e-9);
                Assert.Equal(5, result.MostAtOnce);
            });

    [Fact]
    public void Beyond_the_exact_limit_sets_are_cut_at_three()
    {
        Hypothesis[] faults = [.. Enumerable.Range(0, 40).Select(i => new Hypothesis($"f{i:00}", 0.02))];
        NoisyOrFinding finding = new("s", 0.01, [.. faults.Select((_, i) => i == 7 ? 0.9 : 0.05)]);

        NoisyOr result = NoisyOr.Of([.. faults], [finding], new Dictionary<string, bool> { ["s"] = true });

        Assert.Equal(3, result.MostAtOnce);
        Assert.Equal("f07", result.Causes[0].Id);
        Assert.All(result.Likeliest, s => Assert.InRange(s.Faults.Length, 0, 3));
    }

    [Theory]
    [InlineData(18, 18)]
    [InlineData(19, 3)]
    public void Every_set_of_up_to_eighteen_faults_is_counted(int faults, int most) => Assert.Equal(
        most,
        NoisyOr.Of(
            [.. Enumerable.Range(0, faults).Select(i => new Hypothesis($"f{i:00}", 0.02))],
            [new("s", 0.01, [.. Enumerable.Repeat(0.05, faults)])],
            new Dictionary<string, bool> { ["s"] = true }).MostAtOnce);

    [Fact]
    public void Equal_sets_go_by_id()
    {
        NoisyOr result = NoisyOr.Of(
            [new("b", 0.1), new("a", 0.1)], [new("s", 0.01, [0.5, 0.5])], new Dictionary<string, bool> { ["s"] = true });

        Assert.Equal(["a", "b"], result.Likeliest.Where(s => s.Faults.Length == 1).Select(s => s.Faults[0]));
    }

    [Fact]
    public void Finding_that_nothing_explains_is_left_to_the_leak()
    {
        NoisyOr result = NoisyOr.Of(
            [new("hose", 0.1)], [new("s", 0, [0])], new Dictionary<string, bool> { ["s"] = true });

        Assert.Equal(0.1, result.Causes[0].Probability, 1e-12);
        Assert.Empty(result.Likeliest[0].Faults);
    }

    static NoisyOrFinding Fever(double leak) => new("fever", leak, [0.4, 0.8, 0.9]);
}
