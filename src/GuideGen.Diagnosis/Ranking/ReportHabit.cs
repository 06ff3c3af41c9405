namespace GuideGen.Diagnosis.Ranking;

/// <summary>
/// How often owners tell of something that was there, and of something that was not. Silence then says something too:
/// taking only what is told, every share would drift towards 1 (R. Little, D. Rubin 2002, Statistical Analysis with
/// Missing Data, 2nd ed., chapter 15, nonignorable missing data).
/// </summary>
/// <param name="TellsPresent">Between 0 and 1, both excluded.</param>
/// <param name="TellsAbsent">Likewise.</param>
public readonly record struct ReportHabit(double TellsPresent, double TellsAbsent)
{
    const double Least = 0.001;
    const int MostSteps = 100;

    /// <summary>From what was told in all, against what the authors' words would have had there.</summary>
    internal static ReportHabit Of(RankingModel authored, CaseCounts counts)
    {
        double present = 0, absent = 0, expectedPresent = 0, expectedAbsent = 0;
        foreach (Finding finding in authored.Findings)
        {
            FindingCounts seen = counts.Of(finding.Id);
            if (seen.IsLookedFor)
                continue;
            foreach (int h in finding.Stated.Where(h => h < finding.Likelihoods.Count - 1))
            {
                Shown told = seen.At(h);
                present += told.Present;
                absent += told.Absent;
                expectedPresent += finding.Likelihoods[h] * counts.CountOf(h);
                expectedAbsent += (1 - finding.Likelihoods[h]) * counts.CountOf(h);
            }
        }

        return new(Share(present, expectedPresent), Share(absent, expectedAbsent));
    }

    /// <summary>
    /// The likelihood to which cases move a stated one: each silent case counts as present as far as that is likely, which
    /// is repeated until it stands still (A. Dempster, N. Laird, D. Rubin 1977, JRSS B 39:1-38).
    /// </summary>
    /// <param name="worth">So many cases the stated likelihood weighs as.</param>
    internal double Shift(double stated, double worth, Shown cases)
    {
        if (cases.Silent == 0)
            return (worth * stated + cases.Present) / (worth + cases.Asked);
        double likelihood = stated;
        for (int step = 0; step < MostSteps; step++)
        {
            double present = cases.Present + cases.Silent * ChancePresent(likelihood);
            double next = (worth * stated + present) / (worth + cases.Asked + cases.Silent);
            if (Math.Abs(next - likelihood) < 1e-13)
                return next;
            likelihood = next;
        }

        return likelihood;
    }

    /// <summary>That it was there and is not told of.</summary>
    double ChancePresent(double likelihood)
    {
        double there = likelihood * (1 - TellsPresent), notThere = (1 - likelihood) * (1 - TellsAbsent);
        return there / (there + notThere);
    }

    static double Share(double told, double expected) => expected == 0 ? 0.5 : Math.Clamp(told / expected, Least, 1 - Least);
}
