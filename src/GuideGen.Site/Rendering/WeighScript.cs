using System.Text.Json;
using System.Text.Json.Serialization;
using GuideGen.Diagnosis;
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
    static readonly JsonSerializerOptions Options = new()
    {
        PropertyNamingPolicy = JsonNamingPolicy.CamelCase,
        Converters = { new JsonStringEnumConverter(JsonNamingPolicy.CamelCase), new PackedRowJson() },
    };

    public static void Write(Utf8JsonWriter json, ViewContext view) => JsonSerializer.Serialize(json, DataOf(view), Options);

    static object DataOf(ViewContext view)
    {
        var guide = view.Guide;
        return new
        {
            plausible = GuideWeights.Plausible,
            model = view.Plan.Weights.Model(null),
            variants = guide.Vehicle.Variants.ToDictionary(v => v.Key.Value, v => VariantOf(view.Plan.Weights, v.Key.Value)),
            faults = guide.Faults.All.ToDictionary(f => f.Origin.Slug, f => FaultOf(view, f)),
            checks = guide.Checks.All.ToDictionary(c => c.Origin.Slug, c => CheckOf(view, c)),
            symptoms = guide.Symptoms.All.ToDictionary(s => s.Origin.Slug, s => new { name = s.Name.Value, drive = DriveWords.Key(s.Drive.Value) }),
            setups = guide.Vehicle.Setups.ToDictionary(s => s.Key.Value, s => s.Value.Name.Value),
            hazards = guide.Hazards.ToDictionary(h => h.Key, h => HazardOf(h.Value)),
        };
    }

    /// <summary>The priors in the model's order; 0 for a fault that the variant cannot have. The likelihoods are the same in all variants.</summary>
    static object VariantOf(GuideWeights weights, string variant)
    {
        var model = weights.Model(variant);
        return new { priors = model.Hypotheses.Select(h => h.Prior), checks = model.Checks.Select(c => c.Id) };
    }

    static object FaultOf(ViewContext view, Fault fault) => new
    {
        name = fault.Name.Value,
        href = view.Links.Of(fault),
        drive = DriveWords.Key(fault.Drive.Value),
        hazards = Slugs(CautionView.Of(view, fault.Hazards)),
    };

    static object CheckOf(ViewContext view, Check check) => new
    {
        name = check.Name.Value,
        href = view.Links.Of(check),
        summary = check.Summary.Value,
        outcomes = check.Outcomes.ToDictionary(o => o.Key.Value, o => o.Value.Name.Value),
        hazards = Slugs(CautionView.Of(view, check)),
    };

    static IEnumerable<object?> Slugs(ScriptArray boxes) => boxes.Cast<ScriptObject>().Select(b => b["slug"]);

    static object HazardOf(Hazard hazard) => new
    {
        signal = SignalWords.Key(hazard.Signal.Value),
        name = hazard.Name.Value,
        cautions = hazard.Cautions.Select(c => c.Value),
        handOver = hazard.HandOver?.Value,
    };
}
