using System.Globalization;
using GuideGen.Diagnosis.Evidence;
using GuideGen.Diagnosis.Proof;
using GuideGen.Diagnosis.Ranking;
using GuideGen.Site.Weighing;
using Scriban.Runtime;

namespace GuideGen.Site.Views;

/// <summary>The page that says how well the ranking does.</summary>
static class SelfTestView
{
    /// <summary>The side of the plot, in its own units.</summary>
    const double Side = 100;

    public static ScriptObject Of(ViewContext view)
    {
        var weights = view.Guide.Weights;
        var levels = weights.Proofs.Values.Select(p => p.Level).ToList();
        var test = SelfTest.Of(weights);
        var bins = test.BySigns.Reliability.Where(b => b.CameTrue.Total >= Wording.PercentageFrom).ToList();
        return new ScriptObject
        {
            ["name"] = view.Words["sure.title"],
            ["summary"] = view.Words["sure.summary"],
            ["cases"] = view.Fill("sure.cases-text", Text(levels.Count), Text(levels.Count(l => l.Counts())), Text(levels.Count(l => l == ProofLevel.Refuted))),
            ["tried"] = Tried(view, test),
            ["is_tried"] = test.BySigns.First.Total >= Wording.PercentageFrom,
            ["scores"] = new ScriptArray { Row(view, "authors", test.ByAuthor), Row(view, "signs", test.BySigns), Row(view, "checks", test.WithChecks) },
            ["learnt"] = view.Count("sure.learnt", (long)weights.Basis.Worth, view.Number(weights.Basis.Worth), Whole(weights.Basis.Habit.TellsPresent), Whole(weights.Basis.Habit.TellsAbsent)),
            ["bins"] = new ScriptArray(bins.Select(b => Bin(view, b))),
        };
    }

    internal static string Tried(ViewContext view, SelfTest test) =>
        test.IsOfAll ? view.Words["sure.test-text"] : view.Fill("sure.test-some", Text(test.BySigns.First.Total));

    static ScriptObject Row(ViewContext view, string how, LeaveOneOut test) => new()
    {
        ["how"] = view.Words[$"sure.{how}"],
        ["first"] = Share(view, test.First),
        ["first_three"] = Share(view, test.FirstThree),
        ["brier"] = test.Brier?.ToString("0.00", view.Words.Culture),
    };

    static string? Share(ViewContext view, Proportion hits) => hits.Interval() is { } range
        ? view.Fill("sure.share", Text(hits.Count), Text(hits.Total), Whole(range.Low), Whole(range.High))
        : null;

    static ScriptObject Bin(ViewContext view, ReliabilityBin bin)
    {
        var range = bin.CameTrue.Interval()!.Value;
        return new ScriptObject
        {
            ["words"] = view.Fill(
                range.High < 0.005 ? "sure.bin-rare" : "sure.bin",
                Whole(bin.Stated.Low), Whole(bin.Stated.High), Text(bin.CameTrue.Count), Text(bin.CameTrue.Total), Whole(range.Low), Whole(range.High)),
            ["x"] = Place(bin.MeanStated!.Value),
            ["y"] = Place(1 - bin.CameTrue.Share!.Value),
            ["top"] = Place(1 - range.High),
            ["height"] = Place(range.Width),
        };
    }

    static string Place(double share) => Math.Round(share * Side, 1).ToString(CultureInfo.InvariantCulture);

    static string Text(int number) => number.ToString(CultureInfo.InvariantCulture);

    static string Whole(double share) => Math.Round(share * 100).ToString("0", CultureInfo.InvariantCulture);
}
