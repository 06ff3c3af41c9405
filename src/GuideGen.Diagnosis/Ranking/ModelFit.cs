using System.Collections.Immutable;

namespace GuideGen.Diagnosis.Ranking;

/// <summary>A solved case as the ranking sees it. A cause that the model lacks counts as something else.</summary>
public sealed record SolvedCase(string Id, string Cause, Answers Answers);

/// <summary>
/// An author's model moved by cases. The author's priors are read as equivalent cases, and each of his likelihoods
/// as a share worth <c>worth</c> cases; every case adds one to what it shows. What a case leaves open adds nothing.
/// </summary>
public static class ModelFit
{
    public static RankingModel Of(RankingModel authored, IReadOnlyCollection<SolvedCase> cases, double worth = 4)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(worth);
        CaseTable table = new(authored, cases, worth);
        ImmutableArray<double> priors = [.. authored.Hypotheses.Select((h, i) => h.Prior + table.CountOf(i))];
        return authored.WithPriors(priors) with
        {
            Findings = [.. authored.Findings.Select(table.Move)],
            Groups = [.. authored.Groups.Select(table.Move)],
            Checks = [.. authored.Checks.Select(table.Move)],
        };
    }

    /// <summary>The cases by hypothesis.</summary>
    sealed class CaseTable(RankingModel model, IReadOnlyCollection<SolvedCase> cases, double worth)
    {
        readonly ImmutableArray<ImmutableArray<Answers>> byHypothesis = Sort(model, cases);

        public int CountOf(int hypothesis) => byHypothesis[hypothesis].Length;

        // Reports that only ever name what was there say nothing of how often it is there: their share would drift to 1.
        public Finding Move(Finding finding) => !cases.Any(c => c.Answers.Findings.TryGetValue(finding.Id, out bool present) && !present) ? finding : finding with
        {
            Likelihoods = Likelihood.Bound([.. finding.Likelihoods.Select((l, h) => Shift(
                l, Seen(h, finding.Id, true), Seen(h, finding.Id, true) + Seen(h, finding.Id, false)))]),
        };

        public UncertainCheck Move(UncertainCheck check)
        {
            var moved = MoveTable(
                [.. check.Outcomes.Select(o => o.Likelihoods)],
                (row, answers) => answers.Outcomes.GetValueOrDefault(check.Id) == check.Outcomes[row].Id);
            return check with { Outcomes = [.. check.Outcomes.Select((o, i) => o with { Likelihoods = moved[i] })] };
        }

        public FindingGroup Move(FindingGroup group)
        {
            var moved = MoveTable(
                [.. group.Joint.Select(r => r.Likelihoods)],
                (row, answers) => group.Joint[row].Pattern.Zip(group.Members, (has, member) =>
                    answers.Findings.TryGetValue(member, out bool present) && present == (has == '1')).All(x => x));
            return group with { Joint = [.. group.Joint.Select((r, i) => r with { Likelihoods = moved[i] })] };
        }

        int Seen(int hypothesis, string finding, bool present) =>
            byHypothesis[hypothesis].Count(a => a.Findings.TryGetValue(finding, out bool p) && p == present);

        ImmutableArray<ImmutableArray<double>> MoveTable(
            ImmutableArray<ImmutableArray<double>> rows, Func<int, Answers, bool> shows)
        {
            int[][] counts = [.. rows.Select((row, r) =>
                row.Select((_, h) => byHypothesis[h].Count(a => shows(r, a))).ToArray())];
            return Likelihood.BoundTable([.. rows.Select((row, r) => row.Select((l, h) =>
                Shift(l, counts[r][h], counts.Sum(c => c[h]))).ToImmutableArray())]);
        }

        double Shift(double stated, int seen, int asked) => (worth * stated + seen) / (worth + asked);

        static ImmutableArray<ImmutableArray<Answers>> Sort(RankingModel model, IEnumerable<SolvedCase> cases)
        {
            int last = model.Hypotheses.Length - 1;
            var index = model.Hypotheses.Select((h, i) => (h.Id, i)).ToDictionary(h => h.Id, h => h.i, StringComparer.Ordinal);
            var sorted = cases.ToLookup(c => index.GetValueOrDefault(c.Cause, last), c => c.Answers);
            return [.. model.Hypotheses.Select((_, i) => sorted[i].ToImmutableArray())];
        }
    }
}
