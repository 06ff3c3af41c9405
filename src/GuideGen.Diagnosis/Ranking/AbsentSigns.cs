using System.Collections.Immutable;

namespace GuideGen.Diagnosis.Ranking;

/// <summary>What it says that nothing was there of what was looked for, summed once.</summary>
internal sealed class AbsentSigns
{
    readonly ImmutableArray<EvidenceTerm>[] terms;
    readonly double[] sum;

    /// <param name="terms">By unit of a model; empty for one that says nothing.</param>
    /// <param name="hypotheses">Their number.</param>
    public AbsentSigns(ImmutableArray<EvidenceTerm>[] terms, int hypotheses)
    {
        this.terms = terms;
        sum = EvidenceTerms.Sum(terms.SelectMany(t => t), hypotheses);
    }

    /// <summary>The logarithms by hypothesis, without some units.</summary>
    public double[] Without(IEnumerable<int> units)
    {
        double[] left = EvidenceTerms.Sum(units.SelectMany(u => terms[u]), sum.Length);
        for (int h = 0; h < left.Length; h++)
            left[h] = sum[h] - left[h];
        return left;
    }
}
