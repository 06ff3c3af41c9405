using System.Diagnostics;
using System.Globalization;
using GuideGen.Diagnosis;
using GuideGen.Diagnosis.Evidence;
using GuideGen.Diagnosis.Ordering;
using GuideGen.Diagnosis.Ranking;
using GuideGen.Guide.Loading;
using GuideGen.Site.Weighing;
using GuideGen.Testing;

namespace GuideGen.Benchmarks.Evidence;

/// <summary>
/// Synthetic guides with a known truth: do the ranges hold it as often as they say, does the ranking find the cause, and
/// what does the order of checks save against the author's list, most common cause first?
/// </summary>
static class EvidenceBenchmark
{
    const int Guides = 2_000;
    const int Vehicles = 20;

    /// <summary>What an author says who is far too sure of himself, in cases.</summary>
    const double TooMuch = 40;

    static readonly double[] Nominals = [0.95, 0.80];
    static readonly IntervalMethod[] Methods = [IntervalMethod.Wilson, IntervalMethod.Jeffreys];

    public static async Task Run(TextWriter output)
    {
        var honest = Enumerable.Range(0, Guides).AsParallel().AsOrdered().Select(seed => HonestAuthor.Try(seed, Nominals)).ToList();
        var results = Enumerable.Range(0, Guides).AsParallel().AsOrdered().Select(Try).ToList();
        await output.WriteLineAsync(CoverageTable.Head);
        foreach (var (method, nominal) in Methods.SelectMany(m => Nominals.Select(n => (m, n))))
        {
            await output.WriteLineAsync(CoverageTable.EvenRow($"{method}, cases alone, true shares spread evenly", nominal, method));
            await output.WriteLineAsync(CoverageTable.Row($"{method}, cases alone, the guides' causes", nominal, results.SelectMany(r => r.Alone[(method, nominal)])));
        }

        foreach (var nominal in Nominals)
        {
            await output.WriteLineAsync(CoverageTable.Row("estimate and cases, author as good as the worth he states", nominal, honest.SelectMany(h => h[nominal])));
            await output.WriteLineAsync(CoverageTable.Row("estimate and cases, author wrong by a factor of two, states 10 cases", nominal, results.SelectMany(r => r.Together[(SyntheticGuide.AuthorsWorth, nominal)])));
            await output.WriteLineAsync(CoverageTable.Row("estimate and cases, the same author, states 40 cases", nominal, results.SelectMany(r => r.Together[(TooMuch, nominal)])));
        }

        await output.WriteLineAsync("\n| ranked by | true cause first | among the first three |\n| --- | --: | --: |");
        await output.WriteLineAsync(Hits("the author's estimates alone", results.SelectMany(r => r.ByAuthor)));
        await output.WriteLineAsync(Hits("estimates and cases", results.SelectMany(r => r.ByCases)));
        await output.WriteLineAsync(Hits("the truth itself, the best that can be", results.SelectMany(r => r.ByTruth)));
        await output.WriteLineAsync("\n| checks in order of | minutes to the cause | saved |\n| --- | --: | --: |");
        var list = results.SelectMany(r => r.Minutes).Average(m => m.List);
        await output.WriteLineAsync(Saved("the author's list, most common first", list, list));
        await output.WriteLineAsync(Saved("the author's estimates for these signs, per minute", results.SelectMany(r => r.Minutes).Average(m => m.Author), list));
        await output.WriteLineAsync(Saved("estimates and cases for these signs, per minute", results.SelectMany(r => r.Minutes).Average(m => m.Cases), list));
        await output.WriteLineAsync(Demo());
    }

    sealed record Result(
        IReadOnlyDictionary<(IntervalMethod Method, double Nominal), List<Held>> Alone,
        IReadOnlyDictionary<(double Worth, double Nominal), List<Held>> Together,
        IReadOnlyList<int> ByAuthor,
        IReadOnlyList<int> ByCases,
        IReadOnlyList<int> ByTruth,
        IReadOnlyList<(double List, double Author, double Cases)> Minutes);

    static Result Try(int seed)
    {
        var guide = new SyntheticGuide(seed);
        var fitted = ModelFit.Of(guide.Authored, guide.Cases);
        var counts = guide.Cases.CountBy(c => c.Cause).ToDictionary();
        var shares = guide.Authored.Hypotheses.Select((h, i) => (h.Id, True: guide.Shares[i], Seen: new Proportion(counts.GetValueOrDefault(h.Id), guide.Cases.Length))).ToList();
        List<Held> Together(double worth, double nominal)
        {
            var posterior = CausePosterior.FromShares(guide.Opinion, worth, counts);
            return [.. shares.Select(s => new Held(s.True, posterior.Share(s.Id)!.Value.Interval(nominal).Contains(s.True)))];
        }

        var vehicles = Enumerable.Range(0, Vehicles).Select(guide.Draw).ToList();
        return new Result(
            Methods.SelectMany(m => Nominals.Select(n => (Method: m, Nominal: n)))
                .ToDictionary(k => k, k => shares.Select(s => new Held(s.True, s.Seen.Interval(k.Nominal, k.Method)!.Value.Contains(s.True))).ToList()),
            new[] { SyntheticGuide.AuthorsWorth, TooMuch }.SelectMany(w => Nominals.Select(n => (Worth: w, Nominal: n))).ToDictionary(k => k, k => Together(k.Worth, k.Nominal)),
            [.. vehicles.Select(v => Place(guide.Authored, v))],
            [.. vehicles.Select(v => Place(fitted, v))],
            [.. vehicles.Select(v => Place(guide.Truth, v))],
            [.. vehicles.Where(v => v.Cause != WeightedCause.SomethingElse).Select(v => (ByList(guide, v), ByOrder(guide, guide.Authored, v), ByOrder(guide, fitted, v)))]);
    }

    static int Place(RankingModel model, SolvedCase vehicle) =>
        CauseRanking.Of(model, vehicle.Answers).Causes.TakeWhile(c => c.Id != vehicle.Cause).Count();

    static double ByList(SyntheticGuide guide, SolvedCase vehicle)
    {
        var listed = guide.Authored.Hypotheses.SkipLast(1).Select((h, i) => (h.Id, h.Prior, Minutes: guide.Minutes[i])).OrderByDescending(h => h.Prior).ToList();
        return listed.Take(listed.FindIndex(h => h.Id == vehicle.Cause) + 1).Sum(h => h.Minutes);
    }

    static double ByOrder(SyntheticGuide guide, RankingModel model, SolvedCase vehicle)
    {
        var ranking = CauseRanking.Of(model, vehicle.Answers);
        var minutes = model.Hypotheses.SkipLast(1).Select((h, i) => (h.Id, Minutes: guide.Minutes[i])).ToDictionary(h => h.Id, h => h.Minutes);
        var checks = minutes.Select(m => new CauseCheck(m.Key, ranking.ProbabilityOf(m.Key), new Effort(m.Value), [], []));
        var order = CheckOrders.Best(new OrderProblem([.. checks], [], Convention.ConfirmEvery, CostScale.MinutesOnly)).Checks;
        return order.Take(order.IndexOf(vehicle.Cause) + 1).Sum(id => minutes[id]);
    }

    static string Hits(string what, IEnumerable<int> places)
    {
        var all = places.ToList();
        return Line($"| {what} | {all.Average(p => p == 0 ? 100.0 : 0):F1} % | {all.Average(p => p < 3 ? 100.0 : 0):F1} % |");
    }

    static string Saved(string what, double minutes, double list) => Line($"| {what} | {minutes:F1} | {list - minutes:F1} ({(list - minutes) / list * 100:F0} %) |");

    /// <summary>How the ranking does on the demo guide's own cases, and what the trial costs in processor time, warm.</summary>
    static string Demo()
    {
        var guide = GuideLoader.Load(new FolderFiles(Repository.Root)).Guide;
        var weights = GuideWeights.Of(guide);
        var best = double.MaxValue;
        SelfTest? test = null;
        for (var again = 0; again < 5; again++)
        {
            var before = Process.GetCurrentProcess().TotalProcessorTime;
            test = SelfTest.Of(weights);
            best = Math.Min(best, (Process.GetCurrentProcess().TotalProcessorTime - before).TotalMilliseconds);
        }

        return Line($"\n| demo guide | first | first three | Brier |\n| --- | --: | --: | --: |\n| estimates alone | {test!.ByAuthor.First} | {test.ByAuthor.FirstThree} | {test.ByAuthor.Brier:F3} |\n| with cases | {test.BySigns.First} | {test.BySigns.FirstThree} | {test.BySigns.Brier:F3} |\n| with checks | {test.WithChecks.First} | {test.WithChecks.FirstThree} | {test.WithChecks.Brier:F3} |\n\nThe trial of the demo guide takes {best:F0} ms of processor time; variants lean on all with {weights.PoolingWorth}, the words weigh as {weights.Basis.Worth} cases, owners tell {weights.Basis.Habit.TellsPresent:P0} of what is there and {weights.Basis.Habit.TellsAbsent:P0} of what is not.");
    }

    static string Line(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
