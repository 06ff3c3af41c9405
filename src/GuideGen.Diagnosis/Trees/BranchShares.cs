using System.Collections.Immutable;

namespace GuideGen.Diagnosis.Trees;

/// <summary>How the vehicles of each cause divide over the branches of a step.</summary>
/// <param name="Shares">By branch and cause; over the branches they sum to 1.</param>
/// <param name="Assumed">By cause: whether any share had to be guessed.</param>
internal sealed record BranchShares(double[][] Shares, bool[] Assumed)
{
    public static BranchShares Of(
        TreeStep step, ImmutableArray<WeightedCause> causes, Dictionary<string, HashSet<string>> leavesBelow)
    {
        double[][] shares = [.. step.Branches.Select(_ => new double[causes.Length])];
        bool[] assumed = new bool[causes.Length];
        for (int c = 0; c < causes.Length; c++)
        {
            double?[] stated = [.. step.Branches.Select(b => b.Chances?.Of(causes[c].Id))];
            bool[] leads = [.. step.Branches.Select(b => leavesBelow[b.Next].Contains(causes[c].Id))];
            assumed[c] = Complete(stated, leads);
            for (int b = 0; b < shares.Length; b++)
                shares[b][c] = stated[b]!.Value;
        }

        return new(shares, assumed);
    }

    /// <summary>Fills what is not stated with the rest and scales the whole to 1; true when there was something to guess.</summary>
    static bool Complete(double?[] stated, bool[] leads)
    {
        double sum = stated.Sum() ?? 0;
        int[] open = [.. Enumerable.Range(0, stated.Length).Where(b => stated[b] is null)];
        int[] takers = [.. open.Where(b => leads[b])];
        if (takers.Length == 0)
            takers = open;
        double rest = Math.Max(0, 1 - sum);
        foreach (int b in open)
            stated[b] = takers.Contains(b) ? rest / takers.Length : 0;
        double whole = stated.Sum()!.Value;
        for (int b = 0; b < stated.Length; b++)
            stated[b] = whole > 0 ? stated[b] / whole : 1.0 / stated.Length;
        return whole == 0 || (takers.Length > 1 && rest > 0);
    }
}
