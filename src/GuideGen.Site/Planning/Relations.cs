using GuideGen.Codes;
using GuideGen.Guide.Model;
using GuideGen.Guide.Text;

namespace GuideGen.Site.Planning;

/// <summary>A fault and how likely it shows something.</summary>
public readonly record struct LikelyFault(Fault Fault, Likelihood Likelihood);

/// <summary>What hangs together the other way round: from a code to its faults, from a part to the checks on it.</summary>
public sealed class Relations
{
    /// <param name="counts">Whether a case is proved well enough to count.</param>
    public Relations(GuideContent guide, Func<SolvedCase, bool> counts)
    {
        var proved = guide.Cases.Where(counts).ToList();
        FaultsByCode = Likely(guide, proved, f => f.Codes, c => c.Codes.Select(k => k.Key.Value));
        FaultsBySymptom = Likely(guide, proved, f => f.Symptoms, c => c.Symptoms.Present.Select(s => s.Value));
        FaultsByPart = guide.Faults.All.SelectMany(f => f.Parts.Select(p => (p.Value, f))).ToLookup(p => p.Value, p => p.f);
        FaultsByCheck = guide.Faults.All.SelectMany(f => f.Checks.Select(c => (c.Value, f))).ToLookup(c => c.Value, c => c.f);
        ChecksByPart = guide.Checks.All.SelectMany(c => c.Parts.Select(p => (p.Value, c))).ToLookup(p => p.Value, p => p.c);
        TreesBySymptom = guide.Trees.All.ToLookup(t => t.Symptom.Value);
        TreesByCheck = guide.Trees.All.SelectMany(t => t.Nodes.Select(n => n.Value).OfType<DoNode>().Select(d => (d.Check.Value, t)).Distinct()).ToLookup(d => d.Value, d => d.t);
        TreesByFault = guide.Trees.All.SelectMany(t => t.Nodes.Select(n => n.Value).OfType<FaultNode>().Select(d => (d.Fault.Value, t)).Distinct()).ToLookup(d => d.Value, d => d.t);
        CasesByFault = guide.Cases.OrderByDescending(c => c.Date.Value).ThenBy(c => c.Origin.Slug, StringComparer.Ordinal).ToLookup(c => c.Found.Value);
    }

    /// <summary>
    /// Faults that set the code, in order of evidence: the proved cases that had the code and found the fault, and the
    /// author's belief in the fault, which counts as so many cases, as far as the fault sets the code.
    /// </summary>
    public ILookup<TroubleCode, LikelyFault> FaultsByCode { get; }

    /// <inheritdoc cref="FaultsByCode"/>
    public ILookup<string, LikelyFault> FaultsBySymptom { get; }

    public ILookup<string, Fault> FaultsByPart { get; }

    public ILookup<string, Fault> FaultsByCheck { get; }

    public ILookup<string, Check> ChecksByPart { get; }

    public ILookup<string, Tree> TreesBySymptom { get; }

    public ILookup<string, Tree> TreesByCheck { get; }

    public ILookup<string, Tree> TreesByFault { get; }

    /// <summary>Newest first.</summary>
    public ILookup<string, SolvedCase> CasesByFault { get; }

    static ILookup<TKey, LikelyFault> Likely<TKey>(
        GuideContent guide,
        IReadOnlyCollection<SolvedCase> proved,
        Func<Fault, IEnumerable<KeyValuePair<Located<TKey>, Located<Likelihood>>>> signs,
        Func<SolvedCase, IEnumerable<TKey>> seen)
        where TKey : notnull
    {
        var reports = proved.SelectMany(c => seen(c).Select(s => (Found: c.Found.Value, Sign: s))).CountBy(r => r).ToDictionary();
        return guide.Faults.All
            .SelectMany(f => signs(f).Select(s => (Sign: s.Key.Value, Likely: new LikelyFault(f, s.Value.Value))))
            .OrderByDescending(s => Evidence(s.Sign, s.Likely))
            .ThenBy(s => s.Likely.Fault.Origin.Slug, StringComparer.Ordinal)
            .ToLookup(s => s.Sign, s => s.Likely);

        double Evidence(TKey sign, LikelyFault likely) =>
            (likely.Fault.Belief.Value * likely.Likelihood.Value) + reports.GetValueOrDefault((likely.Fault.Origin.Slug, sign));
    }
}
