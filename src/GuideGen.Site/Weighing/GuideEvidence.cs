using System.Collections.Frozen;
using System.Collections.Immutable;
using System.Globalization;
using GuideGen.Codes;
using GuideGen.Diagnosis.Evidence;
using GuideGen.Diagnosis.Proof;
using GuideGen.Guide.Model;
using GuideGen.Guide.Text;

namespace GuideGen.Site.Weighing;

/// <summary>What the cases say of each code, symptom and fault, worked out when somebody asks.</summary>
public sealed class GuideEvidence
{
    readonly GuideWeights weights;
    readonly ILookup<string, SolvedCase> casesByFault;
    readonly FrozenDictionary<TroubleCode, Sign> codes;
    readonly FrozenDictionary<string, Sign> symptoms;

    /// <summary>All that is known of a code or a symptom.</summary>
    /// <param name="Beliefs">The author's opinion about each fault that lists the sign: how common it is, as far as it shows the sign.</param>
    /// <param name="Reports">The cases with the sign, newest first.</param>
    sealed record Sign(IEnumerable<(string Fault, double Belief)> Beliefs, IEnumerable<SolvedCase> Reports, Lazy<SignEvidence> Evidence);

    public GuideEvidence(GuideContent guide, GuideWeights weights)
    {
        this.weights = weights;
        ImmutableArray<SolvedCase> newestFirst =
            [.. guide.Cases.OrderByDescending(c => c.Date.Value).ThenBy(c => c.Origin.Slug, StringComparer.Ordinal)];
        casesByFault = newestFirst.ToLookup(c => c.Found.Value, StringComparer.Ordinal);
        codes = BySign(guide, newestFirst, f => f.Codes, c => c.Codes.Select(k => k.Key.Value));
        symptoms = BySign(guide, newestFirst, f => f.Symptoms, c => c.Symptoms.Present.Select(s => s.Value));
    }

    /// <returns>Null if neither a fault nor a case names the code.</returns>
    public SignEvidence? Of(TroubleCode code) => codes.GetValueOrDefault(code)?.Evidence.Value;

    /// <returns>Null if neither a fault nor a case names the symptom.</returns>
    public SignEvidence? OfSymptom(string slug) => symptoms.GetValueOrDefault(slug)?.Evidence.Value;

    /// <summary>Of all that <see cref="Of(TroubleCode)"/> follows from.</summary>
    internal Digest DigestOf(TroubleCode code) => DigestOf(codes.GetValueOrDefault(code));

    /// <summary>Of all that <see cref="OfSymptom"/> follows from.</summary>
    internal Digest DigestOfSymptom(string slug) => DigestOf(symptoms.GetValueOrDefault(slug));

    public FaultEvidence Of(Fault fault)
    {
        var cases = casesByFault[fault.Origin.Slug].ToList();
        var proved = cases.Where(c => LevelOf(c).Counts()).ToList();
        return new FaultEvidence(
            [.. Enum.GetValues<ProofLevel>().Select(l => cases.Count(c => LevelOf(c) == l))],
            MedianOfReports.Of(proved.Select(c => c.Work.Minutes?.Value).OfType<double>()),
            MedianOfReports.Of(proved.Select(c => c.Work.Spend?.Value).OfType<double>()),
            VainAttempts.In(cases));
    }

    public ProofLevel LevelOf(SolvedCase solved) => weights.Proofs[solved.Origin.Slug].Level;

    FrozenDictionary<TSign, Sign> BySign<TSign>(
        GuideContent guide,
        ImmutableArray<SolvedCase> cases,
        Func<Fault, ImmutableArray<KeyValuePair<Located<TSign>, Located<Likelihood>>>> listed,
        Func<SolvedCase, IEnumerable<TSign>> seen)
        where TSign : notnull
    {
        var beliefs = guide.Faults.All
            .SelectMany(f => listed(f).Select(s => (Sign: s.Key.Value, Fault: f.Origin.Slug, Belief: f.Belief.Value * s.Value.Value.Value)))
            .ToLookup(b => b.Sign, b => (b.Fault, b.Belief));
        var reports = cases.SelectMany(c => seen(c).Distinct().Select(s => (Sign: s, Case: c))).ToLookup(r => r.Sign, r => r.Case);
        return beliefs.Select(b => b.Key).Union(reports.Select(r => r.Key))
            .ToFrozenDictionary(s => s, s => SignOf(beliefs[s], reports[s]));
    }

    Sign SignOf(IEnumerable<(string Fault, double Belief)> beliefs, IEnumerable<SolvedCase> reports) =>
        new(beliefs, reports, new(() => Of(beliefs.ToDictionary(b => b.Fault, b => b.Belief), [.. reports])));

    static Digest DigestOf(Sign? sign)
    {
        if (sign is null) return default;
        using var all = new Digester();
        foreach (var (fault, belief) in sign.Beliefs) all.Add(fault).Add(belief.ToString("R", CultureInfo.InvariantCulture));
        foreach (var report in sign.Reports) all.Add(report.Origin.Face);
        return all.Take();
    }

    SignEvidence Of(Dictionary<string, double> beliefs, ImmutableArray<SolvedCase> reports)
    {
        foreach (var found in reports.Where(r => LevelOf(r).Counts()).Select(r => r.Found.Value)) beliefs.TryAdd(found, 0);
        var elseBelief = AuthoredModel.ElseShare * beliefs.Values.Sum();
        EvidenceSummary Sum(IEnumerable<SolvedCase> cases) =>
            EvidenceSummary.Of(beliefs, elseBelief, [.. cases.Select(c => new CaseOfCause(c.Found.Value, LevelOf(c)))]);
        return new SignEvidence(
            Sum(reports),
            [.. reports.Where(r => LevelOf(r).Counts() || LevelOf(r) == ProofLevel.Refuted)],
            [.. reports.GroupBy(r => r.Variant.Value).OrderBy(g => g.Key, StringComparer.Ordinal).Select(g => KeyValuePair.Create(g.Key, Sum(g)))],
            VainAttempts.In(reports));
    }
}
