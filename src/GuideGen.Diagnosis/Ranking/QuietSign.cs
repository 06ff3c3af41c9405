namespace GuideGen.Diagnosis.Ranking;

/// <summary>
/// A finding in the models from which one case each is left out, for all cases that looked for it, did not have it, and whose
/// cause has neither a stated likelihood nor a case with it, or is something else: its likelihoods are then the same but for that
/// of the cause.
/// </summary>
internal sealed class QuietSign
{
    readonly FindingCounts seen;
    readonly FitBasis basis;
    readonly bool isElse;
    readonly double stated;
    readonly Extremes extremes;

    /// <param name="finding">One with stray rates, looked for by some case.</param>
    /// <param name="seen">With every case.</param>
    /// <param name="basis">Of the fit.</param>
    /// <param name="isElse">True for the cases of something else, false for those of causes without a statement.</param>
    public QuietSign(Finding finding, FindingCounts seen, FitBasis basis, bool isElse)
    {
        (this.seen, this.basis, this.isElse) = (seen, basis, isElse);
        double pooled = ModelFit.Pooled(finding, seen, basis.Habit, isElse ? default : new(0, 1, 0));
        stated = isElse ? finding.Likelihoods[^1] : pooled;
        Absent = new(finding.Id, ModelFit.Row(finding, seen, basis, pooled).Map(l => Math.Log(1 - l)));
        extremes = Extremes.Of(Absent.Logs);
    }

    /// <summary>That it was not there; not yet without the case under its own cause.</summary>
    public EvidenceTerm Absent { get; }

    /// <summary>The logarithm under the cause of the case, by the other cases. Causes of one kind have the same.</summary>
    public double Own(int cause)
    {
        int others = -1;
        foreach (Search search in seen.Looking)
            others += search.CountOf(cause);
        return Math.Log(1 - Likelihood.Bound(ModelFit.Unstated(stated, basis, new(0, others, 0))));
    }

    /// <summary>How far it moves two causes against each other, where the cause of the case has a logarithm of its own.</summary>
    public double Spread(int kind, double own) => extremes.Spread(isElse ? Absent.Logs[^1] : Absent.Logs.Usual[kind], own);
}

/// <summary>The least and the greatest value of a row, and those next to them in case one value is replaced.</summary>
internal readonly record struct Extremes(double Least, double NextLeast, double NextMost, double Most)
{
    public static Extremes Of(LikelihoodRow row)
    {
        Extremes found = new(double.MaxValue, double.MaxValue, double.MinValue, double.MinValue);
        foreach (var (value, causes) in row.Values())
            for (int i = 0; i < Math.Min(causes, 2); i++)
                found = found.With(value);
        return found;
    }

    /// <summary>Of the row in which one occurrence of a value is another value.</summary>
    public double Spread(double replaced, double by)
    {
        double least = replaced == Least ? NextLeast : Least, most = replaced == Most ? NextMost : Most;
        return EvidenceTerms.Spread(Math.Min(least, by), Math.Max(most, by));
    }

    Extremes With(double value) => new(
        Math.Min(Least, value),
        Math.Min(NextLeast, Math.Max(Least, value)),
        Math.Max(NextMost, Math.Min(Most, value)),
        Math.Max(Most, value));
}
