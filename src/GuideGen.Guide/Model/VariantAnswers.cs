using System.Collections.Immutable;

namespace GuideGen.Guide.Model;

/// <summary>A question whose answers name the variants of the vehicle: which answer a variant takes is then known.</summary>
public static class VariantAnswers
{
    /// <summary>The slugs of the variants that each answer names; null unless the answers name every variant of the tree exactly once.</summary>
    public static ImmutableArray<ImmutableArray<string>>? Of(Vehicle vehicle, Tree tree, AskNode ask)
    {
        var variants = vehicle.Variants.Where(v => tree.Variants.IsEmpty || tree.Variants.Any(t => t.Value == v.Key.Value)).ToList();
        var named = ask.Answers.Select(a => variants.Where(v => a.Key.Value.Contains(v.Value.Name.Value, StringComparison.OrdinalIgnoreCase)).Select(v => v.Key.Value).ToImmutableArray()).ToImmutableArray();
        var each = named.SelectMany(n => n).ToList();
        return variants.Count > 1 && named.All(n => !n.IsEmpty) && each.Count == variants.Count && each.Distinct().Count() == variants.Count ? named : null;
    }
}
