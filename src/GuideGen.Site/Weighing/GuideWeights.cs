using System.Collections.Concurrent;
using System.Collections.Frozen;
using System.Collections.Immutable;
using System.Globalization;
using GuideGen.Diagnosis;
using GuideGen.Diagnosis.Evidence;
using GuideGen.Diagnosis.Proof;
using GuideGen.Diagnosis.Ranking;
using GuideGen.Diagnosis.Trees;
using GuideGen.Guide.Model;
using GuideGen.Guide.Text;

namespace GuideGen.Site.Weighing;

/// <summary>The third stage: what the guide's opinions and its solved cases come to, in numbers.</summary>
/// <remarks>How well each case is proved is worked out at once, all else when somebody asks: most pages do not.</remarks>
public sealed class GuideWeights
{
    /// <summary>Causes from this share on decide how to drive and what to beware of. Our choice, no source.</summary>
    public const double Plausible = 0.05;

    readonly GuideContent guide;
    readonly Lazy<FrozenDictionary<string, RankingModel>> byVariant;
    readonly Lazy<FrozenDictionary<string, (bool[] Possible, int[] Cases)>> variants;
    readonly Lazy<Models> models;
    readonly Lazy<FrozenDictionary<string, string>> variantOfCase;
    readonly Lazy<double> worth;
    readonly Lazy<FrozenDictionary<(string Check, string Outcome), CauseChances>> chances;
    readonly Lazy<ILookup<string, string>> faultsOf;
    readonly ConcurrentDictionary<string, ModelIndex> indices = new();
    readonly ConcurrentDictionary<(string Symptom, string? Variant), ImmutableArray<WeightedCause>> causes = new();

    GuideWeights(GuideContent guide, Digest origin)
    {
        (this.guide, Origin) = (guide, origin);
        Proofs = guide.Cases.ToFrozenDictionary(c => c.Origin.Slug, c => CaseProofs.Of(c, guide.Vehicle.DistanceUnit.Value));
        models = new(Weighed);
        worth = new(() => Pooling.ChooseWorth(
            Authored.Hypotheses.ToDictionary(h => h.Id, h => h.Prior),
            [.. guide.Vehicle.Variants.Select(v => CountsOf(v.Key.Value))]));
        variants = new(() => guide.Vehicle.Variants.ToFrozenDictionary(v => v.Key.Value, v => PossibleIn(v.Key.Value)));
        variantOfCase = new(() => guide.Cases.ToFrozenDictionary(c => c.Origin.Slug, c => c.Variant.Value, StringComparer.Ordinal));
        chances = new(() => (
            from check in Fitted.Checks
            from outcome in check.Outcomes
            select KeyValuePair.Create((check.Id, outcome.Id), new CauseChances(Places, outcome.Likelihoods))).ToFrozenDictionary());
        faultsOf = new(() => guide.Faults.All.SelectMany(f => f.Symptoms.Select(s => (Symptom: s.Key.Value, Fault: f.Origin.Slug))).ToLookup(s => s.Symptom, s => s.Fault));
        byVariant = new(() => guide.Vehicle.Variants.ToFrozenDictionary(v => v.Key.Value, v => ForVariant(v.Key.Value)));
    }

    public static GuideWeights Of(GuideContent guide) => Of(guide, BasisOf(guide));

    /// <param name="origin">As <see cref="BasisOf"/> has it.</param>
    public static GuideWeights Of(GuideContent guide, Digest origin) => new(guide, origin);

    /// <inheritdoc cref="BasisOf"/>
    public Digest Origin { get; }

    /// <summary>
    /// Of all that weights follow from. It is less than the frame, so that better words, another price or one more tool on the page of
    /// a fault does not have everything weighed anew.
    /// </summary>
    public static Digest BasisOf(GuideContent guide)
    {
        using var basis = new Digester();
        basis.Add(guide.Common);
        foreach (var origin in guide.Checks.All.Select(c => c.Origin).Concat(guide.Symptoms.All.Select(s => s.Origin)).Concat(guide.Cases.Select(c => c.Origin))) basis.Add(origin.Face);
        foreach (var code in CodeUses.All(guide)) basis.Add(code.ToString());
        foreach (var fault in guide.Faults.All) basis.Add(WeightOf(fault));
        return basis.Take();
    }

    static string WeightOf(Fault fault) => string.Create(
        CultureInfo.InvariantCulture,
        $"{fault.Origin.Slug} {fault.Belief.Value:R} {Signs(fault.Codes)} {Signs(fault.Symptoms)} {string.Join(',', fault.Variants.Select(v => v.Value))}");

    static string Signs<TSign>(ImmutableArray<KeyValuePair<Located<TSign>, Located<Likelihood>>> signs) =>
        string.Join(',', signs.Select(s => string.Create(CultureInfo.InvariantCulture, $"{s.Key.Value}={s.Value.Value.Value:R}")));

    /// <summary>How well each case is proved, by its slug.</summary>
    public FrozenDictionary<string, ProofOfCase> Proofs { get; }

    /// <summary>The cases that count, as the ranking sees them.</summary>
    public ImmutableArray<Diagnosis.Ranking.SolvedCase> Cases => models.Value.Cases;

    /// <summary>The same counted, by the hypotheses of the model.</summary>
    public CaseCounts Counts => models.Value.Counts;

    /// <summary>How much the authors' words weigh against the cases, and what owners pass over.</summary>
    public FitBasis Basis => models.Value.Basis;

    /// <summary>What the authors believe, before any case.</summary>
    public RankingModel Authored => models.Value.Authored;

    /// <summary>The same moved by the cases, over all variants.</summary>
    public RankingModel Fitted => models.Value.Fitted;

    /// <summary>
    /// The fitted model with the shares that causes have in one variant, which lean on all variants together where the
    /// variant has few cases; causes that it cannot have are at 0, and checks that it does not need are left out.
    /// </summary>
    /// <param name="variant">A slug of vehicle.yml; null for any variant.</param>
    public RankingModel Model(string? variant) => variant is null ? Fitted : byVariant.Value[variant];

    /// <summary>The place of each hypothesis in the rows of the models.</summary>
    public FrozenDictionary<string, int> Places => models.Value.Places;

    /// <summary>How likely a check has an outcome under each cause.</summary>
    public CauseChances Chances(string check, string outcome) => chances.Value[(check, outcome)];

    /// <summary>What no cause ever leads to.</summary>
    public CauseChances NoChance => models.Value.NoChance;

    /// <summary>The causes of a symptom, from the faults that list it and something else; they sum to 1. Likeliest first.</summary>
    public ImmutableArray<WeightedCause> CausesOf(string symptom, string? variant = null) =>
        causes.GetOrAdd((symptom, variant), sign => RankedCauses(sign.Symptom, sign.Variant));

    ImmutableArray<WeightedCause> RankedCauses(string symptom, string? variant)
    {
        var answers = Answers.Nothing.With(symptom, true);
        var index = indices.GetOrAdd(variant ?? "", _ => new ModelIndex(Model(variant)));
        var probabilities = CauseRanking.Probabilities(index.Reduced(answers), answers);
        ImmutableArray<WeightedCause> listed =
        [
            .. faultsOf.Value[symptom].Append(WeightedCause.SomethingElse).Select(c => new WeightedCause(c, probabilities[Places[c]])).Where(c => c.Probability > 0)
                .OrderByDescending(c => c.Probability).ThenBy(c => c.Id, StringComparer.Ordinal),
        ];
        var sum = listed.Sum(c => c.Probability);
        return [.. listed.Select(c => c with { Probability = c.Probability / sum })];
    }

    /// <summary>How many cases all variants together weigh as in the shares of one variant.</summary>
    public double PoolingWorth => worth.Value;

    /// <summary>The shares that causes have in one variant.</summary>
    /// <param name="all">What weighs for each hypothesis of <see cref="Fitted"/> over all variants together.</param>
    /// <param name="cases">The variant's own cases of each of them.</param>
    public ImmutableArray<double> SharesIn(string variant, ImmutableArray<double> all, ReadOnlySpan<int> cases) =>
        Pooling.ForVariant(all, PoolingWorth, cases, variants.Value[variant].Possible);

    /// <summary>Slug of the variant that a case is about.</summary>
    public string VariantOf(Diagnosis.Ranking.SolvedCase solved) => variantOfCase.Value[solved.Id];

    /// <summary>Cases of one variant that count, by hypothesis.</summary>
    public ReadOnlySpan<int> CasesOf(string variant) => variants.Value[variant].Cases;

    /// <summary>A cause that the guide does not have counts as something else.</summary>
    public int PlaceOf(string cause) => Places.GetValueOrDefault(cause, Places.Count - 1);

    Models Weighed()
    {
        // Beside what the cases come to, of which the authors' opinion knows nothing.
        var making = Task.Run(() => AuthoredModel.Of(guide));
        var answers = new CaseAnswers([.. CodeUses.All(guide)]);
        ImmutableArray<Diagnosis.Ranking.SolvedCase> cases = [.. guide.Cases.Select(c => answers.Of(c, Proofs[c.Origin.Slug].Level)).OfType<Diagnosis.Ranking.SolvedCase>()];
        var authored = making.GetAwaiter().GetResult();
        var counts = CaseCounts.Of(authored, cases);
        var basis = FitBasis.Of(authored, counts);
        var fitted = ModelFit.Of(authored, counts, basis);
        var places = fitted.Hypotheses.Select((h, i) => (h.Id, i)).ToFrozenDictionary(h => h.Id, h => h.i, StringComparer.Ordinal);
        return new Models(cases, counts, basis, authored, fitted, places, new CauseChances(places, LikelihoodRow.Of(places.Count, 0, [])));
    }

    RankingModel ForVariant(string variant)
    {
        var needed = guide.Checks.All.Where(c => Fits(c, variant)).Select(c => c.Origin.Slug).ToHashSet();
        return Fitted.WithPriors(SharesIn(variant, Fitted.Priors, CasesOf(variant))) with { Checks = [.. Fitted.Checks.Where(c => needed.Contains(c.Id))] };
    }

    (bool[] Possible, int[] Cases) PossibleIn(string variant)
    {
        var ofVariant = guide.Cases.Where(c => c.Variant.Value == variant).Select(c => c.Origin.Slug).ToHashSet();
        var cases = new int[Places.Count];
        foreach (var one in Cases.Where(c => ofVariant.Contains(c.Id))) cases[PlaceOf(one.Cause)]++;
        return ([.. guide.Faults.All.Select(f => Fits(f, variant)), true], cases);
    }

    Dictionary<string, int> CountsOf(string variant) =>
        CasesOf(variant).ToArray().Select((count, h) => (Fitted.Hypotheses[h].Id, count)).Where(c => c.count > 0).ToDictionary(c => c.Id, c => c.count);

    /// <summary>True where an entry is about the variant: about all, if it names none.</summary>
    public static bool Fits(IGuideEntry entry, string variant) => entry.Variants.IsEmpty || entry.Variants.Any(v => v.Value == variant);

    /// <summary>What the properties of the same names say.</summary>
    sealed record Models(
        ImmutableArray<Diagnosis.Ranking.SolvedCase> Cases,
        CaseCounts Counts,
        FitBasis Basis,
        RankingModel Authored,
        RankingModel Fitted,
        FrozenDictionary<string, int> Places,
        CauseChances NoChance);
}
