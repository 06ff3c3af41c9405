using GuideGen.Codes;
using GuideGen.Guide.Model;
using GuideGen.Guide.Text;

namespace GuideGen.Site.Planning;

/// <summary>A fault and how likely it shows something.</summary>
public readonly record struct LikelyFault(Fault Fault, Likelihood Likelihood);

/// <summary>What hangs together the other way round: from a code to its faults, from a part to the checks on it.</summary>
public sealed class Relations
{
    public Relations(GuideContent guide)
    {
        FaultsByCode = Likely(guide, f => f.Codes);
        FaultsBySymptom = Likely(guide, f => f.Symptoms.Select(s => new KeyValuePair<Located<string>, Located<Likelihood>>(s.Key, s.Value)));
        FaultsByPart = guide.Faults.All.SelectMany(f => f.Parts.Select(p => (p.Value, f))).ToLookup(p => p.Value, p => p.f);
        FaultsByCheck = guide.Faults.All.SelectMany(f => f.Checks.Select(c => (c.Value, f))).ToLookup(c => c.Value, c => c.f);
        ChecksByPart = guide.Checks.All.SelectMany(c => c.Parts.Select(p => (p.Value, c))).ToLookup(p => p.Value, p => p.c);
        TreesBySymptom = guide.Trees.All.ToLookup(t => t.Symptom.Value);
        TreesByCheck = guide.Trees.All.SelectMany(t => t.Nodes.Select(n => n.Value).OfType<DoNode>().Select(d => (d.Check.Value, t)).Distinct()).ToLookup(d => d.Value, d => d.t);
        TreesByFault = guide.Trees.All.SelectMany(t => t.Nodes.Select(n => n.Value).OfType<FaultNode>().Select(d => (d.Fault.Value, t)).Distinct()).ToLookup(d => d.Value, d => d.t);
        CasesByFault = guide.Cases.OrderByDescending(c => c.Date.Value).ThenBy(c => c.Origin.Slug, StringComparer.Ordinal).ToLookup(c => c.Found.Value);
    }

    /// <summary>Faults that set the code: first what is likeliest given the author's belief and how likely the fault sets it.</summary>
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
        GuideContent guide, Func<Fault, IEnumerable<KeyValuePair<Located<TKey>, Located<Likelihood>>>> signs) =>
        (from f in guide.Faults.All
         from s in signs(f)
         orderby f.Belief.Value * s.Value.Value.Value descending, f.Origin.Slug
         select (s.Key.Value, new LikelyFault(f, s.Value.Value))).ToLookup(s => s.Value, s => s.Item2);
}
