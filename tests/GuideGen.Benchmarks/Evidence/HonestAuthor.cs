using System.Globalization;
using GuideGen.Diagnosis.Evidence;
using MathNet.Numerics.Distributions;

namespace GuideGen.Benchmarks.Evidence;

/// <summary>
/// A guide whose author knows as much as he claims: an opinion worth k cases means that the truth lies around it as a
/// Dirichlet distribution says, and the true shares are drawn from just that. Then owners report.
/// </summary>
static class HonestAuthor
{
    public static IReadOnlyDictionary<double, List<Held>> Try(int seed, params IReadOnlyList<double> nominals)
    {
        var random = new Random(seed);
        var weights = Enumerable.Range(0, random.Next(5, 14)).Select(_ => -Math.Log(1 - random.NextDouble())).ToList();
        var worth = 2 + (28 * random.NextDouble());
        double[] beliefs = [.. weights.Select(w => worth * w / weights.Sum())];
        var truth = Dirichlet.Sample(random, beliefs);
        var counts = Multinomial.Sample(random, truth, random.Next(5, 81));
        var posterior = new CausePosterior(beliefs.Select((b, i) => new CauseCount(i.ToString(CultureInfo.InvariantCulture), b, counts[i])));
        return nominals.ToDictionary(n => n, n => posterior.Causes
            .Select((c, i) => new Held(truth[i], posterior.Share(c.Id)!.Value.Interval(n).Contains(truth[i]))).ToList());
    }
}
