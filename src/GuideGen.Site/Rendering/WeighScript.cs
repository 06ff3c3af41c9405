using System.Text.Json;
using GuideGen.Diagnosis.Ranking;
using GuideGen.Guide.Model;
using GuideGen.Site.Views;
using GuideGen.Site.Weighing;
using Scriban.Runtime;

namespace GuideGen.Site.Rendering;

/// <summary>
/// What the browser weighs causes with: the packed model over all variants, what differs in each variant, and how faults,
/// checks and preparations are called, where they are read up and what is to be minded.
/// </summary>
static class WeighScript
{
    public static void Write(Utf8JsonWriter json, ViewContext view) => JsonSerializer.Serialize(json, DataOf(view), SiteJson.Default.WeighData);

    static WeighData DataOf(ViewContext view)
    {
        var guide = view.Guide;
        return new(
            GuideWeights.Plausible,
            view.Guide.Weights.Model(null),
            guide.Vehicle.Variants.ToDictionary(v => v.Key.Value, v => VariantOf(view.Guide.Weights, v.Key.Value)),
            guide.Faults.All.ToDictionary(f => f.Origin.Slug, f => FaultOf(view, f)),
            guide.Checks.All.ToDictionary(c => c.Origin.Slug, c => CheckOf(view, c)),
            guide.Symptoms.All.ToDictionary(s => s.Origin.Slug, s => new WeighedSymptom(s.Name.Value, DriveWords.Key(s.Drive.Value))),
            guide.Vehicle.Setups.ToDictionary(s => s.Key.Value, s => s.Value.Name.Value),
            guide.Hazards.ToDictionary(h => h.Key, h => HazardOf(h.Value)));
    }

    static WeighedVariant VariantOf(GuideWeights weights, string variant)
    {
        var model = weights.Model(variant);
        return new([.. model.Hypotheses.Select(h => h.Prior)], [.. model.Checks.Select(c => c.Id)]);
    }

    static WeighedFault FaultOf(ViewContext view, Fault fault) =>
        new(fault.Name.Value, view.Links.Of(fault), DriveWords.Key(fault.Drive.Value), Slugs(CautionView.Of(view, fault.Hazards)));

    static WeighedCheck CheckOf(ViewContext view, Check check) =>
        new(check.Name.Value, view.Links.Of(check), check.Summary.Value, check.Outcomes.ToDictionary(o => o.Key.Value, o => o.Value.Name.Value), Slugs(CautionView.Of(view, check)));

    static string[] Slugs(ScriptArray boxes) => [.. boxes.Cast<ScriptObject>().Select(b => (string)b["slug"]!)];

    static WeighedHazard HazardOf(Hazard hazard) =>
        new(SignalWords.Key(hazard.Signal.Value), hazard.Name.Value, [.. hazard.Cautions.Select(c => c.Value)], hazard.HandOver?.Value);
}

sealed record WeighData(
    double Plausible,
    RankingModel Model,
    Dictionary<string, WeighedVariant> Variants,
    Dictionary<string, WeighedFault> Faults,
    Dictionary<string, WeighedCheck> Checks,
    Dictionary<string, WeighedSymptom> Symptoms,
    Dictionary<string, string> Setups,
    Dictionary<string, WeighedHazard> Hazards);

/// <summary>What differs in a variant; the likelihoods are the same in all of them.</summary>
/// <param name="Priors">In the model's order; 0 for a fault that the variant cannot have.</param>
/// <param name="Checks">Those that can be done on it.</param>
sealed record WeighedVariant(double[] Priors, string[] Checks);

sealed record WeighedFault(string Name, string Href, string Drive, string[] Hazards);

sealed record WeighedCheck(string Name, string Href, string Summary, Dictionary<string, string> Outcomes, string[] Hazards);

sealed record WeighedSymptom(string Name, string Drive);

sealed record WeighedHazard(string Signal, string Name, string[] Cautions, string? HandOver);
