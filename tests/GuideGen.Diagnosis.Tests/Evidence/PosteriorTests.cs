using CsCheck;
using GuideGen.Diagnosis.Evidence;

namespace GuideGen.Diagnosis.Tests.Evidence;

public sealed class PosteriorTests
{
    // Source: A. Gelman et al. 2013, Bayesian Data Analysis, 3rd ed., 2.4: 437 girls of 980 births, uniform prior. The upper
    // limit's last two digits come from Simpson's rule over the density with 200,000 steps.
    [Fact]
    public void Uniform_prior_gives_the_books_posterior()
    {
        BetaDistribution posterior = TwoWay(0.5, 2);

        Assert.Equal(new(438, 544), posterior);
        Assert.Equal(0.44602851, posterior.Mean, 5e-9);
        Assert.Equal(0.41506549, posterior.Interval().Low, 5e-9);
        Assert.Equal(0.47719977, posterior.Interval().High, 5e-9);
    }

    // Source: the same book, Table 2.1 (from memory, recomputed).
    [Theory]
    [InlineData(2, 0.446, 0.415, 0.477)]
    [InlineData(20, 0.447, 0.416, 0.478)]
    [InlineData(100, 0.450, 0.420, 0.479)]
    [InlineData(200, 0.453, 0.424, 0.481)]
    public void Prior_worth_some_cases_gives_the_books_table(double worth, double median, double low, double high)
    {
        BetaDistribution posterior = TwoWay(0.485, worth);

        Assert.Equal(median, posterior.Median, 6e-4);
        Assert.Equal(low, posterior.Interval().Low, 6e-4);
        Assert.Equal(high, posterior.Interval().High, 6e-4);
    }

    // Source: the same book, 3.4, a poll of 1447 (from memory, recomputed with SciPy 1.10.1).
    [Fact]
    public void Three_way_poll_gives_the_books_posterior()
    {
        CausePosterior poll = new([new("a", 1, 727), new("b", 1, 583), new("c", 1, 137)]);

        Assert.Equal(new BetaDistribution(728, 722), poll.Share("a"));
        Assert.Equal(0.502069, poll.Mean("a"), 5e-7);
        Assert.Equal(0.402759, poll.Mean("b"), 5e-7);
        Assert.Equal(0.095172, poll.Mean("c"), 5e-7);
        Assert.Equal(0.999966, poll.ChanceAbove("a", "b"), 5e-7);
    }

    // Source: SciPy 1.10.1 and MathNet.Numerics 5.0.0 on a prior of 40/30/20/10 % worth 4 cases and 7/2/0/1 cases.
    [Theory]
    [InlineData("a", 0.614286, 0.357061, 0.840639)]
    [InlineData("b", 0.228571, 0.057835, 0.471911)]
    [InlineData("c", 0.057143, 0.000698, 0.219825)]
    [InlineData("d", 0.100000, 0.006761, 0.295808)]
    public void Author_and_cases_together_agree_with_libraries(string cause, double mean, double low, double high)
    {
        CausePosterior posterior = FourCauses();

        Assert.Equal(mean, posterior.Mean(cause), 5e-7);
        Assert.Equal(low, posterior.Share(cause)!.Value.Interval().Low, 6e-7);
        Assert.Equal(high, posterior.Share(cause)!.Value.Interval().High, 6e-7);
    }

    // Source: SciPy 1.10.1, the same example.
    [Fact]
    public void Opinion_order_and_eighty_per_cent_agree_with_libraries()
    {
        CausePosterior posterior = FourCauses();

        Assert.Equal(0.4, posterior.Opinion("a")!.Value.Mean, 1e-12);
        Assert.Equal(0.0478, posterior.Opinion("a")!.Value.Interval().Low, 5.1e-5);
        Assert.Equal(0.8421, posterior.Opinion("a")!.Value.Interval().High, 5.1e-5);
        Assert.Equal(0.446158, posterior.Share("a")!.Value.Interval(0.8).Low, 6e-7);
        Assert.Equal(0.774694, posterior.Share("a")!.Value.Interval(0.8).High, 6e-7);
        Assert.Equal(0.952068, posterior.ChanceAbove("a", "b"), 5e-7);
        Assert.Equal(0.825805, posterior.ChanceAbove("b", "d"), 5e-7);
    }

    // Source: arithmetic of additive smoothing, (3, 1, 0, 0) with 1, 1/2 and 1/4 added to each.
    [Theory]
    [InlineData(1, 0.5, 0.25, 0.125)]
    [InlineData(0.5, 0.583333, 0.25, 0.083333)]
    [InlineData(0.25, 0.65, 0.25, 0.05)]
    public void Equal_beliefs_smooth_the_counts(double belief, double first, double second, double rest)
    {
        CausePosterior posterior =
            new([new("a", belief, 3), new("b", belief, 1), new("c", belief, 0), new("d", belief, 0)]);

        Assert.Equal(first, posterior.Mean("a"), 5e-7);
        Assert.Equal(second, posterior.Mean("b"), 5e-7);
        Assert.Equal(rest, posterior.Mean("c"), 5e-7);
    }

    [Fact]
    public void Cause_without_belief_or_cases_has_no_share()
    {
        CausePosterior posterior = new([new("there", 2, 1), new("not-fitted", 0, 0)]);

        Assert.Equal(0, posterior.Mean("not-fitted"));
        Assert.Null(posterior.Share("not-fitted"));
        Assert.Null(posterior.Share("there"));
        Assert.Equal(1, posterior.ChanceAbove("there", "not-fitted"));
        Assert.Equal(0, posterior.ChanceAbove("not-fitted", "there"));
    }

    [Fact]
    public void Where_nobody_has_an_opinion_or_a_case_every_share_is_0_and_all_are_even()
    {
        CausePosterior posterior = new([new("a", 0, 0), new("b", 0, 0)]);

        Assert.Equal(0, posterior.Mean("a"));
        Assert.Equal(0.5, posterior.ChanceAbove("a", "b"));
    }

    [Theory]
    [InlineData(-0.1, 0)]
    [InlineData(0, -1)]
    public void Beliefs_and_cases_are_not_negative(double belief, int cases) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => new CausePosterior([new("a", belief, cases)]));

    [Fact]
    public void Prior_shares_that_do_not_sum_to_1_are_refused() => Assert.Throws<ArgumentException>(() =>
        CausePosterior.FromShares([new("a", 0.5), new("b", 0.4)], 4, new Dictionary<string, int>()));

    [Fact]
    public void Means_sum_to_1_and_chances_of_two_causes_complete_each_other() =>
        Gen.Select(Gen.Double[0.01, 20], Gen.Int[0, 50]).Array[2, 8].Sample(causes =>
        {
            CausePosterior posterior = new(causes.Select((c, i) => new CauseCount($"c{i}", c.Item1, c.Item2)));

            Assert.Equal(1, posterior.Causes.Sum(c => posterior.Mean(c.Id)), 1e-12);
            Assert.Equal(1, posterior.ChanceAbove("c0", "c1") + posterior.ChanceAbove("c1", "c0"), 1e-9);
        });

    static BetaDistribution TwoWay(double share, double worth) => CausePosterior
        .FromShares(
            [new("girl", share), new("boy", 1 - share)],
            worth,
            new Dictionary<string, int> { ["girl"] = 437, ["boy"] = 543 })
        .Share("girl")!.Value;

    static CausePosterior FourCauses() => CausePosterior.FromShares(
        [new("a", 0.4), new("b", 0.3), new("c", 0.2), new("d", 0.1)],
        4,
        new Dictionary<string, int> { ["a"] = 7, ["b"] = 2, ["d"] = 1 });
}
